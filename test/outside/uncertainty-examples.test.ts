/** Worked examples of published guides that are not in a chapter of their own here; the source stands beside each. */
import { describe, it } from 'vitest';
import { shortestInterval } from '../../src/numerics/coverage.ts';
import { mean, sampleStandardDeviation } from '../../src/numerics/describe.ts';
import { combineUncertainty, effectiveDegreesOfFreedom, sensitivity } from '../../src/numerics/propagate.ts';
import { SeededDraws } from '../../src/numerics/random.ts';
import { lineThroughOrigin, straightLine } from '../../src/numerics/regression.ts';
import { expectClose } from '../tolerance.ts';

describe('published examples of propagation', () => {
  it('thermal expansion coefficient', () => {
    // Source: A. Possolo, Simple Guide for Evaluating and Expressing the Uncertainty of NIST Measurement Results, NIST Technical
    // Note 1900 (2015), Example E13.
    const alpha = ([l0, t0, l1, t1]: readonly number[]) => (l1 - l0) / (l0 * (t1 - t0));
    const x = [1.4999, 288.15, 1.5021, 373.1];
    const u = [1e-4, 0.02, 2e-4, 0.05];
    expectClose(alpha(x), 1.7266e-5, { absolute: 0.5e-9, because: 'printed 1.7266e-5' });
    expectClose(combineUncertainty(sensitivity(alpha, x, u), u), 1.76e-6, {
      absolute: 0.5e-8,
      because: 'printed 1.76e-6',
    });
  });

  it('Welch–Satterthwaite', () => {
    // Source: u 0.57 with 9 degrees of freedom and 0.25 known exactly give 12.8: a worked example of a general uncertainty
    // library; 12.7956 computed independently.
    const dof = effectiveDegreesOfFreedom([0.57, 0.25], [9, Number.POSITIVE_INFINITY]);
    expectClose(dof, 12.7956, { absolute: 0.00005, because: 'computed, printed 12.8' });
  });

  it('logarithm of a rectangular quantity: where linear propagation fails', () => {
    // Source: National Physical Laboratory, Report DEM-ES-011 (2006), section 9.2: y = ln x, x rectangular on (0.1, 1.1).
    const f = ([x]: readonly number[]) => Math.log(x);
    const slope = 1 / 0.6;
    const linear = combineUncertainty([slope], [1 / Math.sqrt(12)]);
    expectClose(f([0.6]), -0.511, { absolute: 0.0005, because: 'printed, first order' });
    expectClose(linear, 0.481, { absolute: 0.0005, because: 'printed, first order' });
    const draws = new SeededDraws('6e706c2d64656d65')
      .fillUniform(new Float64Array(1_000_000))
      .map((p) => Math.log(0.1 + p));
    expectClose(mean(draws), -0.665, { absolute: 0.0025, because: 'printed −0.665; 10⁶ draws add ±0.0006' });
    expectClose(sampleStandardDeviation(draws), 0.606, { absolute: 0.002, because: 'printed 0.606' });
    const [low, high] = shortestInterval(draws.sort(), 0.95);
    expectClose(low, -1.895, { absolute: 0.005, because: 'printed −1.895' });
    expectClose(high, 0.095, { absolute: 0.001, because: 'printed 0.095' });
  });

  it('four-wire resistance with a thermal voltage: slope, not ratio', () => {
    // Source: computed independently (mpmath) from these five pairs.
    const amperes = [10, 20, 30, 40, 50];
    const millivolts = [1.021, 2.032, 3.047, 4.058, 5.073];
    const line = straightLine(amperes, millivolts);
    expectClose(line.slope, 0.1013, { relative: 1e-12 });
    expectClose(line.slopeError, 4e-5, { relative: 1e-9 });
    expectClose(line.intercept, 0.0072, { relative: 1e-9 });
    expectClose(line.interceptError, 0.00132664992, { relative: 1e-8 });
    expectClose(line.residualSd, 0.00126491106, { relative: 1e-8 });
    const forced = lineThroughOrigin(amperes, millivolts);
    expectClose(forced.slope, 0.101496363636, { relative: 1e-11, because: 'biased by +0.19 %' });
    expectClose(forced.slopeError, 4.8583e-5, { relative: 2e-5 });
  });
});
