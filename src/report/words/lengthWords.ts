import type { DisplayUnits } from '../../units/display.ts';
import { FOOT, INCH } from '../../units/exactFactors.ts';

const inch = INCH[0] / INCH[1];
const foot = FOOT[0] / FOOT[1];

/** From here up a length is said in the larger unit, m: below it pieces, above it what is bought. */
const LONG = 1;

/** `n` with a no-break space before its unit. */
const withUnit = (n: string, unit: string): string => `${n}\u00a0${unit}`;

/** A length for cutting or buying, m: `300 mm`, `3.05 m`; `11.8 in`, `10.0 ft` for those who go by the foot. */
export function lengthWords(length: number, units: Pick<DisplayUnits, 'perLength'>): string {
  if (units.perLength === 'ft')
    return length < LONG ? withUnit((length / inch).toFixed(1), 'in') : withUnit((length / foot).toFixed(2), 'ft');
  return length < LONG ? withUnit(String(Math.round(length * 1000)), 'mm') : withUnit(length.toFixed(2), 'm');
}
