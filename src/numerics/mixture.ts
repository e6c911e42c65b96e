import { normalQuantile, studentTLogPeak, studentTQuantile } from './distributions.ts';
import { normalDensity, normalUpperTail, studentTUpperTail } from './fastTails.ts';

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
/** A cubically converging step this small, in units of the narrowest spread, leaves an error far below 1e-10 of it. */
const LAST_STEP = 1e-5;
/** A bracket this narrow, in units of the narrowest spread, is as good as a point, even where steps do not converge. */
const FINEST = 1e-13;
const MOST_STEPS = 200;

/** A component with what does not depend on x computed once. */
interface Part extends Component {
  /** Logarithm of the density of T at 0 (Student t only). */
  logPeak: number;
}

/** A tail of a mixture at x, its density there and the density's slope. */
interface Tail {
  probability: number;
  density: number;
  slope: number;
}

/**
 * Probability that the mixture lies at or below x: Σ wᵢ Fᵢ((x − mᵢ)/sᵢ).
 *
 * @throws RangeError when there is no component of positive weight, or a component is not finite.
 */
export function mixtureCdf(components: readonly Component[], x: number): number {
  if (Number.isNaN(x)) throw new RangeError('x must be a number');
  return tailBelow(usable(components), x).probability;
}

/** Probability that the mixture lies above x, accurate however small it is. Throws like {@link mixtureCdf}. */
export function mixtureUpperTail(components: readonly Component[], x: number): number {
  if (Number.isNaN(x)) throw new RangeError('x must be a number');
  return tailBelow(mirrored(usable(components)), -x, false).probability;
}

/**
 * Quantile of the mixture: the smallest x at which the distribution function reaches p, to 1e-10 of x and of the spread.
 *
 * The p-quantile of a mixture lies between the least and the greatest p-quantile of its components, so the bracket is
 * certain; within it Halley's steps on the logarithm of the nearer tail, and a bisection whenever a step would leave the
 * bracket or does not shrink fast enough. Where components lie so far apart that the distribution function is level at p, any point
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
function usable(components: readonly Component[]): Part[] {
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
  return counted.map((c) => ({
    weight: c.weight / sum,
    mean: c.mean,
    sd: c.sd,
    dof: c.dof,
    logPeak: c.dof === Number.POSITIVE_INFINITY ? 0 : studentTLogPeak(c.dof),
  }));
}

function mirrored(parts: readonly Part[]): Part[] {
  return parts.map((c) => ({ ...c, mean: -c.mean }));
}

/** P(X ≤ x), or P(X < x) when fixed values at x are not to count, with the density of the spread components. */
function tailBelow(parts: readonly Part[], x: number, withFixed = true): Tail {
  let probability = 0;
  let density = 0;
  let slope = 0;
  for (const c of parts) {
    if (c.sd === 0) {
      if (x > c.mean || (withFixed && x === c.mean)) probability += c.weight;
      continue;
    }
    const z = (x - c.mean) / c.sd;
    if (c.dof === Number.POSITIVE_INFINITY) {
      const at = normalDensity(z);
      probability += c.weight * normalUpperTail(-z, at);
      density += (c.weight * at) / c.sd;
      slope -= (c.weight * at * z) / (c.sd * c.sd);
    } else {
      const square = z * z;
      const at = Math.exp(c.logPeak - 0.5 * (c.dof + 1) * Math.log1p(square / c.dof));
      probability += c.weight * studentTUpperTail(-z, c.dof, at);
      density += (c.weight * at) / c.sd;
      slope -= (c.weight * at * z * (c.dof + 1)) / ((c.dof + square) * c.sd * c.sd);
    }
  }
  return { probability: Math.min(1, probability), density, slope };
}

function quantileOf(parts: readonly Part[], p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`a quantile needs a probability above 0 and below 1, got ${p}`);
  if (p <= 0.5) return quantileBelow(parts, p);
  return fixedValueAt(parts, p) ?? quantileAbove(parts, 1 - p);
}

/** The x above which the share q ≤ ½ lies: the lower quantile of the mirrored mixture, so both tails are equally exact. */
function quantileAbove(parts: readonly Part[], q: number): number {
  return -quantileBelow(mirrored(parts), q);
}

/** The smallest x with F(x) ≥ p, for p ≤ ½. */
function quantileBelow(parts: readonly Part[], p: number): number {
  const fixed = fixedValueAt(parts, p);
  if (fixed !== null) return fixed;
  const z = normalQuantile(p);
  let [low, high] = bracket(parts, p, z);
  const narrowest = parts.reduce((s, c) => (c.sd > 0 ? Math.min(s, c.sd) : s), Number.POSITIVE_INFINITY);
  let x = parts.reduce((s, c) => s + c.weight * (c.mean + z * c.sd), 0);
  if (!(x > low && x < high)) x = 0.5 * (low + high);
  let lastMove = high - low;
  for (let n = 0; n < MOST_STEPS; n++) {
    const tail = tailBelow(parts, x);
    if (tail.probability < p) low = x;
    else high = x;
    const step = stepToTail(tail, p);
    // Clamped, because rounding may put the last step a hair outside the bracket.
    if (Math.abs(step) <= LAST_STEP * narrowest) return Math.min(high, Math.max(low, x - step));
    const stepped = x - step;
    const good = stepped > low && stepped < high && Math.abs(step) < 0.5 * Math.abs(lastMove);
    const next = good ? stepped : 0.5 * (low + high);
    lastMove = next - x;
    x = next;
    if (high - low <= FINEST * narrowest + 2 * Number.EPSILON * Math.abs(x)) return x;
  }
  return x;
}

/** Halley's step for ln F(x) = ln p, in x; not a number where F has underflowed, and then the bracket is halved. */
function stepToTail(tail: Tail, p: number): number {
  const rate = tail.density / tail.probability;
  const newton = Math.log(tail.probability / p) / rate;
  const bend = tail.slope / tail.density - rate;
  const halley = 1 - 0.5 * newton * bend;
  return halley > 0.5 ? newton / halley : newton;
}

/** The fixed value (a component without spread) at which F jumps over p, or null when p is reached elsewhere. */
function fixedValueAt(parts: readonly Part[], p: number): number | null {
  const fixed = parts.filter((c) => c.sd === 0).map((c) => c.mean);
  for (const value of fixed)
    if (tailBelow(parts, value).probability >= p && tailBelow(parts, value, false).probability < p) return value;
  // Only rounding in the sum of the weights can leave a mixture of nothing but fixed values here.
  return fixed.length === parts.length ? Math.max(...fixed) : null;
}

/** Two points between which the p-quantile certainly lies, for p ≤ ½: a Student t quantile is never nearer 0 than the normal one, z. */
function bracket(parts: readonly Part[], p: number, z: number): [number, number] {
  const leastDof = parts.reduce((least, c) => Math.min(least, c.dof), Number.POSITIVE_INFINITY);
  const far = studentTQuantile(p, leastDof);
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const c of parts) {
    low = Math.min(low, c.mean + far * c.sd);
    high = Math.max(high, c.mean + z * c.sd);
  }
  // A little room for rounding in the component quantiles.
  const room = 1e-9 * (high - low) + 1e-12 * (Math.abs(low) + Math.abs(high));
  return [low - room, high + room];
}
