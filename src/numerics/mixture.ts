import { normalCdf, normalQuantile, studentTCdf, studentTLogPeak, studentTQuantile } from './distributions.ts';

/**
 * One component of a mixture: weight · (mean + sd · T), T Student t with `dof` degrees of freedom, or standard normal for
 * dof = Infinity. `sd` is the scale, the standard uncertainty as stated: for finite dof the standard deviation of the
 * component is sd · √(ν/(ν−2)), which is larger. sd = 0 is a fixed value. Weights need not sum to 1; they are shares of
 * their sum.
 */
export interface Component {
  weight: number;
  mean: number;
  sd: number;
  dof: number;
}

/** Components with less than this share of the weight cannot be seen in any result and are left out. */
const NEGLIGIBLE_WEIGHT = 1e-12;
/** Steps smaller than this, relative to the value and the narrowest spread, end the search for a quantile. */
const QUANTILE_TOLERANCE = 1e-12;
const MOST_STEPS = 200;
const INVERSE_ROOT_TWO_PI = 0.3989422804014327;
/** Further out than this the normal tail is below 1e-300 of anything. */
const NORMAL_REACH = 38;

/**
 * Probability that the mixture lies at or below x: Σ wᵢ Fᵢ((x − mᵢ)/sᵢ).
 *
 * @throws RangeError when there is no component of positive weight, or a component is not finite.
 */
export function mixtureCdf(components: readonly Component[], x: number): number {
  if (Number.isNaN(x)) throw new RangeError('x must be a number');
  return lowerTail(usable(components), x);
}

/** Probability that the mixture lies above x, accurate however small it is. Throws like {@link mixtureCdf}. */
export function mixtureUpperTail(components: readonly Component[], x: number): number {
  if (Number.isNaN(x)) throw new RangeError('x must be a number');
  return upperTail(usable(components), x);
}

/**
 * Quantile of the mixture: the smallest x at which the distribution function reaches p, to 1e-10 of x and of the spread.
 *
 * The p-quantile of a mixture lies between the least and the greatest p-quantile of its components, so the bracket is
 * certain; within it Newton's steps on the logarithm of the nearer tail, and a bisection whenever a step would leave the
 * bracket or has not halved it. Where components lie so far apart that the distribution function is level at p, any point
 * of that gap is right and one of them is given.
 *
 * @param p probability, 0 < p < 1.
 * @throws RangeError for a p outside (0, 1) and like {@link mixtureCdf}.
 */
export function mixtureQuantile(components: readonly Component[], p: number): number {
  return quantileOf(usable(components), p);
}

/** Mean Σ wᵢ mᵢ. A component with dof ≤ 1 has no mean; its centre is taken. Throws like {@link mixtureCdf}. */
export function mixtureMean(components: readonly Component[]): number {
  return meanOf(usable(components));
}

/**
 * Standard deviation √Σ wᵢ (sᵢ² νᵢ/(νᵢ−2) + (mᵢ − m)²); Infinity when a component has dof ≤ 2 and a spread.
 * Throws like {@link mixtureCdf}.
 */
export function mixtureSd(components: readonly Component[]): number {
  const parts = usable(components);
  const mean = meanOf(parts);
  let variance = 0;
  for (const c of parts) variance += c.weight * (componentVariance(c) + (c.mean - mean) ** 2);
  return Math.sqrt(variance);
}

/**
 * Equal-tailed interval that holds the given share of the mixture, such as 0.95.
 *
 * @throws RangeError for a level outside (0, 1) and like {@link mixtureCdf}.
 */
