import { existsSync, rmSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'libsql';
import { placeNew } from '../../files/durably.ts';
import { FileRefusal } from '../../files/fileRefusal.ts';
import { makeFolder, OWN_FOLDER } from '../../files/makeFolder.ts';
import { type Store, StoreRefusal } from '../store.ts';
import { appending } from './append.ts';
import { blobNames, getBlob, putBlob } from './blobs.ts';
import { DamagedShelf, damageIn, isBusy, isDamage, notADatabase } from './damage.ts';
import { sqliteDevices } from './devices.ts';
import { migrate } from './migrations.ts';
import { closeDatabase } from './prepared.ts';
import {
  hasTrial,
  heldIds,
  readArrived,
  readEntries,
  readName,
  readTrialNames,
  readTrials,
  renameStore,
} from './read.ts';
import { readReadable } from './readable.ts';

/** How long one process waits while another one writes, ms. */
const BUSY_WAIT_MS = 5000;

/**
 * Opens the store kept in one SQLite file, making it when there is none. Every append is on the disk before it is
 * answered (write-ahead log, `synchronous = FULL`), and the file is looked through for damage before it is used.
 *
 * @throws StoreRefusal with a sentence when the file cannot be opened or was written by a newer version; DamagedShelf
 *   when it is damaged.
 */
export function openSqliteStore(path: string): Store {
  const database = openSound(path);
  const mayWrite = stillThere(path);
  const store = sqliteStoreOn(database);
  return {
    ...store,
    async append(trial, entries) {
      mayWrite();
      return store.append(trial, entries);
    },
    async putBlob(trial, bytes) {
      mayWrite();
      return store.putBlob(trial, bytes);
    },
  };
}

/** The store in a file that is open already. */
export function sqliteStoreOn(database: Database.Database): Store {
  let open = true;
  const { append, flush } = appending(database);
  return {
    ...sqliteDevices(database),
    append,
    entries: async (trial, after, limit) => readEntries(database, trial, after, limit),
    entriesSince: async (trial, seq, limit) => readArrived(database, trial, seq, limit),
    readable: async (trial, seq, limit) => readReadable(database, trial, seq, limit),
    heldIds: async (trial, ids) => heldIds(database, trial, ids),
    trials: async () => readTrials(database),
    trialNames: async () => readTrialNames(database),
    has: async (trial) => hasTrial(database, trial),
    putBlob: async (trial, bytes) => putBlob(database, trial, bytes),
    getBlob: async (trial, name) => getBlob(database, trial, name),
    blobNames: async (trial) => blobNames(database, trial),
    name: async () => readName(database),
    rename: async () => renameStore(database),
    async close() {
      if (!open) return;
      open = false;
      flush();
      // The driver leaves the log beside the file; folding it in makes that one file the whole shelf, to copy or to carry.
      database.pragma('wal_checkpoint(TRUNCATE)');
      closeDatabase(database);
    },
  };
}

/** Opens the file, checked for damage and brought up to date. The caller closes it. */
export function openSound(path: string): Database.Database {
  try {
    if (!existsSync(path)) makeNew(path);
    const trouble = notADatabase(path);
    if (trouble !== null) throw new DamagedShelf(path, trouble);
    return checked(path, new Database(path));
  } catch (error) {
    throw refusalOf(path, error);
  }
}

function checked(path: string, database: Database.Database): Database.Database {
  try {
    makeDurable(database);
    const damage = damageIn(database);
    if (damage !== null) throw new DamagedShelf(path, damage);
    migrate(database);
    return database;
  } catch (error) {
    closeDatabase(database);
    throw error;
  }
}

/**
 * Makes the file under another name and gives it its own when it is whole. A start that is cut off leaves no half-made
 * shelf, so a file of no length was never one of ours.
 */
function makeNew(path: string): void {
  makeFolder(dirname(path), OWN_FOLDER);
  const beside = `${path}.${process.pid}.new`;
  rmSync(beside, { force: true });
  const database = new Database(beside);
  migrate(database);
  closeDatabase(database);
  // Another process may have been quicker; then its file is the shelf.
  if (!placeNew(beside, path)) rmSync(beside, { force: true });
}

function makeDurable(database: Database.Database): void {
  database.pragma(`busy_timeout = ${BUSY_WAIT_MS}`);
  database.pragma('journal_mode = WAL');
  database.pragma('synchronous = FULL');
}

/**
 * Throws once the file was moved, removed or replaced while it is open: what is written then would be acknowledged and
 * be lost with the last program that holds the file.
 */
function stillThere(path: string): () => void {
  const opened = statSync(path, { bigint: true });
  return () => {
    const now = statSync(path, { bigint: true, throwIfNoEntry: false });
    if (now === undefined || now.ino !== opened.ino || now.dev !== opened.dev)
      throw new StoreRefusal(
        `The file of the shelf, ${path}, was moved or replaced while Cupel was running; start Cupel again. What is shown as waiting is sent then.`,
      );
  };
}

function refusalOf(path: string, error: unknown): StoreRefusal {
  if (error instanceof StoreRefusal) return error;
  if (error instanceof FileRefusal)
    return new StoreRefusal(`${error.message.replace(/\.$/, '')}; name another place for the shelf in CUPEL_HOME.`, {
      cause: error,
    });
  if (isDamage(error)) return new DamagedShelf(path, (error as Error).message, undefined, { cause: error });
  return new StoreRefusal(
    isBusy(error)
      ? `The shelf in ${path} is held by another program; close that one and try again.`
      : `The shelf in ${path} could not be opened: look whether the folder can be written to and the disk has room.`,
    { cause: error },
  );
}
