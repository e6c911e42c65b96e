import { existsSync, linkSync, renameSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'libsql';
import { syncFile, syncFolder } from '../../files/durably.ts';
import { candidateFrom } from '../backup/candidate.ts';
import { asideStamp, type Restored } from '../backup/restored.ts';
import { StoreRefusal } from '../store.ts';
import { isBusy, notADatabase } from './damage.ts';
import { closeDatabase } from './prepared.ts';
import { releaseClosed } from './release.ts';

/**
 * Puts a backup back as the shelf in `path`. What was there, sound or damaged, is kept beside it under a dated name.
 *
 * @throws StoreRefusal when the backup is not whole or the shelf is in use; nothing was changed then.
 */
export async function restoreSqlite(file: string, path: string, now: Date): Promise<Restored> {
  const candidate = await candidateFrom(file, `${path}.restoring`);
  try {
    await refuseHeld(path);
    await candidate.finish();
    syncFile(candidate.path);
    const aside = setAside(path, now);
    renameSync(candidate.path, path);
    syncFolder(dirname(path));
    return { held: candidate.held, sealed: candidate.sealed, aside };
  } catch (error) {
    await candidate.discard();
    throw error;
  }
}

/**
 * Throws when another program has the shelf open: a transaction in exclusive locking mode needs the file for itself
 * (https://www.sqlite.org/pragma.html#pragma_locking_mode). Closing then folds the log into the file.
 */
async function refuseHeld(path: string): Promise<void> {
  // Opening what is no database would begin one in it.
  if (!existsSync(path) || notADatabase(path) !== null) return;
  // What this process itself has opened and closed before must not count.
  await releaseClosed();
  const database = new Database(path);
  try {
    database.exec('PRAGMA locking_mode = EXCLUSIVE; BEGIN IMMEDIATE; COMMIT;');
  } catch (error) {
    if (isBusy(error))
      throw new StoreRefusal(
        `The shelf in ${path} is in use: stop the bench where it runs (Ctrl+C), then restore again. Nothing was changed.`,
      );
  } finally {
    closeDatabase(database);
    await releaseClosed();
  }
}

/** Gives what is there a dated name besides its own, which the restored file then takes over; null when there is none. */
function setAside(path: string, now: Date): string | null {
  if (!existsSync(path)) return null;
  const aside = freeName(path, now);
  // Left only by a damaged file: a log of another file must never lie beside the restored one.
  for (const ending of ['-wal', '-shm'])
    if (existsSync(`${path}${ending}`)) renameSync(`${path}${ending}`, `${aside}${ending}`);
  try {
    linkSync(path, aside);
  } catch {
    // A disk without second names: then there is a moment without a shelf, and still nothing is lost.
    renameSync(path, aside);
  }
  syncFolder(dirname(path));
  return aside;
}

function freeName(path: string, now: Date): string {
  const stem = `${path.replace(/\.sqlite$/, '')}-until-${asideStamp(now)}`;
  for (let n = 1; ; n += 1) {
    const name = `${stem}${n === 1 ? '' : `-${n}`}.sqlite`;
    if (!existsSync(name)) return name;
  }
}
