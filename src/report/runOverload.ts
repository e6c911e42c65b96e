/** How long cables last under an overload, in the words of page, print and terminal. */
import { LONGEST_OVERLOAD, type Overload } from '../methods/current/runCheck/overload.ts';
import type { RunQuestion } from '../methods/current/runCheck/question.ts';
import { ZERO_CELSIUS } from '../units/dimension.ts';

const MINUTE = 60;
const HOUR = 3600;
/** Up to here seconds say more than minutes. */
const SECONDS_UNTIL = 90;
/** Up to here a tenth of a minute is worth saying. */
const TENTHS_UNTIL = 9.95 * MINUTE;

/** `45 s`, `3.6 min`, `12 min`, `2.5 h` */
export function timeText(seconds: number): string {
  if (seconds < SECONDS_UNTIL) return `${seconds.toFixed(0)} s`;
  if (seconds < TENTHS_UNTIL) return `${(seconds / MINUTE).toFixed(1)} min`;
  return seconds < 2 * HOUR ? `${(seconds / MINUTE).toFixed(0)} min` : `${(seconds / HOUR).toFixed(1)} h`;
}

/** `12 min`; `not in 6 h` where the rating is not reached. */
export const overloadCell = ({ seconds }: Overload): string =>
  seconds === null ? `not in ${LONGEST_OVERLOAD / HOUR} h` : timeText(seconds);

/** `comes to its 60 °C after 12 min at 200 A`, to stand behind the name of the cable. */
export function overloadText({ cable, current, seconds }: Overload): string {
  const rating = `its ${(cable.rating - ZERO_CELSIUS).toFixed(0)} °C`;
  const at = `at ${current.toFixed(0)} A`;
  if (seconds === null) return `stays below ${rating} ${at}, for ${LONGEST_OVERLOAD / HOUR} hours at least.`;
  return seconds === 0
    ? `stands at ${rating} before any current flows.`
    : `comes to ${rating} after ${timeText(seconds)} ${at}.`;
}

/** What was supposed: one run by itself, cold at first, at the careful end of every doubt; and why some are missing where not all are there. */
export function overloadSupposed(q: RunQuestion, { stated, all }: { stated: boolean; all: boolean }): string {
  const ambient = `${(q.surroundings.ambient - ZERO_CELSIUS).toFixed(0)} °C`;
  const load = stated ? 'The overload as stated' : 'The load at its peak, as if that never ended';
  return `${load}: in one run, cold at first in ${ambient}, at the careful end of every doubt. A run that is warm already lasts less long.${all ? '' : ' What a cable draws that may not feed the load is not known.'}`;
}
