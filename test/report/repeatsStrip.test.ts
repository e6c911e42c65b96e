import { describe, expect, it } from 'vitest';
import { repeatsSpan, repeatsStrip } from '../../src/report/repeatsStrip.ts';
import { lightTheme } from '../../src/report/theme.ts';

const at = { width: 111, height: 28, theme: lightTheme };
const centres = (svg: string) => [...svg.matchAll(/<circle cx="([\d.]+)"/g)].map(([, x]) => Number(x));

describe('a strip of repeats', () => {
  it('is an empty line before the first reading', () => {
    const svg = repeatsStrip({ values: [], farOff: [] }, { ...at, span: 1 });
    expect(svg).not.toContain('<circle');
    expect(svg.match(/<line/g)).toHaveLength(1);
  });

  it('sets each reading by its distance from the mean, the mean in the middle', () => {
    const svg = repeatsStrip({ values: [39.2, 39.4], farOff: [] }, { ...at, span: 0.4 });
    // 100 px between the ends for a span of 0.4: 0.1 from the mean is 25 px.
    expect(centres(svg)[0]).toBeCloseTo(30.5, 1);
    expect(centres(svg)[1]).toBeCloseTo(80.5, 1);
    expect(svg).toContain('x1="55.5"');
  });

  it('reaches further than its span where a reading needs it', () => {
    for (const x of centres(repeatsStrip({ values: [10, 10, 50], farOff: [2] }, { ...at, span: 0.4 }))) {
      expect(x).toBeGreaterThanOrEqual(5.5);
      expect(x).toBeLessThanOrEqual(105.5);
    }
  });

  it('draws a far-off reading as an open ring', () => {
    const svg = repeatsStrip({ values: [10, 10.1, 12], farOff: [2] }, { ...at, span: 1 });
    expect(svg.match(new RegExp(`fill="${lightTheme.copper}"`, 'g'))).toHaveLength(2);
    expect(svg).toContain(`fill="${lightTheme.ground}"`);
  });
});

describe('the span of a column', () => {
  it.each([
    [[[39.2, 39.3]], 0.01, 0.2],
    [
      [
        [39.2, 39.3],
        [44.8, 46.2],
        [46.71, 46.69],
      ],
      0.01,
      0.2,
    ],
    [[[5]], 0.01, 0.2],
    [[[1.021, 1.024]], 0.001, 0.02],
    [[], 0, 1],
    [[[3, 3]], 0, 1],
  ])('of %j with steps of %d is %d', (rows, step, span) => {
    expect(repeatsSpan(rows, step)).toBeCloseTo(span, 10);
  });
});
