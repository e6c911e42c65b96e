import { existsSync, readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { photoAt } from '../../report/package/photos.ts';
import { sealedAt } from '../../report/package/sealedFiles.ts';
import { FileRefusal, fileTrouble } from './fileRefusal.ts';
import { type FileLimits, sizeWords, USUAL_LIMITS } from './limits.ts';

/** The kinds of file that a data package is made of; its own photos lie in a folder beside them, all else is left alone. */
const TABLE_FILE = /\.(csv|json)$/i;
const PHOTO_FOLDER = 'photos';
const SEALED_FOLDER = 'sealed';

/**
 * Reads the tables and photos of a data package from a folder: path → bytes. A folder that holds nothing but one other folder
 * stands for that one. Nothing is read that the limits refuse, and no link is followed out of the folder.
 *
 * @throws FileRefusal with a sentence.
 */
export function readFolder(path: string, limits: FileLimits = USUAL_LIMITS): Map<string, Uint8Array> {
  try {
    const folder = innerFolder(realpathSync(path));
    return new Map([...readTables(folder, limits), ...readPhotoFiles(folder, limits), ...readSealed(folder, limits)]);
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
  const files = new Map<string, Uint8Array>();
  let total = 0;
  for (const name of namesIn(folder, limits).filter((one) => TABLE_FILE.test(one))) {
    const file = ownFile(folder, name);
    if (file === null) continue;
    total += file.size;
    refuseLarge(name, file.size, total, limits);
    files.set(name, new Uint8Array(readFileSync(file.path)));
  }
  return files;
}

/** The tables and findings of sealed parts, of the folders `sealed/1`, `sealed/2` …; none where nothing was sealed. */
function readSealed(folder: string, limits: FileLimits): Map<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  const isFolder = (path: string) => existsSync(path) && statSync(path).isDirectory();
  if (!isFolder(join(folder, SEALED_FOLDER))) return files;
  const parts = namesIn(join(folder, SEALED_FOLDER), limits).filter((part) =>
    isFolder(join(folder, SEALED_FOLDER, part)),
  );
  const paths = parts.flatMap((part) =>
    namesIn(join(folder, SEALED_FOLDER, part), limits).map((name) => `${SEALED_FOLDER}/${part}/${name}`),
  );
  let total = 0;
  for (const path of paths.filter((one) => sealedAt(one) !== null)) {
    const file = ownFile(folder, path);
    if (file === null) continue;
    total += file.size;
    refuseLarge(path, file.size, total, limits);
    files.set(path, new Uint8Array(readFileSync(file.path)));
  }
  return files;
}

/** The photos that are named by their content, of the folder `photos`; none where there is no such folder. */
function readPhotoFiles(folder: string, limits: FileLimits): Map<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  if (!existsSync(join(folder, PHOTO_FOLDER)) || !statSync(join(folder, PHOTO_FOLDER)).isDirectory()) return files;
  const paths = namesIn(join(folder, PHOTO_FOLDER), limits).map((name) => `${PHOTO_FOLDER}/${name}`);
  let total = 0;
  for (const path of paths.filter((one) => photoAt(one) !== null)) {
    const file = ownFile(folder, path);
    if (file === null) continue;
    total += file.size;
    refuseLarge(path, file.size, total, { ...limits, totalBytes: limits.photoBytes });
    files.set(path, new Uint8Array(readFileSync(file.path)));
  }
  return files;
}

function namesIn(folder: string, limits: FileLimits): string[] {
  const names = readdirSync(folder).sort();
  if (names.length > limits.files)
    throw new FileRefusal(
      `${folder} holds ${names.length} files, at most ${limits.files} are looked at; name the package's own folder.`,
    );
  return names;
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
      `${name} has ${sizeWords(size)}, at most ${sizeWords(limits.fileBytes)} are read; a package's own files are far smaller.`,
    );
  if (total > limits.totalBytes)
    throw new FileRefusal(`The files together have more than ${sizeWords(limits.totalBytes)}; a trial is far smaller.`);
}
