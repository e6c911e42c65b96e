/** Exact tests for few specimens: shares, two shares, log-rank by permutation, Holm. */
import { describe, expect, it } from 'vitest';
import { binomialInterval } from '../../src/numerics/binomialInterval.ts';
import { holm } from '../../src/numerics/holm.ts';
import { permutationLogRank } from '../../src/numerics/survival/permutationLogRank.ts';
import { twoShares } from '../../src/numerics/twoShares.ts';
import { expectClose } from '../tolerance.ts';
import { livesOf } from './lives.ts';

const SEED = '00112233445566778899aabbccddeeff';

describe('Clopper–Pearson (0 of 10 to 3 of 3 computed independently with SciPy 1.17.1, beta quantiles; 682 of 925 as R binom.test prints it)', () => {
  it.each([
    [0, 10, 0, 0.3084971078187607],
    [1, 10, 0.0025285785444617848, 0.4450161170281954],
    [3, 10, 0.06673951117773447, 0.6524528500599973],
    [10, 10, 0.6915028921812392, 1],
    [0, 3, 0, 0.7075982261787133],
    [2, 3, 0.09429932405024609, 0.9915962413403874],
    [3, 3, 0.2924017738212866, 1],
    [682, 925, 0.7076682641, 0.7654065582],
  ])('%i of %i', (count, n, low, high) => {
    const found = binomialInterval(count, n, 0.95);
    expectClose(found[0], low, { absolute: 1e-10 });
    expectClose(found[1], high, { absolute: 1e-10 });
  });

  it('rule of three: 95 % one-sided bound after none in n is 1 − 0.05^(1/n)', () => {
    expectClose(binomialInterval(0, 10, 0.9)[1], 0.258866, { absolute: 5e-7 });
    expectClose(binomialInterval(0, 30, 0.9)[1], 0.095034, { absolute: 5e-7 });
  });
});

describe('two shares (computed independently with SciPy 1.17.1, fisher_exact)', () => {
  it.each([
    [0, 3, 3, 3, 0.1],
    [3, 4, 1, 4, 0.48571428571428565],
    [1, 10, 11, 14, 0.0027594561852200836],
  ])('%i of %i against %i of %i', (a, n, b, m, p) => {
    expectClose(twoShares(a, n, b, m).p, p, { relative: 1e-12 });
  });
});

describe('Holm (R p.adjust)', () => {
  it.each([
    [
      [0.01, 0.02, 0.03, 0.04, 0.05],
      [0.05, 0.08, 0.09, 0.09, 0.09],
    ],
    [
      [0.9, 0.0008, 0.165, 0.009, 0.205, 0.396, 0.45, 0.641, 0.781, 0.993],
      [1, 0.008, 1, 0.081, 1, 1, 1, 1, 1, 1],
    ],
  ])('%j', (p, wanted) => {
    holm(p).forEach((got, i) => {
      expectClose(got, wanted[i], { relative: 1e-12 });
    });
  });
});

describe('log-rank by permutation', () => {
  it('five against five, one a survivor (computed independently in Python by all 252 splits)', () => {
    const found = permutationLogRank([livesOf('120 180 240 310 400+'), livesOf('60 90 100 150 200')], SEED)!;
    expect(found).toMatchObject({ exact: true, ways: 252 });
    expectClose(found.p, 12 / 252, { relative: 1e-12 });
    expectClose(found.smallest, 2 / 252, { relative: 1e-12 });
  });

  it.each([
    [3, 0.1],
    [4, 2 / 70],
    [5, 2 / 252],
    [6, 2 / 924],
  ])('the least p of %i against %i by counting: %f', (n, least) => {
    const early = Array.from({ length: n }, (_, i) => i + 1).join(' ');
    const late = Array.from({ length: n }, (_, i) => i + 100).join(' ');
    const found = permutationLogRank([livesOf(early), livesOf(late)], SEED)!;
    expectClose(found.p, least, { relative: 1e-12 });
    expectClose(found.smallest, least, { relative: 1e-12 });
  });
});
