import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compensatedSum,
  lag1Autocorrelation,
  mean,
  median,
  pooledStandardDeviation,
  robustZ,
  sampleStandardDeviation,
} from '../../src/numerics/describe.ts';
import { expectClose } from '../tolerance.ts';

describe('examples worked by hand', () => {
  it('sum: nothing is lost between large terms', () => {
    expect(compensatedSum([1, 1e100, 1, -1e100])).toBe(2);
    expect(compensatedSum([])).toBe(0);
  });

  it('mean, median, standard deviation', () => {
    expect(mean([2, 4, 9])).toBe(5);
    expect(median([9, 2, 4])).toBe(4);
    expect(median([9, 2, 4, 5])).toBe(4.5);
    expect(sampleStandardDeviation([2, 4, 9])).toBe(Math.sqrt(13));
    expect(sampleStandardDeviation([7, 7, 7])).toBe(0);
  });

  it('autocorrelation at lag one', () => {
    // Deviations −1, 0, 1: (−1·0 + 0·1)/2; of 1, −1, 1, −1: (−3)/4.
    expect(lag1Autocorrelation([1, 2, 3])).toBe(0);
    expect(lag1Autocorrelation([1, -1, 1, -1])).toBe(-0.75);
  });

  it('pooled spread: two groups, one with a single value', () => {
    // Sums of squares 2 (dof 2) and 8 (dof 1).
    expect(pooledStandardDeviation([[1, 2, 3], [10, 14], [99]])).toEqual({ sd: Math.sqrt(10 / 3), dof: 3 });
  });

  it('robust z', () => {
    // Median 3, deviations 2 1 0 1 97, their median 1.
    const z = robustZ([1, 2, 3, 4, 100]);
    expectClose(z[4], 97 * 0.6744897501960817, { relative: 1e-15 });
    expect(z[2]).toBe(0);
    expect(robustZ([5, 5, 6])).toEqual([0, 0, Number.POSITIVE_INFINITY]);
    expect(robustZ([5, 5, 6], 0.5)).toEqual([0, 0, 2]);
  });
});

describe('refusals', () => {
  it.each([
    ['no value', () => mean([])],
    ['one value', () => sampleStandardDeviation([1])],
    ['a value that is no number', () => mean([1, Number.NaN])],
    ['an infinite value', () => median([1, Number.POSITIVE_INFINITY])],
    ['equal values', () => lag1Autocorrelation([2, 2, 2])],
    ['groups of one', () => pooledStandardDeviation([[1], [2]])],
  ])('%s', (_, call) => {
    expect(call).toThrow(RangeError);
  });
});

const values = fc.array(fc.double({ min: -1e3, max: 1e3, noNaN: true }), { minLength: 2, maxLength: 40 });

describe('for all values', () => {
  it('a shift moves the middle and leaves the spread', () => {
    fc.assert(
      fc.property(values, fc.integer({ min: -1_000_000, max: 1_000_000 }), (x, shift) => {
        const moved = x.map((value) => value + shift);
        expectClose(mean(moved), mean(x) + shift, { absolute: 1e-9 });
        expectClose(median(moved), median(x) + shift, { absolute: 1e-9 });
        expectClose(sampleStandardDeviation(moved), sampleStandardDeviation(x), { absolute: 1e-7 });
      }),
      { seed: 20261125 },
    );
  });

  it('order does not matter, and pooling one group is that group', () => {
    fc.assert(
      fc.property(values, (x) => {
        const turned = [...x].reverse();
        expectClose(sampleStandardDeviation(turned), sampleStandardDeviation(x), { relative: 1e-12, absolute: 1e-300 });
        expectClose(pooledStandardDeviation([x]).sd, sampleStandardDeviation(x), { relative: 1e-12, absolute: 1e-300 });
        expect(median(turned)).toBe(median(x));
      }),
      { seed: 20261125 },
    );
  });
});
