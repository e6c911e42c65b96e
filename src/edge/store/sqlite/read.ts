import type Database from 'libsql';
import type { Entry } from '../../../journal/entry.ts';
import type { TrialLine } from '../store.ts';
import { byOpening, LINE_KINDS, trialLine } from '../trialLine.ts';
import { type EntryRow, entryOf } from './entryRow.ts';

/** SQLite reads a negative limit as none. https://www.sqlite.org/lang_select.html, "The LIMIT clause". */
const NO_LIMIT = -1;

const PAGE = 'SELECT * FROM entries WHERE trial = ? AND id > ? ORDER BY id LIMIT ?';
const OF_KINDS = `SELECT * FROM entries WHERE trial = ? AND kind IN (${LINE_KINDS.map(() => '?').join(', ')}) ORDER BY id`;

export function readEntries(database: Database.Database, trial: string, after = '', limit = NO_LIMIT): Entry[] {
  return (database.prepare(PAGE).all(trial, after, limit) as EntryRow[]).map(entryOf);
}

export function readTrials(database: Database.Database): TrialLine[] {
  const described = database.prepare(OF_KINDS);
  const counted = database.prepare('SELECT count(*) AS n FROM entries WHERE trial = ?');
  const lines = (database.prepare('SELECT trial FROM trials').all() as { trial: string }[]).map(({ trial }) => {
    const rows = described.all(trial, ...LINE_KINDS) as EntryRow[];
    const [count] = counted.all(trial) as { n: number }[];
    return trialLine(trial, rows.map(entryOf), count?.n ?? 0);
  });
  return lines.sort(byOpening);
}

export function hasTrial(database: Database.Database, trial: string): boolean {
  return database.prepare('SELECT trial FROM trials WHERE trial = ?').all(trial).length > 0;
}
