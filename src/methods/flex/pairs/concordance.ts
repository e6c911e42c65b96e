import { chiSquareUpperTail } from '../../../numerics/distributions.ts';
import { midRanks, tieTerm } from '../../../numerics/ranks.ts';

/** Agreement of several judges' orders. */
export interface Concordance {
  /** Kendall's W: 0 for none, 1 for one and the same order. */
  w: number;
  chi2: number;
  dof: number;
  /** Chance of so much agreement, or more, among judges who guess; from χ², rough for few things. */
  p: number;
}

/**
 * Kendall's coefficient of concordance, corrected for ties:
 *
 *     W = 12 S / (m² (n³ − n) − m Σ(t³ − t)),   χ² = m (n − 1) W
 *
 * S the squared deviations of the rank sums. Needs every judge to have scored every thing.
 *
 * Source: M. G. Kendall, Rank Correlation Methods, chapter 6.
 *
 * @param scores one row for each judge, higher is better
 * @returns null for fewer than 2 judges or 2 things, or when nobody told anything apart.
 */
export function concordance(scores: readonly (readonly number[])[]): Concordance | null {
  const m = scores.length;
  const n = scores[0]?.length ?? 0;
  if (m < 2 || n < 2) return null;
  const sums = new Float64Array(n);
  let ties = 0;
  for (const row of scores) {
    const ranks = midRanks(row);
    for (let i = 0; i < n; i++) sums[i] += ranks[i];
    ties += tieTerm(row);
  }
  const middle = (m * (n + 1)) / 2;
  const s = sums.reduce((sum, r) => sum + (r - middle) ** 2, 0);
  const most = m * m * (n ** 3 - n) - m * ties;
  if (!(most > 0)) return null;
  const w = (12 * s) / most;
  const chi2 = m * (n - 1) * w;
  return { w, chi2, dof: n - 1, p: chiSquareUpperTail(chi2, n - 1) };
}
