/** Weibull lifetimes with survivors against published fits and R's survreg. Sources beside each number. */
import { describe, it } from 'vitest';
import { lnLikelihoodOfAmounts } from '../../src/numerics/survival/commonShape.ts';
import { failedAt, failedBetween, type Lifetime, survivedTo } from '../../src/numerics/survival/lifetime.ts';
import { fitWeibull, medianInterval, medianOf, scaleOf } from '../../src/numerics/survival/weibull.ts';
import { expectClose } from '../tolerance.ts';
import { livesOf } from './lives.ts';

interface Wanted {
  scale: number;
  shape: number;
  ln: number;
}

function expectFit(lives: Lifetime[], { scale, shape, ln }: Wanted, relative: number): void {
  const fit = fitWeibull([lives])!;
  expectClose(scaleOf(fit), scale, { relative });
  expectClose(fit.shape, shape, { relative });
  expectClose(lnLikelihoodOfAmounts(fit, [lives]), ln, { relative: 1e-9 });
}

const NIST = `54 187 216 240 244 335 361 373 375 386 ${'500+ '.repeat(10)}`;
const BALL_BEARINGS =
  '17.88 28.92 33.00 41.52 42.12 45.60 48.40 51.84 51.96 54.12 55.56 67.80 68.64 68.64 68.88 84.12 93.12 98.64 105.12 105.84 127.92 128.04 173.40';
const SIX_MP = '6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+';
const PLACEBO = '1 1 2 2 3 4 4 5 5 8 8 8 8 11 11 12 12 15 17 22 23';

describe('Weibull by maximum likelihood', () => {
  it('NIST/SEMATECH e-Handbook 8.2.2.1 and 8.4.1.3: ten of twenty failed by 500 h', () => {
    const fit = fitWeibull([livesOf(NIST)])!;
    // As printed there: 606.5280, 1.7208; its log-likelihood 75.135 lost its sign.
    expectClose(scaleOf(fit), 606.528, { absolute: 5e-4 });
    expectClose(fit.shape, 1.7208, { absolute: 5e-5 });
    // Computed independently (R 4.2.2, survreg).
    expectFit(livesOf(NIST), { scale: 606.527558, shape: 1.7207972608, ln: -75.1346181645 }, 1e-9);
  });

  it('ball bearings (J. Lieblein, M. Zelen, J. Res. NBS 57, 1956; Lawless prints 81.88 and 2.102)', () => {
    expectFit(livesOf(BALL_BEARINGS), { scale: 81.8745587, shape: 2.1018469, ln: -113.69195909 }, 2e-8);
  });

  it('6-MP and placebo (R 4.2.2, survreg, each group alone)', () => {
    expectFit(livesOf(SIX_MP), { scale: 33.7651509677, shape: 1.3537345238, ln: -41.6586784769 }, 1e-7);
    expectFit(livesOf(PLACEBO), { scale: 9.4821412543, shape: 1.3704998595, ln: -64.920107589 }, 1e-7);
  });

  it('6-MP and placebo with one shape (R 4.2.2, survreg on the group)', () => {
    const groups = [livesOf(SIX_MP), livesOf(PLACEBO)];
    const fit = fitWeibull(groups)!;
    expectClose(1 / fit.shape, 0.7321944031, { relative: 1e-7 });
    expectClose(Math.log(scaleOf(fit, 0)), 3.51568694609, { relative: 1e-7 });
    expectClose(Math.log(scaleOf(fit, 1)) - Math.log(scaleOf(fit, 0)), -1.26733458521, { relative: 1e-7 });
    expectClose(lnLikelihoodOfAmounts(fit, groups), -106.579491582, { relative: 1e-9 });
    const one = [groups.flat()];
    expectClose(lnLikelihoodOfAmounts(fitWeibull(one)!, one), -116.40540698, { relative: 1e-9 });
  });

  it('lifetimes known between two looks (invented; computed independently with SciPy 1.17.1, weibull_min on CensoredData)', () => {
    const looks = [
      failedBetween(0, 50),
      failedBetween(50, 100),
      failedBetween(100, 150),
      failedBetween(100, 150),
      failedBetween(150, 200),
      survivedTo(200),
      survivedTo(200),
    ];
    expectFit(looks, { scale: 174.17097706, shape: 1.61529029, ln: -11.046736867173792 }, 1e-7);
    const mixed = [
      failedBetween(50, 100),
      failedBetween(100, 150),
      failedAt(137),
      failedBetween(150, 200),
      failedBetween(250, 300),
      survivedTo(300),
    ];
    expectFit(mixed, { scale: 217.86269219, shape: 2.04444833, ln: -14.882711298738629 }, 1e-7);
  });
});

describe('calibrated profile interval of a median', () => {
  it('four failures and a survivor (computed independently with SciPy 1.17.1: profile and root by other means)', () => {
    const groups = [livesOf('120 180 240 310 400+')];
    const fit = fitWeibull(groups)!;
    expectClose(medianOf(fit), 255.74104167, { relative: 1e-7 });
    const [low, high] = medianInterval(groups, fit, 0, 0.95);
    expectClose(low!, 103.67637053, { relative: 1e-6 });
    expectClose(high!, 578.0225712, { relative: 1e-6 });
  });
});
