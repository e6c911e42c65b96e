import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalCdf, normalQuantile, studentTCdf, studentTQuantile } from '../../src/numerics/distributions.ts';
import {
  type Component,
  mixtureCdf,
  mixtureInterval,
  mixtureMean,
  mixtureQuantile,
  mixtureSd,
  mixtureUpperTail,
} from '../../src/numerics/mixture.ts';
import { SeededDraws } from '../../src/numerics/random.ts';
import { expectClose } from '../tolerance.ts';

const GAUSSIAN = Number.POSITIVE_INFINITY;
const part = (weight: number, mean: number, sd: number, dof = GAUSSIAN): Component => ({ weight, mean, sd, dof });

describe('one component is the closed form', () => {
  it.each([1e-12, 1e-4, 0.025, 0.3, 0.5, 0.7, 0.975, 0.9999])('p = %d', (p) => {
    expectClose(mixtureQuantile([part(3, 33.1, 0.22)], p), 33.1 + 0.22 * normalQuantile(p), { relative: 1e-12 });
    for (const dof of [1, 2.5, 7, 40])
      expectClose(mixtureQuantile([part(1, -2, 0.5, dof)], p), -2 + 0.5 * studentTQuantile(p, dof), {
        relative: 1e-11,
      });
  });

  it('distribution function, mean and standard deviation', () => {
    expectClose(mixtureCdf([part(1, 2, 3)], 5), normalCdf(1), { relative: 1e-13 });
    expectClose(mixtureCdf([part(1, 2, 3, 4.5)], 5), studentTCdf(1, 4.5), { relative: 1e-13 });
    expectClose(mixtureUpperTail([part(1, 0, 1)], 12), normalCdf(-12), { relative: 1e-12 });
    expect(mixtureSd([part(1, 2, 3)])).toBe(3);
    expectClose(mixtureSd([part(1, 2, 3, 6)]), 3 * Math.sqrt(6 / 4), { relative: 1e-15 });
    expect(mixtureSd([part(1, 2, 3, 2)])).toBe(Number.POSITIVE_INFINITY);
    expect(mixtureMean([part(9, 2, 3)])).toBe(2);
  });
});

describe('several components', () => {
  const three = [part(0.5, 33, 0.2), part(0.3, 33.4, 0.3, 5), part(0.2, 31, 0.5)];

  it('values computed independently (mpmath, 30 digits)', () => {
    expectClose(mixtureCdf(three, 33), 0.48598451844767, { relative: 1e-13 });
    expectClose(mixtureQuantile(three, 0.025), 30.424501290014614, { relative: 1e-12 });
    expectClose(mixtureQuantile(three, 0.5), 33.012156963958006, { relative: 1e-12 });
    expectClose(mixtureQuantile(three, 0.975), 33.88531047747339, { relative: 1e-12 });
    expectClose(mixtureSd(three), 0.9405317644821998, { relative: 1e-13 });
  });

  it('the interval holds what it says, with equal tails', () => {
    const [low, high] = mixtureInterval(three, 0.95);
    expectClose(mixtureCdf(three, low), 0.025, { relative: 1e-11 });
    expectClose(mixtureUpperTail(three, high), 0.025, { relative: 1e-11 });
    expect(Math.abs(mixtureCdf(three, 1.01 * low) - 0.025)).toBeGreaterThan(1e-3);
  });

  it('agrees with draws', () => {
    const draws = new SeededDraws('6d69787475726530');
    const n = 200_000;
    const y = Float64Array.from({ length: n }, () => {
      const u = draws.uniform();
      if (u < 0.5) return 33 + 0.2 * draws.normal();
      return u < 0.8 ? 33.4 + 0.3 * draws.studentT(5) : 31 + 0.5 * draws.normal();
    }).sort();
    for (const p of [0.01, 0.1, 0.25, 0.5, 0.9, 0.99]) {
      const x = mixtureQuantile(three, p);
      const below = y.findIndex((value) => value > x) / n;
      expectClose(below, p, { absolute: 4 * Math.sqrt((p * (1 - p)) / n), because: 'four standard errors' });
    }
    const mean = y.reduce((sum, value) => sum + value, 0) / n;
    expectClose(mixtureMean(three), mean, { absolute: (4 * mixtureSd(three)) / Math.sqrt(n) });
  });
});

