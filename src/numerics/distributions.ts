/**
 * The four distributions of measurement: normal, Student t, χ² and F. The special functions beneath are the single
 * @stdlib packages; this file gives them one shape, whole-word names and a clear sentence for bad arguments.
 */
import chiSquareCdfOf from '@stdlib/stats-base-dists-chisquare-cdf';
import chiSquareQuantileOf from '@stdlib/stats-base-dists-chisquare-quantile';
import fCdfOf from '@stdlib/stats-base-dists-f-cdf';
import normalCdfOf from '@stdlib/stats-base-dists-normal-cdf';
import normalQuantileOf from '@stdlib/stats-base-dists-normal-quantile';
import studentTCdfOf from '@stdlib/stats-base-dists-t-cdf';
import studentTQuantileOf from '@stdlib/stats-base-dists-t-quantile';
import { upperIncompleteGamma } from './incompleteGamma.ts';

const HALF_LN_TWO_PI = 0.9189385332046727;

/** Above this many degrees of freedom Student's t is the normal to within 1e-12 and is computed as such. */
const DOF_TAKEN_AS_NORMAL = 1e12;

/**
 * Standard normal distribution function Φ(z) = P(Z ≤ z). Accurate relative to its own size in the lower tail; for the upper
 * tail use normalCdf(−z), not 1 − normalCdf(z).
 *
 * @throws RangeError when z is not a number.
 * @example normalCdf(1.4) // 0.9192433407662290
 */
export function normalCdf(z: number): number {
  requireNumber(z, 'z');
  return normalCdfOf(z, 0, 1);
}

/**
 * Standard normal quantile: the z with Φ(z) = p. p = 0 gives −Infinity, p = 1 Infinity.
 *
 * For p very near 1 use −normalQuantile(1 − p) with the complement computed exactly: a double near 1 has lost it.
 *
 * @throws RangeError when p is outside [0, 1].
 * @example normalQuantile(0.975) // 1.959963984540054
 */
export function normalQuantile(p: number): number {
  requireProbability(p);
  const tail = Math.min(p, 1 - p);
  if (tail >= WHERE_QUANTILE_IS_FULL || tail === 0) return normalQuantileOf(p, 0, 1);
  const distance = distanceOfTail(tail);
  return p < 0.5 ? -distance : distance;
}

/** Tail probability below which the library's normal quantile has fewer than 15 digits (9 at 1e-9, none at 1e-100). */
const WHERE_QUANTILE_IS_FULL = 1e-4;

/** The z with P(Z > z) = tail for a small tail: Newton's steps on the logarithm of the tail from its leading asymptotic term. */
function distanceOfTail(tail: number): number {
  const twice = -2 * Math.log(tail);
  let z = Math.sqrt(twice - Math.log(2 * Math.PI * twice));
  for (let step = 0; step < 4; step++) {
    const above = normalCdfOf(-z, 0, 1);
    z += (Math.log(above / tail) * above) / Math.exp(normalLogPdf(z));
  }
  return z;
}

/** Logarithm of the standard normal density, −z²/2 − ln √(2π). @throws RangeError when z is not a number. */
export function normalLogPdf(z: number): number {
  requireNumber(z, 'z');
  return -0.5 * z * z - HALF_LN_TWO_PI;
}

/**
 * Student t distribution function P(T ≤ t). `dof` may be any positive number, or Infinity for the normal.
 *
 * @throws RangeError when dof is not positive or t is not a number.
 * @example studentTCdf(2.228138851986275, 10) // 0.975
 */
export function studentTCdf(t: number, dof: number): number {
  requireDof(dof);
  if (dof > DOF_TAKEN_AS_NORMAL) return normalCdf(t);
  requireNumber(t, 't');
  if (!Number.isFinite(t)) return t > 0 ? 1 : 0;
  return studentTCdfOf(t, dof);
}

/**
 * Student t quantile: the t with P(T ≤ t) = p.
 *
 * @throws RangeError when dof is not positive or p is outside [0, 1].
 * @example studentTQuantile(0.975, 9) // 2.262157162798205
 */
export function studentTQuantile(p: number, dof: number): number {
  requireDof(dof);
  if (dof > DOF_TAKEN_AS_NORMAL) return normalQuantile(p);
  requireProbability(p);
  if (p === 0 || p === 1) return p === 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  return studentTQuantileOf(p, dof);
}

