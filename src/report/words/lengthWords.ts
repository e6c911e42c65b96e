import type { DisplayUnits } from '../../units/display.ts';
import { FOOT, INCH } from '../../units/exactFactors.ts';

const inch = INCH[0] / INCH[1];
const foot = FOOT[0] / FOOT[1];

/** From here up a length is said in the larger unit, m: below it pieces, above it what is bought. */
const LONG = 1;
/** Finest marks of a tape in inches. */
const MARKS = 16;
const INCHES_IN_FOOT = 12;
/** Tapes at a bench reach about so far, m. Common practice, no source. */
const TAPE_REACH = 10;

/** `n` with a no-break space before its unit. */
const withUnit = (n: string, unit: string): string => `${n}\u00a0${unit}`;

/** Sixteenths of an inch as a tape has them: `29 1/2`, `3/8`, `30`. */
function tapeInches(sixteenths: number): string {
  const whole = Math.floor(sixteenths / MARKS);
  let above = sixteenths % MARKS;
  let below = MARKS;
  if (above === 0) return String(whole);
  while (above % 2 === 0) [above, below] = [above / 2, below / 2];
  const fraction = `${above}/${below}`;
  return whole === 0 ? fraction : `${whole}\u00a0${fraction}`;
}

function feetAndInches(length: number): string {
  const sixteenths = Math.round((length / inch) * MARKS);
  if (length < LONG) return withUnit(tapeInches(sixteenths), 'in');
  const feet = Math.floor(sixteenths / (MARKS * INCHES_IN_FOOT));
  const rest = sixteenths - feet * MARKS * INCHES_IN_FOOT;
  const inFeet = withUnit(String(feet), 'ft');
  return rest === 0 ? inFeet : `${inFeet}\u00a0${withUnit(tapeInches(rest), 'in')}`;
}

/** A length of which a share beyond hundredths would be noise: sums, and what is left. */
const decimalFeet = (length: number): string => withUnit((length / foot).toFixed(2), 'ft');

/**
 * A length for cutting or buying, m: `300 mm`, `3.05 m`; for those who go by the foot as a tape has it, to a sixteenth:
 * `29 1/2 in`, `10 ft`, `5 ft 6 in`. Lengths beyond a tape's reach are in feet.
 */
export function lengthWords(length: number, units: Pick<DisplayUnits, 'perLength'>): string {
  if (units.perLength === 'ft') return length > TAPE_REACH ? decimalFeet(length) : feetAndInches(length);
  return length < LONG ? withUnit(String(Math.round(length * 1000)), 'mm') : withUnit(length.toFixed(2), 'm');
}
