import { mean, sumOfSquaredDeviations } from '../../numerics/describe.ts';
import { leastSquares } from '../../numerics/leastSquares.ts';
import { straightLine } from '../../numerics/regression.ts';

/** One reading of a push in the middle of a span: deflection (m, from the platform) and force (N), in the order taken. */
export interface PushPoint {
  deflection: number;
  force: number;
}

/** The straight beginning of a push. */
export interface InitialSlope {
  /** N/m */
  slope: number;
  /** Standard uncertainty from the scatter about the line, N/m, with its degrees of freedom. */
  u: number;
  dof: number;
  /** Scatter about the line, N, and √Σ(δ − δ̄)², m: u is the one over the other. */
  residualSd: number;
  spread: number;
  /** How many of the points lie on it. */
  points: number;
  /** N: what the line leaves at no deflection; a zero that was off, or slack taken up. */
  intercept: number;
  /** m and N between the first and the last point used: an error of the tool over that range is one of the slope. */
  deflectionRange: number;
  forceRange: number;
}

const FEWEST_POINTS = 3;
/** The line may bend by this share of its slope before its end is left out. Common practice, no source. */
const MOST_BEND = 0.05;
/** A bend within so many of its own standard errors is taken for scatter. */
const BEND_ERRORS = 2;

/** Whether the slope falls or rises from one end of the points to the other, judged by a parabola through them. */
function bends(x: readonly number[], y: readonly number[], noise: number): boolean {
  if (x.length < FEWEST_POINTS + 1) return false;
  const middle = (x[0] + x[x.length - 1]) / 2;
  const half = (x[x.length - 1] - x[0]) / 2;
  const along = x.map((value) => (value - middle) / half);
  const fit = leastSquares(
    along.map((u) => [1, u, u * u]),
    y,
  );
  const [, slope, curve] = fit.coefficients;
  const bend = Math.abs(4 * curve);
  // Few points lie on a parabola by luck: what their steps alone make of its curve is the least that its error can be.
  const squares = leastSquares(
    along.map((u) => [1, u]),
    along.map((u) => u * u),
  ).residualSquares;
  const error = Math.max(fit.errors[2], noise / Math.sqrt(squares));
  return bend > MOST_BEND * Math.abs(slope) && Math.abs(curve) > BEND_ERRORS * error;
}

/** A force that falls by more than so much of the whole, and by more than two steps of the display, falls in earnest. Ours. */
const FALL = { share: 0.05, steps: 2 };

/**
 * Where the force of a push falls although the deflection rises: the two points, the deepest fall first; null where it does
 * not fall by more than 5 % of all and two steps of the display. A piece that is pressed harder gives way further, so a reading
 * is off, or the piece slipped off its supports.
 *
 * @param points in the order of their deflections
 * @param step of the display, N
 */
export function fallOf(points: readonly PushPoint[], step: number): [PushPoint, PushPoint] | null {
  const forces = points.map((p) => p.force);
  const most = Math.max(FALL.share * (Math.max(...forces) - Math.min(...forces)), FALL.steps * step);
  const falls = points.slice(1).map((after, i): [PushPoint, PushPoint] => [points[i], after]);
  const [deepest] = falls.sort((a, b) => b[0].force - b[1].force - (a[0].force - a[1].force));
  return deepest && deepest[0].force - deepest[1].force > most ? deepest : null;
}

/**
 * Slope of the straight beginning of a push, F against δ, by least squares over as many of the first points as still lie on
 * one line. The line need not pass the origin: slack and a zero that is off belong to its intercept.
 *
 * Not for points taken while unloading.
 *
 * @param noise standard deviation that the steps of the displays leave in a force, N
 * @throws RangeError for fewer than 3 points, deflections that do not rise, or a slope that is not positive.
 */
