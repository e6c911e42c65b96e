import { timeToTemperature } from '../thermal/transient.ts';
import { surroundingsAt } from './flow.ts';
import type { RunCable, RunQuestion } from './question.ts';

/** Longest overload that is looked at, s. */
export const LONGEST_OVERLOAD = 6 * 3600;

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
