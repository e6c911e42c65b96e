/** The journal as it stood at an earlier moment: what to fold to look back. Looking back changes nothing. */
import type { Entry } from '../journal/entry.ts';
import { idTime } from '../journal/idTime.ts';

/**
 * The entries up to and with the one of that id: exactly the part of the journal that was folded before anything later was
 * said. The sure way to name a moment, because ids are the order of the journal.
 */
export function lookBackToEntry(entries: readonly Entry[], id: string): Entry[] {
  return entries.filter((entry) => entry.id <= id);
}

/**
 * The entries said up to a moment, by the time in their ids: the clock of the device that said them, set forward where that
 * clock stood behind what it had seen. Two devices whose clocks differ disagree about the moment by as much.
 *
 * @param moment milliseconds since 1970, itself included
 */
export function lookBackTo(entries: readonly Entry[], moment: number): Entry[] {
  return entries.filter((entry) => idTime(entry.id) <= moment);
}
