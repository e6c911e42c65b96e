import { checkEntry } from '../../src/journal/entryCheck.ts';
import { type PackageReading, readPackage } from '../../src/report/package/readPackage.ts';
import { PackageRefused } from '../../src/report/package/refusal.ts';
import { unzipPackage } from '../../src/report/package/zip.ts';
import { fold } from '../../src/trial/fold.ts';
import { type Chance, chanceFrom, wounded } from './chance.ts';
import { type Fuzzed, newFuzzed, troubled } from './fuzzed.ts';
import { madeArchives, madePackage } from './madePackage.ts';

const NOW = '2026-11-25T09:00Z';
const ARCHIVES = 40;

/** Reads made-up and damaged packages. Every one must be read or be refused in sentences, and what is read must fold. */
export function fuzzImport(bodies: number, seed: number): Fuzzed {
  const chance = chanceFrom(seed);
  const archives = madeArchives(chance, ARCHIVES);
  const fuzzed = newFuzzed();
  for (let body = 0; body < bodies; body += 1) {
    const files = chance.often(50) ? madePackage(chance) : unpacked(wounded(chance.one(archives), chance), fuzzed);
    if (files === null) continue;
    try {
      judge(readPackage(files, { now: NOW, trial: 'fuzz', keepGood: chance.often(50) }), chance, fuzzed);
    } catch (error) {
      troubled(fuzzed, error, [...files].map(([name, bytes]) => `${name}: ${JSON.stringify(text(bytes))}`).join('; '));
    }
    fuzzed.bodies += 1;
  }
  return fuzzed;
}

function unpacked(archive: Uint8Array, fuzzed: Fuzzed): Map<string, Uint8Array> | null {
  try {
    return unzipPackage(archive);
  } catch (error) {
    fuzzed.bodies += 1;
    count(fuzzed, 'archive refused');
    if (!(error instanceof PackageRefused)) troubled(fuzzed, error, Buffer.from(archive).toString('base64'));
    return null;
  }
}

function judge(read: PackageReading, chance: Chance, fuzzed: Fuzzed): void {
  count(fuzzed, read.entries.length > 0 ? 'read' : 'refused');
  fuzzed.accepted += read.entries.length;
  for (const { found, expected, file } of read.refusals)
    if (!found || !expected || !file)
      throw new Error(`a refusal without words: ${JSON.stringify({ found, expected, file })}`);
  if (read.entries.length === 0 && read.refusals.length === 0 && read.notes.length === 0)
    throw new Error('nothing came of it, and nothing was said');
  for (const entry of read.entries) {
    const checked = checkEntry(entry);
    if (!checked.ok) throw new Error(`made an entry that no door lets in: ${checked.found} as ${checked.where}`);
  }
  if (chance.often(50)) fold(read.entries);
}

function count(fuzzed: Fuzzed, what: string): void {
  fuzzed.outcomes[what] = (fuzzed.outcomes[what] ?? 0) + 1;
}

function text(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('latin1');
}
