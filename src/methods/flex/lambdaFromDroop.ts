import { type ChebyshevSeries, chebyshevAt, chebyshevOf } from '../../numerics/chebyshev.ts';
import { brentRoot } from '../../numerics/roots.ts';
import { type DroopShape, droopFromTip } from './elastica.ts';

/** λ = w L³ / EI of a droop and how it answers to what was read: s = d ln λ / d ln (reading). */
export interface LambdaFound {
  lambda: number;
  s: number;
}

/** Deepest droop that the series reach: λ about 28, beyond what is ever used (see `droop.ts`). */
const DEEPEST_TIP_FROM_PLUMB = 0.13;
/** Series of 28 points are good to 1e-10 over their range (checked in the tests against the integration). */
const POINTS = 28;

type Read = 'drop' | 'chordAngle';

interface Inverse {
  /** ln(λ / 8 r) by r², which is smooth through zero: small droops go as λ = 8 r. */
  series: ChebyshevSeries;
  deepest: number;
}

function inverseBy(read: Read): Inverse {
  const deepest = droopFromTip(DEEPEST_TIP_FROM_PLUMB)[read];
  const lnRatio = (square: number) => {
    const wanted = Math.sqrt(square);
    return Math.log(shapeWith(read, wanted).lambda / (8 * wanted));
  };
  return { series: chebyshevOf(lnRatio, 0, deepest * deepest, POINTS), deepest };
}

/** The shape with a given drop or chord angle, by its tip. */
function shapeWith(read: Read, wanted: number): DroopShape {
  // The tip's angle is more than 1.15 times either reading: 4/3 of it in small droops, less in deep ones.
  const gentlest = Math.PI / 2 - 1.15 * wanted;
  const tip = brentRoot((t) => droopFromTip(t)[read] - wanted, 0.5 * DEEPEST_TIP_FROM_PLUMB, gentlest, {
    tolerance: 1e-15,
  });
  return droopFromTip(tip);
}

const inverses = new Map<Read, Inverse>();

function lambdaFrom(read: Read, value: number): LambdaFound {
  let inverse = inverses.get(read);
  if (!inverse) {
    inverse = inverseBy(read);
    inverses.set(read, inverse);
  }
  if (!(value > 0 && value <= inverse.deepest))
    throw new RangeError(`this droop is outside what can be read: ${value}, and the deepest is ${inverse.deepest}`);
  const { value: ln, slope } = chebyshevAt(inverse.series, value * value);
  return { lambda: 8 * value * Math.exp(ln), s: 1 + 2 * value * value * slope };
}

/**
 * λ = w L³ / EI from the drop of the tip over the overhang.
 *
 * @param dropShare y/L, above 0 and up to about 0.86.
 * @throws RangeError outside that.
 */
export function lambdaFromDrop(dropShare: number): LambdaFound {
  return lambdaFrom('drop', dropShare);
}

/**
 * λ = w L³ / EI from the angle of the line clamp–tip below level. It is not the slope of the tip, which is steeper.
 *
 * @param chordAngle rad, above 0 and up to about 66°.
 * @throws RangeError outside that.
 */
export function lambdaFromChord(chordAngle: number): LambdaFound {
  return lambdaFrom('chordAngle', chordAngle);
}
