import type Database from 'libsql';
import type { Entry } from '../../../journal/entry.ts';
import { refuseStrangers } from '../refuse.ts';
import type { Appended } from '../store.ts';
import { rowOf } from './entryRow.ts';
import { mend } from './mend.ts';
import { prepared } from './prepared.ts';
import { lastArrival, renameStore } from './read.ts';

const INSERT_TRIAL = 'INSERT INTO trials (trial) VALUES (?) ON CONFLICT DO NOTHING';
const INSERT_ENTRY = `INSERT INTO entries (trial, seq, id, kind, at, said_by, device, body, sum)
  VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (trial, id) DO NOTHING`;
const SET_LAST = 'UPDATE trials SET last = ? WHERE trial = ?';

export interface Appending {
  /** Resolves once the entries are on the disk. */
  append(trial: string, entries: readonly Entry[]): Promise<Appended>;
  /** Puts on the disk what waits. */
  flush(): void;
}

interface Waiting {
  trial: string;
  entries: readonly Entry[];
  resolve: (outcome: Appended) => void;
  reject: (error: unknown) => void;
}

/**
 * Appends to the journals of one file. Lists that come in the same turn of the event loop share a transaction, so that
 * ten people who press Enter together wait once for a slow disk and not ten times. A power cut leaves all of them or
 * none; none was acknowledged before. SQLite lets one transaction write at a time, which makes arrival numbers visible
 * in their order.
 */
export function appending(database: Database.Database): Appending {
  let waiting: Waiting[] = [];
  const flush = () => {
    const group = waiting;
    waiting = [];
    if (group.length > 0) commit(database, group);
  };
  return {
    append: async (trial, entries) => {
      refuseStrangers(trial, entries);
      if (entries.length === 0) return { added: 0, known: 0, last: lastArrival(database, trial) };
      return new Promise((resolve, reject) => {
        if (waiting.length === 0) setImmediate(flush);
        waiting.push({ trial, entries, resolve, reject });
      });
    },
    flush,
  };
}

/** One transaction for all; when it fails, none of them is kept, and each is told. */
function commit(database: Database.Database, group: readonly Waiting[]): void {
  try {
    const run = database.transaction(() => group.map(({ trial, entries }) => insert(database, trial, entries)));
    const outcomes: Appended[] = run.immediate();
    group.forEach(({ resolve }, n) => {
      resolve(outcomes[n]!);
    });
  } catch (error) {
    for (const { reject } of group) reject(error);
  }
}

/** Adds the entries that are new, numbered on from the trial's last. Known ids are left alone. */
function insert(database: Database.Database, trial: string, entries: readonly Entry[]): Appended {
  prepared(database, INSERT_TRIAL).run(trial);
  const before = lastArrival(database, trial);
  let added = 0;
  const statement = prepared(database, INSERT_ENTRY);
  let mended = 0;
  for (const entry of entries) {
    const { changes } = statement.run(...rowOf(entry, before + added + 1));
    added += changes;
    if (changes === 0) mended += mend(database, entry);
  }
  // Readers who have passed the number of a mended entry begin again.
  if (mended > 0) renameStore(database);
  const last = before + added;
  if (added > 0) prepared(database, SET_LAST).run(last, trial);
  return { added, known: entries.length - added, last };
}
