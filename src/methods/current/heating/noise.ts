import { choleskyInPlace } from '../../../numerics/dense.ts';

/** One supposition about what disturbs a log: white scatter, and drift that lasts. */
export interface Noise {
  /** How long drift lasts, as a share of the log. */
  lasts: number;
  /** Variance of drift over that of the scatter of one block. */
  share: number;
}

/** Every supposition weighed: tried by simulation (docs/figures-current.md). Without drift its duration says nothing. */
const LASTS = [0.05, 0.15, 0.4, 1];
const SHARES = [1, 6, 36, 200, 1000];
export const NOISES: readonly Noise[] = [
  { lasts: 1, share: 0 },
  ...LASTS.flatMap((lasts) => SHARES.map((share) => ({ lasts, share }))),
];

/** Covariance R = I + share · exp(−|Δt|/ρ) as its Cholesky factor, ready to whiten what was logged. */
export interface Whitening {
  factor: Float64Array;
  n: number;
  lnDeterminant: number;
}

/** @param time s; the log's length is its last value. */
export function whiteningOf(time: Float64Array, { lasts, share }: Noise): Whitening {
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
