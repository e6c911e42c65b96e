import { type MetalHypothesis, metalHypotheses } from '../metal/hypotheses.ts';
import { commonInputs, frame, indexShared, suppositions, systemUnder } from './hypothesis.ts';
import { type AnsweredCable, normalisedWeights } from './joint.ts';
import { type Posterior, posterior, type SharedState } from './posterior.ts';
import type { AssayCable, SharedInput } from './row.ts';

/** The answer for one cable when its rows read `y` instead: one value per row, in the order of the rows. */
export type Rereading = (y: ArrayLike<number>) => AnsweredCable;

/** Belief below which a supposition is dropped from the answer, as in the joint assay. */
const NEGLIGIBLE = 1e-9;

/** Nothing known of the shared inputs but their limits: mean 0, variance 1. */
function untouched(nb: number): SharedState {
  const cov = new Float64Array(nb * nb);
  for (let k = 0; k < nb; k++) cov[k * nb + k] = 1;
  return { mean: new Float64Array(nb), cov };
}

/** The posterior when the residuals are others: its matrices stay, whatever was read. */
function withResiduals(base: Posterior, residual: Float64Array): Posterior {
  const n = residual.length;
  const weighted = new Float64Array(n);
  const x = Float64Array.from(base.x);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) weighted[i] += base.inverse[i * n + j] * residual[j];
    for (let k = 0; k < 4; k++) x[k] += base.gain[k * n + i] * (residual[i] - base.residual[i]);
  }
  return { ...base, residual, weighted, x };
}

/**
 * Assays one cable over and over with the same readings at other values: the same equations as {@link jointAssay} of that
 * cable alone, with everything that does not depend on the values solved once. For simulating what a plan would show.
 *
 * Not for a real trial: other cables and a control piece, which say something of the instruments, are left out, and the
 * readings' weights stay those of the values in `cable`.
 *
 * @param inputs limits of error of the instruments that the rows name
 * @throws RangeError when a row names a shared input that is not listed
 */
export function rereading(
  cable: AssayCable,
  inputs: readonly SharedInput[],
  metals: readonly MetalHypothesis[] = metalHypotheses(),
): Rereading {
  const index = indexShared([...inputs, ...commonInputs()]);
  const f = frame(cable, index);
  const others = untouched(f.nb);
  const bases = suppositions(cable, metals).map((supposition) => {
    const system = systemUnder(f, supposition);
    const answer = posterior(system, others);
    return { supposition, system, answer, chi2: chiSquare(answer, answer.residual) };
  });
  return (y) => {
    const moved = Float64Array.from(cable.rows, (row, i) => y[i] - row.y);
    const residuals = bases.map((b) => b.answer.residual.map((r, i) => r + moved[i]));
    const weights = normalisedWeights(
      bases.map(
        (b, h) => b.supposition.lnPrior + b.answer.lnEvidence + 0.5 * (b.chi2 - chiSquare(b.answer, residuals[h])),
      ),
    );
    const kept = bases.flatMap((_, h) => (weights[h] > NEGLIGIBLE ? [h] : []));
    const sum = kept.reduce((total, h) => total + weights[h], 0);
    const components = kept.map((h) => ({
      supposition: bases[h].supposition,
      weight: weights[h] / sum,
      system: bases[h].system,
      answer: withResiduals(bases[h].answer, residuals[h]),
    }));
    return { cable, frame: f, components, others };
  };
}

function chiSquare(base: Posterior, residual: Float64Array): number {
  const n = residual.length;
  let chi2 = 0;
  for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) chi2 += residual[i] * base.inverse[i * n + j] * residual[j];
  return chi2;
}
