/**
 * Source: JCGM 100:2008 (GUM), H.2, simultaneous resistance and reactance: data of Table H.2, printed results of Tables H.2 to H.4.
 * Full digits computed independently (mpmath) from the data. The same three readings are taken together five times, so the inputs
 * are correlated; leaving that out is the error which the example is there to show.
 */
import { describe, expect, it } from 'vitest';
import { mean, sampleStandardDeviation } from '../../src/numerics/describe.ts';
import { combineCovariance, combineUncertainty, sensitivity } from '../../src/numerics/propagate.ts';
import { correlationCoefficient } from '../../src/numerics/regression.ts';
import { expectClose } from '../tolerance.ts';

const volts = [5.007, 4.994, 5.005, 4.99, 4.999];
const amperes = [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3];
const radians = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];
const columns = [volts, amperes, radians];

const resistance = ([v, i, phi]: readonly number[]) => (v / i) * Math.cos(phi);
const reactance = ([v, i, phi]: readonly number[]) => (v / i) * Math.sin(phi);
const impedance = ([v, i]: readonly number[]) => v / i;
const results = [resistance, reactance, impedance];

const x = columns.map(mean);
const u = columns.map((column) => sampleStandardDeviation(column) / Math.sqrt(column.length));
const r = columns.map((a) => columns.map((b) => (a === b ? 1 : correlationCoefficient(a, b))));
const c = results.map((f) => sensitivity(f, x, u));

describe('GUM H.2, correlated inputs', () => {
  it('means, their standard deviations and correlations', () => {
    [4.999, 19.661e-3, 1.04446].forEach((value, i) => {
      expectClose(x[i], value, { relative: 1e-12, because: 'exact from the data' });
    });
    [3.2093613e-3, 9.4710084e-6, 7.5206383e-4].forEach((value, i) => {
      expectClose(u[i], value, { relative: 1e-7, because: 'computed; printed 0.0032, 0.0095e-3, 0.00075' });
    });
    expectClose(r[0][1], -0.355311, { absolute: 1e-6, because: 'computed; printed −0.36' });
    expectClose(r[0][2], 0.857624, { absolute: 1e-6, because: 'computed; printed 0.86' });
    expectClose(r[1][2], -0.645111, { absolute: 1e-6, because: 'computed; printed −0.65' });
  });

  it('approach 1: from the means, with the correlations', () => {
    [127.73216993, 219.846511913, 254.259701948].forEach((value, k) => {
      expectClose(results[k](x), value, { relative: 1e-10, because: 'computed; printed 127.732, 219.847, 254.260' });
    });
    [0.07107141, 0.29558168, 0.23633613].forEach((value, k) => {
      expectClose(combineUncertainty(c[k], u, r), value, {
        relative: 1e-5,
        because: 'computed; printed 0.071, 0.295, 0.236',
      });
    });
    const between = (a: number, b: number) =>
      combineCovariance(c[a], c[b], u, r) / (combineUncertainty(c[a], u, r) * combineUncertainty(c[b], u, r));
    expectClose(between(0, 1), -0.58843, { absolute: 1e-5, because: 'computed; printed −0.588' });
    expectClose(between(0, 2), -0.485259, { absolute: 1e-5, because: 'computed; printed −0.485' });
    expectClose(between(1, 2), 0.992512, { absolute: 1e-5, because: 'computed; printed 0.993' });
  });

  it('approach 2: each set of readings worked out on its own', () => {
    const values = results.map((f) => volts.map((v, i) => f([v, amperes[i], radians[i]])));
    [127.73163048, 219.8468946, 254.26004959].forEach((value, k) => {
      expectClose(mean(values[k]), value, { relative: 1e-9, because: 'computed' });
    });
    [0.07127354, 0.29548909, 0.2362475].forEach((value, k) => {
      const ofMean = sampleStandardDeviation(values[k]) / Math.sqrt(5);
      expectClose(ofMean, value, { relative: 1e-6, because: 'computed; printed 0.071, 0.295, 0.236' });
    });
    expectClose(correlationCoefficient(values[0], values[1]), -0.588277, { absolute: 1e-6, because: 'computed' });
    expectClose(correlationCoefficient(values[0], values[2]), -0.485065, { absolute: 1e-6, because: 'computed' });
    expectClose(correlationCoefficient(values[1], values[2]), 0.992508, { absolute: 1e-6, because: 'computed' });
  });

  it('negative control: leaving the correlations out is wrong by as much as the GUM says', () => {
    [0.19454445, 0.20090931, 0.20407643].forEach((value, k) => {
      const wrong = combineUncertainty(c[k], u);
      expectClose(wrong, value, { relative: 1e-5, because: 'computed; printed 0.195, 0.201, 0.204 (from memory)' });
    });
    expect(combineUncertainty(c[0], u)).toBeGreaterThan(2.5 * combineUncertainty(c[0], u, r));
  });
});
