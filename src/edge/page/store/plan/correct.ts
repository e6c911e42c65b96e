/** Corrects a row of the open trial: a later row with the same key takes the place of the earlier, which stays on record. */
import type { EntryKind } from '../../../../journal/entry.ts';
import { checkRow } from '../../../../journal/rowCheck.ts';
import { rowKey } from '../../../../journal/tableShape.ts';
import { tableOfKind } from '../../../../journal/tables.ts';
import type { Trouble } from '../fieldTroubles.ts';
import { entries, say } from '../journal/journal.ts';
import { sentenceOf } from '../sentenceOf.ts';

export type Row = Readonly<Record<string, string>>;

/** What stands in the way of some changes, by column; null when nothing does. */
export type Troubles = Readonly<Record<string, Trouble>>;

/** Corrections wait for each other: the second is made to the row that the first has left, however quickly it follows. */
let before: Promise<unknown> = Promise.resolve();

/**
 * Says a row with some of its cells changed; nothing is said when nothing changed. Refused changes answer with what was found
 * and expected. Cells that were wrong before do not stand in the way of others.
 *
 * @param row any state of the row: its key counts, the cells are taken from the last one said
 * @param changes the cells, or how they follow from the row as it stands
 */
export function correctRow(kind: EntryKind, row: Row, changes: Row | ((now: Row) => Row)): Promise<Troubles | null> {
  const done = before.then(() => {
    const now = latestRow(kind, row);
    return correct(kind, now, typeof changes === 'function' ? changes(now) : changes);
  });
  before = done.catch(() => {});
  return done;
}

/** The row of that key as it was said last; as it was handed in where nobody has said it yet. */
export function latestRow(kind: EntryKind, row: Row): Row {
  const table = tableOfKind(kind);
  const key = table === null ? null : rowKey(table, row);
  if (table === null || key === null) return row;
  return entries.peek().findLast((entry) => entry.kind === kind && rowKey(table, entry.body) === key)?.body ?? row;
}

async function correct(kind: EntryKind, row: Row, changes: Row): Promise<Troubles | null> {
  const next: Record<string, string> = { ...row, ...changes };
  const changed = Object.keys(changes).filter((name) => (row[name] ?? '').trim() !== next[name]!.trim());
  if (changed.length === 0) return null;
  const troubles = troublesWith(kind, row, next, changed);
  if (troubles !== null) return troubles;
  try {
    await say(kind, next);
    return null;
  } catch (error) {
    const expected = sentenceOf(error);
    return { [changed[0]!]: { found: 'a browser that did not keep it', expected, advice: '' } };
  }
}

/** What is wrong with a row that was not wrong before. */
function troublesWith(kind: EntryKind, was: Row, after: Row, changed: readonly string[]): Troubles | null {
  const table = tableOfKind(kind);
  if (table === null) return null;
  const now = Date.now();
  const old = new Set(checkRow(table, was, { now }).map(({ column }) => column));
  const problems = checkRow(table, after, { now }).filter(({ column }) => changed.includes(column) || !old.has(column));
  if (problems.length === 0) return null;
  return Object.fromEntries(
    problems.map(({ column, found, expected, advice = '' }) => [column, { found, expected, advice }]),
  );
}

/** A refusal as one line under a field. */
export function troubleSentence({ found, expected, advice }: Trouble): string {
  return `Found ${found}; expected ${expected}.${advice === '' ? '' : ` ${advice}`}`;
}
