import { basename, extname, resolve } from 'node:path';
import type { Entry } from '../../journal/entry.ts';
import { type PackageReading, readPackage } from '../../report/package/readPackage.ts';
import { refusalText } from '../../report/package/refusal.ts';
import { sealedFolders } from '../../report/package/sealedFiles.ts';
import { unzipPackage } from '../../report/package/zip.ts';
import { FileRefusal } from '../files/fileRefusal.ts';
import { ZIP_LIMITS } from '../files/limits.ts';
import { lookedAt } from '../files/lookedAt.ts';
import { readBytes } from '../files/readBytes.ts';
import { readFolder } from '../files/readFolder.ts';
import { EXIT, Failure } from './failure.ts';

/** The findings that a published package brings along, to be computed again by whoever doubts them. */
export const FINDINGS_FILE = 'findings.json';

/** All figures as one table for a spreadsheet, beside the findings. */
export const FIGURES_FILE = 'findings.csv';

/** What the data package standard calls its descriptor. */
export const DESCRIPTOR_FILE = 'datapackage.json';

/** A package as it lies on the disk, not yet understood. */
export interface Brought {
  files: Map<string, Uint8Array>;
  /** Stands in for the trial's name where no table gives one. */
  name: string;
}

/** True when there is a file or folder of that name. */
export function isPath(path: string): boolean {
  return lookedAt(path) !== null;
}

/** The files of a package in a folder or a .zip. Throws FileRefusal with a sentence. */
export function broughtFrom(path: string): Brought {
  const about = lookedAt(path);
  if (about === null) throw new FileRefusal(`${path} is not there.`);
  const zipped = extname(path).toLowerCase() === '.zip';
  if (!about.isDirectory() && !zipped)
    throw new FileRefusal(`${path} is neither a folder nor a .zip; name the folder that its tables lie in.`);
  const files = about.isDirectory() ? readFolder(path) : unzipPackage(readBytes(path, ZIP_LIMITS));
  return { files, name: basename(resolve(path), zipped ? extname(path) : undefined) };
}

/** The text of a file that a package brings along beside its tables; null when it does not. */
function broughtText({ files }: Brought, file: string): string | null {
  const bytes = files.get(file);
  return bytes === undefined ? null : new TextDecoder().decode(bytes);
}

/** What the package says, and what was refused of it. `shelf`: what is known of its trial already. */
export function readBrought(
  { files, name }: Brought,
  { keepGood = false, shelf = [] }: { keepGood?: boolean; shelf?: readonly Entry[] } = {},
): PackageReading {
  return readPackage(files, { trial: name, now: new Date().toISOString(), keepGood, shelf });
}

/** Writes each note and each refusal on a line of its own to stderr. */
export function tellRefusals({ refusals, notes }: PackageReading): void {
  for (const note of notes) process.stderr.write(`${note}\n`);
  for (const refusal of refusals) process.stderr.write(`${refusalText(refusal)}\n`);
}

/** Tells the notes; ends the command when anything was refused, after saying what and why. */
export function refuseWhenRefused(read: PackageReading, path: string): void {
  tellRefusals(read);
  const count = read.refusals.length;
  if (count === 0) return;
  const things = count === 1 ? 'one thing in it was' : `${count} things in it were`;
  throw new Failure(`${path} was not taken: ${things} refused (above).`, EXIT.dataSaysNo);
}

export interface SoundPackage extends PackageReading {
  findings: string | null;
  descriptor: string | null;
  /** The files of its sealed parts, by their number. */
  sealed: Map<number, Map<string, Uint8Array>>;
}

/** A package that must be sound from the first row to the last. */
export function soundPackage(path: string): SoundPackage {
  const brought = broughtFrom(path);
  const read = readBrought(brought);
  refuseWhenRefused(read, path);
  return {
    ...read,
    findings: broughtText(brought, FINDINGS_FILE),
    descriptor: broughtText(brought, DESCRIPTOR_FILE),
    sealed: sealedFolders(brought.files),
  };
}
