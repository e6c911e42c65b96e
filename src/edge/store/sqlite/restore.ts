import { existsSync, linkSync, renameSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'libsql';
import { syncFile, syncFolder } from '../../files/durably.ts';
import { candidateFrom, emptyCandidate } from '../backup/candidate.ts';
import { asideStamp, type Restored } from '../backup/restored.ts';
import { sealOf } from '../backup/seal.ts';
import { StoreRefusal } from '../store.ts';
import { isBusy, notADatabase } from './damage.ts';
import { closeDatabase } from './prepared.ts';
import { releaseClosed } from './release.ts';
import { addRemains, remainsOfLog } from './remainsOfLog.ts';
import { type Salvaged, salvageInto } from './salvage.ts';

/**
 * Puts a backup back as the shelf in `path`, and adds to it whatever can still be read of the shelf that was there and it
 * does not hold, unless `exactly`. Without a file the shelf is made of that alone. What was there, sound or damaged, is kept
 * beside it under a dated name.
 *
 * @throws StoreRefusal when the backup is not whole, the shelf is in use, or nothing can be read; nothing was changed then.
 */
export async function restoreSqlite(file: string | null, path: string, now: Date, exactly = false): Promise<Restored> {
  const beside = `${path}.restoring`;
  const candidate = file === null ? await emptyCandidate(beside) : await candidateFrom(file, beside);
  try {
    // Before anything opens the shelf, which would drop what stands behind a damaged place of the log.
    const remains = remainsOfLog(path);
    await refuseHeld(path);
    const salvaged = exactly || !existsSync(path) ? null : await salvageInto(path, candidate.store);
    if (salvaged !== null) {
      const more = await addRemains(remains, candidate.store);
      salvaged.entries += more.entries;
      salvaged.blobs += more.blobs;
    }
    if (file === null) refuseNothing(path, salvaged);
    const grown = (salvaged?.entries ?? 0) + (salvaged?.blobs ?? 0) > 0;
    const held = grown ? await sealOf(candidate.store, '') : candidate.held;
    await candidate.finish();
    syncFile(candidate.path);
    const aside = setAside(path, now);
    renameSync(candidate.path, path);
    syncFolder(dirname(path));
    return { backup: file === null ? null : candidate.held, held, sealed: candidate.sealed, salvaged, aside };
  } catch (error) {
    await candidate.discard();
    throw error;
  }
}

/** Throws when there is nothing to make a shelf of. */
function refuseNothing(path: string, salvaged: Salvaged | null): void {
  if (salvaged === null) throw new StoreRefusal(`There is no shelf in ${path}; name the file of a backup.`);
  if (salvaged.entries + salvaged.blobs > 0) return;
  const why = salvaged.unreadable === null ? 'it holds nothing' : salvaged.unreadable;
  throw new StoreRefusal(
    `Nothing can be read of the shelf in ${path} (${why}). Name the file of a backup; or move this file aside, start again, and import the packages you exported. Phones and browsers send again what they hold.`,
  );
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
