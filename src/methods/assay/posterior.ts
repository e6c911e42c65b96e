import { choleskyInPlace, multiplyTransposed, solveCholesky } from '../../numerics/dense.ts';
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

/** Covariance that the shared inputs put on the rows: S · cov · Sᵀ. */
function sharedCovariance(system: System, state: SharedState, nb: number): Float64Array {
  const { n, S } = system;
  const scaled = new Float64Array(n * nb);
  for (let i = 0; i < n; i++)
    for (let k = 0; k < nb; k++) {
      const s = S[i * nb + k];
      if (s !== 0) for (let j = 0; j < nb; j++) scaled[i * nb + j] += s * state.cov[k * nb + j];
    }
  return multiplyTransposed(scaled, S, n, nb, n);
}

/** Residuals and their covariance M = G P Gᵀ + V + S cov Sᵀ, before anything is solved. */
export function foretell(system: System, state: SharedState): { residual: Float64Array; M: Float64Array } {
  const { n, y, G, S, V, mu, P } = system;
  const nb = state.mean.length;
  const M = sharedCovariance(system, state, nb);
  const residual = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let r = y[i];
    for (let k = 0; k < 4; k++) r -= G[i * 4 + k] * mu[k];
    for (let k = 0; k < nb; k++) r -= S[i * nb + k] * state.mean[k];
    residual[i] = r;
    for (let j = 0; j < n; j++) {
      let m = V[i * n + j];
      for (let k = 0; k < 4; k++) m += G[i * 4 + k] * P[k] * G[j * 4 + k];
      M[i * n + j] += m;
    }
  }
  return { residual, M };
}

/** ln of the readings' probability alone: what the weights need, without the rest of the answer. */
export function lnEvidence(system: System, state: SharedState): number {
  const { residual, M } = foretell(system, state);
  const logDet = choleskyInPlace(M, system.n);
  const weighted = Float64Array.from(residual);
  solveCholesky(M, system.n, weighted);
  let chi2 = 0;
  for (let i = 0; i < system.n; i++) chi2 += residual[i] * weighted[i];
  return -0.5 * (chi2 + logDet + system.n * LN_TWO_PI);
}

/**
 * Closed-form posterior of (ln A, ln k, ln ρm, ln ρe) under one supposition: linear Gaussian conditioning,
 * `x̂ = μ + P Gᵀ M⁻¹ r`, `cov = P − P Gᵀ M⁻¹ G P`. JCGM 102:2011 gives the propagation for several outputs.
 *
 * @throws RangeError when two rows are the same reading twice without any spread of their own.
 */
export function posterior(system: System, state: SharedState): Posterior {
  const { n, G, mu, P } = system;
  const { residual, M } = foretell(system, state);
  const logDet = choleskyInPlace(M, n);
  const weighted = Float64Array.from(residual);
  solveCholesky(M, n, weighted);
  const inverse = new Float64Array(n * n);
  const precision = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    inverse[i * n + i] = 1;
    solveCholesky(M, n, inverse, i * n);
    precision[i] = inverse[i * n + i];
  }
  const gain = new Float64Array(4 * n);
  for (let k = 0; k < 4; k++)
    for (let i = 0; i < n; i++) {
      const pg = P[k] * G[i * 4 + k];
      if (pg !== 0) for (let j = 0; j < n; j++) gain[k * n + j] += pg * inverse[i * n + j];
    }
  const x = Float64Array.from(mu);
  const cov = new Float64Array(16);
  let chi2 = 0;
  for (let i = 0; i < n; i++) chi2 += residual[i] * weighted[i];
  for (let k = 0; k < 4; k++) {
    for (let j = 0; j < n; j++) x[k] += gain[k * n + j] * residual[j];
    for (let l = 0; l < 4; l++) {
      let c = k === l ? P[k] : 0;
      for (let j = 0; j < n; j++) c -= gain[k * n + j] * G[j * 4 + l] * P[l];
      cov[k * 4 + l] = c;
    }
  }
  return { lnEvidence: -0.5 * (chi2 + logDet + n * LN_TWO_PI), x, cov, gain, residual, weighted, precision, inverse };
}