/**
 * Logarithm of the Student t density:
 * ln Γ((ν+1)/2) − ln Γ(ν/2) − ½ ln(πν) − (ν+1)/2 · ln(1 + t²/ν).
 *
 * @throws RangeError when dof is not positive or t is not a number.
 */
export function studentTLogPdf(t: number, dof: number): number {
  requireDof(dof);
  if (dof > DOF_TAKEN_AS_NORMAL) return normalLogPdf(t);
  requireNumber(t, 't');
  return studentTLogPeak(dof) - 0.5 * (dof + 1) * Math.log1p((t * t) / dof);
}

/** From this x on the series below is exact to rounding. */
const SERIES_FROM = 25;

/**
 * Logarithm of the Student t density at its peak, ln Γ((ν+1)/2) − ln Γ(ν/2) − ½ ln(πν).
 *
 * With x = ν/2, Γ(x+½)/Γ(x) is carried up to x ≥ 25 by Γ(x+1) = xΓ(x), and there ln Γ(x+½) − ln Γ(x) = ½ ln x − 1/(8x) +
 * 1/(192x³) − 1/(640x⁵) + 17/(14336x⁷) − 31/(18432x⁹): no two large logarithms are subtracted. Series from NIST Digital
 * Library of Mathematical Functions, 5.11.8, with h = ½ and h = 0.
 */
export function studentTLogPeak(dof: number): number {
  let x = dof / 2;
  let ratio = 1;
  for (; x < SERIES_FROM; x += 1) ratio *= x / (x + 0.5);
  const inverse = 1 / x;
  const square = inverse * inverse;
  const series = -1 / 8 + square * (1 / 192 + square * (-1 / 640 + square * (17 / 14336 - (square * 31) / 18432)));
  return Math.log(ratio * Math.sqrt(x / (Math.PI * dof))) + inverse * series;
}

/**
 * χ² distribution function P(X ≤ x). For small upper tails use {@link chiSquareUpperTail}.
 *
 * @throws RangeError when dof is not positive or x is not a number.
 */
export function chiSquareCdf(x: number, dof: number): number {
  requireDof(dof);
  requireNumber(x, 'x');
  if (x <= 0) return 0;
  return x === Number.POSITIVE_INFINITY ? 1 : chiSquareCdfOf(x, dof);
}

/**
 * χ² upper tail P(X > x), accurate relative to its own size however small it is: the p-value of a χ² test.
 *
 * @throws RangeError when dof is not positive or x is not a number.
 * @example chiSquareUpperTail(3.841458820694124, 1) // 0.05
 */
export function chiSquareUpperTail(x: number, dof: number): number {
  requireDof(dof);
  requireNumber(x, 'x');
  if (x <= 0) return 1;
  return upperIncompleteGamma(dof / 2, x / 2);
}

/** χ² quantile: the x with P(X ≤ x) = p. @throws RangeError when dof is not positive or p is outside [0, 1]. */
export function chiSquareQuantile(p: number, dof: number): number {
  requireDof(dof);
  requireProbability(p);
  if (p === 1) return Number.POSITIVE_INFINITY;
  return p === 0 ? 0 : chiSquareQuantileOf(p, dof);
}

/**
 * F upper tail P(F > x) with `dof1` and `dof2` degrees of freedom, accurate in the tail: computed as the lower tail of 1/F
 * with the degrees of freedom exchanged.
 *
 * @throws RangeError when a dof is not positive or x is not a number.
 */
export function fUpperTail(x: number, dof1: number, dof2: number): number {
  requireDof(dof1);
  requireDof(dof2);
  requireNumber(x, 'x');
  if (x <= 0) return 1;
  if (x === Number.POSITIVE_INFINITY) return 0;
  return fCdfOf(1 / x, dof2, dof1);
}

function requireNumber(x: number, name: string): void {
  if (Number.isNaN(x)) throw new RangeError(`${name} must be a number, got ${x}`);
}

function requireDof(dof: number): void {
  if (!(dof > 0)) throw new RangeError(`degrees of freedom must be positive, got ${dof}`);
}

function requireProbability(p: number): void {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`a probability lies between 0 and 1, got ${p}`);
}
