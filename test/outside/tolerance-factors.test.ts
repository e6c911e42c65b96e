/**
 * Source: one-sided factors computed independently (scipy, non-central t); two-sided by Howe's approximation, computed likewise. The
 * case n = 43, share 0.90, confidence 0.99 is worked in NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.3: 1.8740 and 2.217.
 */
import { describe, it } from 'vitest';
import { oneSidedToleranceFactor, twoSidedToleranceFactor } from '../../src/numerics/toleranceFactor.ts';
import { expectClose } from '../tolerance.ts';

describe('normal tolerance factors', () => {
  it.each([
    [10, 0.95, 0.95, 2.910963],
    [10, 0.9, 0.95, 2.35464],
    [5, 0.9, 0.95, 3.406633],
    [20, 0.9, 0.9, 1.765206],
    [43, 0.9, 0.99, 1.873954],
    [30, 0.99, 0.95, 3.063901],
  ])('one-sided, n = %i, share %d, confidence %d', (n, share, confidence, wanted) => {
    expectClose(oneSidedToleranceFactor(n, share, confidence), wanted, { relative: 1e-6 });
  });

  it.each([
    [43, 0.9, 0.99, 2.217316],
    [10, 0.95, 0.95, 3.381913],
    [20, 0.9, 0.9, 2.152379],
  ])('two-sided, n = %i, share %d, confidence %d', (n, share, confidence, wanted) => {
    expectClose(twoSidedToleranceFactor(n, share, confidence), wanted, { relative: 1e-6 });
  });
});
