import { mean, sumOfSquaredDeviations } from './describe.ts';
import { fUpperTail } from './distributions.ts';

/** One-way analysis of variance: how much of the spread lies between groups and how much within. */
export interface AnalysisOfVariance {
  betweenSquares: number;
  betweenDof: number;
  withinSquares: number;
  withinDof: number;
  /** Mean square between over mean square within. */
  fRatio: number;
  /** Probability of an F this large when all groups have one mean. */
  p: number;
  rSquared: number;
  /** Standard deviation within groups. */
  residualSd: number;
}

/**
 * One-way analysis of variance of groups with one common spread.
 *
 * The grand mean is taken off before squaring, so constant leading digits cost nothing.
 *
 * @param groups at least two, none empty, with more values than groups.
 * @throws RangeError when there is nothing to compare or nothing to compare it with.
 */
export function oneWayAnalysis(groups: readonly ArrayLike<number>[]): AnalysisOfVariance {
  const count = groups.reduce((n, group) => n + group.length, 0);
  if (groups.length < 2 || groups.some((group) => group.length === 0) || count <= groups.length)
    throw new RangeError(`needs two or more groups and more values than groups, got ${count} in ${groups.length}`);
  // Differences of near numbers are exact, so all sums are of small numbers.
  const origin = groups[0][0];
  const shifted = groups.map((group) => Float64Array.from(group, (x) => x - origin));
  const means = shifted.map((group) => mean(group));
  const grand = shifted.reduce((sum, group, i) => sum + group.length * means[i], 0) / count;
  const betweenSquares = shifted.reduce((sum, group, i) => sum + group.length * (means[i] - grand) ** 2, 0);
  const withinSquares = shifted.reduce((sum, group, i) => sum + sumOfSquaredDeviations(group, means[i]), 0);
  const betweenDof = groups.length - 1;
  const withinDof = count - groups.length;
  const fRatio = betweenSquares / betweenDof / (withinSquares / withinDof);
  return {
    betweenSquares,
    betweenDof,
    withinSquares,
    withinDof,
    fRatio,
    p: fUpperTail(fRatio, betweenDof, withinDof),
    rSquared: betweenSquares / (betweenSquares + withinSquares),
    residualSd: Math.sqrt(withinSquares / withinDof),
  };
}
