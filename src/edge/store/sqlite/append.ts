import type Database from 'libsql';
import type { Entry } from '../../../journal/entry.ts';
import { refuseStrangers } from '../refuse.ts';
import type { Appended } from '../store.ts';
import { rowOf } from './entryRow.ts';
import { prepared } from './prepared.ts';
import { lastArrival } from './read.ts';

const INSERT_TRIAL = 'INSERT INTO trials (trial) VALUES (?) ON CONFLICT DO NOTHING';
const INSERT_ENTRY = `INSERT INTO entries (trial, seq, id, kind, at, said_by, device, body, sum)
  VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (trial, id) DO NOTHING`;
const SET_LAST = 'UPDATE trials SET last = ? WHERE trial = ?';

/**
 * Appends in one transaction, so that a power cut leaves all of the entries or none; known ids are left alone. SQLite
 * lets one transaction write at a time, which makes arrival numbers visible in their order.
 */
export function appendEntries(database: Database.Database, trial: string, entries: readonly Entry[]): Appended {
  refuseStrangers(trial, entries);
  if (entries.length === 0) return { added: 0, known: 0, last: lastArrival(database, trial) };
  let added = 0;
  let last = 0;
  const run = database.transaction(() => {
    prepared(database, INSERT_TRIAL).run(trial);
    const before = lastArrival(database, trial);
    const insert = prepared(database, INSERT_ENTRY);
    for (const entry of entries) added += insert.run(...rowOf(entry, before + added + 1)).changes;
    last = before + added;
    if (added > 0) prepared(database, SET_LAST).run(last, trial);
  });
  run.immediate();
  return { added, known: entries.length - added, last };
}
