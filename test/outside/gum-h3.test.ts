/**
 * Source: JCGM 100:2008 (GUM), H.3, calibration line of a thermometer: data of Table H.6, from memory; the five printed results
 * come out of them, so they are right. Full digits computed independently (mpmath).
 */
import { describe, expect, it } from 'vitest';
import { studentTQuantile } from '../../src/numerics/distributions.ts';
import { lineAt, straightLine } from '../../src/numerics/regression.ts';
import { expectClose } from '../tolerance.ts';

const celsius = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
const correction = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];

describe('GUM H.3, calibration line', () => {
  const line = straightLine(
    celsius.map((t) => t - 20),
    correction,
  );

  it('intercept, slope, their uncertainties and correlation', () => {
    expectClose(line.intercept, -0.171203790131, { relative: 1e-10, because: 'computed; printed −0.1712' });
    expectClose(line.interceptError, 0.002877597835, { relative: 1e-9, because: 'computed; printed 0.0029' });
    expectClose(line.slope, 0.00218269774, { relative: 1e-9, because: 'computed; printed 0.00218' });
    expectClose(line.slopeError, 0.000667938773, { relative: 1e-9, because: 'computed; printed 0.00067' });
    expectClose(line.estimatesCorrelation, -0.930429603, { relative: 1e-9, because: 'computed; printed −0.930' });
    expectClose(line.residualSd, 0.003497563964, { relative: 1e-9, because: 'computed; printed 0.0035' });
    expect(line.dof).toBe(9);
  });

  it('predicted correction at 30 °C', () => {
    const at30 = lineAt(line, 10);
    expectClose(at30.value, -0.149376812732, { relative: 1e-10, because: 'computed; printed −0.1494' });
    expectClose(at30.u, 0.004138595753, { relative: 1e-8, because: 'computed; printed 0.0041' });
    expectClose(studentTQuantile(0.975, line.dof), 2.262157, { relative: 1e-6, because: 'printed 2.26' });
  });

  it('negative control: without the correlation of the two estimates u at 30 °C would be far off', () => {
    const wrong = Math.hypot(line.interceptError, 10 * line.slopeError);
    expect(Math.abs(wrong / 0.004138595753 - 1)).toBeGreaterThan(0.5);
  });
});
