import type Database from 'libsql';
import type { Entry } from '../../../journal/entry.ts';
import { unlessDamaged } from './damage.ts';
import { type EntryRow, READ_COLUMNS, rowOf, soundEntryOf } from './entryRow.ts';
import { prepared } from './prepared.ts';

const BY_ID = `SELECT ${READ_COLUMNS} FROM entries WHERE trial = ? AND id = ?`;
const SET =
  'UPDATE entries SET kind = ?, at = ?, said_by = ?, device = ?, body = ?, sum = ? WHERE trial = ? AND id = ?';

/**
 * Writes an entry that came again into its row when the disk has damaged that row since, and only then. Answers how many
 * rows were mended: 1 or 0.
 */
export function mend(database: Database.Database, entry: Entry): number {
  const rows = unlessDamaged(() => prepared(database, BY_ID).all(entry.trial, entry.id) as EntryRow[]) ?? [];
  const [row] = rows;
  if (row === undefined || soundEntryOf(entry.trial, row) !== null) return 0;
  const [trial, , id, ...said] = rowOf(entry, row.seq);
  // What cannot be written stays damaged, and stays told.
  return unlessDamaged(() => prepared(database, SET).run(...said, trial, id).changes) ?? 0;
}
