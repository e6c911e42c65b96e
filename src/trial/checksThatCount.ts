import type { Check } from './trial.ts';

/** Two known values that differ by less than this share are one and the same thing held again. Ours. */
const SAME_THING = 1e-3;

const sameThing = (a: Check, b: Check): boolean =>
  !a.zero &&
  !b.zero &&
  a.against === b.against &&
  Math.abs(a.known - b.known) <= SAME_THING * Math.max(Math.abs(a.known), Math.abs(b.known));

/**
 * The checks of one tool that count: of several against the same known thing the latest, because a second look is how a slip
 * of the first is put right. Every zero counts: their spread is the drift.
 *
 * @param checks in the order in which they were said
 */
export function checksThatCount(checks: readonly Check[]): Check[] {
  return checks.filter((check, place) => !checks.slice(place + 1).some((later) => sameThing(check, later)));
}
