import { choleskyInPlace, solveCholesky } from '../../../numerics/dense.ts';
import { chiSquareUpperTail } from '../../../numerics/distributions.ts';
import { type JudgedPair, leftShare } from './judgement.ts';
import type { PairsFit } from './tiedPreference.ts';

/** Whether judges differ among themselves by more than chance. */
export interface JudgesApart {
  chi2: number;
  dof: number;
  p: number;
  /** χ²/dof, at least 1: by its square root standard errors are widened when p is small. */
  overdispersion: number;
}

/**
 * Compares each judge's results with what all of them together foretell: χ² of the judges' shares of each thing about their
 * expected ones, in the metric of their information; (judges − 1)(things − 1) degrees of freedom when each saw all.
 *
 * The common fit takes one judge's worth of freedom away. Null for fewer than 2 judges.
 */
export function judgesApart(pairs: readonly JudgedPair[], fit: PairsFit): JudgesApart | null {
  const judges = [...new Set(pairs.map((p) => p.judge))];
  if (judges.length < 2) return null;
  // What all judges together stand off, pulled by the prior, is no difference between them.
  let chi2 = -distance(pairs, fit);
  let dof = -rankOf(pairs);
  for (const judge of judges) {
    const own = pairs.filter((p) => p.judge === judge);
    chi2 += distance(own, fit);
    dof += rankOf(own);
  }
  if (dof < 1) return null;
  chi2 = Math.max(chi2, 0);
  return { chi2, dof, p: chiSquareUpperTail(chi2, dof), overdispersion: Math.max(1, chi2 / dof) };
}

/** Things seen less the groups that pairs join them to: how many differences were judged at all. */
function rankOf(pairs: readonly JudgedPair[]): number {
  const parent = new Map<number, number>();
  const root = (x: number): number => {
    const up = parent.get(x) ?? x;
    return up === x ? x : root(up);
  };
  let rank = 0;
  for (const { left, right } of pairs) {
    const [a, b] = [root(left), root(right)];
    if (a === b) continue;
    parent.set(a, b);
    rank++;
  }
  return rank;
}

/** rᵀ V⁺ r of one judge: residual shares against their information, by a ridge too small to matter. */
function distance(pairs: readonly JudgedPair[], fit: PairsFit): number {
  const n = fit.abilities.length;
  const residual = new Float64Array(n);
  const information = new Float64Array(n * n);
  const side = fit.side?.value ?? 0;
  for (const pair of pairs) {
    const d = fit.abilities[pair.left] - fit.abilities[pair.right] + side;
    const [won, lost] = [Math.exp(d / 2), Math.exp(-d / 2)];
    const z = won + lost + fit.tie;
    const expected = (won + fit.tie / 2) / z;
    const variance = (won + lost) / z / 4 - ((won - lost) / z / 2) ** 2;
    const r = leftShare(pair) - expected;
    residual[pair.left] += r;
    residual[pair.right] -= r;
    information[pair.left * n + pair.left] += variance;
    information[pair.right * n + pair.right] += variance;
    information[pair.left * n + pair.right] -= variance;
    information[pair.right * n + pair.left] -= variance;
  }
  for (let i = 0; i < n; i++) information[i * n + i] += 1e-9;
  choleskyInPlace(information, n);
  const solved = Float64Array.from(residual);
  solveCholesky(information, n, solved);
  return residual.reduce((sum, r, i) => sum + r * solved[i], 0);
}
