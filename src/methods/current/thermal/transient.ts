import { TWENTY_CELSIUS } from '../../../units/dimension.ts';
import { March, type Source, type SurfaceLoss } from './march.ts';
import { ringsOf } from './rings.ts';
import { type HeatedCable, requireCable, requireSurroundings, type Surroundings } from './run.ts';
import { heatPathOf, lossPerMetre } from './shape.ts';

/** A current that holds for some time, A and s. */
export interface Hold {
  current: number;
  seconds: number;
}

export interface TransientPoint {
  /** s since the start. */
  time: number;
  /** K: the hottest conductor, and the surface. */
  conductor: number;
  surface: number;
}

export interface Transient {
  points: TransientPoint[];
  /** Hottest conductor over the whole time, K, and when. */
  peak: number;
  peakAt: number;
  /** J per metre: made, given off and still held. What is made less the two others, over what is made, is `imbalance`. */
  made: number;
  lost: number;
  held: number;
  imbalance: number;
  /** False when the metal would melt; points end there. */
  held_together: boolean;
}

/** Longest step, s, and steps in the shortest hold: errors of second order in their share of the time constant. */
const LONGEST_STEP = 4;
const STEPS_IN_A_HOLD = 40;
const MOST_STEPS = 200_000;
/** Kelvin over which the slope of the loss is taken. */
const SLOPE_OVER = 0.05;

function surfaceLossOf(cable: HeatedCable, surroundings: Surroundings): SurfaceLoss {
  const path = heatPathOf(cable, surroundings);
  return (kelvin, into) => {
    const loss = lossPerMetre(path, kelvin, surroundings);
    into.loss = loss;
    into.slope = (lossPerMetre(path, kelvin + SLOPE_OVER, surroundings) - loss) / SLOPE_OVER;
  };
}

export interface TransientOptions {
  /** K at the start, all through; the surroundings when left out. */
  start?: number;
  /** Points kept, evenly over the steps; 200 when left out. */
  keep?: number;
  /** Ends as soon as the conductor reaches it, K. */
  until?: number;
}

/**
 * Temperatures of a cable or bundle under a current that changes step by step: rings from the conductor to the air, each
 * hold of the current marched through in steps of its own.
 *
 * @throws RangeError for a hold without time, a current that is no number, more than 200,000 steps, and as {@link requireCable}.
 */
export function transient(
  cable: HeatedCable,
  holds: readonly Hold[],
  surroundings: Surroundings,
  { start = surroundings.ambient, keep = 200, until = Number.POSITIVE_INFINITY }: TransientOptions = {},
): Transient {
  requireCable(cable);
  requireSurroundings(surroundings);
  const plan = stepsOf(holds);
  const rings = ringsOf(cable, surroundings);
  const march = new March(rings, surfaceLossOf(cable, surroundings), start);
  const { alpha, meltingPoint } = cable.metal;
  const conductorAt = (watts: number): number => {
    const middle = march.temperatures[0];
    if (rings.ownWall === Number.POSITIVE_INFINITY) return middle;
    // Each cable's own wall is thin beside the bundle: its drop follows the heat at once. q = W(1 + α(T − T₀)), T = T_m + q/G.
    const drop = watts / rings.ownWall;
    return (middle + drop * (1 - alpha * TWENTY_CELSIUS)) / (1 - drop * alpha);
  };
  const every = Math.max(1, Math.floor(plan.total / keep));
  const points: TransientPoint[] = [{ time: 0, conductor: start, surface: start }];
  const result = { peak: start, peakAt: 0, held_together: true };
  let time = 0;
  let taken = 0;
  walk: for (const { current, seconds, steps } of plan.holds) {
    const source: Source = {
      watts: surroundings.bundle * current * current * cable.resistance20,
      alpha,
      reference: TWENTY_CELSIUS,
    };
    const step = seconds / steps;
    for (let i = 0; i < steps; i++) {
      march.step(step, source);
      time += step;
      taken++;
      const conductor = conductorAt(source.watts);
      if (conductor > result.peak) [result.peak, result.peakAt] = [conductor, time];
      const ends = conductor >= until || !(conductor < meltingPoint);
      if (ends || taken % every === 0 || taken === plan.total)
        points.push({ time, conductor, surface: march.temperatures[march.temperatures.length - 1] });
      if (!(conductor < meltingPoint)) result.held_together = false;
      if (ends) break walk;
    }
  }
  const held = march.heldAbove(start);
  const { made, lost } = march;
  const imbalance = made > 0 ? Math.abs(made - lost - held) / made : 0;
  return { points, ...result, made, lost, held, imbalance };
}

function stepsOf(holds: readonly Hold[]): { holds: (Hold & { steps: number })[]; total: number } {
  let total = 0;
  const planned = holds.map((hold, i) => {
    if (!(hold.seconds > 0) || !Number.isFinite(hold.seconds))
      throw new RangeError(`hold ${i + 1} of the current lasts ${hold.seconds} s; a time above zero is needed`);
    if (!Number.isFinite(hold.current)) throw new RangeError(`hold ${i + 1} has the current ${hold.current}`);
    const fewest = holds.length > 50 ? 2 : STEPS_IN_A_HOLD;
    const steps = Math.max(fewest, Math.ceil(hold.seconds / LONGEST_STEP));
    total += steps;
    return { ...hold, steps };
  });
  if (total > MOST_STEPS) throw new RangeError(`the profile takes ${total} steps; at most ${MOST_STEPS}`);
  return { holds: planned, total };
}

/**
 * Seconds until the hottest conductor reaches a temperature under a steady current from rest, between the two steps around it
 * by a straight line; null when it does not within `longest`.
 *
 * @param rating K. Throws like {@link transient}.
 */
export function timeToTemperature(
  cable: HeatedCable,
  current: number,
  rating: number,
  surroundings: Surroundings,
  { longest = 6 * 3600, start = surroundings.ambient }: { longest?: number; start?: number } = {},
): number | null {
  if (start >= rating) return 0;
  // First coarsely, then again with many short steps over the time that it took.
  const coarse = transient(cable, [{ current, seconds: longest }], surroundings, { start, until: rating, keep: 1e6 });
  const reached = coarse.points[coarse.points.length - 1];
  if (reached.conductor < rating) return null;
  const fine = transient(cable, [{ current, seconds: reached.time }], surroundings, {
    start,
    until: rating,
    keep: 1e6,
  });
  const after = fine.points[fine.points.length - 1];
  const before = fine.points[fine.points.length - 2];
  const share = (rating - before.conductor) / (after.conductor - before.conductor);
  return before.time + Math.min(1, Math.max(0, share)) * (after.time - before.time);
}
