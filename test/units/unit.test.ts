import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Dimension } from '../../src/units/dimension.ts';
import { findUnit } from '../../src/units/unit.ts';
import { UNIT_TABLE } from '../../src/units/unitTable.ts';
import { expectClose } from '../tolerance.ts';

/** Spelling → one of it in SI, its kind, and how it is printed. */
const SPELLINGS: readonly (readonly [text: string, si: number, dimension: Dimension, symbol: string])[] = [
  ['g', 1e-3, 'mass', 'g'],
  ['gr', 1e-3, 'mass', 'g'],
  ['Gram', 1e-3, 'mass', 'g'],
  ['grammes', 1e-3, 'mass', 'g'],
  ['KG', 1, 'mass', 'kg'],
  ['mg', 1e-6, 'mass', 'mg'],
  ['oz.', 0.028349523125, 'mass', 'oz'],
  ['ounces', 0.028349523125, 'mass', 'oz'],
  ['lbs', 0.45359237, 'mass', 'lb'],
  ['m', 1, 'length', 'm'],
  ['MM', 1e-3, 'length', 'mm'],
  [' cm ', 1e-2, 'length', 'cm'],
  ['µm', 1e-6, 'length', 'µm'],
  ['μm', 1e-6, 'length', 'µm'],
  ['um', 1e-6, 'length', 'µm'],
  ['in.', 0.0254, 'length', 'in'],
  ['"', 0.0254, 'length', 'in'],
  ['″', 0.0254, 'length', 'in'],
  ['”', 0.0254, 'length', 'in'],
  ["''", 0.0254, 'length', 'in'],
  ['inches', 0.0254, 'length', 'in'],
  ["'", 0.3048, 'length', 'ft'],
  ['′', 0.3048, 'length', 'ft'],
  ['feet', 0.3048, 'length', 'ft'],
  ['yd', 0.9144, 'length', 'yd'],
  ['Yds.', 0.9144, 'length', 'yd'],
  ['yard', 0.9144, 'length', 'yd'],
  ['yards', 0.9144, 'length', 'yd'],
  ['mils', 2.54e-5, 'length', 'mil'],
  ['thou', 2.54e-5, 'length', 'mil'],
  ['Ω', 1, 'resistance', 'Ω'],
  ['\u2126', 1, 'resistance', 'Ω'],
  ['Ohms', 1, 'resistance', 'Ω'],
  ['mohm', 1e-3, 'resistance', 'mΩ'],
  ['mΩ', 1e-3, 'resistance', 'mΩ'],
  ['m\u2126', 1e-3, 'resistance', 'mΩ'],
  ['Milliohm', 1e-3, 'resistance', 'mΩ'],
  ['m Ω', 1e-3, 'resistance', 'mΩ'],
  ['uohm', 1e-6, 'resistance', 'µΩ'],
  ['µΩ', 1e-6, 'resistance', 'µΩ'],
  ['microohms', 1e-6, 'resistance', 'µΩ'],
  ['kohm', 1e3, 'resistance', 'kΩ'],
  ['Mohm', 1e6, 'resistance', 'MΩ'],
  ['MOHM', 1e6, 'resistance', 'MΩ'],
  ['MΩ', 1e6, 'resistance', 'MΩ'],
  ['mohm/m', 1e-3, 'resistance per length', 'mΩ/m'],
  ['mΩ / m', 1e-3, 'resistance per length', 'mΩ/m'],
  ['ohm/km', 1e-3, 'resistance per length', 'Ω/km'],
  ['ohm/1000ft', 1 / 304.8, 'resistance per length', 'Ω/1000 ft'],
  ['ohms per 1000 ft', 1 / 304.8, 'resistance per length', 'Ω/1000 ft'],
  ['ohm/kft', 1 / 304.8, 'resistance per length', 'Ω/1000 ft'],
  ['mΩ/ft', 1e-3 / 0.3048, 'resistance per length', 'mΩ/ft'],
  ['g/m', 1e-3, 'mass per length', 'g/m'],
  ['kg/km', 1e-3, 'mass per length', 'kg/km'],
  ['lb/1000ft', 0.45359237 / 304.8, 'mass per length', 'lb/1000 ft'],
  ['lb/kft', 0.45359237 / 304.8, 'mass per length', 'lb/1000 ft'],
  ['g/ft', 1e-3 / 0.3048, 'mass per length', 'g/ft'],
  ['oz/ft', 0.028349523125 / 0.3048, 'mass per length', 'oz/ft'],
  ['mm2', 1e-6, 'area', 'mm²'],
  ['mm²', 1e-6, 'area', 'mm²'],
  ['mm^2', 1e-6, 'area', 'mm²'],
  ['sq mm', 1e-6, 'area', 'mm²'],
  ['sq. mm', 1e-6, 'area', 'mm²'],
  ['SQMM', 1e-6, 'area', 'mm²'],
  ['cmil', (Math.PI / 4) * 0.0000254 ** 2, 'area', 'cmil'],
  ['circular mil', (Math.PI / 4) * 0.0000254 ** 2, 'area', 'cmil'],
  ['kcmil', 1000 * (Math.PI / 4) * 0.0000254 ** 2, 'area', 'kcmil'],
  ['MCM', 1000 * (Math.PI / 4) * 0.0000254 ** 2, 'area', 'kcmil'],
  ['deg', Math.PI / 180, 'angle', '°'],
  ['rad', 1, 'angle', 'rad'],
  ['N', 1, 'force', 'N'],
  ['kgf', 9.80665, 'force', 'kgf'],
  ['gf', 9.80665e-3, 'force', 'gf'],
  ['lbf', 4.4482216152605, 'force', 'lbf'],
  ['V', 1, 'voltage', 'V'],
  ['mV', 1e-3, 'voltage', 'mV'],
  ['µV', 1e-6, 'voltage', 'µV'],
  ['A', 1, 'current', 'A'],
  ['mA', 1e-3, 'current', 'mA'],
  ['s', 1, 'time', 's'],
  ['min', 60, 'time', 'min'],
  ['h', 3600, 'time', 'h'],
  ['kg/m3', 1, 'density', 'kg/m³'],
  ['g/cm³', 1000, 'density', 'g/cm³'],
  ['g/cc', 1000, 'density', 'g/cm³'],
  ['', 1, 'count', '1'],
  ['strands', 1, 'count', '1'],
  ['turns', 1, 'count', '1'],
  ['%', 0.01, 'ratio', '%'],
];