export function initialSlope(points: readonly PushPoint[], noise = 0): InitialSlope {
  if (points.length < FEWEST_POINTS)
    throw new RangeError(`a slope needs ${FEWEST_POINTS} points, and there are ${points.length}`);
  const x = points.map((p) => p.deflection);
  const y = points.map((p) => p.force);
  if (x.some((value, i) => i > 0 && !(value > x[i - 1])))
    throw new RangeError('the deflections of a push rise from point to point');
  let n = points.length;
  while (n > FEWEST_POINTS && bends(x.slice(0, n), y.slice(0, n), noise)) n--;
  const line = straightLine(x.slice(0, n), y.slice(0, n));
  if (!(line.slope > 0)) throw new RangeError('the force of a push rises with the deflection');
  return {
    slope: line.slope,
    u: line.slopeError,
    dof: line.dof,
    residualSd: line.residualSd,
    spread: Math.sqrt(sumOfSquaredDeviations(x.slice(0, n), mean(x.slice(0, n)))),
    points: n,
    intercept: line.intercept,
    deflectionRange: x[n - 1] - x[0],
    forceRange: y[n - 1] - y[0],
  };
}

/** Bending stiffness from the slope of a push in the middle of a span: EI = (F/δ) · span³ / 48. N/m, m → N m². */
export function stiffnessFromPush(slope: number, span: number): number {
  return (slope * span ** 3) / 48;
}

/**
 * Share by which a push on a short span shows too little stiffness because the piece also shears: 12 EI / (κ G A span²), for
 * a round solid bar with E/G = 2.6 and κ = 0.9, 2.17 · (D/span)². Strands slide more easily than a bar shears, so it is the
 * least that it can be.
 *
 * Source: S. P. Timoshenko, J. M. Gere, Mechanics of Materials, shear deflection of beams. From memory; κ for a round section
 * with Poisson's ratio 0.3 by G. R. Cowper, Journal of Applied Mechanics 33 (1966) 335, rounded. From memory.
 */
export function shearShare(diameter: number, span: number): number {
  const E_OVER_G = 2.6;
  const SHEAR_FACTOR = 0.9;
  return ((0.75 * E_OVER_G) / SHEAR_FACTOR) * (diameter / span) ** 2;
}

/** A span of fewer diameters than this is short: the correction passes 2 %. */
export const SHORT_SPAN_IN_DIAMETERS = 10;

/** What a push took and did not give back. */
export interface Hysteresis {
  /** J: area between loading and unloading. */
  lost: number;
  /** Share of the work of loading, from 0 to 1 unless the readings are off. */
  share: number;
}

/** Work under a line of points, J, by trapezoids. */
function work(points: readonly PushPoint[]): number {
  return points.reduce(
    (sum, p, i) =>
      i === 0 ? 0 : sum + ((p.force + points[i - 1].force) / 2) * (p.deflection - points[i - 1].deflection),
    0,
  );
}

/**
 * Work lost in one push and release, over the deflections that both branches cover; null when they share none or a branch has
 * fewer than 2 points.
 */
export function hysteresis(loading: readonly PushPoint[], unloading: readonly PushPoint[]): Hysteresis | null {
  if (loading.length < 2 || unloading.length < 2) return null;
  const rising = [...loading].sort((a, b) => a.deflection - b.deflection);
  const falling = [...unloading].sort((a, b) => a.deflection - b.deflection);
  const low = Math.max(rising[0].deflection, falling[0].deflection);
  const high = Math.min(rising[rising.length - 1].deflection, falling[falling.length - 1].deflection);
  if (!(high > low)) return null;
  const taken = work(between(rising, low, high));
  if (!(taken > 0)) return null;
  const lost = taken - work(between(falling, low, high));
  return { lost, share: lost / taken };
}

function forceAt(points: readonly PushPoint[], deflection: number): number {
  const after = points.findIndex((p) => p.deflection >= deflection);
  if (after <= 0) return points[Math.max(after, 0)].force;
  const [a, b] = [points[after - 1], points[after]];
  return a.force + ((b.force - a.force) * (deflection - a.deflection)) / (b.deflection - a.deflection);
}

function between(points: readonly PushPoint[], low: number, high: number): PushPoint[] {
  const inside = points.filter((p) => p.deflection > low && p.deflection < high);
  const end = (deflection: number) => ({ deflection, force: forceAt(points, deflection) });
  return [end(low), ...inside, end(high)];
}
