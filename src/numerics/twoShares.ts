/**
 * Exact test of two shares (a of n, b of m): among all tables with the same totals, the chance of those no likelier than the one
 * seen, and the least chance that any table with these totals could have given.
 *
 * Source: R. A. Fisher, Statistical Methods for Research Workers (5th edition 1934), section 21.02; two-sided by the tables no
 * likelier than the one seen, as R's `fisher.test`.
 */
export function twoShares(a: number, n: number, b: number, m: number): { p: number; smallest: number } {
  const seen = a + b;
  const low = Math.max(0, seen - m);
  const high = Math.min(n, seen);
  const weights: number[] = [1];
  for (let x = low + 1; x <= high; x++)
    weights.push((weights[weights.length - 1] * (n - x + 1) * (seen - x + 1)) / (x * (m - seen + x)));
  const total = weights.reduce((sum, w) => sum + w, 0);
  const chanceUpTo = (limit: number) =>
    weights.reduce((sum, w) => (w <= limit * (1 + SAME) ? sum + w : sum), 0) / total;
  return { p: chanceUpTo(weights[a - low]), smallest: chanceUpTo(Math.min(...weights)) };
}

/** Weights that differ by less than this, relative, are one. */
const SAME = 1e-7;