export function mixtureInterval(components: readonly Component[], level: number): [number, number] {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, got ${level}`);
  const parts = usable(components);
  const tail = (1 - level) / 2;
  return [quantileOf(parts, tail), quantileAbove(parts, tail)];
}

function componentVariance(c: Component): number {
  if (c.sd === 0) return 0;
  if (c.dof === Number.POSITIVE_INFINITY) return c.sd * c.sd;
  return c.dof > 2 ? (c.sd * c.sd * c.dof) / (c.dof - 2) : Number.POSITIVE_INFINITY;
}

function meanOf(parts: readonly Component[]): number {
  let mean = 0;
  for (const c of parts) mean += c.weight * c.mean;
  return mean;
}

/** The components that count, their weights made to sum to 1. */
function usable(components: readonly Component[]): Component[] {
  let total = 0;
  for (const c of components) {
    if (!(c.weight >= 0 && c.sd >= 0 && c.dof > 0) || !Number.isFinite(c.weight + c.mean + c.sd))
      throw new RangeError(
        `a component needs weight ≥ 0, sd ≥ 0, dof > 0 and finite numbers, got weight ${c.weight}, mean ${c.mean}, sd ${c.sd}, dof ${c.dof}`,
      );
    total += c.weight;
  }
  if (!(total > 0)) throw new RangeError('a mixture needs at least one component of positive weight');
  const counted = components.filter((c) => c.weight >= NEGLIGIBLE_WEIGHT * total);
  const sum = counted.reduce((s, c) => s + c.weight, 0);
  return counted.map((c) => ({ weight: c.weight / sum, mean: c.mean, sd: c.sd, dof: c.dof }));
}

function lowerTail(parts: readonly Component[], x: number): number {
  let sum = 0;
  for (const c of parts) sum += c.weight * (c.sd === 0 ? Number(x >= c.mean) : tailBelow((x - c.mean) / c.sd, c.dof));
  return Math.min(1, sum);
}

function upperTail(parts: readonly Component[], x: number): number {
  let sum = 0;
  for (const c of parts) sum += c.weight * (c.sd === 0 ? Number(x < c.mean) : tailBelow((c.mean - x) / c.sd, c.dof));
  return Math.min(1, sum);
}

function tailBelow(z: number, dof: number): number {
  if (dof !== Number.POSITIVE_INFINITY) return studentTCdf(z, dof);
  if (z > NORMAL_REACH) return 1;
  return z < -NORMAL_REACH ? 0 : normalCdf(z);
}

function density(parts: readonly Component[], x: number): number {
  let sum = 0;
  for (const c of parts) {
    if (c.sd === 0) continue;
    const z = (x - c.mean) / c.sd;
    const at =
      c.dof === Number.POSITIVE_INFINITY
        ? INVERSE_ROOT_TWO_PI * Math.exp(-0.5 * z * z)
        : Math.exp(studentTLogPeak(c.dof) - 0.5 * (c.dof + 1) * Math.log1p((z * z) / c.dof));
    sum += (c.weight * at) / c.sd;
  }
  return sum;
}

function quantileOf(parts: readonly Component[], p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`a quantile needs a probability above 0 and below 1, got ${p}`);
  return p <= 0.5 ? quantileBelow(parts, p) : quantileAbove(parts, 1 - p);
}

/** The x above which the share q ≤ ½ lies: the lower quantile of the mirrored mixture, so both tails are equally exact. */
function quantileAbove(parts: readonly Component[], q: number): number {
  return -quantileBelow(
    parts.map((c) => ({ ...c, mean: -c.mean })),
    q,
  );
}

/** The smallest x with F(x) ≥ p, for p ≤ ½. */
function quantileBelow(parts: readonly Component[], p: number): number {
  const fixed = fixedValueAt(parts, p);
  if (fixed !== null) return fixed;
  let [low, high] = bracket(parts, p);
  const narrowest = parts.reduce((s, c) => (c.sd > 0 ? Math.min(s, c.sd) : s), Number.POSITIVE_INFINITY);
  const z = normalQuantile(p);
  let x = parts.reduce((s, c) => s + c.weight * (c.mean + z * c.sd), 0);
  if (!(x > low && x < high)) x = 0.5 * (low + high);
  const logP = Math.log(p);
  let lastMove = high - low;
  for (let n = 0; n < MOST_STEPS; n++) {
    const below = lowerTail(parts, x);
    if (below < p) low = x;
    else high = x;
    // Newton's step on ln F − ln p; not a number where F has underflowed, and then the bracket is halved.
    const step = ((Math.log(below) - logP) * below) / density(parts, x);
    const newton = x - step;
    const good = newton > low && newton < high && Math.abs(step) < 0.5 * Math.abs(lastMove);
    const next = good ? newton : 0.5 * (low + high);
    lastMove = next - x;
    x = next;
    if (Math.abs(lastMove) <= QUANTILE_TOLERANCE * (Math.abs(x) + narrowest)) return x;
  }
  return x;
}

/** The fixed value (a component without spread) at which F jumps over p, or null when p is reached elsewhere. */
function fixedValueAt(parts: readonly Component[], p: number): number | null {
  const fixed = parts.filter((c) => c.sd === 0).map((c) => c.mean);
  if (fixed.length === 0) return null;
  for (const value of fixed) {
    const jump = parts.reduce((s, c) => (c.sd === 0 && c.mean === value ? s + c.weight : s), 0);
    const at = lowerTail(parts, value);
    if (at >= p && at - jump < p) return value;
  }
  // Only rounding in the sum of the weights can leave a mixture of fixed values here.
  return fixed.length === parts.length ? Math.max(...fixed) : null;
}

/** Two points between which the p-quantile certainly lies, for p ≤ ½: a Student t quantile is never nearer 0 than the normal one. */
function bracket(parts: readonly Component[], p: number): [number, number] {
  const leastDof = parts.reduce((least, c) => Math.min(least, c.dof), Number.POSITIVE_INFINITY);
  const far = studentTQuantile(p, leastDof);
  const near = normalQuantile(p);
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const c of parts) {
    low = Math.min(low, c.mean + far * c.sd);
    high = Math.max(high, c.mean + near * c.sd);
  }
  // A little room for rounding in the component quantiles.
  const room = 1e-9 * (high - low) + 1e-12 * (Math.abs(low) + Math.abs(high));
  return [low - room, high + room];
}
