import { chiSquareQuantile, normalCdf, normalQuantile } from './distributions.ts';
import { brentRoot } from './roots.ts';

/**
 * Factors k for which mean ± k·s of a normal sample holds a stated share of the population with a stated confidence.
 */

/**
 * One-sided tolerance factor: with the given confidence at least the given share of the population lies below x̄ + k s. Exact:
 * √n k is the confidence quantile of the non-central t with n − 1 degrees of freedom and non-centrality √n z_share.
 *
 * Source: ISO 16269-6:2014; G. J. Hahn, W. Q. Meeker, Statistical Intervals (1991), chapter 4.
 *
 * @param n sample size, from 2.
 * @throws RangeError when n < 2 or share or confidence lie outside (0, 1).
 * @example oneSidedToleranceFactor(10, 0.95, 0.95) // 2.911
 */
export function oneSidedToleranceFactor(n: number, share: number, confidence: number): number {
  requireSample(n, share, confidence);
  const shift = Math.sqrt(n) * normalQuantile(share);
  const excess = (t: number) => nonCentralTCdf(t, n - 1, shift) - confidence;
  let reach = Math.max(4, 4 * Math.abs(shift));
  while (excess(reach) < 0) reach *= 2;
  let least = Math.min(-4, -4 * Math.abs(shift));
  while (excess(least) > 0) least *= 2;
  return brentRoot(excess, least, reach, { tolerance: 1e-10 }) / Math.sqrt(n);
}

/**
 * Two-sided tolerance factor for x̄ ± k s, by Howe's approximation √(ν(1 + 1/n) z²_{(1+share)/2} / χ²_{1−confidence; ν}), ν = n − 1:
 * within 0.5 % of exact from n = 5 or so.
 *
 * Source: W. G. Howe, Journal of the American Statistical Association 64 (1969); NIST/SEMATECH e-Handbook, 7.2.6.3.
 *
 * @throws RangeError as {@link oneSidedToleranceFactor}.
 * @example twoSidedToleranceFactor(43, 0.9, 0.99) // 2.217
 */
export function twoSidedToleranceFactor(n: number, share: number, confidence: number): number {
  requireSample(n, share, confidence);
  const z = normalQuantile((1 + share) / 2);
  return z * Math.sqrt(((n - 1) * (1 + 1 / n)) / chiSquareQuantile(1 - confidence, n - 1));
}

/** Points of the rule below on each half-step; the integrand is smooth, so the error is far below 1e-9. */
const PANELS = 400;

/**
 * P(T ≤ t) of the non-central t: the mean of Φ(t·s − δ) over s = √(χ²/ν), by Simpson's rule over the part of s that has weight.
 */
function nonCentralTCdf(t: number, dof: number, shift: number): number {
  const low = Math.sqrt(chiSquareQuantile(1e-14, dof) / dof);
  const high = Math.sqrt(chiSquareQuantile(1 - 1e-14, dof) / dof);
  const step = (high - low) / PANELS;
  // The density of s up to its factor, scaled by its value near the mode, s = 1.
  const weight = (s: number) => (s === 0 ? 0 : Math.exp((dof - 1) * Math.log(s) - (dof * (s * s - 1)) / 2));
  let total = 0;
  let held = 0;
  for (let i = 0; i <= PANELS; i++) {
    const s = low + i * step;
    const simpson = i === 0 || i === PANELS ? 1 : i % 2 === 1 ? 4 : 2;
    const w = simpson * weight(s);
    total += w;
    held += w * normalCdf(t * s - shift);
  }
  return held / total;
}

function requireSample(n: number, share: number, confidence: number): void {
  if (!(Number.isInteger(n) && n >= 2))
    throw new RangeError(`a tolerance factor needs a sample of 2 or more, got ${n}`);
  if (!(share > 0 && share < 1 && confidence > 0 && confidence < 1))
    throw new RangeError(`share and confidence lie between 0 and 1, got ${share} and ${confidence}`);
}
