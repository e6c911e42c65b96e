import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keptWindow, roundedTo, stepWithin, windowOf } from '../../../src/report/standing/curveWindow.ts';
import { curvePlaces, type Scale, valueCurve } from '../../../src/report/standing/valueCurve.ts';
import { lightTheme } from '../../../src/report/theme.ts';

const scales = fc
  .record({
    shape: fc.constantFrom('linear' as const, 'flat' as const, 'threshold' as const),
    worst: fc.double({ min: -1e4, max: 1e4, noNaN: true }),
    best: fc.double({ min: -1e4, max: 1e4, noNaN: true }),
  })
  .filter(({ worst, best }) => Math.abs(worst - best) > 1e-6);

describe('the axis of a value curve', () => {
  it.each<[string, Scale, [number, number]]>([
    ['a little beyond both ends', { shape: 'linear', worst: 40, best: 5 }, [-2.5, 47.5]],
    ['the same whichever end is better', { shape: 'flat', worst: 5, best: 40 }, [-2.5, 47.5]],
    ['to both sides of a threshold', { shape: 'threshold', worst: 0, best: 10 }, [4, 16]],
  ])('goes %s', (_what, scale, wanted) => {
    for (const [at, end] of windowOf(scale).entries()) expect(end).toBeCloseTo(wanted[at]!, 9);
  });

  it.each<[string, Scale, boolean]>([
    ['both ends are well within', { shape: 'linear', worst: 35, best: 10 }, true],
    ['an end came to its edge', { shape: 'linear', worst: 47, best: 10 }, false],
    ['the ends came close', { shape: 'linear', worst: 20, best: 12 }, false],
    ['an end was typed far out', { shape: 'linear', worst: 400, best: 10 }, false],
    ['a threshold is well within', { shape: 'threshold', worst: 0, best: 20 }, true],
  ])('stays or not when %s', (_what, scale, stays) => {
    const kept = keptWindow([-2.5, 47.5], scale);
    if (stays) expect(kept).toEqual([-2.5, 47.5]);
    else expect(kept).toEqual(windowOf(scale));
  });

  it.each([
    [[0, 100], 1],
    [[-2.5, 47.5], 0.5],
    [[0.655, 1.045], 0.005],
    [[0, 0.02], 0.0002],
    [[0, 30_000], 500],
  ] as const)('%j is walked in steps of %d', ([low, high], step) => {
    expect(stepWithin([low, high])).toBeCloseTo(step, 12);
    expect(roundedTo(12.3456 * step, step)).toBeCloseTo(12 * step, 12);
  });

  it('has between 50 and 200 steps, and always shows the ends', () => {
    fc.assert(
      fc.property(scales, scales, (before, scale) => {
        const window = keptWindow(windowOf(before), scale);
        const [low, high] = window;
        const steps = (high - low) / stepWithin(window);
        expect(steps, `${low} to ${high}`).toBeGreaterThan(49);
        expect(steps, `${low} to ${high}`).toBeLessThan(201);
        const ends = scale.shape === 'threshold' ? [scale.best] : [scale.worst, scale.best];
        for (const end of ends) expect(end >= low && end <= high, `${end} within ${low} to ${high}`).toBe(true);
      }),
      { seed: 20261125 },
    );
  });
});

describe('a value curve', () => {
  const size = { width: 168, height: 92, ends: { low: '12.34', high: '5678' } };

  it('puts a figure where it finds it again', () => {
    const places = curvePlaces([-3, 7], size);
    expect(places.x(-3)).toBe(3);
    expect(places.x(7)).toBe(165);
    for (const figure of [-3, 0, 1.5, 7]) expect(places.figureAt(places.x(figure))).toBeCloseTo(figure, 12);
    expect(places.y(1)).toBeLessThan(places.y(0));
  });

  it('keeps both figures in the picture and apart, wherever the ends lie', () => {
    fc.assert(
      fc.property(scales, scales, (before, scale) => {
        const window = windowOf(before);
        const svg = valueCurve(scale, { ...size, theme: lightTheme, description: 'x', window });
        const words = [...svg.matchAll(/<text x="([-\d.]+)"[^>]*>([^<]*)</g)].map(([, x, text]) => ({
          from: Number(x) - (text!.length * 7.4) / 2,
          to: Number(x) + (text!.length * 7.4) / 2,
        }));
        expect(words).toHaveLength(scale.shape === 'threshold' ? 1 : 2);
        for (const { from, to } of words) {
          expect(from, svg).toBeGreaterThan(-0.1);
          expect(to, svg).toBeLessThan(168.1);
        }
        if (words.length === 2) expect(words[0]!.to + 7.8, svg).toBeLessThan(words[1]!.from);
      }),
      { seed: 20261126 },
    );
  });
});
