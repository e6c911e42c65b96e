import { type DroopRead, droopWithSet, setAtTip } from './droopWithSet.ts';
import { droopShape } from './elastica.ts';
import { lambdaFromChord, lambdaFromDrop } from './lambdaFromDroop.ts';

/** One droop, SI: the piece clamped level with `overhang` free, read with one face up and, if possible, with the other. */
export interface DroopInput {
  /** N/m */
  weight: number;
  /** m */
  overhang: number;
  read: DroopRead;
  /** Drop of the tip, m, or chord angle, rad. */
  up: number;
  /** The same turned over; null when it was not. */
  down: number | null;
}

/** What a droop says. Slopes are those of ln EI, for its uncertainty. */
export interface DroopFound {
  /** ln(EI / N m²) */
  lnStiffness: number;
  lambda: number;
  /** Bending length c = (EI/w)^(1/3), m. */
  bendingLength: number;
  /** Standing-off of the tip by itself as a share of the overhang, positive when it droops with the first face up. */
  set: number | null;
  way: 'one face' | 'mean of both faces' | 'both faces solved';
  /** True when the set is so large that an uneven curl would matter. */
  muchSet: boolean;
  /** ∂ ln EI / ∂ ln L, and by each reading (1/m or 1/rad). */
  byLnOverhang: number;
  byUp: number;
  byDown: number;
}

/** A droop that settles nothing, and the overhang that would. */
export interface DroopRefused {
  refused: 'too straight' | 'too deep';
  /** m; null when not even a guess can be made. */
  betterOverhang: number | null;
}

/** Least and most λ that a droop is used at: outside, a rule's millimetre is worth too much (by simulation). */
export const LEAST_LAMBDA = 0.5;
export const MOST_LAMBDA = 20;
/** Best overhang in bending lengths: λ = 6. By simulation: flat from 4 to 10. */
export const BEST_OVERHANG_IN_BENDING_LENGTHS = 1.82;
/** Below this set, as a share of the overhang, the mean of both faces is as good as the solution (0.3 % of EI). */
export const MEAN_BELOW_SET = 0.05;
/** Above this set an answer is flagged. By simulation: beyond 12 % the mean is off by more than 2 %. */
export const FLAG_ABOVE_SET = 0.12;
/** λ that a droop deeper than the series reach is looked for up to, to say which overhang would do. */
const DEEPEST_LAMBDA = 1000;

const found = (read: DroopRead, value: number) => (read === 'drop' ? lambdaFromDrop(value) : lambdaFromChord(value));

/** λ of any droop, roughly where it is beyond the series; 0 for none, Infinity for one that hangs plumb. */
export function roughLambda(read: DroopRead, value: number): number {
  if (!(value > 0)) return 0;
  try {
    return found(read, value).lambda;
  } catch {
    let [low, high] = [MOST_LAMBDA, DEEPEST_LAMBDA];
    if (value >= droopShape(high)[read]) return Number.POSITIVE_INFINITY;
    for (let n = 0; n < 20; n++) {
      const middle = Math.sqrt(low * high);
      if (droopShape(middle)[read] < value) low = middle;
      else high = middle;
    }
    return low;
  }
}

/** Overhang at which this piece would be read best, m: L = 1.82 c, from a rough λ at the present overhang. */
export function bestOverhang(overhang: number, lambda: number): number {
  return (BEST_OVERHANG_IN_BENDING_LENGTHS * overhang) / Math.cbrt(lambda);
}

/**
 * Bending stiffness of a piece from its droop under its own weight: EI = w L³ / λ, with λ from the exact shape.
 *
 *     u²(ln EI) = u²(ln w) + (3 + s)² u²(ln L) + s² u²(ln y),   s = d ln λ / d ln y
 *
 * With both faces read, a set of 5 % of the overhang or more is solved for along with λ; below that both are averaged. Refused
 * below λ = 0.5 and above 20, where a rule's millimetre is worth too much of the answer.
 *
 * @throws RangeError when weight or overhang is not positive, or a reading is not finite.
 */
export function stiffnessFromDroop(input: DroopInput): DroopFound | DroopRefused {
  const { weight, overhang, read, up, down } = input;
  if (!(weight > 0 && overhang > 0) || !Number.isFinite(up) || !Number.isFinite(down ?? 0))
    throw new RangeError(
      `a droop needs a weight, an overhang and readings, got ${weight}, ${overhang}, ${up}, ${down}`,
    );
  const unit = read === 'drop' ? overhang : 1;
  const first = up / unit;
  const second = down === null ? null : down / unit;
  const middle = second === null ? first : (first + second) / 2;
  const rough = roughLambda(read, middle);
  const refusal = refusalOf(rough, overhang);
  if (refusal) return refusal;
  const plain = found(read, middle);
  const solved = second === null ? null : solvedOf(read, first, second, plain.lambda);
  const set = solved ? setAtTip(solved.set) : null;
  if (solved && set !== null && Math.abs(set) >= MEAN_BELOW_SET) {
    const outside = refusalOf(solved.lambda, overhang);
    if (outside) return outside;
    const bySecond = solved.lnLambdaBySecond * second!;
    const s = read === 'drop' ? solved.lnLambdaByFirst * first + bySecond : 0;
    return {
      ...figures(weight, overhang, solved.lambda),
      set,
      way: 'both faces solved',
      muchSet: Math.abs(set) > FLAG_ABOVE_SET,
      byLnOverhang: 3 + s,
      byUp: -solved.lnLambdaByFirst / unit,
      byDown: -solved.lnLambdaBySecond / unit,
    };
  }
  const slope = -plain.s / middle / unit;
  return {
    ...figures(weight, overhang, plain.lambda),
    set,
    way: second === null ? 'one face' : 'mean of both faces',
    muchSet: second !== null && set === null,
    byLnOverhang: 3 + (read === 'drop' ? plain.s : 0),
    byUp: second === null ? slope : slope / 2,
    byDown: second === null ? 0 : slope / 2,
  };
}

function solvedOf(read: DroopRead, first: number, second: number, guess: number) {
  try {
    return droopWithSet(read, first, second, guess);
  } catch {
    return null;
  }
}

/** Whether a drop (a share of the overhang) or an angle (rad) is too small or too large to be used; null when it is neither. */
export function outOfReach(read: DroopRead, value: number): DroopRefused['refused'] | null {
  const lambda = roughLambda(read, value);
  if (lambda < LEAST_LAMBDA) return 'too straight';
  return lambda > MOST_LAMBDA ? 'too deep' : null;
}

function refusalOf(lambda: number, overhang: number): DroopRefused | null {
  if (lambda >= LEAST_LAMBDA && lambda <= MOST_LAMBDA) return null;
  const known = lambda > 0 && Number.isFinite(lambda);
  return {
    refused: lambda < LEAST_LAMBDA ? 'too straight' : 'too deep',
    betterOverhang: known ? bestOverhang(overhang, lambda) : null,
  };
}

function figures(weight: number, overhang: number, lambda: number) {
  return {
    lnStiffness: Math.log(weight) + 3 * Math.log(overhang) - Math.log(lambda),
    lambda,
    bendingLength: overhang / Math.cbrt(lambda),
  };
}

/**
 * Share by which EI is wrong when the piece really bends from a quarter of its diameter inside or outside the clamp's edge:
 * (3 + s) · (D/4) / L. Usually more than what the rule leaves. Reasoned, not simulated.
 */
export function clampEdgeShare(foundAt: Pick<DroopFound, 'byLnOverhang'>, overhang: number, diameter: number): number {
  return (foundAt.byLnOverhang * diameter) / 4 / overhang;
}
