import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Dimension } from '../../src/units/dimension.ts';
import { readTypedQuantity } from '../../src/units/typedQuantity.ts';
import { expectClose } from '../tolerance.ts';

function read(text: string, expected: Dimension, fallback?: string) {
  const outcome = readTypedQuantity(text, expected, fallback);
  if (!outcome.ok) throw new Error(`"${text}" was refused: found ${outcome.found}, expected ${outcome.expected}`);
  return outcome.value;
}

const IN = 0.0254;
const OZ = 0.028349523125;

const READ: readonly (readonly [
  text: string,
  dimension: Dimension,
  si: number,
  step: number,
  typed: number,
  unit: string,
])[] = [
  ['1 3/8 in', 'length', 1.375 * IN, IN / 8, 1.375, 'in'],
  ['1-3/8 in', 'length', 1.375 * IN, IN / 8, 1.375, 'in'],
  ['1½"', 'length', 1.5 * IN, IN / 2, 1.5, 'in'],
  ['½ in', 'length', 0.5 * IN, IN / 2, 0.5, 'in'],
  ['0.3249"', 'length', 0.3249 * IN, 1e-4 * IN, 0.3249, 'in'],
  ['0.3249″', 'length', 0.3249 * IN, 1e-4 * IN, 0.3249, 'in'],
  ['12,5 mm', 'length', 0.0125, 1e-4, 12.5, 'mm'],
  ['12,5mm', 'length', 0.0125, 1e-4, 12.5, 'mm'],
  ['1\u00a0234\u00a0mm', 'length', 1.234, 1e-3, 1234, 'mm'],
  ['5.6 oz', 'mass', 5.6 * OZ, 0.1 * OZ, 5.6, 'oz'],
  ['312 gr', 'mass', 0.312, 1e-3, 312, 'g'],
  ['39.27g', 'mass', 0.03927, 1e-5, 39.27, 'g'],
  ['1.2e3 g', 'mass', 1.2, 0.1, 1200, 'g'],
  ['0.39 mohm', 'resistance', 3.9e-4, 1e-5, 0.39, 'mΩ'],
  ['0.39 Mohm', 'resistance', 3.9e5, 1e4, 0.39, 'MΩ'],
  ['48 µΩ', 'resistance', 4.8e-5, 1e-6, 48, 'µΩ'],
  ['0.1 ohm/1000ft', 'resistance per length', 0.1 / 304.8, 0.1 / 304.8, 0.1, 'Ω/1000 ft'],
  ['201 lb/kft', 'mass per length', (201 * 0.45359237) / 304.8, 0.45359237 / 304.8, 201, 'lb/1000 ft'],
  ['12mm2', 'area', 1.2e-5, 1e-6, 12, 'mm²'],
  ['48 F', 'temperature', 282.0388888888889, 5 / 9, 48, '°F'],
  ['−5,5 °C', 'temperature', 267.65, 0.1, -5.5, '°C'],
  ['-459.67 F', 'temperature', 0, 0.05 / 9, -459.67, '°F'],
  ['300 K', 'temperature', 300, 1, 300, 'K'],
  ['41°', 'angle', (41 * Math.PI) / 180, Math.PI / 180, 41, '°'],
  ['2 kg', 'force', 19.6133, 9.80665, 2, 'kgf'],
  ['1064', 'count', 1064, 1, 1064, '1'],
  ['1,064', 'count', 1064, 1, 1064, '1'],
  ['1,064 strands', 'count', 1064, 1, 1064, '1'],
  ['3.5 turns', 'count', 3.5, 0.1, 3.5, '1'],
  ['85 %', 'ratio', 0.85, 0.01, 85, '%'],
  ['0.85', 'ratio', 0.85, 0.01, 0.85, '1'],
  [`5' 3 1/2"`, 'length', 63.5 * IN, IN / 2, 63.5, 'in'],
  ['5′ 3½″', 'length', 63.5 * IN, IN / 2, 63.5, 'in'],
  ['5 ft 3 in', 'length', 63 * IN, IN, 63, 'in'],
  ['5ft3in', 'length', 63 * IN, IN, 63, 'in'],
  [`-5' 3"`, 'length', -63 * IN, IN, -63, 'in'],
  ['2 lb 3 oz', 'mass', 35 * OZ, OZ, 35, 'oz'],
  ['2 lbs. 3.5 oz', 'mass', 35.5 * OZ, 0.1 * OZ, 35.5, 'oz'],
  ['1 m 20 cm', 'length', 1.2, 0.01, 120, 'cm'],
  ['1 h 20 min', 'time', 4800, 60, 80, 'min'],
];

