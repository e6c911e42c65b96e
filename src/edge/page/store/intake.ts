import { signal } from '@preact/signals';
import type { Entry } from '../../../journal/entry.ts';
import { Bench } from '../worker/bench.ts';
import type { BroughtFile, PackageRead } from '../worker/jobs.ts';
import { fetchEntries, fetchTrials, sendTogether } from './api.ts';
import { closeTrial } from './assay.ts';
import type { Brought } from './brought.ts';
import { sendBlob } from './journal/wire.ts';
import { sentenceOf } from './sentenceOf.ts';
import { loadShelf } from './shelf.ts';

/** What is happening to what was brought. Until `kept`, nothing has changed on the shelf. */
export type Intake =
  | { state: 'idle' }
  | { state: 'reading' }
  | { state: 'refused'; sentence: string }
  | { state: 'asking'; read: PackageRead; good: number }
  | { state: 'kept'; trial: string; added: number; photos: number; left: number; notes: string[] };

export const intake = signal<Intake>({ state: 'idle' });

const bench = new Bench();
let waiting: { files: readonly BroughtFile[]; name: string } | null = null;

/** Reads what was brought. Kept at once when every row was readable; otherwise the refused rows are shown first. */
export async function takeIn(brought: Promise<Brought>): Promise<void> {
  intake.value = { state: 'reading' };
  waiting = null;
  try {
    const files = await brought;
    if (!files.ok) {
      intake.value = { state: 'refused', sentence: files.sentence };
      return;
    }
    const read = await readFiles(files.files, files.name, false);
    if (read.refusals.length === 0) return await keep(read);
    waiting = files;
    const good = await readFiles(files.files, files.name, true);
    intake.value = { state: 'asking', read: { ...read, trial: good.trial }, good: good.entries.length };
  } catch (error) {
    intake.value = { state: 'refused', sentence: sentenceOf(error) };
  }
}

/** Keeps the rows that could be read, leaving out the refused ones. */
export async function keepTheGood(): Promise<void> {
  if (waiting === null) return;
  const { files, name } = waiting;
  intake.value = { state: 'reading' };
  try {
    await keep(await readFiles(files, name, true));
  } catch (error) {
    intake.value = { state: 'refused', sentence: sentenceOf(error) };
  }
}

/** Lets go of what was brought; nothing was changed. */
export function leaveIt(): void {
  bench.stop();
  waiting = null;
  intake.value = { state: 'idle' };
}

/** Reads the files twice: once for the name of the trial, then against what that trial holds on the shelf already. */
async function readFiles(files: readonly BroughtFile[], name: string, keepGood: boolean): Promise<PackageRead> {
  const now = new Date().toISOString();
  const { trial } = await bench.ask('read', { files, name, keepGood: true, now, shelf: [] });
  const held = await onShelf(trial);
  return bench.ask('read', { files, name, keepGood, now, shelf: held });
}

/** What the shelf holds of a trial; nothing when it does not know it. Throws when the shelf cannot be asked. */
async function onShelf(trial: string): Promise<readonly Entry[]> {
  const shelf = await fetchTrials();
  if (!shelf.ok) throw new Error(shelf.sentence);
  if (!shelf.value.some((line) => line.trial === trial)) return [];
  const held = await fetchEntries(trial);
  if (!held.ok) throw new Error(held.sentence);
  return held.value;
}

async function keep(read: PackageRead): Promise<void> {
  // The photos first: a row must not name one that is not there.
  for (const { name, bytes } of read.photos) {
    const sent = await sendBlob(read.trial, name, new Uint8Array(bytes));
    if (!sent.ok) {
      intake.value = { state: 'refused', sentence: sent.sentence };
      return;
    }
  }
  if (read.entries.length > 0) {
    const sent = await sendTogether(read.trial, read.entries);
    if (!sent.ok) {
      intake.value = { state: 'refused', sentence: sent.sentence };
      return;
    }
    closeTrial();
    await loadShelf();
  }
  intake.value = {
    state: 'kept',
    trial: read.trial,
    added: read.entries.length,
    photos: read.photos.filter(({ small }) => small !== true).length,
    left: read.refusals.length,
    notes: read.notes,
  };
}