describe('awkward mixtures', () => {
  it('components without spread are steps', () => {
    const steps = [part(1, 1, 0), part(2, 2, 0), part(1, 3, 0)];
    expect([0.1, 0.25, 0.26, 0.5, 0.75, 0.76, 0.99].map((p) => mixtureQuantile(steps, p))).toEqual([
      1, 1, 2, 2, 2, 3, 3,
    ]);
    expect(mixtureCdf(steps, 2)).toBe(0.75);
    expect(mixtureUpperTail(steps, 2)).toBe(0.25);
    expect(mixtureSd([part(1, 5, 0)])).toBe(0);
    expect(mixtureInterval([part(1, 5, 0)], 0.95)).toEqual([5, 5]);
  });

  it('a step inside a spread', () => {
    const both = [part(0.5, 0, 0), part(0.5, 0, 1)];
    expect(mixtureQuantile(both, 0.4)).toBe(0);
    expectClose(mixtureQuantile(both, 0.1), normalQuantile(0.2), { relative: 1e-11 });
    expectClose(mixtureQuantile(both, 0.9), normalQuantile(0.8), { relative: 1e-11 });
  });

  it('far apart: the quantile of the share that is left', () => {
    const apart = [part(0.9, 0, 1), part(0.1, 1e6, 1)];
    expectClose(mixtureQuantile(apart, 0.45), 0, { absolute: 1e-9 });
    expectClose(mixtureQuantile(apart, 0.95), 1e6, { relative: 1e-12 });
    expectClose(mixtureQuantile(apart, 0.09), normalQuantile(0.1), { relative: 1e-10 });
    const level = mixtureQuantile(apart, 0.9);
    expectClose(mixtureCdf(apart, level), 0.9, { absolute: 1e-9, because: 'anywhere in the gap' });
  });

  it('weights that do not count do not disturb', () => {
    const clean = mixtureQuantile([part(1, 33, 0.2)], 0.025);
    expect(mixtureQuantile([part(1, 33, 0.2), part(1e-14, -1e9, 1e6), part(0, 0, 0)], 0.025)).toBe(clean);
    const tiny = [part(1, 33, 0.2), part(1e-9, 0, 10)];
    expectClose(mixtureCdf(tiny, mixtureQuantile(tiny, 0.025)), 0.025, { relative: 1e-10 });
    expectClose(mixtureCdf(tiny, mixtureQuantile(tiny, 1e-10)), 1e-10, { relative: 1e-8 });
  });

  it('spreads of very different size', () => {
    const odd = [part(0.5, 1, 1e-9), part(0.5, 1, 10, 2.1)];
    for (const p of [0.001, 0.2, 0.3, 0.5, 0.8]) {
      const x = mixtureQuantile(odd, p);
      expectClose(mixtureCdf(odd, x), p, { absolute: 1e-6, because: `p = ${p}: rounding of x near the narrow one` });
    }
  });

  it('refuses what is no mixture', () => {
    expect(() => mixtureCdf([], 0)).toThrow(RangeError);
    expect(() => mixtureCdf([part(0, 0, 1)], 0)).toThrow(RangeError);
    expect(() => mixtureCdf([part(-1, 0, 1), part(2, 0, 1)], 0)).toThrow(RangeError);
    expect(() => mixtureCdf([part(1, 0, -1)], 0)).toThrow(RangeError);
    expect(() => mixtureCdf([part(1, 0, 1, 0)], 0)).toThrow(RangeError);
    expect(() => mixtureCdf([part(1, Number.NaN, 1)], 0)).toThrow(RangeError);
    expect(() => mixtureCdf([part(1, 0, 1)], Number.NaN)).toThrow(RangeError);
    expect(() => mixtureQuantile([part(1, 0, 1)], 0)).toThrow(RangeError);
    expect(() => mixtureInterval([part(1, 0, 1)], 1)).toThrow(RangeError);
  });
});

const anyComponent = fc.record({
  weight: fc.double({ min: 0.001, max: 10, noNaN: true }),
  mean: fc.double({ min: -100, max: 100, noNaN: true }),
  sd: fc.double({ min: 0.01, max: 20, noNaN: true }),
  dof: fc.oneof(fc.constant(GAUSSIAN), fc.double({ min: 0.8, max: 300, noNaN: true })),
});
const anyMixture = fc.array(anyComponent, { minLength: 1, maxLength: 30 });
const anyProbability = fc.oneof(
  fc.double({ min: 0.001, max: 0.999, noNaN: true }),
  fc.double({ min: 1e-12, max: 1e-3, noNaN: true }),
);

describe('for every mixture', () => {
  it('the distribution function undoes the quantile', () => {
    fc.assert(
      fc.property(anyMixture, anyProbability, (components, p) => {
        expectClose(mixtureCdf(components, mixtureQuantile(components, p)), p, { relative: 1e-9 });
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });

  it('quantiles rise with p and the distribution function with x', () => {
    fc.assert(
      fc.property(anyMixture, anyProbability, anyProbability, (components, p, q) => {
        const [low, high] = p < q ? [p, q] : [q, p];
        const x = mixtureQuantile(components, low);
        const y = mixtureQuantile(components, high);
        expect(x).toBeLessThanOrEqual(y + 1e-9 * Math.abs(y));
        expect(mixtureCdf(components, x)).toBeLessThanOrEqual(mixtureCdf(components, y + 1e-9) + 1e-12);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('moves and stretches with its components', () => {
    fc.assert(
      fc.property(anyMixture, anyProbability, fc.double({ min: -50, max: 50, noNaN: true }), (components, p, shift) => {
        const moved = components.map((c) => ({ ...c, mean: 2 * c.mean + shift, sd: 2 * c.sd }));
        const x = 2 * mixtureQuantile(components, p) + shift;
        expectClose(mixtureQuantile(moved, p), x, { relative: 1e-9, absolute: 1e-8 });
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('both tails make one', () => {
    fc.assert(
      fc.property(anyMixture, fc.double({ min: -200, max: 200, noNaN: true }), (components, x) => {
        expectClose(mixtureCdf(components, x) + mixtureUpperTail(components, x), 1, { absolute: 1e-13 });
      }),
      { seed: 20261125 },
    );
  });
});
