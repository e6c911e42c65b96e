/**
 * Source: JCGM 106:2012, The role of measurement uncertainty in conformity assessment, clauses 7 and 8, through the program's own outcomes.
 * The examples are Gaussian figures; here they stand as the logarithm of a figure, which is what the assay judges.
 */
import { describe, expect, it } from 'vitest';
import { atLeast, atMost, DEFAULT_LEVELS, outcomeOf } from '../../src/methods/assay/conformity.ts';
import { expectClose } from '../tolerance.ts';

const figure = (mean: number, sd: number) => [{ weight: 1, mean, sd, dof: Number.POSITIVE_INFINITY }];

describe('JCGM 106, outcomes', () => {
  it('breakdown voltage −5.47 V, u 0.05 V, at most −5.40 V: 0.919, so not settled at 97.5 %', () => {
    const got = atMost(figure(-5.47, 0.05), Math.exp(-5.4), 0.95);
    expectClose(got.probability, 0.919243, { absolute: 1e-6, because: 'Φ(1.4); printed 0.92 (from memory)' });
    expect(got.outcome).toBe('not settled');
    expect(atMost(figure(-5.47, 0.05), Math.exp(-5.4), 0.95, { meetsAbove: 0.9, shortBelow: 0.1 }).outcome).toBe(
      'meets',
    );
  });

  // One-sided quantiles of the normal distribution: computed independently (scipy).
  it.each([
    [0.8, 0.841621],
    [0.9, 1.281552],
    [0.95, 1.644854],
    [0.975, 1.959964],
    [0.99, 2.326348],
    [0.999, 3.090232],
  ])('probability %s lies %s standard uncertainties inside the limit', (p, z) => {
    expectClose(atLeast(figure(z * 0.02, 0.02), 1, 0.95).probability, p, { absolute: 1e-6 });
    expectClose(atMost(figure(-z * 0.02, 0.02), 1, 0.95).probability, p, { absolute: 1e-6 });
  });

  it('a guard band of the expanded uncertainty leaves a risk of 2.28 %, which is within the level', () => {
    const got = atLeast(figure(2 * 0.01, 0.01), 1, 0.95);
    expectClose(1 - got.probability, 0.022750132, { relative: 1e-6, because: 'Φ(−2), computed independently' });
    expect(got.outcome).toBe('meets');
    expect(outcomeOf(1 - got.probability)).toBe('falls short');
    expect(DEFAULT_LEVELS).toEqual({ meetsAbove: 0.975, shortBelow: 0.025 });
  });

  it('the shortfall is the share that is missing, its interval that of the figure', () => {
    const got = atLeast(figure(Math.log(0.9), 0.01), 1, 0.95);
    expectClose(got.shortfall.value, 0.1, { absolute: 1e-12 });
    expectClose(got.shortfall.interval[0], 1 - 0.9 * Math.exp(0.01959964), { absolute: 1e-8 });
    expectClose(got.shortfall.interval[1], 1 - 0.9 * Math.exp(-0.01959964), { absolute: 1e-8 });
    const over = atMost(figure(Math.log(1.1), 0.01), 1, 0.95);
    expectClose(over.shortfall.value, 0.1, { absolute: 1e-12 });
    expect(over.shortfall.interval[0]).toBeLessThan(over.shortfall.interval[1]);
  });
});
