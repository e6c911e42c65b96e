import { statSync } from 'node:fs';
import { basename, extname, resolve } from 'node:path';
import type { Entry } from '../../journal/entry.ts';
import { readPackage } from '../../report/package/readPackage.ts';
import { type Refusal, refusalText } from '../../report/package/refusal.ts';
import { unzipPackage } from '../../report/package/zip.ts';
import { FileRefusal } from '../files/fileRefusal.ts';
import { readBytes } from '../files/readBytes.ts';
import { readFolder } from '../files/readFolder.ts';
import { EXIT, Failure } from './failure.ts';

/** The findings that a published package brings along, to be computed again by whoever doubts them. */
export const FINDINGS_FILE = 'findings.json';

export interface PackageAt {
  trial: string;
  entries: Entry[];
  refusals: Refusal[];
  notes: string[];
  /** The text of findings.json, null when the package has none. */
  findings: string | null;
}

/** True when there is a file or folder of that name. */
export function isPath(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false }) !== undefined;
}

/** Reads the package in a folder or a .zip: what it holds, and what was refused of it. */
export function packageAt(path: string, now: Date, keepGood: boolean): PackageAt {
  const files = filesAt(path);
  const findings = files.get(FINDINGS_FILE);
  files.delete(FINDINGS_FILE);
  const name = basename(resolve(path), extname(path).toLowerCase() === '.zip' ? extname(path) : undefined);
  const read = readPackage(files, { trial: name, keepGood, now: now.toISOString() });
  return { ...read, findings: findings === undefined ? null : new TextDecoder().decode(findings) };
}

function filesAt(path: string): Map<string, Uint8Array> {
  const about = statSync(path, { throwIfNoEntry: false });
  if (about === undefined) throw new FileRefusal(`${path} is not there.`);
  if (about.isDirectory()) return readFolder(path);
  if (extname(path).toLowerCase() !== '.zip')
    throw new FileRefusal(`${path} is neither a folder nor a .zip; name the folder that its tables lie in.`);
  return unzipPackage(readBytes(path));
}

/** Writes each refusal and note on a line of its own to stderr. */
export function tellRefusals({ refusals, notes }: Pick<PackageAt, 'refusals' | 'notes'>): void {
  for (const note of notes) process.stderr.write(`${note}\n`);
  for (const refusal of refusals) process.stderr.write(`${refusalText(refusal)}\n`);
}

/** Ends the command when any row was refused, after saying which ones and why. */
export function refuseWhenRefused(read: PackageAt, path: string): void {
  if (read.refusals.length === 0) return;
  tellRefusals(read);
  const rows = read.refusals.length === 1 ? 'One thing in it was' : `${read.refusals.length} things in it were`;
  throw new Failure(`${path} could not be read: ${rows} refused (above), and nothing was kept.`, EXIT.dataSaysNo);
}