/** Text, kind, fallback unit, and what the refusal must say. */
const REFUSED: readonly (readonly [text: string, dimension: Dimension, fallback: string | undefined, says: RegExp])[] =
  [
    ['5.6 oz', 'length', undefined, /^"5\.6 oz" \(a mass\)$/],
    ['20 °C', 'mass', undefined, /a temperature/],
    ['12 mm', 'area', undefined, /a length/],
    ['2 lb 3 oz', 'length', undefined, /2 lb 3 oz/],
    ['39.27', 'mass', undefined, /without a unit/],
    ['39.27', 'mass', '', /without a unit/],
    ['39.27', 'mass', 'V', /^"39\.27 V" \(a voltage\)$/],
    ['39.27', 'mass', 'blarg', /39\.27 blarg.*"blarg" is not known/],
    ['8 blargs', 'mass', undefined, /"blargs" is not known/],
    ['2 AWG', 'length', undefined, /AWG.*not known/],
    ['1,064 mm', 'length', undefined, /1\.064 or 1064/],
    ['12 13 mm', 'length', undefined, /two numbers/],
    ['12-13 mm', 'length', undefined, /two numbers/],
    ['12 mm 13 mm', 'length', undefined, /not known/],
    ['5 in 3 ft', 'length', undefined, /not known/],
    ['5 ft 13 in', 'length', undefined, /5 ft 13 in/],
    ['5.5 ft 3 in', 'length', undefined, /5\.5 ft 3 in/],
    ['5 ft -3 in', 'length', undefined, /not known/],
    ['-500 F', 'temperature', undefined, /below absolute zero/],
    ['-1 K', 'temperature', undefined, /below absolute zero/],
    ['', 'mass', 'g', /nothing/],
    ['  ', 'mass', 'g', /nothing/],
    ['g', 'mass', undefined, /"g"/],
    ['about 12 g', 'mass', undefined, /about 12 g/],
    ['NaN g', 'mass', undefined, /NaN/],
    ['1e400 g', 'mass', undefined, /range/],
    ['12 g ± 1', 'mass', undefined, /not known/],
    ['5 MV', 'voltage', undefined, /not known/],
    [`1${' '.repeat(5000)}g`, 'mass', undefined, /…/],
  ];

describe('readTypedQuantity', () => {
  it.each(READ)('%s', (text, dimension, si, step, typed, unit) => {
    const got = read(text, dimension);
    expectClose(got.value, si, { relative: 1e-14, absolute: 1e-13, because: 'absolute zero in °F is not exact' });
    expectClose(got.step, step, { relative: 1e-12 });
    expectClose(got.typedValue, typed, { relative: 1e-15 });
    expect(got.unit).toBe(unit);
  });

  it.each(REFUSED)('refuses "%s" as %s', (text, dimension, fallback, says) => {
    const outcome = readTypedQuantity(text, dimension, fallback);
    expect(outcome.ok).toBe(false);
    if (outcome.ok) return;
    expect(outcome.found).toMatch(says);
    expect(outcome.found.length).toBeLessThan(200);
    expect(outcome.expected).toContain('such as');
  });

  it('says what was expected in words that name a reading', () => {
    expect(readTypedQuantity('5.6 oz', 'length')).toEqual({
      ok: false,
      found: '"5.6 oz" (a mass)',
      expected: 'a length, such as 150 mm',
    });
  });

  it('takes the fallback unit only where none was typed', () => {
    expect(read('312', 'mass', 'g').value).toBe(0.312);
    expect(read('39.27 oz', 'mass', 'g').unit).toBe('oz');
    expectClose(read('5 1/2', 'length', '"').value, 0.1397, { relative: 1e-14 });
    expect(read('1,064', 'count', '').value).toBe(1064);
  });

  /** Exact factors, so that the same quantity can be typed in two ways. */
  const SAME: readonly (readonly [Dimension, string, string, number])[] = [
    ['length', 'in', 'mm', 25.4],
    ['length', 'ft', 'in', 12],
    ['length', 'm', 'cm', 100],
    ['mass', 'lb', 'oz', 16],
    ['mass', 'kg', 'g', 1000],
    ['mass', 'lb', 'g', 453.59237],
    ['resistance', 'ohm', 'mohm', 1000],
    ['resistance', 'mΩ', 'µΩ', 1000],
    ['resistance per length', 'mohm/m', 'ohm/km', 1],
    ['resistance per length', 'mohm/ft', 'ohm/kft', 1],
    ['mass per length', 'g/m', 'kg/km', 1],
    ['area', 'kcmil', 'cmil', 1000],
    ['force', 'kgf', 'N', 9.80665],
    ['time', 'h', 'min', 60],
    ['density', 'g/cm3', 'kg/m3', 1000],
  ];

  it('gives one SI value to one quantity, whatever unit it is typed in', () => {
    const value = fc.double({ min: 0.001, max: 9999, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...SAME), value, ([dimension, larger, smaller, ratio], x) => {
        const a = read(`${x} ${larger}`, dimension);
        const b = read(`${x * ratio} ${smaller}`, dimension);
        expectClose(a.value, b.value, { relative: 1e-12, because: `${x} ${larger}` });
      }),
      { seed: 24, numRuns: 400 },
    );
  });

  it('is refused or finite for any text', () => {
    const typed = fc.string({ unit: fc.constantFrom(...`0123456789.,/- '"½mgkflbozinΩµ²°C`), maxLength: 16 });
    fc.assert(
      fc.property(typed, fc.constantFrom<Dimension>('length', 'mass', 'temperature', 'count'), (text, dimension) => {
        const outcome = readTypedQuantity(text, dimension);
        if (!outcome.ok) return;
        expect(Number.isFinite(outcome.value.value)).toBe(true);
        expect(outcome.value.step).toBeGreaterThan(0);
      }),
      { seed: 25, numRuns: 2000 },
    );
  });
});
