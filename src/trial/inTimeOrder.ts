import type { Entry } from '../journal/entry.ts';
import { readMoment } from '../journal/moment.ts';
import { cell } from './cells.ts';

/** Milliseconds since 1970 of a row's own `at`, else of the day on which the trial began, else 0. */
export function rowTime(row: Entry['body'], openedOn: string): number {
  const typed = cell(row, 'at');
  const outcome = typed === '' ? null : readMoment(typed);
  if (outcome?.ok) return outcome.value;
  const opened = openedOn === '' ? null : readMoment(openedOn);
  return opened?.ok ? opened.value : 0;
}

/**
 * Entries in the order of their rows' own times; entries of one time keep the order they had. A package that is exported and
 * imported again makes new ids from those same times, so the order, and with it every last digit computed from it, stays.
 */
export function inTimeOrder(entries: readonly Entry[], openedOn: string): readonly Entry[] {
  const opened = rowTime({}, openedOn);
  const times = entries.map((entry) => (entry.body.at ? rowTime(entry.body, openedOn) : opened));
  if (times.every((time, i) => i === 0 || times[i - 1]! <= time)) return entries;
  const places = entries.map((_, i) => i).sort((a, b) => times[a]! - times[b]! || a - b);
  return places.map((place) => entries[place]!);
}
