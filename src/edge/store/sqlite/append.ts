import type Database from 'libsql';
import type { Entry } from '../../../journal/entry.ts';
import { refuseStrangers } from '../refuse.ts';
import type { Appended } from '../store.ts';
import { rowOf } from './entryRow.ts';

const INSERT_TRIAL = 'INSERT INTO trials (trial) VALUES (?) ON CONFLICT DO NOTHING';
const INSERT_ENTRY = `INSERT INTO entries (trial, id, kind, at, said_by, device, body) VALUES (?, ?, ?, ?, ?, ?, ?)
  ON CONFLICT DO NOTHING`;

/** Appends in one transaction, so that a power cut leaves all of the entries or none; known ids are left alone. */
export function appendEntries(database: Database.Database, trial: string, entries: readonly Entry[]): Appended {
  refuseStrangers(trial, entries);
  if (entries.length === 0) return { added: 0, known: 0 };
  let added = 0;
  const run = database.transaction(() => {
    database.prepare(INSERT_TRIAL).run(trial);
    const insert = database.prepare(INSERT_ENTRY);
    for (const entry of entries) added += insert.run(...rowOf(entry)).changes;
  });
  run.immediate();
  return { added, known: entries.length - added };
}
