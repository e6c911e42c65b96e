import type { AnsweredCable, AssayComponent } from './joint.ts';

/** A figure a·x + c·b under one supposition: x the cable's own unknowns, b the shared inputs in standard deviations. */
export interface LinearFigure {
  mean: number;
  variance: number;
  /** n: how far the figure moves with each reading. */
  moves: Float64Array;
}

/**
 * How a·(ln A, ln k, ln ρm, ln ρe) leans on the constants that cables have in common. The lay, density and resistivity of a
 * cable are its own departure, which is in x, and the common one, which is in b: a figure needs both.
 */
export function commonPart(assay: AnsweredCable, c: AssayComponent, a: readonly number[]): Float64Array {
  const { index, nb } = assay.frame;
  const part = new Float64Array(nb);
  const add = (input: string, slope: number) => {
    const place = index.get(input);
    if (place) part[place.at] += slope * place.sd;
  };
  if (!assay.cable.control) add('usual lay', a[1]);
  if (c.supposition.metal.sharesCopperConstants) {
    add('copper density', a[2]);
    add('copper resistivity', a[3]);
  }
  return part;
}

/**
 * Any linear figure of the unknowns and the shared inputs, given the readings: linear Gaussian conditioning.
 *
 * With s = S cov_b c, the readings' covariance with c·b: moves = Kᵀ a + M⁻¹ s, and the variance is
 * aᵀ cov a − 2 (Kᵀ a)·s + cᵀ cov_b c − sᵀ M⁻¹ s. The prior of ln A, a million times as wide as what is left, stays out of it, so
 * that nothing is lost by subtraction.
 */
export function linearFigureOf(
  assay: AnsweredCable,
  { answer, system }: AssayComponent,
  a: readonly number[],
  onShared: Float64Array,
): LinearFigure {
  const { n, S, mu } = system;
  const { others } = assay;
  const nb = others.mean.length;
  // Covariance of c·b with b, then with each reading.
  const withShared = new Float64Array(nb);
  for (let k = 0; k < nb; k++)
    if (onShared[k] !== 0) for (let l = 0; l < nb; l++) withShared[l] += onShared[k] * others.cov[k * nb + l];
  const withReading = Float64Array.from({ length: n }, (_, i) => {
    let q = 0;
    for (let k = 0; k < nb; k++) q += withShared[k] * S[i * nb + k];
    return q;
  });
  let mean = 0;
  let variance = 0;
  for (let k = 0; k < 4; k++) {
    mean += a[k] * mu[k];
    for (let l = 0; l < 4; l++) variance += a[k] * answer.cov[k * 4 + l] * a[l];
  }
  for (let k = 0; k < nb; k++) {
    mean += onShared[k] * others.mean[k];
    variance += onShared[k] * withShared[k];
  }
  const moves = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    for (let k = 0; k < 4; k++) moves[j] += a[k] * answer.gain[k * n + j];
    variance -= 2 * moves[j] * withReading[j];
  }
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      const shift = withReading[i] * answer.inverse[i * n + j];
      moves[j] += shift;
      variance -= shift * withReading[j];
    }
  for (let j = 0; j < n; j++) mean += moves[j] * answer.residual[j];
  return { mean, variance: Math.max(variance, 0), moves };
}

/** A figure of the cable itself, a·(ln A, ln k, ln ρm, ln ρe), with what all cables have in common inside it. */
export function cableFigure(assay: AnsweredCable, c: AssayComponent, a: readonly number[]): LinearFigure {
  return linearFigureOf(assay, c, a, commonPart(assay, c, a));
}
