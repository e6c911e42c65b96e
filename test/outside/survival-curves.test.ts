/**
 * Kaplan–Meier and log-rank on published lifetimes with survivors. Data: E. J. Freireich and others, Blood 21 (1963) 699, weeks
 * in remission under 6-MP and placebo, as in every text; `aml` of R's package survival (R. G. Miller, Survival Analysis,
 * Wiley 1981, page 49). Digits computed independently with R 4.2.2, survival.
 */
import { describe, expect, it } from 'vitest';
import { curveMedian, kaplanMeier } from '../../src/numerics/survival/kaplanMeier.ts';
import { logRank } from '../../src/numerics/survival/logRank.ts';
import { expectClose } from '../tolerance.ts';
import { livesOf } from './lives.ts';

const SIX_MP = '6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+';
const PLACEBO = '1 1 2 2 3 4 4 5 5 8 8 8 8 11 11 12 12 15 17 22 23';
const MAINTAINED = '9 13 13+ 18 23 28+ 31 34 45+ 48 161+';
const NOT_MAINTAINED = '5 5 8 8 12 16+ 23 27 30 33 43 45';

describe('Kaplan–Meier', () => {
  it.each([
    [6, 21, 3, 0.857142857, 0.076360355, 0.61971796, 0.95155175],
    [7, 17, 1, 0.806722689, 0.086935285, 0.56314656, 0.92280902],
    [10, 15, 1, 0.752941176, 0.096349653, 0.50319951, 0.88936184],
    [13, 12, 1, 0.690196078, 0.106814708, 0.43161022, 0.84906596],
    [16, 11, 1, 0.62745098, 0.114053865, 0.36751086, 0.80491219],
    [22, 7, 1, 0.537815126, 0.128233752, 0.26777894, 0.74679072],
    [23, 6, 1, 0.448179272, 0.134591457, 0.18805201, 0.68014263],
  ])('6-MP at %i weeks', (amount, atRisk, failed, survival, se, low, high) => {
    const step = kaplanMeier(livesOf(SIX_MP)).find((s) => s.amount === amount)!;
    expect([step.atRisk, step.failed]).toEqual([atRisk, failed]);
    expectClose(step.survival, survival, { absolute: 1e-9 });
    expectClose(step.se, se, { absolute: 1e-9 });
    expectClose(step.interval![0], low, { absolute: 1e-8 });
    expectClose(step.interval![1], high, { absolute: 1e-8 });
  });

  it('has no other steps', () => {
    expect(kaplanMeier(livesOf(SIX_MP)).map((s) => s.amount)).toEqual([6, 7, 10, 13, 16, 22, 23]);
  });

  // Medians as R 4.2.2 gives them. The limits are those of the log–log band, computed independently in Python; R's default band is
  // another (log), with 16 to none and 4 to 12 for the first two.
  it.each([
    ['6-MP', SIX_MP, 23, 13, null],
    ['placebo', PLACEBO, 8, 4, 11],
    ['maintained', MAINTAINED, 31, 13, null],
    ['not maintained', NOT_MAINTAINED, 23, 5, 33],
  ])('median of %s', (_, typed, median, low, high) => {
    const lives = livesOf(typed);
    expect(curveMedian(kaplanMeier(lives), lives)).toEqual({ median, low, high });
  });

  it.each([
    [
      MAINTAINED,
      { 9: 0.909090909, 13: 0.818181818, 18: 0.715909091, 23: 0.613636364, 31: 0.490909091, 48: 0.184090909 },
    ],
    [NOT_MAINTAINED, { 5: 0.833333333, 12: 0.583333333, 23: 0.486111111, 43: 0.097222222, 45: 0 }],
  ])('aml: %s', (typed, wanted) => {
    const steps = kaplanMeier(livesOf(typed));
    for (const [amount, survival] of Object.entries(wanted))
      expectClose(steps.find((s) => s.amount === Number(amount))!.survival, survival, { absolute: 1e-9 });
  });

  it('runs level at one half: the middle of that stretch, and no upper limit at n = 6 (R survfit)', () => {
    const lives = livesOf('1 2 3 4 5 6');
    expect(curveMedian(kaplanMeier(lives), lives)).toEqual({ median: 3.5, low: 1, high: null });
    const seven = livesOf('1 2 3 4 5 6 7');
    expect(curveMedian(kaplanMeier(seven), seven).high, 'first finite at n = 7').not.toBeNull();
  });

  it('a median that was not reached is none', () => {
    const lives = livesOf('5 9+ 9+');
    expect(curveMedian(kaplanMeier(lives), lives).median).toBeNull();
  });
});

describe('log-rank, asymptotic', () => {
  it('6-MP against placebo: 16.79 as published', () => {
    const found = logRank([livesOf(SIX_MP), livesOf(PLACEBO)])!;
    expect(found.observed).toEqual([9, 21]);
    expectClose(found.expected[0], 19.250500948, { absolute: 1e-9 });
    expectClose(found.expected[1], 10.749499052, { absolute: 1e-9 });
    expectClose(found.chi2, 16.7929409892, { absolute: 1e-9 });
    expectClose(found.p, 4.16881e-5, { relative: 2e-6 });
    expect(found.dof).toBe(1);
  });

  it('aml', () => {
    const found = logRank([livesOf(MAINTAINED), livesOf(NOT_MAINTAINED)])!;
    expectClose(found.chi2, 3.396388699, { absolute: 1e-9 });
    expectClose(found.p, 0.0653393, { absolute: 5e-8 });
  });

  it('of three groups does not depend on their order, and needs something to fail', () => {
    const groups = [livesOf('3 5 7+'), livesOf('4 9 10'), livesOf('2 2 6')];
    const turned = [groups[2], groups[0], groups[1]];
    expectClose(logRank(groups)!.chi2, logRank(turned)!.chi2, { relative: 1e-12 });
    expect(logRank([livesOf('3+ 4+'), livesOf('5+')])).toBeNull();
  });
});
