import { normalCdf, studentTCdf } from './distributions.ts';
import { type Component, mixtureCdf, mixtureUpperTail } from './mixture.ts';

/** Limits within which a quantity conforms; leave one out for a one-sided requirement. */
export interface Limits {
  /** Least value that conforms. */
  lower?: number;
  /** Greatest value that conforms. */
  upper?: number;
}

/**
 * Probability that a measured quantity lies within its limits: Φ((T_U − y)/u) − Φ((T_L − y)/u), or the same with Student's t.
 *
 * Source: JCGM 106:2012, 7.2–7.4, with an uninformative prior, so that what is known of the quantity is the measurement alone.
 *
 * @param value y, and `u` its standard uncertainty in the same unit, above 0; `dof` Infinity for the normal distribution.
 * @returns a probability between 0 and 1.
 * @throws RangeError when no limit is given, the limits are crossed or u is not positive.
 * @example conformityProbability(-5.47, 0.05, { upper: -5.4 }) // 0.919
 */
export function conformityProbability(
  value: number,
  u: number,
  limits: Limits,
  dof = Number.POSITIVE_INFINITY,
): number {
  if (!(u > 0)) throw new RangeError(`standard uncertainty must be above 0, got ${u}`);
  requireLimits(limits);
  const below = (z: number) => (dof === Number.POSITIVE_INFINITY ? normalCdf(z) : studentTCdf(z, dof));
  return between(
    limits,
    (x) => below((x - value) / u),
    (x) => below((value - x) / u),
  );
}

/**
 * Probability that a quantity described by a mixture lies within its limits; a fixed value on a limit conforms.
 *
 * @throws RangeError when no limit is given, the limits are crossed, or the mixture is unusable.
 */
export function mixtureConformity(components: readonly Component[], limits: Limits): number {
  requireLimits(limits);
  const { lower, upper } = limits;
  if (lower === undefined) return mixtureCdf(components, upper as number);
  // Seen in a mirror the lower limit is an upper one, so its tail is as exact.
  const mirrored = components.map((c) => ({ ...c, mean: -c.mean }));
  if (upper === undefined) return mixtureCdf(mirrored, -lower);
  return Math.max(0, mixtureCdf(components, upper) - mixtureUpperTail(mirrored, -lower));
}

/** P(lower ≤ X ≤ upper) from the two tails, taking the difference where nothing cancels. */
function between({ lower, upper }: Limits, below: (x: number) => number, above: (x: number) => number): number {
  if (lower === undefined) return below(upper as number);
  if (upper === undefined) return above(lower);
  // Both limits above the value: the upper tails are the small ones.
  return below(lower) > 0.5 ? above(lower) - above(upper) : Math.max(0, below(upper) - below(lower));
}

/**
 * Acceptance limits moved inward by a guard band w = r·U, U = k·u (JCGM 106, 8.3.2): a value within them conforms with at
 * least the probability that k·r standard uncertainties stand for; r = 1, k = 2 leaves a risk of at most 2.3 % for one-sided limits.
 *
 * @param guard w, in the unit of the limits; negative for guarded rejection, which moves the limits outward.
 * @throws RangeError when the guard bands meet, so that nothing could be accepted.
 */
export function guardedLimits(limits: Limits, guard: number): Limits {
  requireLimits(limits);
  const moved: Limits = {};
  if (limits.lower !== undefined) moved.lower = limits.lower + guard;
  if (limits.upper !== undefined) moved.upper = limits.upper - guard;
  requireLimits(moved);
  return moved;
}

function requireLimits({ lower, upper }: Limits): void {
  if (lower === undefined && upper === undefined) throw new RangeError('a requirement needs a lower or an upper limit');
  if (Number.isNaN(lower) || Number.isNaN(upper))
    throw new RangeError(`limits must be numbers, got ${lower} and ${upper}`);
  if (lower !== undefined && upper !== undefined && lower > upper)
    throw new RangeError(`the lower limit ${lower} lies above the upper limit ${upper}`);
}
