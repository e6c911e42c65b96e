import { correlationCoefficient } from './regression.ts';

/** Ranks from 1 for the smallest; equal values share the mean of their ranks. */
export function midRanks(values: ArrayLike<number>): Float64Array {
  const order = Array.from({ length: values.length }, (_, i) => i).sort((a, b) => values[a] - values[b]);
  const ranks = new Float64Array(values.length);
  for (let from = 0; from < order.length; ) {
    let to = from + 1;
    while (to < order.length && values[order[to]] === values[order[from]]) to++;
    for (let k = from; k < to; k++) ranks[order[k]] = (from + 1 + to) / 2;
    from = to;
  }
  return ranks;
}

/** Σ(t³ − t) over groups of t equal values: what ties take from a rank statistic. */
export function tieTerm(values: ArrayLike<number>): number {
  const counts = new Map<number, number>();
  for (let i = 0; i < values.length; i++) counts.set(values[i], (counts.get(values[i]) ?? 0) + 1);
  return [...counts.values()].reduce((sum, t) => sum + t ** 3 - t, 0);
}

/** Spearman's rank correlation: the correlation of the ranks, ties by mean ranks. Throws as `correlationCoefficient`. */
export function spearman(x: readonly number[], y: readonly number[]): number {
  return correlationCoefficient([...midRanks(x)], [...midRanks(y)]);
}

/**
 * Kendall's rank correlation τ-b: (concordant − discordant) / √((n₀ − ties in x)(n₀ − ties in y)), n₀ = n(n − 1)/2; without ties
 * the plain τ.
 *
 * @throws RangeError when the lengths differ or one of the two does not vary.
 */
export function kendallTau(x: readonly number[], y: readonly number[]): number {
  if (x.length !== y.length) throw new RangeError(`${x.length} x but ${y.length} y`);
  let sum = 0;
  let differX = 0;
  let differY = 0;
  for (let i = 0; i < x.length; i++)
    for (let j = i + 1; j < x.length; j++) {
      const dx = Math.sign(x[i] - x[j]);
      const dy = Math.sign(y[i] - y[j]);
      sum += dx * dy;
      differX += dx * dx;
      differY += dy * dy;
    }
  if (!(differX > 0 && differY > 0)) throw new RangeError('values that do not vary have no rank correlation');
  return sum / Math.sqrt(differX * differY);
}

/**
 * Two-sided chance of a |τ| at least as large among n pairs without ties that have nothing to do with each other, exact:
 * the number of orders with each count of inversions, by its recursion.
 *
 * Source: M. G. Kendall, Rank Correlation Methods, chapter 5.
 */
export function kendallTauChance(tau: number, n: number): number {
  let counts = [1];
  for (let k = 2; k <= n; k++) {
    const next = new Array<number>((k * (k - 1)) / 2 + 1).fill(0);
    counts.forEach((c, i) => {
      for (let shift = 0; shift < k; shift++) next[i + shift] += c / k;
    });
    counts = next;
  }
  const pairs = (n * (n - 1)) / 2;
  const least = Math.abs(tau) - 1e-9;
  return Math.min(
    1,
    counts.reduce((sum, c, inversions) => sum + (Math.abs(1 - (2 * inversions) / pairs) >= least ? c : 0), 0),
  );
}
