import { integrate, type Slopes } from '../../numerics/ode.ts';
import { droopShape } from './elastica.ts';

/** What was read of a droop: the drop of the tip over the overhang, or the angle of the line clamp–tip (rad). */
export type DroopRead = 'drop' | 'chordAngle';

/** A piece that is not straight by itself, from its droop either way up. */
export interface DroopWithSet {
  /** w L³ / EI */
  lambda: number;
  /** q = κ₀ L: the turn of the piece by itself over its overhang, rad; positive droops when the first face is up. */
  set: number;
  /** ∂ ln λ by each of the two readings. */
  lnLambdaByFirst: number;
  lnLambdaBySecond: number;
}

const TOLERANCE = 1e-10;
const MOST_ITERATIONS = 60;
/** Largest change of ln λ and of q in one step. */
const LONGEST_STEP = 0.5;
const SETTLED = 1e-11;
const LEVEL = Math.PI / 2;

/**
 * β = 90° − θ from the free end, s a share of the overhang: β″ = λ s sin β with ∫cos β (drop) and ∫sin β (reach), and how all
 * four answer to the tip, to ln λ and to q. Each answer obeys the same equation, differentiated.
 */
function equations(lambda: number): Slopes {
  return (s, y, d) => {
    const sine = Math.sin(y[0]);
    const cosine = Math.cos(y[0]);
    const pull = lambda * s;
    d[0] = y[1];
    d[1] = pull * sine;
    d[2] = cosine;
    d[3] = sine;
    for (let at = 4; at < 16; at += 4) {
      const forced = at === 8 ? pull * sine : 0;
      d[at] = y[at + 1];
      d[at + 1] = pull * cosine * y[at] + forced;
      d[at + 2] = -sine * y[at];
      d[at + 3] = cosine * y[at];
    }
  };
}

/** How far one face is from what was read, and the slopes of that by ln λ and q once the clamp is held level. */
interface Face {
  misfit: number;
  byLnLambda: number;
  byQ: number;
  byReading: number;
  /** Change of the tip that would hold the clamp level. */
  tip: { own: number; byLnLambda: number; byQ: number };
}

function faceAt(tip: number, lambda: number, q: number, sign: 1 | -1, read: DroopRead, reading: number): Face {
  const start = [tip, sign * q, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0, sign, 0, 0];
  const y = integrate(equations(lambda), start, 0, 1, { tolerance: TOLERANCE });
  const [drop, reach] = [y[2], y[3]];
  const [c, s] = read === 'drop' ? [1, 0] : [Math.cos(reading), Math.sin(reading)];
  const misfitBy = (at: number) => c * y[at + 2] - s * y[at + 3];
  const own = (LEVEL - y[0]) / y[4];
  const tipByLnLambda = -y[8] / y[4];
  const tipByQ = -y[12] / y[4];
  return {
    misfit: (read === 'drop' ? drop - reading : c * drop - s * reach) + misfitBy(4) * own,
    byLnLambda: misfitBy(8) + misfitBy(4) * tipByLnLambda,
    byQ: misfitBy(12) + misfitBy(4) * tipByQ,
    byReading: read === 'drop' ? -1 : -s * drop - c * reach,
    tip: { own, byLnLambda: tipByLnLambda, byQ: tipByQ },
  };
}

const clipped = (x: number) => Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, x));

/**
 * λ = w L³ / EI and the set q = κ₀ L of a piece of even curvature, from its droop with one face up and with the other:
 *
 *     θ″ = −λ s cos θ,   θ′ = ∓q at the free end,   θ = 0 at the clamp
 *
 * two readings, two unknowns, by Newton's method. The plain mean of both faces overstates EI, by 1 % for a set of a tenth of the
 * overhang and by 4 % for a fifth. Not for a piece that was curled unevenly, or sideways.
 *
 * @param guess λ to begin with, such as that of the mean of the two readings
 * @throws RangeError when the readings fit no such piece.
 */
export function droopWithSet(read: DroopRead, first: number, second: number, guess: number): DroopWithSet {
  let lnLambda = Math.log(guess);
  let q = 0;
  const plumb = LEVEL - droopShape(guess).tipAngle;
  const tips = [plumb, plumb];
  for (let n = 0; n < MOST_ITERATIONS; n++) {
    const lambda = Math.exp(lnLambda);
    const a = faceAt(tips[0], lambda, q, 1, read, first);
    const b = faceAt(tips[1], lambda, q, -1, read, second);
    const determinant = a.byLnLambda * b.byQ - a.byQ * b.byLnLambda;
    const dLn = clipped((-a.misfit * b.byQ + b.misfit * a.byQ) / determinant);
    const dQ = clipped((-b.misfit * a.byLnLambda + a.misfit * b.byLnLambda) / determinant);
    if (!Number.isFinite(dLn + dQ)) break;
    const moves = [a, b].map(({ tip }) => clipped(tip.own + tip.byLnLambda * dLn + tip.byQ * dQ));
    lnLambda += dLn;
    q += dQ;
    tips[0] += moves[0];
    tips[1] += moves[1];
    if (Math.abs(dLn) + Math.abs(dQ) + Math.abs(moves[0]) + Math.abs(moves[1]) < SETTLED)
      return {
        lambda: Math.exp(lnLambda),
        set: q,
        lnLambdaByFirst: (-a.byReading * b.byQ) / determinant,
        lnLambdaBySecond: (b.byReading * a.byQ) / determinant,
      };
    if (Math.abs(lnLambda) > 7 || Math.abs(q) > 6) break;
  }
  throw new RangeError(`no piece of even curvature droops ${first} one way up and ${second} the other`);
}

/** How far the tip of an unloaded piece of that set stands off the straight, share of its length: (1 − cos q)/q. */
export function setAtTip(q: number): number {
  return Math.abs(q) < 1e-4 ? q / 2 : (1 - Math.cos(q)) / q;
}

/** Angle of the free end short of plumb, rad, for a piece with a known set; `sign` −1 is turned over. */
export function tipOfSet(lambda: number, q: number, sign: 1 | -1): number {
  let tip = LEVEL - droopShape(lambda).tipAngle;
  for (let n = 0; n < MOST_ITERATIONS; n++) {
    const { tip: move } = faceAt(tip, lambda, q, sign, 'drop', 0);
    tip += clipped(move.own);
    if (Math.abs(move.own) < SETTLED) break;
  }
  return tip;
}

/** Drop and chord angle of a piece with a known set, for simulation and tests: `sign` −1 is turned over. */
export function droopOfSet(lambda: number, q: number, sign: 1 | -1): { drop: number; chordAngle: number } {
  const start = [tipOfSet(lambda, q, sign), sign * q, ...Array<number>(14).fill(0)];
  const y = integrate(equations(lambda), start, 0, 1, { tolerance: TOLERANCE });
  return { drop: y[2], chordAngle: Math.atan2(y[2], y[3]) };
}
