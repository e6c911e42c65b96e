import { integrate, type Slopes } from '../../numerics/ode.ts';
import { brentRoot } from '../../numerics/roots.ts';
import { setAtTip, tipOfSet } from './droopWithSet.ts';

/** A point of a drooping piece as shares of its overhang: level distance from the clamp, and depth below it. */
export interface DroopPoint {
  reach: number;
  drop: number;
}

const TOLERANCE = 1e-9;
/** Beyond this turn the tip of an evenly curved piece comes back, so that its standing-off no longer tells the turn. rad */
const MOST_TURN = 2.33;

/** β″ = λ s sin β from the free end, β = 90° − θ, with ∫cos β (drop) and ∫sin β (reach). */
const ownWeight =
  (lambda: number): Slopes =>
  (s, y, slope) => {
    const sine = Math.sin(y[0]);
    slope[0] = y[1];
    slope[1] = lambda * s * sine;
    slope[2] = Math.cos(y[0]);
    slope[3] = sine;
  };

/**
 * The turn q = κ₀ L of an evenly curved piece from how far its tip stands off the straight, share of the overhang: the inverse
 * of `setAtTip`. What no even curve reaches is taken as the largest that one does.
 */
export function turnOfSet(share: number): number {
  const most = setAtTip(MOST_TURN);
  if (Math.abs(share) >= most) return Math.sign(share) * MOST_TURN;
  return brentRoot((q) => setAtTip(q) - share, -MOST_TURN, MOST_TURN, { tolerance: 1e-12 });
}

/**
 * The shape of a clamped piece under its own weight, from the clamp to the tip, in `steps` equal steps along the piece.
 *
 * @param lambda w L³ / EI, 1e-6 to 1000
 * @param turn q = κ₀ L of a piece that is not straight by itself, rad; 0 for a straight one
 * @param sign −1 for the piece turned over
 */
export function droopCurve(lambda: number, turn = 0, sign: 1 | -1 = 1, steps = 40): DroopPoint[] {
  let y = Float64Array.from([tipOfSet(lambda, turn, sign), sign * turn, 0, 0]);
  const fromTip = [{ reach: 0, drop: 0 }];
  for (let n = 0; n < steps; n++) {
    y = Float64Array.from(integrate(ownWeight(lambda), [...y], n / steps, (n + 1) / steps, { tolerance: TOLERANCE }));
    fromTip.push({ reach: y[3], drop: y[2] });
  }
  const clamp = fromTip[steps];
  return fromTip.map(({ reach, drop }) => ({ reach: clamp.reach - reach, drop: clamp.drop - drop })).reverse();
}
