import type Database from 'libsql';
import type { Entry } from '../../../journal/entry.ts';
import type { Arrived, TrialLine } from '../store.ts';
import { byOpening, LINE_KINDS, trialLine } from '../trialLine.ts';
import { type EntryRow, entryOf } from './entryRow.ts';

/** SQLite reads a negative limit as none. https://www.sqlite.org/lang_select.html, "The LIMIT clause". */
const NO_LIMIT = -1;

const BY_ID = 'SELECT * FROM entries WHERE trial = ? AND id > ? ORDER BY id LIMIT ?';
const BY_ARRIVAL = 'SELECT * FROM entries WHERE trial = ? AND seq > ? ORDER BY seq LIMIT ?';
const OF_KINDS = `SELECT * FROM entries WHERE trial = ? AND kind IN (${LINE_KINDS.map(() => '?').join(', ')}) ORDER BY id`;

export function readEntries(database: Database.Database, trial: string, after = '', limit = NO_LIMIT): Entry[] {
  return (database.prepare(BY_ID).all(trial, after, limit) as EntryRow[]).map(entryOf);
}

export function readArrived(database: Database.Database, trial: string, seq: number, limit = NO_LIMIT): Arrived {
  const rows = database.prepare(BY_ARRIVAL).all(trial, seq, limit) as EntryRow[];
  return { entries: rows.map(entryOf), next: rows.at(-1)?.seq ?? seq };
}

export function readTrials(database: Database.Database): TrialLine[] {
  const described = database.prepare(OF_KINDS);
  // Numbers of arrival have no gaps, so that the last one is the count.
  const trials = database.prepare('SELECT trial, last FROM trials').all() as { trial: string; last: number }[];
  const lines = trials.map(({ trial, last }) => {
    const rows = described.all(trial, ...LINE_KINDS) as EntryRow[];
    return trialLine(trial, rows.map(entryOf), last);
  });
  return lines.sort(byOpening);
}

export function hasTrial(database: Database.Database, trial: string): boolean {
  return database.prepare('SELECT trial FROM trials WHERE trial = ?').all(trial).length > 0;
}

/** Arrival number of the trial's last entry; 0 when it has none. */
export function lastArrival(database: Database.Database, trial: string): number {
  const [row] = database.prepare('SELECT last FROM trials WHERE trial = ?').all(trial) as { last: number }[];
  return row?.last ?? 0;
}

export function readName(database: Database.Database): string {
  const [row] = database.prepare('SELECT name FROM shelf').all() as { name: string }[];
  return row!.name;
}
