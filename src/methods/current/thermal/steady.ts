import { resistanceFactor } from '../materials.ts';
import { type HeatedCable, requireCable, requireSurroundings, type Surroundings } from './run.ts';
import { heatPathOf, lossPerMetre } from './shape.ts';

/** Where a cable ends up under a steady current. Temperatures in K, heat in W per metre of the whole bundle. */
export interface Steady {
  /** Hottest conductor. */
  conductor: number;
  surface: number;
  heat: number;
  /** Ω/m of one cable at that temperature. */
  resistance: number;
}

/** Share by which heat made and heat given off may differ. */
const BALANCE = 1e-9;
const MOST_STEPS = 100;
/** K above the surroundings where the search begins. */
const FIRST_RISE = 20;
/** A bracket this narrow, as a share of its end, without a balance in it: there is none. */
const NARROWEST = 1e-10;

/**
 * Steady temperature of a cable under a current: what it makes, N I² R₂₀ (1 + α (T − 20 °C)), is what its surface gives off.
 * null when there is none below the melting point of the metal: resistance then grows faster than the loss, or it melts.
 *
 * A horizontal run in still air; not in wind, in water, or lying on a hot surface.
 *
 * @param current A in each cable, either sign; @throws RangeError for a current that is no number and as {@link requireCable}.
 */
export function steadyTemperature(cable: HeatedCable, current: number, surroundings: Surroundings): Steady | null {
  requireCable(cable);
  requireSurroundings(surroundings);
  if (!Number.isFinite(current)) throw new RangeError(`a current is a number, got ${current}`);
  const path = heatPathOf(cable, surroundings);
  const { ambient, bundle } = surroundings;
  const { alpha, meltingPoint } = cable.metal;
  const made = bundle * current * current * cable.resistance20;
  const at = (surface: number, loss: number): Steady => {
    const conductor = surface + loss * path.resistance;
    return { conductor, surface, heat: loss, resistance: cable.resistance20 * resistanceFactor(alpha, conductor) };
  };
  if (current === 0) return at(ambient, 0);
  const surplus = (loss: number, surface: number) =>
    made * resistanceFactor(alpha, surface + loss * path.resistance) - loss;
  let low = ambient;
  let high = meltingPoint;
  let surface = Math.min(ambient + FIRST_RISE, 0.5 * (low + high));
  let loss = lossPerMetre(path, surface, surroundings);
  let f = surplus(loss, surface);
  // The slope comes from a step of a kelvin once; afterwards from the last two places.
  let slope = surplus(lossPerMetre(path, surface + 1, surroundings), surface + 1) - f;
  for (let n = 0; n < MOST_STEPS && Math.abs(f) > BALANCE * loss; n++) {
    if (f > 0) low = surface;
    else high = surface;
    if (high - low < NARROWEST * high) return null;
    const stepped = surface - f / slope;
    const next = slope < 0 && stepped > low && stepped < high ? stepped : 0.5 * (low + high);
    const before = f;
    loss = lossPerMetre(path, next, surroundings);
    f = surplus(loss, next);
    slope = (f - before) / (next - surface);
    surface = next;
  }
  const found = at(surface, loss);
  return found.conductor < meltingPoint ? found : null;
}

/** Carrying current and what goes with it. */
export interface Carrying {
  /** A in each cable. */
  current: number;
  surface: number;
  heat: number;
}

/**
 * Current at which the hottest conductor stands at a temperature, A: the surface at which loss and way through the wall give
 * that temperature, then I = √(q / (N R)). 0 when the surroundings are as hot already.
 *
 * @param rating K. @throws RangeError for a rating above the melting point, and as {@link requireCable}.
 */
export function carryingCurrent(cable: HeatedCable, rating: number, surroundings: Surroundings): Carrying {
  requireCable(cable);
  requireSurroundings(surroundings);
  if (!(rating < cable.metal.meltingPoint))
    throw new RangeError(
      `${cable.metal.name} melts at ${cable.metal.meltingPoint} K; a rating lies below, got ${rating}`,
    );
  const { ambient, bundle } = surroundings;
  if (rating <= ambient) return { current: 0, surface: ambient, heat: 0 };
  const path = heatPathOf(cable, surroundings);
  let low = ambient;
  let high = rating;
  let surface = 0.5 * (low + high);
  for (let n = 0; n < MOST_STEPS && high - low > 1e-11 * rating; n++) {
    const loss = lossPerMetre(path, surface, surroundings);
    const over = surface + loss * path.resistance - rating;
    if (Math.abs(over) < 1e-9) break;
    if (over > 0) high = surface;
    else low = surface;
    const slope = 1 + ((lossPerMetre(path, surface + 0.01, surroundings) - loss) / 0.01) * path.resistance;
    const next = surface - over / slope;
    surface = next > low && next < high ? next : 0.5 * (low + high);
  }
  const heat = lossPerMetre(path, surface, surroundings);
  const resistance = cable.resistance20 * resistanceFactor(cable.metal.alpha, rating);
  return { current: Math.sqrt(heat / (bundle * resistance)), surface, heat };
}
