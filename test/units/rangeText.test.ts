import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rangeText } from '../../src/units/rangeText.ts';

describe('a range by both its ends', () => {
  it.each([
    [33.4, 78.2, '33 to 79'],
    [33, 79, '33 to 79'],
    [0.0412, 0.0907, '0.041 to 0.091'],
    [8.12, 14.9, '8.1 to 15'],
    [98.7, 134.1, '98 to 140'],
    [50, 99.5, '50 to 100'],
    [5.55, 9.91, '5.5 to 10'],
    [0.12, 0.991, '0.12 to 1.0'],
    [99.99, 300, '99 to 300'],
    [-3.24, 5, '\u22123.3 to 5.0'],
    [-9.95, -1.28, '\u221210 to \u22121.2'],
    [0, 40, '0 to 40'],
    [0.03, 40, '0 to 40'],
    [0.05, 40, '0.050 to 40'],
    [120, 4.31e6, '0 to 4400000'],
    [100 * 0.48, 100 * 1.1, '48 to 110'],
    [2.675, 2.675, '2.6 to 2.7'],
    [Number.NEGATIVE_INFINITY, 4, '\u2212∞ to 4.0'],
    [0, 1e300, '0 to 1.0 × 10³⁰⁰'],
  ])('%d and %d are %s', (low, high, text) => {
    expect(rangeText(low, high)).toBe(text);
  });

  it('holds the range, and reaches at most a tenth of an end beyond it', () => {
    const end = fc.double({ min: -1e6, max: 1e6, noNaN: true }).filter((x) => x === 0 || Math.abs(x) > 1e-9);
    fc.assert(
      fc.property(end, end, (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const [from, to] = rangeText(low, high)
          .split(' to ')
          .map((text) => Number(text.replace('\u2212', '-')));
        expect(from).toBeLessThanOrEqual(low + 1e-11 * Math.abs(low));
        expect(to).toBeGreaterThanOrEqual(high - 1e-11 * Math.abs(high));
        expect(to! - high).toBeLessThanOrEqual(0.1001 * Math.abs(high));
        if (from !== 0) expect(low - from!).toBeLessThanOrEqual(0.1001 * Math.abs(low));
      }),
      { seed: 20261125 },
    );
  });
});
