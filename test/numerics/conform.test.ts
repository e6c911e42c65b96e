import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conformityProbability, guardedLimits, mixtureConformity } from '../../src/numerics/conform.ts';
import { studentTCdf } from '../../src/numerics/distributions.ts';
import { oneSidedToleranceFactor, twoSidedToleranceFactor } from '../../src/numerics/toleranceFactor.ts';
import { expectClose } from '../tolerance.ts';

const GAUSSIAN = Number.POSITIVE_INFINITY;

describe('probability of conformity', () => {
  it('on the limit it is one half, far off it is 0 or 1', () => {
    expect(conformityProbability(5, 1, { lower: 5 })).toBe(0.5);
    expect(conformityProbability(500, 1, { lower: 5 })).toBe(1);
    expect(conformityProbability(-500, 1, { lower: 5 })).toBe(0);
  });

  it('Student t', () => {
    expectClose(conformityProbability(1, 0.5, { lower: 0 }, 4), studentTCdf(2, 4), { relative: 1e-14 });
  });

  it('is small without being lost when both limits lie far to one side', () => {
    const p = conformityProbability(0, 1, { lower: 10, upper: 11 });
    expectClose(p, conformityProbability(0, 1, { lower: -11, upper: -10 }), { relative: 1e-12 });
    // Φ(−10) − Φ(−11), computed independently (mpmath).
    expectClose(p, 7.619661958203076e-24, { relative: 1e-12 });
  });

  it('a fixed value on a limit conforms', () => {
    const fixed = [{ weight: 1, mean: 5, sd: 0, dof: GAUSSIAN }];
    expect(mixtureConformity(fixed, { lower: 5 })).toBe(1);
    expect(mixtureConformity(fixed, { upper: 5 })).toBe(1);
    expect(mixtureConformity(fixed, { lower: 5, upper: 5 })).toBe(1);
    expect(mixtureConformity(fixed, { lower: 5.1 })).toBe(0);
  });

  it('a mixture is the weighted sum of its components', () => {
    const value = fc.double({ min: -5, max: 5, noNaN: true });
    const spread = fc.double({ min: 0.1, max: 3, noNaN: true });
    fc.assert(
      fc.property(
        value,
        spread,
        value,
        spread,
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (m1, s1, m2, s2, w) => {
          const mixture = [
            { weight: w, mean: m1, sd: s1, dof: GAUSSIAN },
            { weight: 1 - w, mean: m2, sd: s2, dof: 5 },
          ];
          for (const limits of [{ lower: -1 }, { upper: 2 }, { lower: -1, upper: 2 }]) {
            const apart =
              w * conformityProbability(m1, s1, limits) + (1 - w) * conformityProbability(m2, s2, limits, 5);
            expectClose(mixtureConformity(mixture, limits), apart, { absolute: 1e-13 });
          }
        },
      ),
      { seed: 20261125 },
    );
  });

  it('guard bands move limits inward', () => {
    expect(guardedLimits({ lower: 1, upper: 5 }, 0.5)).toEqual({ lower: 1.5, upper: 4.5 });
    expect(guardedLimits({ lower: 1 }, -0.5)).toEqual({ lower: 0.5 });
  });

  it.each([
    ['no limit', () => conformityProbability(1, 1, {})],
    ['crossed limits', () => conformityProbability(1, 1, { lower: 2, upper: 1 })],
    ['no uncertainty', () => conformityProbability(1, 0, { lower: 2 })],
    ['a limit that is no number', () => conformityProbability(1, 1, { lower: Number.NaN })],
    ['guard bands that meet', () => guardedLimits({ lower: 1, upper: 2 }, 0.6)],
    ['a sample of one', () => oneSidedToleranceFactor(1, 0.9, 0.9)],
    ['a share of 1', () => twoSidedToleranceFactor(5, 1, 0.9)],
  ])('refuses %s', (_, call) => {
    expect(call).toThrow(RangeError);
  });
});
