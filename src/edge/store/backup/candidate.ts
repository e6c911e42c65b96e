import { copyFileSync, existsSync, rmSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'libsql';
import { makeFolder, OWN_FOLDER } from '../../files/makeFolder.ts';
import { damageIn, notADatabase } from '../sqlite/damage.ts';
import { MIGRATIONS, migrate, userVersion } from '../sqlite/migrations.ts';
import { sqliteStoreOn } from '../sqlite/open.ts';
import { closeDatabase } from '../sqlite/prepared.ts';
import { releaseClosed } from '../sqlite/release.ts';
import { type Store, StoreRefusal } from '../store.ts';
import { breakSeal, readSeal, type Seal, sealOf } from './seal.ts';

/** A copy of a backup that was found whole and is ready to become a shelf. */
export interface Candidate {
  /** Where the copy is. */
  path: string;
  /** What is in it. `sealed`: it is, to the letter, what was backed up. */
  held: Seal;
  sealed: boolean;
  /** Reads it. */
  store: Store;
  /** Makes it a shelf of its own name, without devices, in one file. */
  finish(): Promise<void>;
  /** Removes the copy. */
  discard(): Promise<void>;
}

/** A copy of nothing: an empty shelf in `path`, to be filled with whatever can be read elsewhere. */
export async function emptyCandidate(path: string): Promise<Candidate> {
  remove(path);
  makeFolder(dirname(path), OWN_FOLDER);
  const database = new Database(path);
  migrate(database);
  const store = sqliteStoreOn(database);
  const discard = async () => {
    closeDatabase(database);
    await releaseClosed();
    remove(path);
  };
  const held = await sealOf(store, '');
  return { path, held, sealed: false, store, discard, finish: () => finish(database, path) };
}

/**
 * Copies a backup to `path` and looks through the copy: the backup itself is only read, from a disk that may be
 * read-only, and nothing else is touched before everything was found in order.
 *
 * @throws StoreRefusal with a sentence that says what is wrong with the file.
 */
export async function candidateFrom(file: string, path: string): Promise<Candidate> {
  refuseWrongFile(file);
  remove(path);
  makeFolder(dirname(path), OWN_FOLDER);
  copyFileSync(file, path);
  // A shelf that was copied by hand while the bench ran has its latest entries in the log beside it.
  if (existsSync(`${file}-wal`)) copyFileSync(`${file}-wal`, `${path}-wal`);
  const database = new Database(path);
  const discard = async () => {
    closeDatabase(database);
    await releaseClosed();
    remove(path);
  };
  try {
    const seal = readChecked(database, file);
    const store = sqliteStoreOn(database);
    const held = await sealOf(store, seal?.takenAt ?? '').catch((error: unknown) => {
      throw unfit(file, 'a part of it is not what was written: the disk damaged it', error);
    });
    if (seal !== null && seal.digest !== held.digest)
      throw unfit(file, 'what is in it is not what was backed up: it was changed or damaged since');
    return { path, held, sealed: seal !== null, store, discard, finish: () => finish(database, path) };
  } catch (error) {
    await discard();
    throw error instanceof StoreRefusal ? error : unfit(file, (error as Error).message, error);
  }
}

function refuseWrongFile(file: string): void {
  const there = statSync(file, { throwIfNoEntry: false });
  if (there === undefined) throw new StoreRefusal(`${file} is not there; name the file of a backup.`);
  if (!there.isFile()) throw new StoreRefusal(`${file} is no file; name the file of a backup.`);
  const trouble = notADatabase(file);
  if (trouble !== null) throw unfit(file, trouble);
}

/** Checks the structure, brings the copy up to this version, and answers its seal. */
function readChecked(database: Database.Database, file: string): Seal | null {
  const damage = damageIn(database, true);
  if (damage !== null) throw unfit(file, damage);
  const version = userVersion(database);
  const tables = database.prepare(`SELECT 1 FROM sqlite_schema WHERE name IN ('trials', 'entries', 'blobs')`).all();
  const ours = version >= 1 && tables.length === 3;
  if (!ours) throw unfit(file, 'it is a database of another program');
  if (version > MIGRATIONS.length)
    throw new StoreRefusal(`${file} was written by a newer Cupel than this one; update Cupel and try again.`);
  migrate(database);
  return readSeal(database);
}

async function finish(database: Database.Database, path: string): Promise<void> {
  breakSeal(database);
  database.exec('DELETE FROM devices; UPDATE shelf SET name = lower(hex(randomblob(16)));');
  database.pragma('journal_mode = DELETE');
  closeDatabase(database);
  await releaseClosed();
  rmSync(`${path}-wal`, { force: true });
  rmSync(`${path}-shm`, { force: true });
}

function unfit(file: string, found: string, cause?: unknown): StoreRefusal {
  return new StoreRefusal(`${file} cannot be put back: ${found}. Nothing was changed.`, { cause });
}

function remove(path: string): void {
  for (const ending of ['', '-wal', '-shm', '-journal']) rmSync(`${path}${ending}`, { force: true });
}
