import type { Entry } from '../journal/entry.ts';
import { programMoment, readMoment } from '../journal/moment.ts';
import { trimmed } from './cells.ts';

const momentOr = (text: string, otherwise: number): number => {
  const outcome = text === '' ? null : readMoment(text);
  return outcome?.ok ? outcome.value : otherwise;
};

/** A row's own time where the trial's first day is read already. */
function ownTime(row: Entry['body'], opened: number): number {
  const typed = trimmed(row.at);
  if (typed === '') return opened;
  const quick = programMoment(typed);
  return Number.isNaN(quick) ? momentOr(typed, opened) : quick;
}

/** Milliseconds since 1970 of a row's own `at`, else of the day on which the trial began, else 0. */
export function rowTime(row: Entry['body'], openedOn: string): number {
  return ownTime(row, momentOr(openedOn, 0));
}

/**
 * Entries in the order of their rows' own times; entries of one time keep the order they had. A package that is exported and
 * imported again makes new ids from those same times, so the order, and with it every last digit computed from it, stays.
 */
export function inTimeOrder(entries: readonly Entry[], openedOn: string): readonly Entry[] {
  const opened = momentOr(openedOn, 0);
  const times = new Float64Array(entries.length);
  let ascending = true;
  for (let i = 0; i < entries.length; i++) {
    const time = ownTime(entries[i]!.body, opened);
    if (i > 0 && time < times[i - 1]!) ascending = false;
    times[i] = time;
  }
  if (ascending) return entries;
  const places = entries.map((_, i) => i).sort((a, b) => times[a]! - times[b]! || a - b);
  return places.map((place) => entries[place]!);
}
