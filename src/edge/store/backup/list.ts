import { appendFileSync, existsSync, readFileSync } from 'node:fs';
import Database from 'libsql';
import { syncFile } from '../../files/durably.ts';
import { damageIn, notADatabase } from '../sqlite/damage.ts';
import { MIGRATIONS, userVersion } from '../sqlite/migrations.ts';
import { sqliteStoreOn } from '../sqlite/open.ts';
import { closeDatabase } from '../sqlite/prepared.ts';
import { readSeal, type Seal, sealOf } from './seal.ts';

/** One backup that was taken. */
export interface BackupLine extends Seal {
  /** Where it was written. */
  file: string;
  /** What it is a backup of: the path of the shelf, or where the database is. */
  of: string;
}

/** Adds a line to the list: one JSON object on each line, so that a line that was cut off spoils no other. */
export function noteBackup(list: string, line: BackupLine): void {
  appendFileSync(list, `${JSON.stringify(line)}\n`);
  syncFile(list);
}

/** The backups of a shelf, the last one first. */
export function notedBackups(list: string, of: string): BackupLine[] {
  if (!existsSync(list)) return [];
  const lines = readFileSync(list, 'utf8').split('\n');
  return lines
    .flatMap(lineOf)
    .filter((line) => line.of === of)
    .reverse();
}

function lineOf(text: string): BackupLine[] {
  try {
    const line = JSON.parse(text) as BackupLine;
    return typeof line?.file === 'string' && typeof line.of === 'string' ? [line] : [];
  } catch {
    return [];
  }
}

/** The last backup of a shelf that is still there and still what it was when it was taken; null when there is none. */
export async function lastGoodBackup(list: string, of: string): Promise<BackupLine | null> {
  for (const line of notedBackups(list, of)) if (await isIntact(line.file)) return line;
  return null;
}

/** Whether a backup is whole. Only reads. */
async function isIntact(file: string): Promise<boolean> {
  if (!existsSync(file) || notADatabase(file) !== null) return false;
  const database = new Database(file);
  try {
    if (damageIn(database) !== null) return false;
    const seal = readSeal(database);
    // An older version's tables cannot be read as they are; `restore` brings them up to date in a copy and looks again.
    if (seal === null || userVersion(database) !== MIGRATIONS.length) return seal !== null;
    return (await sealOf(sqliteStoreOn(database), seal.takenAt)).digest === seal.digest;
  } catch {
    return false;
  } finally {
    closeDatabase(database);
  }
}
