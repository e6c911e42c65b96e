import { choleskyInPlace, inverseSymmetric, multiply, solveCholesky } from '../../numerics/dense.ts';
import type { System } from './hypothesis.ts';

/** What is known of the shared inputs, in standard deviations: mean (nb) and covariance (nb × nb). */
export interface SharedState {
  mean: Float64Array;
  cov: Float64Array;
}

/** The answer for one cable under one supposition. */
export interface Posterior {
  /** ln of the readings' probability under the supposition. */
  lnEvidence: number;
  /** 4: posterior mean of (ln A, ln k, ln ρm, ln ρe) */
  x: Float64Array;
  /** 4 × 4 */
  cov: Float64Array;
  /** 4 × n: how much each reading moves each unknown */
  gain: Float64Array;
  /** n: reading less what the supposition foretells */
  residual: Float64Array;
  /** n: M⁻¹ · residual, and the diagonal of M⁻¹; M is the covariance of the residuals */
  weighted: Float64Array;
  precision: Float64Array;
  /** n × n: M⁻¹ */
  inverse: Float64Array;
}

const LN_TWO_PI = Math.log(2 * Math.PI);

/** What is foretold of a cable's readings. */
export interface Foretold {
  /** n: reading less what is foretold */
  residual: Float64Array;
  /** n × n: covariance of the residuals */
  M: Float64Array;
}

/** What a supposition foretells while the shared inputs stand at their means without error: M = G P Gᵀ + V. */
export function foretellAlone({ n, y, G, V, mu, P }: System): Foretold {
  const residual = new Float64Array(n);
  const M = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    let r = y[i];
    for (let k = 0; k < 4; k++) r -= G[i * 4 + k] * mu[k];
    residual[i] = r;
    for (let j = 0; j < n; j++) {
      let m = V[i * n + j];
      for (let k = 0; k < 4; k++) m += G[i * 4 + k] * P[k] * G[j * 4 + k];
      M[i * n + j] = m;
    }
  }
  return { residual, M };
}

/** Room for what is foretold of n readings that lean on nb shared inputs: taken once for a thousand suppositions. */
export interface Room extends Foretold {
  /** n: M⁻¹ · residual */
  weighted: Float64Array;
  /** n × n: S · cov · Sᵀ */
  shared: Float64Array;
  /** n × nb: S · cov */
  scaled: Float64Array;
}

export function room(n: number, nb: number): Room {
  return {
    residual: new Float64Array(n),
    M: new Float64Array(n * n),
    weighted: new Float64Array(n),
    shared: new Float64Array(n * n),
    scaled: new Float64Array(n * nb),
  };
}

/** Covariance that the shared inputs put on the rows, S · cov · Sᵀ, into `shared`. Suppositions of one metal have it in common. */
export function shareInto({ shared, scaled }: Room, { n, S }: System, { mean, cov }: SharedState): void {
  const nb = mean.length;
  scaled.fill(0);
  for (let i = 0; i < n; i++)
    for (let k = 0, row = i * nb; k < nb; k++) {
      const s = S[row + k];
      if (s !== 0) for (let j = 0, from = k * nb; j < nb; j++) scaled[row + j] += s * cov[from + j];
    }
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      let sum = 0;
      for (let k = 0, a = i * nb, b = j * nb; k < nb; k++) sum += scaled[a + k] * S[b + k];
      shared[i * n + j] = sum;
    }
}

/** Residuals and their covariance M = G P Gᵀ + V + S cov Sᵀ, into `residual` and `M`, once `shared` is there. */
export function foretellInto({ residual, M, shared }: Room, { n, S }: System, { mean }: SharedState, alone: Foretold) {
  const nb = mean.length;
  for (let i = 0, at = 0; i < n; i++) {
    let r = alone.residual[i];
    for (let k = 0; k < nb; k++, at++) r -= S[at] * mean[k];
    residual[i] = r;
  }
  for (let at = 0; at < n * n; at++) M[at] = shared[at] + alone.M[at];
}

