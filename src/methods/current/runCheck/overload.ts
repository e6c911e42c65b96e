import { timeToTemperature } from '../thermal/transient.ts';
import type { RunAnswer } from './answer.ts';
import { surroundingsAt } from './flow.ts';
import type { RunCable, RunQuestion } from './question.ts';

/** Longest overload that is looked at, s. */
export const LONGEST_OVERLOAD = 6 * 3600;

/** How long one run of a cable lasts until its jacket's rating under a current that stays. */
export interface Overload {
  cable: RunCable;
  /** A in the one run. */
  current: number;
  /** From cold, at the careful end of every doubt; null when it does not come to its rating within {@link LONGEST_OVERLOAD}. */
  seconds: number | null;
}

/**
 * Seconds from rest until one run of a cable stands at its rating under a steady current, at the careful end of its doubt; null
 * when it does not within six hours. A march through time: not for every move of a slider.
 *
 * @param current A in the run. @throws RangeError as {@link timeToTemperature}.
 */
export function overloadTime(q: RunQuestion, cable: RunCable, current: number): number | null {
  const heated = { ...cable.heated, resistance20: cable.ohmsPerMetre.high };
  return timeToTemperature(heated, current, cable.rating, surroundingsAt(q, cable, 'high', 1), {
    longest: LONGEST_OVERLOAD,
  });
}

/**
 * The time to the rating of every measured cable: under an overload that is stated, or where none is under the load’s own peak
 * as if it never ended. A cable that cannot feed the load draws no peak that is known, and is left out then.
 *
 * @param current A in one run; null for the load's own peak. @throws RangeError for one that is not above zero.
 */
export function overloads(q: RunQuestion, answers: readonly RunAnswer[], current: number | null): Overload[] {
  if (current !== null && !(current > 0 && Number.isFinite(current)))
    throw new RangeError(`an overload is a current above zero, got ${current}`);
  return answers
    .filter((a) => a.cable.measured && (current !== null || a.resting.fails === null))
    .map(({ cable, resting, carrying }) => {
      const amps = current ?? resting.peak.high;
      // What it bears for ever at the careful end needs no march.
      return { cable, current: amps, seconds: amps <= carrying.low ? null : overloadTime(q, cable, amps) };
    });
}
