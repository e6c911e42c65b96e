/** What an entry says, judged at the doors through which entries come one by one: the page and HTTP. */
import type { Entry } from './entry.ts';
import { type CellProblem, checkRow } from './rowCheck.ts';
import { rowKey } from './tableShape.ts';
import { tableOfKind } from './tables.ts';

/**
 * The first impossible thing in the row of an entry, by the same check as a row of a package; null when it may enter the
 * journal. A kind that this version does not know is let in as it is: a newer one may.
 *
 * Whether the things that a row names are there is not asked, because entries come in any order. A day counts as one to come
 * only when it is after the moment at which the entry was said as well: a phone whose clock is days ahead loses no reading.
 *
 * @param now milliseconds since 1970
 */
export function checkBody(entry: Entry, now: number): CellProblem | null {
  const table = tableOfKind(entry.kind);
  if (table === null) return null;
  const said = Date.parse(entry.at);
  return checkRow(table, entry.body, { now: Number.isNaN(said) ? now : Math.max(now, said) })[0] ?? null;
}

/** Longest name of a row that a sentence gives, characters. */
const LONGEST_NAMED = 60;

/** Which row an entry is, for a sentence: `reading "r17"`; the kind alone where rows have no name. */
export function rowName({ kind, body }: Entry): string {
  const table = tableOfKind(kind);
  const key = table === null || table.key?.length !== 1 ? '' : (rowKey(table, body) ?? '');
  return key === '' ? kind : `${kind} "${key.length > LONGEST_NAMED ? `${key.slice(0, LONGEST_NAMED)}…` : key}"`;
}