describe('findUnit', () => {
  it.each(SPELLINGS)('%s', (text, si, dimension, symbol) => {
    const unit = findUnit(text);
    expect(unit, `no unit found for "${text}"`).not.toBeNull();
    expect([unit!.dimension, unit!.symbol]).toEqual([dimension, symbol]);
    expectClose(unit!.toSI(1), si, { relative: 1e-14 });
    expectClose(unit!.stepToSI(1), si, { relative: 1e-14 });
  });

  it.each(['°C', 'C', 'c', 'degC', 'deg C', 'Celsius', '℃', 'ºC'])('%s is Celsius', (text) => {
    const unit = findUnit(text)!;
    expect(unit.toSI(20)).toBe(293.15);
    expect(unit.stepToSI(1)).toBe(1);
    expect([unit.dimension, unit.symbol]).toEqual(['temperature', '°C']);
  });

  it.each(['°F', 'F', 'degF', 'fahrenheit', '℉'])('%s is Fahrenheit', (text) => {
    const unit = findUnit(text)!;
    expectClose(unit.toSI(32), 273.15, { relative: 1e-14 });
    expectClose(unit.toSI(212), 373.15, { relative: 1e-14 });
    expectClose(unit.stepToSI(9), 5, { relative: 1e-14 });
  });

  it('reads a capital K as kelvin and a small k as nothing', () => {
    expect(findUnit('K')?.toSI(300)).toBe(300);
    expect(findUnit('k')).toBeNull();
  });

  it.each([
    'MV',
    'MA',
    'MΩ/m',
    'Mohm/m',
    'MOhm/km',
    'AWG',
    'grain',
    'blarg',
    'm/s',
    'C/m',
    'mm/',
    '/m',
    'in3',
    'x'.repeat(500),
  ])('does not guess at %s', (text) => {
    expect(findUnit(text)).toBeNull();
  });

  it('keeps to the kind that is expected', () => {
    expect(findUnit('oz', 'length')).toBeNull();
    expect(findUnit('C', 'temperature')?.symbol).toBe('°C');
    expect(findUnit('°', 'temperature')).toBeNull();
    expect(findUnit('', 'mass')).toBeNull();
    expect(findUnit('', 'ratio')?.toSI(0.5)).toBe(0.5);
    expect(findUnit('%', 'count')).toBeNull();
  });

  it('takes what a scale shows as a force where a force is expected', () => {
    expectClose(findUnit('kg', 'force')!.toSI(2), 19.6133, { relative: 1e-14 });
    expectClose(findUnit('g', 'force')!.toSI(500), 4.903325, { relative: 1e-14 });
    expect(findUnit('kg')?.dimension).toBe('mass');
  });

  it('gives every spelling to one unit only', () => {
    const all = UNIT_TABLE.flatMap((row) => row.spellings);
    expect(all.filter((spelling, i) => all.indexOf(spelling) !== i)).toEqual([]);
  });

  it('finds every printed symbol again', () => {
    for (const { symbol, dimension } of UNIT_TABLE) expect(findUnit(symbol)?.dimension, symbol).toBe(dimension);
  });

  it('goes into SI and back to the same number', () => {
    const spelling = fc.constantFrom(...SPELLINGS.map(([text]) => text), 'C', 'F', 'K');
    const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(spelling, value, (text, x) => {
        const unit = findUnit(text)!;
        // A temperature's offset costs digits near zero: 460 °F is carried through 273 K.
        const absolute = unit.dimension === 'temperature' ? 1e-9 : 1e-300;
        expectClose(unit.fromSI(unit.toSI(x)), x, { relative: 1e-12, absolute });
      }),
      { seed: 20, numRuns: 500 },
    );
  });

  it('scales a step like the difference of two values', () => {
    for (const text of ['°F', '°C', 'oz', 'mil', 'mohm/ft']) {
      const unit = findUnit(text)!;
      expectClose(unit.stepToSI(10), unit.toSI(90) - unit.toSI(80), { relative: 1e-11 });
    }
  });
});