/** Residuals and their covariance M = G P Gᵀ + V + S cov Sᵀ, before anything is solved. */
export function foretell(system: System, state: SharedState): Foretold {
  const into = room(system.n, state.mean.length);
  shareInto(into, system, state);
  foretellInto(into, system, state, foretellAlone(system));
  return into;
}

/** ln of the readings' probability alone: what the weights need, without the rest of the answer. Leaves `M` factored. */
export function lnEvidence({ residual, M, weighted }: Room): number {
  const n = residual.length;
  const logDet = choleskyInPlace(M, n);
  weighted.set(residual);
  solveCholesky(M, n, weighted);
  let chi2 = 0;
  for (let i = 0; i < n; i++) chi2 += residual[i] * weighted[i];
  return -0.5 * (chi2 + logDet + n * LN_TWO_PI);
}

/**
 * Closed-form posterior of (ln A, ln k, ln ρm, ln ρe) under one supposition: linear Gaussian conditioning,
 * `x̂ = μ + K r`, `K = cov Gᵀ N⁻¹`, `cov = (P⁻¹ + Gᵀ N⁻¹ G)⁻¹` with N = V + S cov_b Sᵀ the spread of the readings alone. JCGM
 * 102:2011 gives the propagation for several outputs. The same as P − P Gᵀ M⁻¹ G P, which loses six digits here: the prior of
 * ln A is a million times as wide as what is left of it, and what is lost differs from one engine to the next.
 *
 * @throws RangeError when two rows are the same reading twice without any spread of their own.
 */
export function posterior(system: System, state: SharedState): Posterior {
  const { n, V, mu } = system;
  const into = room(n, state.mean.length);
  shareInto(into, system, state);
  foretellInto(into, system, state, foretellAlone(system));
  const { residual, M, shared } = into;
  const N = V.map((v, at) => v + shared[at]);
  const logDet = choleskyInPlace(M, n);
  const weighted = residual.slice();
  solveCholesky(M, n, weighted);
  const inverse = new Float64Array(n * n);
  const precision = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    inverse[i * n + i] = 1;
    solveCholesky(M, n, inverse, i * n);
    precision[i] = inverse[i * n + i];
  }
  const { cov, gain } = conditioned(system, inverseSymmetric(N, n));
  const x = mu.slice();
  let chi2 = 0;
  for (let i = 0; i < n; i++) chi2 += residual[i] * weighted[i];
  for (let k = 0; k < 4; k++) for (let j = 0; j < n; j++) x[k] += gain[k * n + j] * residual[j];
  return { lnEvidence: -0.5 * (chi2 + logDet + n * LN_TWO_PI), x, cov, gain, residual, weighted, precision, inverse };
}

/** cov = (P⁻¹ + Gᵀ N⁻¹ G)⁻¹, 4 × 4, and K = cov Gᵀ N⁻¹, 4 × n. An unknown without spread (P = 0) stays where it is. */
function conditioned({ n, G, P }: System, inverseN: Float64Array): { cov: Float64Array; gain: Float64Array } {
  const pull = new Float64Array(4 * n);
  for (let k = 0; k < 4; k++)
    for (let i = 0; i < n; i++) {
      const g = G[i * 4 + k];
      if (g !== 0) for (let j = 0; j < n; j++) pull[k * n + j] += g * inverseN[i * n + j];
    }
  // In units of each unknown's own prior spread, so that no unknown without spread is divided by.
  const root = P.map(Math.sqrt);
  const information = new Float64Array(16);
  for (let k = 0; k < 4; k++)
    for (let l = 0; l < 4; l++) {
      let sum = 0;
      for (let j = 0; j < n; j++) sum += pull[k * n + j] * G[j * 4 + l];
      information[k * 4 + l] = (k === l ? 1 : 0) + root[k] * sum * root[l];
    }
  const scaled = inverseSymmetric(information, 4);
  const cov = scaled.map((c, at) => root[at >> 2] * c * root[at & 3]);
  return { cov, gain: multiply(cov, pull, 4, 4, n) };
}
