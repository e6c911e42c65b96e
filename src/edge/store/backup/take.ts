import { existsSync, rmSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { placeNew } from '../../files/durably.ts';
import { fileTrouble } from '../../files/fileRefusal.ts';
import { makeFolder, OWN_FOLDER } from '../../files/makeFolder.ts';
import { refuseWithoutFolder } from '../../files/refuseWithoutFolder.ts';
import type { ShelfPlace } from '../place.ts';
import { backUpSqlite } from '../sqlite/backup.ts';
import { releaseClosed } from '../sqlite/release.ts';
import { StoreRefusal } from '../store.ts';
import { withLastBackup } from './damagedShelf.ts';
import { type BackupLine, noteBackup } from './list.ts';
import type { Seal } from './seal.ts';

/**
 * Backs a shelf up into a new file, while others go on writing to it, and adds the file to the list of backups. The file
 * gets its name only when all of it is on the disk, so that whatever has that name is whole.
 */
export async function takeBackup(place: ShelfPlace, to: string, list: string, now: Date): Promise<BackupLine> {
  const file = resolve(to);
  if (existsSync(file)) throw taken(to);
  refuseWithoutFolder(file);
  const part = join(dirname(file), `.${basename(file)}.${process.pid}.part`);
  try {
    const seal = await backUp(place, part, now.toISOString());
    await releaseClosed();
    if (!placeNew(part, file)) throw taken(to);
    const line = { ...seal, file, of: await nameOf(place) };
    makeFolder(dirname(list), OWN_FOLDER);
    noteBackup(list, line);
    return line;
  } catch (error) {
    for (const ending of ['', '-journal', '-wal', '-shm']) rmSync(`${part}${ending}`, { force: true });
    if (isFileTrouble(error)) throw fileTrouble(to, error);
    throw place.kind === 'sqlite' ? await withLastBackup(error, list, place.path) : error;
  }
}

async function backUp(place: ShelfPlace, part: string, takenAt: string): Promise<Seal> {
  if (place.kind === 'sqlite') return backUpSqlite(place.path, part, takenAt);
  const { backUpPostgres } = await import('../postgres/backup.ts');
  return backUpPostgres(place.url, part, takenAt);
}

async function nameOf(place: ShelfPlace): Promise<string> {
  if (place.kind === 'sqlite') return place.path;
  const { whereIs } = await import('../postgres/trouble.ts');
  return whereIs(place.url);
}

function taken(to: string): StoreRefusal {
  return new StoreRefusal(`${to} is there already, and a backup is never written over; name another file.`);
}

/** An error of the file system; the driver's errors have codes of their own. */
function isFileTrouble(error: unknown): boolean {
  return /^E[A-Z]+$/.test((error as NodeJS.ErrnoException | null)?.code ?? '');
}
