/**
 * Source: JCGM 100:2008 (GUM), H.1, end-gauge calibration: inputs and printed results of Table H.1 and H.1.3–H.1.7. Full
 * digits computed independently (mpmath) from the same inputs.
 */
import { describe, expect, it } from 'vitest';
import { studentTQuantile } from '../../src/numerics/distributions.ts';
import { combineUncertainty, effectiveDegreesOfFreedom, sensitivity } from '../../src/numerics/propagate.ts';
import { expectClose } from '../tolerance.ts';

/** l = l_s + d − l_s (δα·θ + α_s·δθ), all lengths in nm. */
const length = ([ls, d, alpha, theta, deltaAlpha, deltaTheta]: readonly number[]) =>
  ls + d - ls * (deltaAlpha * theta + alpha * deltaTheta);

// H.1.3.2: u(d) from the mean of five repeats and two comparator effects.
const uOfD = combineUncertainty([1, 1, 1], [5.8, 3.9, 6.7]);
// H.1.3.4: mean deviation of the bath 0.2 °C, and cycling with an arcsine distribution of half-width 0.5 °C.
const uOfTheta = combineUncertainty([1, 1], [0.2, 0.5 / Math.sqrt(2)]);
const x = [50_000_623, 215, 11.5e-6, -0.1, 0, 0];
const u = [25, uOfD, 2e-6 / Math.sqrt(3), uOfTheta, 1e-6 / Math.sqrt(3), 0.05 / Math.sqrt(3)];

describe('GUM H.1, end gauge', () => {
  const c = sensitivity(length, x, u);
  const contributions = c.map((value, i) => Math.abs(value) * u[i]);
  const uc = combineUncertainty(c, u);

  it('the length and the uncertainties of its inputs', () => {
    expectClose(length(x), 50_000_838, { absolute: 0.5, because: 'printed to the nanometre' });
    expectClose(uOfD, 9.681942, { relative: 1e-6, because: 'computed; printed 9.7' });
    expectClose(uOfTheta, 0.406202, { relative: 2e-6, because: 'computed; printed 0.41' });
  });

  it('contributions and combined uncertainty', () => {
    const wanted = [25, 9.681942, 0, 0, 2.886787, 16.599027];
    wanted.forEach((value, i) => {
      expectClose(contributions[i], value, { relative: 1e-6, absolute: 1e-6, because: `contribution ${i + 1}` });
    });
    expectClose(uc, 31.663879, { relative: 1e-6, because: 'computed; printed 32 nm' });
    expect(Math.abs(1.01 * uc - 31.663879)).toBeGreaterThan(0.1);
  });

  it('degrees of freedom and expanded uncertainty', () => {
    const dofOfD = effectiveDegreesOfFreedom([5.8, 3.9, 6.7], [24, 5, 8]);
    expectClose(dofOfD, 25.44725, { relative: 1e-6, because: 'computed; the GUM prints 25.6 from rounded figures' });
    const infinite = Number.POSITIVE_INFINITY;
    const dof = effectiveDegreesOfFreedom(contributions, [18, dofOfD, infinite, infinite, 50, 2]);
    expectClose(dof, 16.751856, { relative: 1e-5, because: 'computed; printed 16.7' });
    const t = studentTQuantile(0.995, Math.floor(dof));
    expectClose(t, 2.920782, { relative: 1e-6, because: 'computed; printed 2.92' });
    expectClose(t * uc, 92.483, { relative: 1e-5, because: 'computed; printed 93 nm from 2.92 × 32' });
  });

  it('second-order terms of H.1.7 raise 32 nm to 34 nm', () => {
    const ls = x[0];
    const thermal = ls * u[4] * uOfTheta;
    const expansion = ls * u[2] * u[5];
    expectClose(thermal, 11.726186, { relative: 1e-6, because: 'computed; printed 11.7 nm' });
    expectClose(expansion, 1.666687, { relative: 1e-6, because: 'computed; printed 1.7 nm' });
    const all = combineUncertainty([1, 1, 1], [uc, thermal, expansion]);
    expectClose(all, 33.806545, { relative: 1e-6, because: 'computed; printed 34 nm' });
  });
});
