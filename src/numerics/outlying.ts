import { mean, NORMAL_MEDIAN_DEVIATION, robustZ, sampleStandardDeviation } from './describe.ts';
import { studentTQuantile } from './distributions.ts';

/**
 * Grubbs' statistic: the largest |x − x̄|/s, and which value it is.
 *
 * @throws RangeError with fewer than 3 values or when one is not finite.
 * @returns statistic 0 when all values are equal.
 */
export function grubbsStatistic(values: ArrayLike<number>): { statistic: number; index: number } {
  if (values.length < 3) throw new RangeError(`Grubbs' statistic needs at least 3 values, got ${values.length}`);
  const centre = mean(values);
  const sd = sampleStandardDeviation(values);
  let index = 0;
  for (let i = 1; i < values.length; i++)
    if (Math.abs(values[i] - centre) > Math.abs(values[index] - centre)) index = i;
  return { statistic: sd === 0 ? 0 : Math.abs(values[index] - centre) / sd, index };
}

/**
 * Two-sided critical value of Grubbs' statistic: (n−1)/√n · √(t²/(n−2+t²)), t the upper α/(2n) quantile of Student's t with n − 2
 * degrees of freedom.
 *
 * Source: F. E. Grubbs, Technometrics 11 (1969); ISO 5725-2:2019, 8.3.5.
 *
 * @param level α, the chance that a sound normal sample has a value flagged.
 * @throws RangeError when n < 3 or the level is outside (0, 1).
 * @example grubbsCritical(10, 0.05) // 2.289954
 */
export function grubbsCritical(n: number, level: number): number {
  if (!(n >= 3)) throw new RangeError(`Grubbs' test needs at least 3 values, got ${n}`);
  requireLevel(level);
  const t = studentTQuantile(level / (2 * n), n - 2);
  return ((n - 1) / Math.sqrt(n)) * Math.sqrt((t * t) / (n - 2 + t * t));
}

/** From this many values Grubbs' test is used; below it the largest robust z. */
const GRUBBS_FROM = 6;

/**
 * Which values lie suspiciously far from their fellows. It points; it never drops: what becomes of a flagged value is for a person
 * to say.
 *
 * From 6 values on Grubbs' two-sided test, repeated on the rest after each hit. Two wild values of like size among few can hide each
 * other from it; looking for pairs at once would flag sound samples more often than the level says. For 3
 * to 5 values the largest robust z against its own critical value; with so few the test is weak, because two of
 * three readings are often close by chance. With one or two values nothing can be said.
 *
 * @param level chance that a sound normal sample has a value flagged, such as 0.05; between 0.001 and 0.2 for 3 to 5 values.
 * @param leastSpread standard deviation that repeats are known to have at least (rounding to a display's step d: d/√12), unit of the
 *   values; it keeps two equal readings from condemning the third.
 * @returns positions of the flagged values, ascending.
 * @throws RangeError for a level out of range or a value that is not finite.
 */
export function outlying(values: ArrayLike<number>, level = 0.05, leastSpread = 0): number[] {
  requireLevel(level);
  if (values.length < 3) return [];
  return values.length < GRUBBS_FROM
    ? outlyingOfFew(values, level, leastSpread)
    : outlyingByGrubbs(values, level, leastSpread);
}

function outlyingByGrubbs(values: ArrayLike<number>, level: number, leastSpread: number): number[] {
  const flagged: number[] = [];
  let left = Array.from(values, (_, i) => i);
  while (left.length >= GRUBBS_FROM) {
    const now = left;
    const { statistic, index } = grubbsStatistic(now.map((i) => values[i]));
    const sd = sampleStandardDeviation(now.map((i) => values[i]));
    const distance = sd < leastSpread ? (statistic * sd) / leastSpread : statistic;
    if (!(distance > grubbsCritical(now.length, level))) break;
    flagged.push(now[index]);
    left = now.filter((_, k) => k !== index);
  }
  return flagged.sort((a, b) => a - b);
}

function outlyingOfFew(values: ArrayLike<number>, level: number, leastSpread: number): number[] {
  const critical = criticalRobustZ(values.length, level);
  const z = robustZ(values, leastSpread);
  return z.flatMap((value, i) => (Math.abs(value) > critical ? [i] : []));
}

/** Levels of the table below. */
const LEVELS = [0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002, 0.001];
/**
 * Critical values of the largest |robust z| among 4 and among 5 normal values, at the levels above. Computed by simulation of
 * 4 · 10⁷ samples each (numpy, seed 20261125); standard error below 0.1 % to level 0.005 and about 0.3 % at 0.001.
 */
const CRITICAL: Record<number, number[]> = {
  4: [3.1821, 4.7374, 6.9042, 11.171, 15.965, 22.746, 36.255, 51.54],
  5: [3.575, 5.3881, 7.9212, 12.919, 18.532, 26.468, 42.24, 60.096],
};

/**
 * Critical value of the largest |robust z| among 3, 4 or 5 normal values.
 *
 * For 3 exact: the direction of the two gaps is uniform over 60°, so the wider exceeds c times the narrower with probability
 * (6/π) · arctan(√3/(2c + 1)). For 4 and 5 from the table, straight between its levels in logarithms.
 *
 * @throws RangeError for another n or a level outside 0.001 to 0.2.
 */
export function criticalRobustZ(n: number, level: number): number {
  if (!(level >= 0.001 && level <= 0.2))
    throw new RangeError(`for fewer than ${GRUBBS_FROM} values the level must be from 0.001 to 0.2, got ${level}`);
  if (n === 3) return (NORMAL_MEDIAN_DEVIATION * (Math.sqrt(3) / Math.tan((Math.PI * level) / 6) - 1)) / 2;
  const row = CRITICAL[n];
  if (!row) throw new RangeError(`critical values of the robust z are kept for 3 to 5 values, got ${n}`);
  let k = 0;
  while (k < LEVELS.length - 2 && level < LEVELS[k + 1]) k++;
  const share = Math.log(level / LEVELS[k]) / Math.log(LEVELS[k + 1] / LEVELS[k]);
  return row[k] * (row[k + 1] / row[k]) ** share;
}

function requireLevel(level: number): void {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, got ${level}`);
}
