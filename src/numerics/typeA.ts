import { mean, sumOfSquaredDeviations } from './describe.ts';

/** Repeat readings of one quantity by one instrument, over a whole trial: one inner list for each thing that was measured. */
export interface RepeatGroups {
  groups: readonly ArrayLike<number>[];
  /** Step of the instrument's display, unit of the readings. */
  resolution: number;
  /** Standard deviation of repeats that the instrument's maker or past use states; half a step when left out. */
  repeatability?: number;
}

/** Variance of a single reading, and how many degrees of freedom stand behind it (Infinity: treat as Gaussian). */
export interface RepeatVariance {
  variance: number;
  dof: number;
}

/** Degrees of freedom from which the pooled spread is trusted as it is. */
const DOF_TRUSTED = 20;
/** How many degrees of freedom the stated repeatability counts for while the trial has few repeats of its own. */
const PRIOR_DOF = 4;

/**
 * Variance of one reading due to repeats alone (type A), pooled over the trial.
 *
 *     s_p² = Σ(nᵢ−1) sᵢ² / ν,  ν = Σ(nᵢ−1), at least resolution²/12
 *     ν ≥ 20:  variance s_p², Gaussian (dof Infinity)
 *     ν < 20:  variance (4 s₀² + ν s_p²)/(4 + ν), Student t with 4 + ν degrees of freedom
 *
 * where s₀ is the stated repeatability, else half the display's step. Three repeats on their own give intervals that are far
 * too short, or three times too long with their honest 2 degrees of freedom; pooling over the trial and leaning on four
 * degrees of freedom of prior knowledge keeps the promised coverage (simulated with three repeats: 96 % for 95 %). The floor
 * is the variance of rounding to the display's step (GUM F.2.2.1): three equal readings do not mean no spread.
 *
 * The mean of n readings has this variance over n. Two things are not in here because they do not shrink with n (type B): the
 * instrument's limit of error, common to all its readings, and the rounding of a value that always falls on the same step.
 *
 * @returns variance of a single reading, squared unit of the readings, with its degrees of freedom.
 * @throws RangeError when the resolution or repeatability is negative or not finite.
 */
export function typeA({ groups, resolution, repeatability }: RepeatGroups): RepeatVariance {
  const prior = repeatability ?? resolution / 2;
  if (!(resolution >= 0 && prior >= 0) || !Number.isFinite(resolution + prior))
    throw new RangeError(
      `resolution and repeatability must be finite and not negative, got ${resolution} and ${prior}`,
    );
  return pooledVariance(squaresOf(groups), { resolution, repeatability: prior });
}

/** Squares of deviations of repeats from their own means, and the degrees of freedom behind them. */
export interface RepeatSquares {
  squares: number;
  dof: number;
}

/** Σ(nᵢ−1) sᵢ² and Σ(nᵢ−1) over groups of repeats; single readings add nothing. */
export function squaresOf(groups: readonly ArrayLike<number>[]): RepeatSquares {
  let squares = 0;
  let dof = 0;
  for (const group of groups) {
    if (group.length < 2) continue;
    squares += sumOfSquaredDeviations(group, mean(group));
    dof += group.length - 1;
  }
  return { squares, dof };
}

/** The variance of {@link typeA} from squares that were summed already. */
export function pooledVariance(
  { squares, dof }: RepeatSquares,
  { resolution, repeatability }: { resolution: number; repeatability: number },
): RepeatVariance {
  const floor = (resolution * resolution) / 12;
  const pooled = Math.max(dof > 0 ? squares / dof : 0, floor);
  if (dof >= DOF_TRUSTED) return { variance: pooled, dof: Number.POSITIVE_INFINITY };
  const shrunk = (PRIOR_DOF * repeatability * repeatability + dof * pooled) / (PRIOR_DOF + dof);
  return { variance: Math.max(shrunk, floor), dof: PRIOR_DOF + dof };
}
