import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digitsToShow, formatMeasured, formatPlain } from '../../src/units/digits.ts';

const M = '\u2212';

/** Value, uncertainty, and both as they must be printed. */
const PRINTED: readonly (readonly [value: number, u: number, text: string, plusMinus: string])[] = [
  // two digits from 100 to 354
  [33.149, 0.1, '33.15', '0.10'],
  [33.149, 0.22, '33.15', '0.22'],
  [33.149, 0.3549, '33.1', '0.4'],
  [33.149, 0.354, '33.15', '0.35'],
  [33.149, 0.3544, '33.15', '0.35'],
  // one digit from 355 to 949
  [33.149, 0.355, '33.1', '0.4'],
  [33.149, 0.4, '33.1', '0.4'],
  [33.149, 0.5, '33.1', '0.5'],
  [33.149, 0.949, '33.1', '0.9'],
  [33.149, 0.094, '33.15', '0.09'],
  // 950 to 999 become 1000 and two digits
  [33.149, 0.95, '33.1', '1.0'],
  [33.149, 0.9994, '33.1', '1.0'],
  [33.149, 0.9996, '33.1', '1.0'],
  [33.149, 0.096, '33.15', '0.10'],
  [33.149, 9.6, '33', '10'],
  [333.149, 96, '330', '100'],
  // the place decides the value, down to nothing
  [-0.003, 0.4, '0.0', '0.4'],
  [0.003, 0.4, '0.0', '0.4'],
  [0, 0.1, '0.00', '0.10'],
  [5, 120, '0', '120'],
  [-16, 120, `${M}20`, '120'],
  [123456, 3400, '123500', '3400'],
  [123456, 34000, '123000', '34000'],
  [999999, 1234, '1000000', '1200'],
  [9.996, 0.02, '9.996', '0.020'],
  [9.9996, 0.02, '10.000', '0.020'],
  [33.1, 0.002, '33.1000', '0.0020'],
  [-33.149, 0.22, `${M}33.15`, '0.22'],
  // ties to even, seen in decimal: the double 2.675 lies below 2.675
  [2.675, 0.05, '2.68', '0.05'],
  [2.665, 0.05, '2.66', '0.05'],
  [0.5, 4, '0', '4'],
  [1.5, 4, '2', '4'],
  [10.05, 0.4, '10.0', '0.4'],
  [33.1, 0.105, '33.10', '0.10'],
  [33.1, 0.115, '33.10', '0.12'],
  // JCGM 100 7.2.6 and 7.2.2, from memory
  [10.05762, 0.027, '10.058', '0.027'],
  [100.02147, 0.00035, '100.02147', '0.00035'],
  // huge and tiny: one power of ten for both
  [1.2e9, 3e6, '1.2000 × 10⁹', '0.0030 × 10⁹'],
  [12345678, 100, '1.234568 × 10⁷', '0.000010 × 10⁷'],
  [1e6, 5e5, '1000000', '500000'],
  [0, 1e12, '0.0 × 10¹²', '1.0 × 10¹²'],
  [1.234e-9, 3e-11, '1.234 × 10⁻⁹', '0.030 × 10⁻⁹'],
  [-1.234e-9, 3e-11, `${M}1.234 × 10⁻⁹`, '0.030 × 10⁻⁹'],
  [9999999.6, 1, '9999999.6', '1.0'],
  [5e6, 4e6, '5000000', '4000000'],
  [9999999.6, 50, '1.000000 × 10⁷', '0.000005 × 10⁷'],
  [0.000099999, 0.00001, '0.000100', '0.000010'],
  [0.00033, 0.00001, '0.000330', '0.000010'],
  [1e-5, 1e-6, '1.00 × 10⁻⁵', '0.10 × 10⁻⁵'],
  [1e300, 1e299, '1.00 × 10³⁰⁰', '0.10 × 10³⁰⁰'],
  [5e-324, 1e-300, '0.0 × 10⁻³⁰⁰', '1.0 × 10⁻³⁰⁰'],
  [0.5, 1e-9, '0.5000000000', '0.0000000010'],
  // no uncertainty: the value as it is
  [1, 0, '1', '0'],
  [100, 0, '100', '0'],
  [0.1 + 0.2, 0, '0.3', '0'],
  [-1.5, 0, `${M}1.5`, '0'],
  [0, 0, '0', '0'],
  [1e8, 0, '1 × 10⁸', '0'],
  [1064, 0, '1064', '0'],
  // nothing known
  [1.23456, Number.NaN, '1.235', '–'],
  [1.23456, -1, '1.235', '–'],
  [1.23456, Number.POSITIVE_INFINITY, '1', '∞'],
  [Number.NaN, 1, '–', '–'],
  [Number.POSITIVE_INFINITY, 1, '∞', '–'],
  [Number.NEGATIVE_INFINITY, 1, `${M}∞`, '–'],
];

