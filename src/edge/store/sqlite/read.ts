import type Database from 'libsql';
import type { Entry } from '../../../journal/entry.ts';
import type { Arrived, TrialLine } from '../store.ts';
import { byOpening, LINE_KINDS, trialLine } from '../trialLine.ts';
import { unlessDamaged } from './damage.ts';
import { type EntryRow, entryOf, READ_COLUMNS, soundEntryOf } from './entryRow.ts';
import { prepared } from './prepared.ts';
import { type Bytes, textOf } from './text.ts';

/** SQLite reads a negative limit as none. https://www.sqlite.org/lang_select.html, "The LIMIT clause". */
export const NO_LIMIT = -1;

const READ = `SELECT ${READ_COLUMNS} FROM entries`;
const BY_ID = `${READ} WHERE trial = ? AND id > ? ORDER BY entries.id LIMIT ?`;
export const BY_ARRIVAL = `${READ} WHERE trial = ? AND seq > ? ORDER BY entries.seq LIMIT ?`;
// Left to itself, SQLite reads the whole journal by id rather than sort the few rows that are wanted.
const OF_KINDS = `${READ} INDEXED BY entries_by_kind
  WHERE trial = ? AND kind IN (${LINE_KINDS.map(() => '?').join(', ')}) ORDER BY id`;

export function readEntries(database: Database.Database, trial: string, after = '', limit = NO_LIMIT): Entry[] {
  const rows = prepared(database, BY_ID).all(trial, after, limit) as EntryRow[];
  return rows.map((row) => entryOf(trial, row));
}

export function readArrived(database: Database.Database, trial: string, seq: number, limit = NO_LIMIT): Arrived {
  const rows = prepared(database, BY_ARRIVAL).all(trial, seq, limit) as EntryRow[];
  return { entries: rows.map((row) => entryOf(trial, row)), next: rows.at(-1)?.seq ?? seq };
}

export function heldIds(database: Database.Database, trial: string, ids: readonly string[]): Set<string> {
  const one = prepared(database, 'SELECT 1 FROM entries WHERE trial = ? AND id = ?');
  return new Set(ids.filter((id) => one.all(trial, id).length > 0));
}

export function readTrials(database: Database.Database): TrialLine[] {
  const described = database.prepare(OF_KINDS);
  // Numbers of arrival have no gaps, so that the last one is the count.
  const trials = database
    .prepare('SELECT CAST(trial AS BLOB) AS name, CAST(last AS INTEGER) AS last FROM trials')
    .all();
  const lines = (trials as { name: Bytes; last: number }[]).map(({ name, last }) => {
    const trial = textOf(name);
    const rows = unlessDamaged(() => described.all(trial, ...LINE_KINDS) as EntryRow[]) ?? [];
    // A line of a list has no room to say what is damaged; whoever opens the trial is told.
    const sound = rows.map((row) => soundEntryOf(trial, row)).filter((entry) => entry !== null);
    return trialLine(trial, sound, last);
  });
  return lines.sort(byOpening);
}

export function readTrialNames(database: Database.Database): string[] {
  const names = `SELECT CAST(trial AS BLOB) AS name FROM trials UNION SELECT CAST(trial AS BLOB) FROM blobs ORDER BY name`;
  return (database.prepare(names).all() as { name: Bytes }[]).map(({ name }) => textOf(name));
}

export function hasTrial(database: Database.Database, trial: string): boolean {
  return prepared(database, 'SELECT 1 FROM trials WHERE trial = ?').all(trial).length > 0;
}

/** Arrival number of the trial's last entry; 0 when it has none. */
export function lastArrival(database: Database.Database, trial: string): number {
  const [row] = prepared(database, 'SELECT CAST(last AS INTEGER) AS last FROM trials WHERE trial = ?').all(trial) as {
    last: number;
  }[];
  return row?.last ?? 0;
}

export function readName(database: Database.Database): string {
  const [row] = database.prepare('SELECT CAST(name AS BLOB) AS name FROM shelf').all() as { name: Bytes }[];
  return textOf(row?.name ?? null);
}

export function renameStore(database: Database.Database): void {
  database.exec('UPDATE shelf SET name = lower(hex(randomblob(16)))');
}
