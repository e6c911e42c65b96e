import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'libsql';
import { type Store, StoreRefusal } from '../store.ts';
import { appendEntries } from './append.ts';
import { blobNames, getBlob, putBlob } from './blobs.ts';
import { sqliteDevices } from './devices.ts';
import { migrate } from './migrations.ts';
import { hasTrial, readArrived, readEntries, readName, readTrials } from './read.ts';

/** How long one process waits while another one writes, ms. */
const BUSY_WAIT_MS = 5000;

/**
 * Opens the store kept in one SQLite file, making it when there is none. Every append is on the disk before it is
 * answered (write-ahead log, `synchronous = FULL`), and the file is looked through for damage before it is used.
 *
 * @throws StoreRefusal with a sentence when the file cannot be opened, is damaged, or was written by a newer version.
 */
export function openSqliteStore(path: string): Store {
  const database = openSound(path);
  let open = true;
  return {
    ...sqliteDevices(database),
    append: async (trial, entries) => appendEntries(database, trial, entries),
    entries: async (trial, after, limit) => readEntries(database, trial, after, limit),
    entriesSince: async (trial, seq, limit) => readArrived(database, trial, seq, limit),
    trials: async () => readTrials(database),
    has: async (trial) => hasTrial(database, trial),
    putBlob: async (trial, bytes) => putBlob(database, trial, bytes),
    getBlob: async (trial, name) => getBlob(database, trial, name),
    blobNames: async (trial) => blobNames(database, trial),
    name: async () => readName(database),
    async close() {
      if (!open) return;
      open = false;
      // The driver leaves the log beside the file; folding it in makes that one file the whole shelf, to copy or to carry.
      database.pragma('wal_checkpoint(TRUNCATE)');
      database.close();
    },
  };
}

function openSound(path: string): Database.Database {
  try {
    mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
    const database = new Database(path);
    database.pragma(`busy_timeout = ${BUSY_WAIT_MS}`);
    database.pragma('journal_mode = WAL');
    database.pragma('synchronous = FULL');
    refuseDamaged(path, database);
    migrate(database);
    return database;
  } catch (error) {
    if (error instanceof StoreRefusal) throw error;
    throw new StoreRefusal(openingSentence(path, error), { cause: error });
  }
}

function refuseDamaged(path: string, database: Database.Database): void {
  const [row] = database.pragma('quick_check(1)') as { quick_check: string }[];
  if (row?.quick_check !== 'ok') throw new StoreRefusal(damagedSentence(path));
}

function damagedSentence(path: string): string {
  return `The shelf in ${path} is damaged; move the file aside, start again, and import the packages you exported.`;
}

function openingSentence(path: string, error: unknown): string {
  const text = error instanceof Error ? `${(error as { code?: string }).code ?? ''} ${error.message}` : String(error);
  if (/NOTADB|CORRUPT|not a database|malformed/.test(text)) return damagedSentence(path);
  if (/BUSY|locked/.test(text)) return `The shelf in ${path} is held by another program; close that one and try again.`;
  return `The shelf in ${path} could not be opened: look whether the folder can be written to and the disk has room.`;
}
