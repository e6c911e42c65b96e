import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  combineCovariance,
  combineUncertainty,
  effectiveDegreesOfFreedom,
  sensitivity,
} from '../../src/numerics/propagate.ts';
import { expectClose } from '../tolerance.ts';

describe('sensitivities', () => {
  it('are the derivatives, exact for a parabola', () => {
    const c = sensitivity(([a, b]) => a * a + 3 * b, [2, 5], [0.5, 0.1]);
    expectClose(c[0], 4, { relative: 1e-14 });
    expectClose(c[1], 3, { relative: 1e-14 });
  });

  it('an input known exactly still has one', () => {
    const c = sensitivity(([a, b]) => a * Math.exp(b), [2, 0], [0.1, 0]);
    expectClose(c[1], 2, { relative: 1e-9 });
  });

  it('agree with analytic ones for a product of powers', () => {
    const positive = fc.double({ min: 0.1, max: 50, noNaN: true });
    fc.assert(
      fc.property(positive, positive, positive, (m, l, k) => {
        const f = ([mass, length, lay]: readonly number[]) => mass / (length * lay);
        const y = f([m, l, k]);
        const c = sensitivity(f, [m, l, k], [m * 1e-4, l * 1e-4, k * 1e-4]);
        expectClose(c[0], y / m, { relative: 1e-7 });
        expectClose(c[1], -y / l, { relative: 1e-7 });
        expectClose(c[2], -y / k, { relative: 1e-7 });
      }),
      { seed: 20261125 },
    );
  });

  it('refuses a point where the result is not finite, and lengths that differ', () => {
    expect(() => sensitivity(([x]) => Math.log(x), [0.1], [0.2])).toThrow(/input 1/);
    expect(() => sensitivity(([x]) => x, [1], [])).toThrow(RangeError);
  });
});

describe('combining', () => {
  it('independent inputs add in squares, fully correlated ones as they are', () => {
    expect(combineUncertainty([1, 1], [3, 4])).toBe(5);
    const one = [
      [1, 1],
      [1, 1],
    ];
    expect(combineUncertainty([1, 1], [3, 4], one)).toBe(7);
    expect(combineUncertainty([1, -1], [3, 4], one)).toBe(1);
    expect(combineUncertainty([1, -1], [3, 3], one), 'a common error cancels in a difference').toBe(0);
  });

  it('two results of the same input are correlated', () => {
    expect(combineCovariance([2, 0], [3, 1], [0.5, 4])).toBe(1.5);
    expect(combineCovariance([1, 0], [0, 1], [2, 3])).toBe(0);
  });

  it('lies between the extremes of correlation', () => {
    const positive = fc.double({ min: 0, max: 10, noNaN: true });
    fc.assert(
      fc.property(positive, positive, fc.double({ min: -1, max: 1, noNaN: true }), (a, b, r) => {
        const u = combineUncertainty(
          [1, 1],
          [a, b],
          [
            [1, r],
            [r, 1],
          ],
        );
        expect(u).toBeGreaterThanOrEqual(Math.abs(a - b) - 1e-7);
        expect(u).toBeLessThanOrEqual(a + b + 1e-12);
      }),
      { seed: 20261125 },
    );
  });

  it.each([
    ['a negative uncertainty', () => combineUncertainty([1], [-1])],
    ['an uncertainty that is no number', () => combineUncertainty([1], [Number.NaN])],
    ['lengths that differ', () => combineUncertainty([1, 2], [1])],
    [
      'a correlation above 1',
      () =>
        combineUncertainty(
          [1, 1],
          [1, 1],
          [
            [1, 1.1],
            [1.1, 1],
          ],
        ),
    ],
    [
      'a matrix that is not symmetric',
      () =>
        combineUncertainty(
          [1, 1],
          [1, 1],
          [
            [1, 0.1],
            [0.2, 1],
          ],
        ),
    ],
    ['a matrix of the wrong size', () => combineUncertainty([1, 1], [1, 1], [[1]])],
    ['a diagonal that is not 1', () => combineUncertainty([1], [1], [[0.9]])],
    ['no degrees of freedom', () => effectiveDegreesOfFreedom([1], [0])],
    ['contributions without degrees of freedom', () => effectiveDegreesOfFreedom([1, 2], [3])],
  ])('refuses %s', (_, call) => {
    expect(call).toThrow(RangeError);
  });
});

describe('effective degrees of freedom', () => {
  it('of one contribution are its own, of equal ones add, of exact ones are infinite', () => {
    expect(effectiveDegreesOfFreedom([2], [7])).toBe(7);
    expectClose(effectiveDegreesOfFreedom([1, 1, 1], [4, 4, 4]), 12, { relative: 1e-14 });
    expect(effectiveDegreesOfFreedom([1, 2], [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY])).toBe(
      Number.POSITIVE_INFINITY,
    );
    expect(effectiveDegreesOfFreedom([0, 0], [3, 4])).toBe(Number.POSITIVE_INFINITY);
  });
});
