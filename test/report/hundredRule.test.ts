import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hundredRule } from '../../src/report/hundredRule.ts';
import { lightTheme as theme } from '../../src/report/theme.ts';

const rule = (rightly: number, wrongly: number) => hundredRule({ rightly, wrongly }, { width: 400, theme });
const barOf = (svg: string, fill: string) =>
  new RegExp(`<rect x="([\\d.]+)" y="0" width="([\\d.]+)" height="7" fill="${fill}"`).exec(svg);

describe('a rule of a hundred', () => {
  it('is copper as far as cables come out rightly, and ink at the far end for those wronged', () => {
    const svg = rule(0.9, 0.025);
    expect(barOf(svg, theme.copper)?.slice(1)).toEqual(['0', '360']);
    expect(barOf(svg, theme.sunk)?.slice(1)).toEqual(['360', '30']);
    expect(barOf(svg, theme.ink)?.slice(1)).toEqual(['390', '10']);
  });

  it('leaves out what has no share', () => {
    expect(barOf(rule(1, 0), theme.ink)).toBeNull();
    expect(barOf(rule(1, 0), theme.sunk)).toBeNull();
    expect(barOf(rule(0, 0), theme.copper)).toBeNull();
    expect(barOf(rule(0, 0), theme.sunk)?.slice(1)).toEqual(['0', '400']);
  });

  it('has a tick for each of a hundred cables, and its ends', () => {
    expect(rule(0.5, 0).match(/<line /g)).toHaveLength(101 + 2);
  });

  it('says itself only where it is asked to', () => {
    expect(rule(0.5, 0)).toContain('aria-hidden="true"');
    expect(hundredRule({ rightly: 0.5, wrongly: 0 }, { width: 400, theme, description: 'half' })).toContain('"half"');
  });

  it('refuses shares that are none', () => {
    for (const [a, b] of [
      [-0.1, 0],
      [0.7, 0.4],
      [Number.NaN, 0],
    ] as const)
      expect(() => rule(a, b), `${a} and ${b}`).toThrow(RangeError);
  });

  it('always fills its width exactly', () => {
    const shares = fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }));
    fc.assert(
      fc.property(shares, ([a, b]) => {
        const rightly = a;
        const wrongly = (1 - a) * b;
        const svg = rule(rightly, wrongly);
        const widths = [theme.copper, theme.sunk, theme.ink].map((fill) => Number(barOf(svg, fill)?.[2] ?? 0));
        const sum = widths.reduce((x, y) => x + y, 0);
        // Each of the three is rounded to a hundredth of a pixel.
        expect(Math.abs(sum - 400)).toBeLessThanOrEqual(0.02);
      }),
      { seed: 20261125 },
    );
  });
});
