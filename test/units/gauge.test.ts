import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  AWG_PER_LOG_AREA,
  awgArea,
  awgAreaFromRoundedDiameter,
  awgDiameter,
  awgName,
  effectiveAwg,
  effectiveGaugeText,
  nearestAwgMet,
  parseAwgName,
  STANDARD_AWG_SIZES,
} from '../../src/units/gauge.ts';
import { expectClose } from '../tolerance.ts';

/** The area of a real gauge number, also beyond 4/0. */
function areaAt(n: number): number {
  return awgArea(2) * Math.exp((n - 2) / AWG_PER_LOG_AREA);
}

describe('awgDiameter, awgArea', () => {
  it('stands on the two anchors', () => {
    expectClose(awgDiameter(36), 0.005 * 0.0254, { relative: 1e-15 });
    expectClose(awgDiameter(-3), 0.46 * 0.0254, { relative: 1e-14 });
  });

  it.each([-4, 41, Number.NaN, Number.POSITIVE_INFINITY])('has no size %s', (n) => {
    expect(() => awgDiameter(n)).toThrow(RangeError);
    expect(() => awgArea(n)).toThrow(RangeError);
    expect(() => awgAreaFromRoundedDiameter(n)).toThrow(RangeError);
    expect(() => awgName(n)).toThrow(RangeError);
  });

  it('falls from size to size', () => {
    for (let n = -2; n <= 40; n += 1) expect(awgArea(n)).toBeLessThan(awgArea(n - 1));
  });

  it('differs from the area of the rounded diameter by less than the rounding can do', () => {
    for (let n = -3; n <= 36; n += 1) {
      const largest = (2 * 0.05e-3 * 0.0254) / awgDiameter(n);
      expectClose(awgAreaFromRoundedDiameter(n), awgArea(n), { relative: largest * 1.01 });
    }
  });
});

describe('effectiveAwg', () => {
  it('undoes awgArea', () => {
    fc.assert(
      fc.property(fc.double({ min: -3, max: 40, noNaN: true }), (n) => {
        expectClose(effectiveAwg(awgArea(n)), n, { absolute: 1e-11, because: 'gauge numbers pass through 0' });
      }),
      { seed: 26, numRuns: 300 },
    );
  });

  it('falls by 0.043 of a gauge for each 1 % of area', () => {
    const slope = (effectiveAwg(awgArea(2) * 1.0001) - effectiveAwg(awgArea(2) * 0.9999)) / 0.0002;
    expectClose(slope, AWG_PER_LOG_AREA, { relative: 1e-7 });
  });

  it.each([0, -1e-6, Number.NaN, Number.POSITIVE_INFINITY])('needs an area above zero, not %s', (area) => {
    expect(() => effectiveAwg(area)).toThrow(RangeError);
    expect(() => effectiveGaugeText(area)).toThrow(RangeError);
  });
});

describe('awgName, parseAwgName', () => {
  const NAMES: readonly (readonly [n: number, name: string])[] = [
    [-3, '4/0'],
    [-2, '3/0'],
    [-1, '2/0'],
    [0, '1/0'],
    [1, '1'],
    [2, '2'],
    [36, '36'],
  ];
  it.each(NAMES)('%s is %s', (n, name) => {
    expect(awgName(n)).toBe(name);
    expect(parseAwgName(name)).toBe(n);
  });

  it.each([
    ['0', 0],
    ['00', -1],
    ['000', -2],
    ['0000', -3],
    [' 1/0 ', 0],
    ['1 / 0', 0],
    ['1/O', 0],
  ])('reads "%s" as %s', (text, n) => {
    expect(parseAwgName(text)).toBe(n);
  });

  it.each(['', '5/0', '0/0', '00000', '-1', '2.5', '41', '100', '02', 'two', '2 AWG', '1/1'])(
    '"%s" names no gauge',
    (text) => {
      expect(parseAwgName(text)).toBeNull();
    },
  );

  it('names whole sizes only', () => {
    expect(() => awgName(2.3)).toThrow(RangeError);
  });
});

describe('effectiveGaugeText', () => {
  it.each([
    [2.3, '2.3 AWG'],
    [2, '2.0 AWG'],
    [10.04, '10.0 AWG'],
    [1, '1.0 AWG'],
    [0.96, '1.0 AWG'],
    [0.4, 'between 1 and 1/0, 60 % of the way'],
    [0.001, '1/0 AWG'],
    [0, '1/0 AWG'],
    [-0.001, '1/0 AWG'],
    [-0.4, 'between 1/0 and 2/0, 40 % of the way'],
    [-0.998, '2/0 AWG'],
    [-1, '2/0 AWG'],
    [-2.5, 'between 3/0 and 4/0, 50 % of the way'],
    [-3, '4/0 AWG'],
    [-3.2, 'above 4/0, 222 kcmil'],
    [-8, 'above 4/0, 675 kcmil'],
    [40.2, 'thinner than 40 AWG'],
  ])('gauge %s reads "%s"', (n, text) => {
    expect(effectiveGaugeText(areaAt(n))).toBe(text);
  });

  it('never shows zero or a negative gauge', () => {
    fc.assert(
      fc.property(fc.double({ min: -12, max: 60, noNaN: true }), (n) => {
        const text = effectiveGaugeText(areaAt(n));
        expect(text).not.toMatch(/[-−]\d|(?<![\d./])0(?:\.0)? AWG/);
        expect(text).toMatch(/AWG|% of the way|kcmil/);
      }),
      { seed: 27, numRuns: 500 },
    );
  });
});

describe('nearestAwgMet', () => {
  it.each([
    [33.63e-6, 0.02, 2],
    [32.96e-6, 0.02, 2],
    [32.95e-6, 0.02, 3],
    [32.95e-6, 0, 3],
    [33.7e-6, 0, 2],
    [20e-6, 0.02, 6],
    [107.3e-6, 0, -3],
    [500e-6, 0, -3],
    [53.4e-6, 0.02, 0],
    [0.001e-6, 0.02, null],
  ])('%s m² with an allowance of %s meets %s', (area, tolerance, n) => {
    expect(nearestAwgMet(area, tolerance)).toBe(n);
  });

  it('allows 2 % unless told otherwise', () => {
    expect(nearestAwgMet(awgArea(4) * 0.981)).toBe(4);
    expect(nearestAwgMet(awgArea(4) * 0.979)).toBe(6);
  });

  it('meets every standard size by its own nominal area', () => {
    for (const n of STANDARD_AWG_SIZES) expect(nearestAwgMet(awgArea(n), 1e-9)).toBe(n);
  });
});
