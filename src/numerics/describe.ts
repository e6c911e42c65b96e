/** What a handful of numbers looks like: their middle, their spread, and how each follows from the one before. */

/**
 * Sum of numbers with the rounding error of each addition carried along (Neumaier's variant of Kahan's summation, ZAMM 54,
 * 1974): as if summed in twice the digits, so long lists and large offsets lose nothing.
 */
export function compensatedSum(values: ArrayLike<number>): number {
  let sum = 0;
  let lost = 0;
  for (let i = 0; i < values.length; i++) {
    const x = values[i];
    const next = sum + x;
    lost += Math.abs(sum) >= Math.abs(x) ? sum - next + x : x - next + sum;
    sum = next;
  }
  return sum + lost;
}

/**
 * Arithmetic mean Σx/n. Not for values with a gross error among them; see {@link median}.
 *
 * @throws RangeError when there is no value or one is not finite.
 */
export function mean(values: ArrayLike<number>): number {
  requireAtLeast(values, 1, 'a mean');
  return compensatedSum(values) / values.length;
}

/**
 * Sample standard deviation √(Σ(x − x̄)²/(n − 1)): the spread of single values, not of their mean.
 *
 * In two passes, with the second pass correcting the rounding of the mean (T. F. Chan, G. H. Golub, R. J. LeVeque, The American
 * Statistician 37, 1983). Not for values that drift: they are not repeats of one thing, see {@link lag1Autocorrelation}.
 *
 * @throws RangeError with fewer than two values or when one is not finite.
 * @example sampleStandardDeviation([10000001, 10000003, 10000002]) // 1
 */
export function sampleStandardDeviation(values: ArrayLike<number>): number {
  requireAtLeast(values, 2, 'a standard deviation');
  return Math.sqrt(sumOfSquaredDeviations(values, mean(values)) / (values.length - 1));
}

/** Σ(x − centre)² less (Σ(x − centre))²/n, which is the rounding of the centre when that is the mean. */
export function sumOfSquaredDeviations(values: ArrayLike<number>, centre: number): number {
  const deviations = Float64Array.from(values, (x) => x - centre);
  const rest = compensatedSum(deviations);
  return compensatedSum(deviations.map((d) => d * d)) - (rest * rest) / values.length;
}

/**
 * Autocorrelation at lag one, Σ(xᵢ − x̄)(xᵢ₊₁ − x̄) / Σ(xᵢ − x̄)²: near 0 for independent repeats, near 1 for a drift, negative
 * for readings that alternate.
 *
 * @throws RangeError with fewer than two values, when one is not finite, or when all are equal.
 */
export function lag1Autocorrelation(values: ArrayLike<number>): number {
  requireAtLeast(values, 2, 'an autocorrelation');
  const centre = mean(values);
  const deviations = Float64Array.from(values, (x) => x - centre);
  const squares = compensatedSum(deviations.map((d) => d * d));
  if (squares === 0) throw new RangeError('equal values have no autocorrelation');
  return compensatedSum(deviations.subarray(1).map((d, i) => d * deviations[i])) / squares;
}

/**
 * Standard deviation of several groups that share one spread but not one mean: √(Σ(nᵢ−1)sᵢ² / Σ(nᵢ−1)).
 *
 * Groups of one value tell nothing and are passed over. Not for groups whose spreads differ in kind (another instrument).
 *
 * @returns the pooled standard deviation and its degrees of freedom Σ(nᵢ − 1).
 * @throws RangeError when no group has two values.
 */
export function pooledStandardDeviation(groups: readonly ArrayLike<number>[]): { sd: number; dof: number } {
  let squares = 0;
  let dof = 0;
  for (const group of groups) {
    if (group.length < 2) continue;
    squares += sumOfSquaredDeviations(group, mean(group));
    dof += group.length - 1;
  }
  if (dof === 0) throw new RangeError('a pooled standard deviation needs a group of at least two values');
  return { sd: Math.sqrt(squares / dof), dof };
}

/** Middle value; of an even number, the mean of the middle two. @throws RangeError when there is none or one is not finite. */
export function median(values: ArrayLike<number>): number {
  requireAtLeast(values, 1, 'a median');
  const sorted = new Float64Array(values).sort();
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half] : sorted[half - 1] + (sorted[half] - sorted[half - 1]) / 2;
}

/** Median of |Z| for a standard normal Z, that is the normal quantile of 3/4. Computed independently (mpmath, 17 digits). */
export const NORMAL_MEDIAN_DEVIATION = 0.6744897501960817;

/**
 * Distance of each value from the median, in units of the spread that the middle half of the values shows:
 * z = 0.6745 (x − median) / MAD, MAD = median of |x − median|. One wild value does not hide itself by widening the spread.
 *
 * Source: B. Iglewicz, D. C. Hoaglin, How to Detect and Handle Outliers (ASQC, 1993); their usual limit of 3.5 is meant for ten
 * values and more, see outlying.ts for fewer.
 *
 * @param leastSpread standard deviation below which the spread is not believed (rounding, for instance), in the unit of the
 *   values; 0 for none. With a spread of 0, values at the median get 0 and others ±Infinity.
 * @throws RangeError when there is no value or one is not finite.
 */
export function robustZ(values: ArrayLike<number>, leastSpread = 0): number[] {
  const centre = median(values);
  const mad = median(Float64Array.from(values, (x) => Math.abs(x - centre)));
  const spread = Math.max(mad / NORMAL_MEDIAN_DEVIATION, leastSpread);
  return Array.from(values, (x) => (x === centre ? 0 : (x - centre) / spread));
}

function requireAtLeast(values: ArrayLike<number>, count: number, what: string): void {
  if (values.length < count) throw new RangeError(`${what} needs at least ${count} values, got ${values.length}`);
  for (let i = 0; i < values.length; i++)
    if (!Number.isFinite(values[i])) throw new RangeError(`${what} needs finite values, got ${values[i]}`);
}
