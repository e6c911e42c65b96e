import { chiSquareQuantile } from './distributions.ts';
import { brentRoot } from './roots.ts';

/** How far values scatter beyond their own known variances. */
export interface ExcessSpread {
  /** Σ (yᵢ − ȳ)²/vᵢ about the weighted mean, without any excess. */
  scatter: number;
  /** Values less one. */
  dof: number;
  /** Estimate τ² of the excess variance, in the square of the unit of the values; 0 where the known variances explain all. */
  variance: number;
  /** Interval of τ² at the level asked for. */
  interval: [number, number];
}

/** A root this close, as a share of itself, changes no digit that anybody sees. */
const TOLERANCE = 1e-13;
/** Doublings after which a variance is beyond every number that can be measured. */
const MOST_DOUBLINGS = 400;

/** Weighted mean of values with variances vᵢ + τ², and their scatter Q(τ²) = Σ (yᵢ − ȳ)²/(vᵢ + τ²) about it. */
export function scatterWith(
  values: readonly number[],
  variances: readonly number[],
  excess: number,
): { mean: number; scatter: number } {
  let weights = 0;
  let sum = 0;
  values.forEach((y, i) => {
    const w = 1 / (variances[i]! + excess);
    weights += w;
    sum += w * y;
  });
  const mean = sum / weights;
  const scatter = values.reduce((q, y, i) => q + (y - mean) ** 2 / (variances[i]! + excess), 0);
  return { mean, scatter };
}

/**
 * The excess variance τ² at which the scatter Q(τ²) comes down to `wanted`; 0 where it lies below that already.
 *
 * Q falls steadily with τ², so there is one such variance. With `wanted` = n − 1 it is the estimate of Paule and Mandel
 * (Journal of Research of the National Bureau of Standards 87, 1982, 377).
 *
 * @param variances of the values themselves, all above 0
 * @throws RangeError for fewer than two values, or a variance that is not above 0
 */
export function excessVariance(values: readonly number[], variances: readonly number[], wanted: number): number {
  if (values.length < 2) throw new RangeError(`a spread needs two values, got ${values.length}`);
  if (variances.length !== values.length || !variances.every((v) => v > 0 && Number.isFinite(v)))
    throw new RangeError('every value needs a finite variance above 0');
  const above = (excess: number) => scatterWith(values, variances, excess).scatter - wanted;
  if (!(above(0) > 0)) return 0;
  let high = Math.max(...variances);
  for (let n = 0; above(high) > 0; n += 1) {
    if (n > MOST_DOUBLINGS) return Number.POSITIVE_INFINITY;
    high *= 2;
  }
  return brentRoot(above, 0, high, { tolerance: TOLERANCE * high });
}

/**
 * How much values that should be one scatter beyond their known variances: the estimate of Paule and Mandel, and the interval in
 * which Q(τ²) lies between the quantiles of χ² with n − 1 degrees of freedom (W. Viechtbauer, Statistics in Medicine 26, 2007, 37).
 * Not where the variances are themselves guesses from a few repeats.
 *
 * @param level share of cases in which the interval holds τ², such as 0.95
 * @throws RangeError like {@link excessVariance}
 */
export function excessSpread(values: readonly number[], variances: readonly number[], level: number): ExcessSpread {
  const dof = values.length - 1;
  const variance = excessVariance(values, variances, dof);
  const tail = (1 - level) / 2;
  return {
    scatter: scatterWith(values, variances, 0).scatter,
    dof,
    variance,
    interval: [
      excessVariance(values, variances, chiSquareQuantile(1 - tail, dof)),
      excessVariance(values, variances, chiSquareQuantile(tail, dof)),
    ],
  };
}

/**
 * `count` equally likely values of τ², from the confidence with which each is excluded: at share p the one whose scatter is the
 * (1 − p) quantile of χ². Taken as a mixture they carry the doubt about τ² into whatever it widens, which matters where it rests on
 * few values (K. Nagashima, H. Noma, T. A. Furukawa, Statistical Methods in Medical Research 28, 2019, 1689).
 *
 * @throws RangeError like {@link excessVariance}
 */
export function likelyExcess(values: readonly number[], variances: readonly number[], count: number): number[] {
  const dof = values.length - 1;
  return Array.from({ length: count }, (_, i) =>
    excessVariance(values, variances, chiSquareQuantile(1 - (i + 0.5) / count, dof)),
  );
}
