import type { HeatedCable, Surroundings } from './run.ts';
import { steadyTemperature } from './steady.ts';

/** A heating test's answer: the conductor's rise, K, at a current, A, with the standard uncertainty of the rise. */
export interface MeasuredRise {
  current: number;
  rise: number;
  u: number;
}

export interface Calibration {
  /** Multiplies the model's loss: above 1 the cable gives off more than told. */
  lossFactor: number;
  /** Standard uncertainty of its logarithm, from the test alone. */
  u: number;
}

/** Standard uncertainty of ln(loss) of the model as it is: the measurements behind the correlation differ by about 10 %. */
export const MODEL_LOSS_U = 0.1;
/**
 * What is left after a heating test when the cable then runs somewhere else: another bracket, another floor, air that is not
 * quite still. Common practice, no source.
 */
export const ELSEWHERE_LOSS_U = 0.04;
/** What is left of the model's doubt for a cable whose fellow was tested on the same bench. Common practice, no source. */
export const FELLOW_LOSS_U = 0.06;
const LEAST_FACTOR = 0.1;
const MOST_FACTOR = 10;

/**
 * The factor on the surface's loss with which the model gives the rise that was measured.
 *
 * @throws RangeError when no factor from 0.1 to 10 does: the test and the cable do not belong together.
 */
export function calibrateLoss(cable: HeatedCable, test: MeasuredRise, surroundings: Surroundings): Calibration {
  const riseAt = (lossFactor: number): number => {
    const found = steadyTemperature(cable, test.current, { ...surroundings, lossFactor });
    return found === null ? Number.POSITIVE_INFINITY : found.conductor - surroundings.ambient;
  };
  if (!(riseAt(MOST_FACTOR) < test.rise && riseAt(LEAST_FACTOR) > test.rise))
    throw new RangeError(
      `a rise of ${test.rise.toFixed(1)} K at ${test.current.toFixed(0)} A does not belong to this cable: no loss between a tenth and ten times the usual gives it`,
    );
  const rooted = (rise: number): number => {
    let [low, high] = [LEAST_FACTOR, MOST_FACTOR];
    for (let n = 0; n < 60; n++) {
      const middle = Math.sqrt(low * high);
      if (riseAt(middle) > rise) low = middle;
      else high = middle;
    }
    return Math.sqrt(low * high);
  };
  const lossFactor = rooted(test.rise);
  const slope = 0.01;
  const moved = Math.log(rooted(test.rise * (1 + slope)) / lossFactor) / slope;
  return { lossFactor, u: (Math.abs(moved) * test.u) / test.rise };
}
