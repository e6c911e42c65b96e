import { readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { FileRefusal, fileTrouble } from './fileRefusal.ts';
import { type FileLimits, sizeWords, USUAL_LIMITS } from './limits.ts';

/** The kinds of file that a data package is made of; photos and notes beside them are left alone. */
const TABLE_FILE = /\.(csv|json)$/i;

/**
 * Reads the tables of a data package from a folder: file name → bytes. A folder that holds nothing but one other folder
 * stands for that one. Nothing is read that the limits refuse, and no link is followed out of the folder.
 *
 * @throws FileRefusal with a sentence.
 */
export function readFolder(path: string, limits: FileLimits = USUAL_LIMITS): Map<string, Uint8Array> {
  try {
    const folder = innerFolder(realpathSync(path));
    return readTables(folder, limits);
  } catch (error) {
    throw fileTrouble(path, error);
  }
}

function innerFolder(folder: string): string {
  const items = readdirSync(folder, { withFileTypes: true }).filter((item) => !item.name.startsWith('.'));
  const only = items[0];
  return items.length === 1 && only?.isDirectory() ? join(folder, only.name) : folder;
}

function readTables(folder: string, limits: FileLimits): Map<string, Uint8Array> {
  const names = readdirSync(folder).sort();
  if (names.length > limits.files)
    throw new FileRefusal(
      `${folder} holds ${names.length} files, at most ${limits.files} are looked at; name the package's own folder.`,
    );
  const files = new Map<string, Uint8Array>();
  let total = 0;
  for (const name of names.filter((one) => TABLE_FILE.test(one))) {
    const file = ownFile(folder, name);
    if (file === null) continue;
    total += file.size;
    refuseLarge(name, file.size, total, limits);
    files.set(name, new Uint8Array(readFileSync(file.path)));
  }
  return files;
}

/** The real file behind a name, or null for a folder, pipe or device; refuses one that lies elsewhere. */
function ownFile(folder: string, name: string): { path: string; size: number } | null {
  const path = resolved(folder, name);
  if (!path.startsWith(folder + sep))
    throw new FileRefusal(`${name} is a link that leads out of the folder; put the file itself there.`);
  const about = statSync(path);
  return about.isFile() ? { path, size: about.size } : null;
}

function resolved(folder: string, name: string): string {
  try {
    return realpathSync(join(folder, name));
  } catch (error) {
    throw fileTrouble(name, error);
  }
}

function refuseLarge(name: string, size: number, total: number, limits: FileLimits): void {
  if (size > limits.fileBytes)
    throw new FileRefusal(
      `${name} has ${sizeWords(size)}, at most ${sizeWords(limits.fileBytes)} are read; a table of readings is far smaller.`,
    );
  if (total > limits.totalBytes)
    throw new FileRefusal(`The files together have more than ${sizeWords(limits.totalBytes)}; a trial is far smaller.`);
}
