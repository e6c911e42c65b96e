/**
 * Source: JCGM 106:2012, The role of measurement uncertainty in conformity assessment. Printed results where named; the other digits
 * computed independently (mpmath) from the formulas of clause 7.
 */
import { describe, expect, it } from 'vitest';
import { conformityProbability, guardedLimits, mixtureConformity } from '../../src/numerics/conform.ts';
import { normalQuantile } from '../../src/numerics/distributions.ts';
import { brentRoot } from '../../src/numerics/roots.ts';
import { expectClose } from '../tolerance.ts';

describe('JCGM 106, conformity', () => {
  it('breakdown voltage below an upper limit', () => {
    const p = conformityProbability(-5.47, 0.05, { upper: -5.4 });
    expectClose(p, 0.919243, { absolute: 1e-6, because: 'Φ(1.4); printed 0.92 (from memory)' });
    expect(Math.abs(conformityProbability(-5.47, 0.055, { upper: -5.4 }) - 0.919243)).toBeGreaterThan(0.005);
  });

  it('speed that is over the limit with 99.9 % (8.3.3)', () => {
    const over = (v: number) => 1 - conformityProbability(v, 0.02 * v, { upper: 100 }) - 0.999;
    const v = brentRoot(over, 100, 120, { tolerance: 1e-10 });
    expectClose(v, 106.5876, { absolute: 5e-5, because: '100/(1 − 0.02 z); printed 107 (from memory)' });
  });

  it.each([
    { value: 10.2, u: 0.2, lower: 9.5, upper: 10.5, wanted: 0.93296017 },
    { value: 0.5, u: 0.25, lower: -1, upper: 1, wanted: 0.977249868 },
    { value: 1, u: 0.5, lower: 0, upper: 2, wanted: 0.954499736 },
  ])('between two limits: $value ± $u in [$lower, $upper]', ({ value, u, lower, upper, wanted }) => {
    expectClose(conformityProbability(value, u, { lower, upper }), wanted, { absolute: 1e-9 });
    const gaussian = [{ weight: 1, mean: value, sd: u, dof: Number.POSITIVE_INFINITY }];
    expectClose(mixtureConformity(gaussian, { lower, upper }), wanted, { absolute: 1e-9 });
  });

  it('one-sided probabilities and the distances they stand for', () => {
    const table: [number, number][] = [
      [0.8, 0.841621],
      [0.9, 1.281552],
      [0.95, 1.644854],
      [0.975, 1.959964],
      [0.99, 2.326348],
      [0.999, 3.090232],
    ];
    for (const [p, z] of table) {
      expectClose(normalQuantile(p), z, { absolute: 5e-7 });
      expectClose(conformityProbability(0, 1, { upper: z }), p, { absolute: 1e-6 });
    }
  });

  it('a guard band of the expanded uncertainty leaves a risk of 2.28 %', () => {
    const u = 0.7;
    const { upper } = guardedLimits({ upper: 12 }, 2 * u);
    const risk = 1 - conformityProbability(upper as number, u, { upper: 12 });
    expectClose(risk, 0.022750132, { relative: 1e-7, because: 'Φ(−2), computed' });
  });
});
