import { brentRoot } from './roots.ts';

/** P(X ≤ k) of n independent tries that each succeed with chance p. */
export function binomialCdf(k: number, n: number, p: number): number {
  if (k >= n) return 1;
  if (k < 0) return 0;
  if (p <= 0) return 1;
  if (p >= 1) return 0;
  const lnOdds = Math.log(p) - Math.log1p(-p);
  let ln = n * Math.log1p(-p);
  let sum = Math.exp(ln);
  for (let i = 1; i <= k; i++) {
    ln += lnOdds + Math.log((n - i + 1) / i);
    sum += Math.exp(ln);
  }
  return Math.min(1, sum);
}

/**
 * Exact interval of a share, of which `count` among `n` were seen: all chances under which neither so many nor so few would be
 * rarer than (1 − level)/2. It covers at least its level, for few specimens often more.
 *
 * Source: C. J. Clopper, E. S. Pearson, Biometrika 26 (1934) 404.
 *
 * @throws RangeError unless 0 ≤ count ≤ n, both whole, n at least 1.
 * @example binomialInterval(0, 10, 0.95) // [0, 0.3084971…]
 */
export function binomialInterval(count: number, n: number, level: number): [number, number] {
  if (!(Number.isInteger(count) && Number.isInteger(n) && n >= 1 && count >= 0 && count <= n))
    throw new RangeError(`a share is a whole count of a whole number, got ${count} of ${n}`);
  const tail = (1 - level) / 2;
  const tolerance = 1e-13;
  const low = count === 0 ? 0 : brentRoot((p) => 1 - binomialCdf(count - 1, n, p) - tail, 0, 1, { tolerance });
  const high = count === n ? 1 : brentRoot((p) => binomialCdf(count, n, p) - tail, 0, 1, { tolerance });
  return [low, high];
}
