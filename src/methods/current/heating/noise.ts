import { choleskyInPlace } from '../../../numerics/dense.ts';

/** One supposition about what disturbs a log: white scatter, and drift that lasts. */
export interface Noise {
  /** How long drift lasts, as a share of the log. */
  lasts: number;
  /** Variance of drift over that of the scatter of one block. */
  share: number;
  /** Belief in it before the log is seen; all of them sum to 1. */
  belief: number;
}

/** Tried by simulation (docs/figures-current.md). */
const LASTS = [0.05, 0.15, 0.4, 1];
const SHARES = [1, 6, 36, 200, 1000];
/** Belief that nothing drifts: more of it, and small drift is held too seldom; less, and intervals without drift are too wide. */
const STEADY_BELIEF = 0.2;

/**
 * Every supposition weighed. Every size of drift in kelvin is believed alike: the shares rise by equal factors, so a share stands for
 * a span of sizes as wide as its root. Then a log without drift rules out what would be large, and the interval narrows; small drift,
 * which hardly any log can rule out, widens it little.
 */
export const NOISES: readonly Noise[] = suppositions();

function suppositions(): Noise[] {
  const sizes = SHARES.map(Math.sqrt);
  const all = LASTS.length * sizes.reduce((sum, size) => sum + size, 0);
  const drifting = LASTS.flatMap((lasts) =>
    SHARES.map((share, i) => ({ lasts, share, belief: ((1 - STEADY_BELIEF) * sizes[i]) / all })),
  );
  // Without drift its duration says nothing.
  return [{ lasts: 1, share: 0, belief: STEADY_BELIEF }, ...drifting];
}

/** Covariance R = I + share · exp(−|Δt|/ρ) as its Cholesky factor, ready to whiten what was logged. */
export interface Whitening {
  factor: Float64Array;
  n: number;
  lnDeterminant: number;
}

/** @param time s; the log's length is its last value. */
export function whiteningOf(time: Float64Array, { lasts, share }: Pick<Noise, 'lasts' | 'share'>): Whitening {
  const n = time.length;
  const rho = lasts * time[n - 1];
  const factor = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < i; j++) factor[i * n + j] = share * Math.exp(-(time[i] - time[j]) / rho);
    factor[i * n + i] = 1 + share;
  }
  return { factor, n, lnDeterminant: choleskyInPlace(factor, n) };
}

/** L⁻¹ v, written over v. */
export function whiten({ factor, n }: Whitening, v: Float64Array): Float64Array {
  for (let i = 0; i < n; i++) {
    let s = v[i];
    const row = i * n;
    for (let k = 0; k < i; k++) s -= factor[row + k] * v[k];
    v[i] = s / factor[row + i];
  }
  return v;
}
