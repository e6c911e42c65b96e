import type { MedianFound } from '../../methods/jacket/endurance/lasting.ts';
import { normalQuantile } from '../../numerics/distributions.ts';
import type { Measured } from '../schema.ts';
import type { LastingMedian } from '../shapes/jacket.ts';

export const medianFound = ({ value, interval }: MedianFound): LastingMedian => ({ value, interval });

/**
 * A median that has both ends as a figure: its standard uncertainty is that of the logarithm which the width of the interval stands
 * for. null where an end is open.
 */
export function lastsOf({ value, interval }: MedianFound, unit: string, level: number): Measured | null {
  const [low, high] = interval;
  if (value === null || low === null || high === null || !(low > 0)) return null;
  const sd = Math.log(high / low) / 2 / normalQuantile((1 + level) / 2);
  return { value, unit, u: value * sd, interval: [low, high], level, from: ['endurance'] };
}
