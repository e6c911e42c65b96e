import { choleskyInPlace, solveCholesky } from '../dense.ts';
import { chiSquareUpperTail } from '../distributions.ts';
import { atRiskAt, failedJustAt, failureAmounts, failures, type Lifetime } from './lifetime.ts';

export interface LogRank {
  /** Failures of each group, and those expected if all groups were alike. */
  observed: number[];
  expected: number[];
  chi2: number;
  dof: number;
  p: number;
}

/**
 * Log-rank test of groups against each other in its large-sample form: χ² of the observed less the expected failures with their
 * hypergeometric covariance. For a handful of specimens its p is too small; use the permutation form there.
 *
 * Source: N. Mantel, Cancer Chemotherapy Reports 50 (1966) 163; as R's `survdiff` with rho = 0.
 *
 * @returns null where nothing failed, or fewer than two groups were ever at risk together.
 */
export function logRank(groups: readonly (readonly Lifetime[])[]): LogRank | null {
  const all = groups.flat();
  const k = groups.length;
  const observed = groups.map(failures);
  const expected = new Array<number>(k).fill(0);
  const covariance = new Float64Array(k * k);
  for (const amount of failureAmounts(all)) {
    const atRisk = groups.map((lives) => atRiskAt(lives, amount));
    const total = atRisk.reduce((sum, r) => sum + r, 0);
    const failed = failedJustAt(all, amount);
    const spread = total > 1 ? (failed * (total - failed)) / (total - 1) : 0;
    for (let i = 0; i < k; i++) {
      expected[i] += (failed * atRisk[i]) / total;
      for (let j = 0; j < k; j++)
        covariance[i * k + j] += spread * (atRisk[i] / total) * ((i === j ? 1 : 0) - atRisk[j] / total);
    }
  }
  // The last group follows from the others, and so does any that was never at risk beside another.
  const used = groups.map((_, i) => i).filter((i) => covariance[i * k + i] > 0);
  const dof = used.length - 1;
  if (dof < 1) return null;
  const kept = used.slice(0, dof);
  const matrix = Float64Array.from(kept.flatMap((i) => kept.map((j) => covariance[i * k + j])));
  const difference = Float64Array.from(kept, (i) => observed[i] - expected[i]);
  try {
    choleskyInPlace(matrix, dof);
  } catch {
    return null;
  }
  const solved = Float64Array.from(difference);
  solveCholesky(matrix, dof, solved);
  const chi2 = difference.reduce((sum, d, i) => sum + d * solved[i], 0);
  return { observed, expected, chi2, dof, p: chiSquareUpperTail(chi2, dof) };
}