describe('formatMeasured', () => {
  it.each(PRINTED)('%s with %s', (value, u, text, plusMinus) => {
    expect(formatMeasured(value, u)).toEqual({ value: text, plusMinus });
  });

  it('decides the digits by what is shown after ±', () => {
    expect(formatMeasured(33.149, 0.2, { expandedFactor: 2 })).toEqual({ value: '33.1', plusMinus: '0.4' });
    expect(formatMeasured(33.149, 0.2, { expandedFactor: 1 })).toEqual({ value: '33.15', plusMinus: '0.20' });
    expect(formatMeasured(33.149, 0, { expandedFactor: 2 })).toEqual({ value: '33.149', plusMinus: '0' });
  });

  const decimals = (text: string) => text.replace(/ .*/, '').split('.')[1]?.length ?? 0;
  const asNumber = (text: string) => {
    const [mantissa, power] = text.replace(M, '-').split(' × 10');
    const digits = (power ?? '⁰').replace('⁻', '-').replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹]/g, (d) => String('⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(d)));
    return Number(`${mantissa}e${digits}`);
  };
  const magnitude = fc.double({ min: -12, max: 12, noNaN: true }).map((p) => 10 ** p);

  it('gives value and ± to the same place, and neither is off by more than half a step', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e8, max: 1e8, noNaN: true }), magnitude, (value, u) => {
        const { value: text, plusMinus } = formatMeasured(value, u);
        expect(decimals(text)).toBe(decimals(plusMinus));
        expect(text.split(' × ')[1]).toBe(plusMinus.split(' × ')[1]);
        // One step of the last place is at most 28 % of u, so half a step 14 %; a little more for the parsing back.
        expect(Math.abs(asNumber(text) - value)).toBeLessThanOrEqual(0.1415 * u + 1e-12 * Math.abs(value));
        expect(Math.abs(asNumber(plusMinus) - u)).toBeLessThanOrEqual(0.1415 * u);
      }),
      { seed: 28, numRuns: 2000 },
    );
  });

  it('shows at most two significant digits of the uncertainty', () => {
    fc.assert(
      fc.property(magnitude, (u) => {
        const digits = formatMeasured(0, u).plusMinus.replace(/ .*/, '').replace('.', '').replace(/^0+/, '');
        expect(digits.replace(/0+$/, '').length).toBeLessThanOrEqual(2);
        if (digits.length <= 2) expect(digits.length).toBe(digitsToShow(u));
      }),
      { seed: 29, numRuns: 1000 },
    );
  });
});

describe('digitsToShow', () => {
  it.each([
    [0.1, 2],
    [0.354, 2],
    [0.3549, 1],
    [0.355, 1],
    [949, 1],
    [950, 2],
    [0.0999, 2],
    [1e-300, 2],
    [4e200, 1],
  ])('%s → %s', (u, digits) => {
    expect(digitsToShow(u)).toBe(digits);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('throws for %s', (u) => {
    expect(() => digitsToShow(u)).toThrow(RangeError);
  });
});

describe('formatPlain', () => {
  it.each([
    [0.39, 3, '0.390'],
    [1234.5, 2, '1200'],
    [1234.5, 6, '1234.50'],
    [0, 3, '0'],
    [-2.5, 2, `${M}2.5`],
    [9.996, 3, '10.0'],
    [99.96, 3, '100'],
    [0.00012, 2, '0.00012'],
    [1e-7, 2, '1.0 × 10⁻⁷'],
    [12345678, 3, '1.23 × 10⁷'],
    [9999999, 3, '1.00 × 10⁷'],
    [0.000099999, 2, '0.00010'],
    [Number.NaN, 2, '–'],
    [Number.NEGATIVE_INFINITY, 1, `${M}∞`],
  ])('%s to %s digits is %s', (value, digits, text) => {
    expect(formatPlain(value, digits)).toBe(text);
  });
});
