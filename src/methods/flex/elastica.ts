import { integrate, integrateUntil, type Slopes } from '../../numerics/ode.ts';
import { brentRoot } from '../../numerics/roots.ts';

/**
 * A piece clamped level at one end and bent by its own weight, in lengths of its overhang.
 *
 * With s from the free end as a share of the overhang, θ below level, λ = w L³ / EI:
 *
 *     θ″ = −λ s cos θ,   θ′ = 0 at the free end,   θ = 0 at the clamp
 *
 * Source: F. T. Peirce, "The handle of cloth as a measurable quantity", Journal of the Textile Institute 21 (1930) T377, for
 * the problem; solved here without his approximation.
 */
export interface DroopShape {
  /** w L³ / EI, that is (L/c)³ with the bending length c = (EI/w)^(1/3). */
  lambda: number;
  /** Slope at the free end, rad below level. */
  tipAngle: number;
  /** Drop of the tip, share of the overhang. */
  drop: number;
  /** Distance of the tip from the clamp along the level, share of the overhang. */
  reach: number;
  /** Angle of the straight line from clamp to tip, rad below level. */
  chordAngle: number;
}

const TOLERANCE = 1e-13;
const HALF_TURN_DOWN = Math.PI / 2;
/** Beyond u = λ^(1/3) = 16 a piece hangs straight down but for its first sixteenth. */
const FURTHEST = 16;
const LEAST_TIP = 1e-7;

/**
 * β = 90° − θ keeps its digits where the tip hangs almost plumb, and u = λ^(1/3) s leaves λ out of the equation:
 * β″ = u sin β. The state is β, β′, ∫cos β, ∫sin β.
 */
const ownWeight: Slopes = (u, y, slope) => {
  const sine = Math.sin(y[0]);
  slope[0] = y[1];
  slope[1] = u * sine;
  slope[2] = Math.cos(y[0]);
  slope[3] = sine;
};

function shapeFrom(u: number, tipFromPlumb: number, drop: number, reach: number): DroopShape {
  return {
    lambda: u ** 3,
    tipAngle: HALF_TURN_DOWN - tipFromPlumb,
    drop: drop / u,
    reach: reach / u,
    chordAngle: Math.atan2(drop, reach),
  };
}

/**
 * The shape whose tip stands `tipFromPlumb` rad short of straight down: one integration from the free end to where the piece
 * lies level, which is the clamp.
 *
 * @throws RangeError unless 0 < tipFromPlumb < π/2.
 */
export function droopFromTip(tipFromPlumb: number): DroopShape {
  if (!(tipFromPlumb > 0 && tipFromPlumb < HALF_TURN_DOWN))
    throw new RangeError(`a tip hangs between level and plumb, got ${tipFromPlumb} rad from plumb`);
  const level = (y: Float64Array) => y[0] - HALF_TURN_DOWN;
  const { x: u, y } = integrateUntil(ownWeight, [tipFromPlumb, 0, 0, 0], 0, FURTHEST, level, { tolerance: TOLERANCE });
  return shapeFrom(u, tipFromPlumb, y[2], y[3]);
}

/**
 * The shape at a given λ = w L³ / EI.
 *
 * @throws RangeError unless 1e-6 ≤ λ ≤ 1000.
 */
export function droopShape(lambda: number): DroopShape {
  if (!(lambda >= 1e-6 && lambda <= 1000)) throw new RangeError(`λ lies between 1e-6 and 1000 here, got ${lambda}`);
  const end = Math.cbrt(lambda);
  const arrive = (lnTip: number) => integrate(ownWeight, [Math.exp(lnTip), 0, 0, 0], 0, end, { tolerance: TOLERANCE });
  // The tip's angle from plumb falls about like exp(−⅔ √λ), so its logarithm is what is sought.
  const lowest = Math.log(LEAST_TIP) - Math.sqrt(lambda);
  const highest = Math.log(HALF_TURN_DOWN);
  const lnTip = brentRoot((z) => arrive(z)[0] - HALF_TURN_DOWN, lowest, highest, { tolerance: 1e-15 });
  const y = arrive(lnTip);
  return shapeFrom(end, Math.exp(lnTip), y[2], y[3]);
}
