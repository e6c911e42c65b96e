/** Corrects a row of the open trial: a later row with the same key takes the place of the earlier, which stays on record. */
import type { EntryKind } from '../../../../journal/entry.ts';
import { checkRow } from '../../../../journal/rowCheck.ts';
import { tableOfKind } from '../../../../journal/tables.ts';
import type { Trouble } from '../fieldTroubles.ts';
import { say } from '../journal/journal.ts';

export type Row = Readonly<Record<string, string>>;

/** What stands in the way of some changes, by column; null when nothing does. */
export type Troubles = Readonly<Record<string, Trouble>>;

/**
 * Says a row with some of its cells changed; nothing is said when nothing changed. Refused changes answer with what was found
 * and expected. Cells that were wrong before do not stand in the way of others.
 */
export async function correctRow(kind: EntryKind, row: Row, changes: Row): Promise<Troubles | null> {
  const next: Record<string, string> = { ...row, ...changes };
  const changed = Object.keys(changes).filter((name) => (row[name] ?? '').trim() !== next[name]!.trim());
  if (changed.length === 0) return null;
  const troubles = troublesWith(kind, row, next, changed);
  if (troubles !== null) return troubles;
  try {
    await say(kind, next);
    return null;
  } catch (error) {
    const expected = error instanceof Error ? error.message : String(error);
    return { [changed[0]!]: { found: 'a browser that did not keep it', expected, advice: '' } };
  }
}

/** What is wrong with a row that was not wrong before. */
export function troublesWith(kind: EntryKind, before: Row, after: Row, changed: readonly string[]): Troubles | null {
  const table = tableOfKind(kind);
  if (table === null) return null;
  const now = Date.now();
  const old = new Set(checkRow(table, before, { now }).map(({ column }) => column));
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
