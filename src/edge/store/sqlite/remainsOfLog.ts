/**
 * What stands in the log beside a shelf behind a place that the disk damaged. SQLite reads a log up to the first frame whose sum
 * is wrong and drops the rest without a word, because after a power cut the rest is what nobody was told to be kept. Where the
 * damage lies further in front, that rest was acknowledged.
 * Source of the layout: https://www.sqlite.org/fileformat.html, sections 4.1 to 4.3 (the log, its frames and their sums).
 */
import { closeSync, existsSync, fstatSync, openSync } from 'node:fs';
import type { Entry } from '../../../journal/entry.ts';
import type { Store } from '../store.ts';
import { bytesAt, PAGE_SIZE, rowsOf } from './loosePages.ts';
import { type LooseBlob, type LooseEntry, looseBlobOf, looseEntryOf } from './looseRows.ts';

const HEADER = 32;
const FRAME_HEADER = 24;
/** First number of a log; the last bit says in which order of bytes sums are made. */
const MAGIC = 0x377f0682;

export interface Remains {
  entries: LooseEntry[];
  blobs: LooseBlob[];
}

interface Frame {
  page: number;
  bytes: Buffer;
}

/** Entries and blobs behind the first broken frame of the log; each agrees with its own sum. Reads only, before SQLite does. */
export function remainsOfLog(path: string): Remains {
  const remains: Remains = { entries: [], blobs: [] };
  if (!existsSync(`${path}-wal`) || !existsSync(path)) return remains;
  const [log, file] = [openSync(`${path}-wal`, 'r'), openSync(path, 'r')];
  try {
    const broken = framesAfterBreak(log);
    const newest = new Map(broken.map(({ page, bytes }) => [page, bytes]));
    const pages = Math.floor(fstatSync(file).size / PAGE_SIZE);
    const pageOf = (number: number) =>
      newest.get(number) ??
      (number >= 1 && number <= pages ? bytesAt(file, (number - 1) * PAGE_SIZE, PAGE_SIZE) : null);
    for (const { bytes } of broken)
      for (const row of rowsOf(bytes, 0, pageOf)) {
        const entry = looseEntryOf(row);
        const blob = entry === null ? looseBlobOf(row) : null;
        if (entry !== null) remains.entries.push(entry);
        if (blob !== null) remains.blobs.push(blob);
      }
    return remains;
  } finally {
    closeSync(log);
    closeSync(file);
  }
}

/** The frames from the first one on whose sum is wrong, as far as they are of the same round of the log. */
function framesAfterBreak(log: number): Frame[] {
  const { size } = fstatSync(log);
  const header = bytesAt(log, 0, HEADER);
  const little = header.readUInt32BE(0) === MAGIC;
  const known = (header.readUInt32BE(0) & ~1) >>> 0 === MAGIC;
  let sum = summed(header.subarray(0, HEADER - 8), [0, 0], little);
  let whole = known && sum[0] === header.readUInt32BE(24) && sum[1] === header.readUInt32BE(28);
  const salt = whole ? header.subarray(16, 24) : null;
  const after: Frame[] = [];
  for (let at = HEADER; at + FRAME_HEADER + PAGE_SIZE <= size; at += FRAME_HEADER + PAGE_SIZE) {
    const frame = bytesAt(log, at, FRAME_HEADER + PAGE_SIZE);
    // Frames of an earlier round of the log are in the file already.
    const ofRound = salt === null || frame.subarray(8, 16).equals(salt);
    const page = frame.subarray(FRAME_HEADER);
    if (whole) {
      sum = summed(page, summed(frame.subarray(0, 8), sum, little), little);
      whole = ofRound && sum[0] === frame.readUInt32BE(16) && sum[1] === frame.readUInt32BE(20);
    }
    if (!whole && ofRound) after.push({ page: frame.readUInt32BE(0), bytes: page });
  }
  return after;
}

type Sum = [number, number];

/** The two sums, carried on over more bytes. */
function summed(bytes: Buffer, [first, second]: Sum, little: boolean): Sum {
  let [a, b] = [first, second];
  const word = (at: number) => (little ? bytes.readUInt32LE(at) : bytes.readUInt32BE(at));
  for (let at = 0; at < bytes.length; at += 8) {
    a = (a + word(at) + b) >>> 0;
    b = (b + word(at + 4) + a) >>> 0;
  }
  return [a, b];
}

/** Adds to a store what it does not hold; answers how many entries and blobs these were. */
export async function addRemains(
  { entries, blobs }: Remains,
  store: Store,
): Promise<{ entries: number; blobs: number }> {
  const added = { entries: 0, blobs: 0 };
  // Each page was written anew with every entry that came into it, so that most entries are there many times.
  const byTrial = new Map<string, Map<number, Entry>>();
  for (const { seq, entry } of entries)
    byTrial.set(entry.trial, (byTrial.get(entry.trial) ?? new Map<number, Entry>()).set(seq, entry));
  for (const [trial, numbered] of byTrial) {
    const inOrder = [...numbered].sort(([one], [other]) => one - other).map(([, entry]) => entry);
    added.entries += (await store.append(trial, inOrder)).added;
  }
  for (const { trial, bytes } of blobs) {
    const before = (await store.blobNames(trial)).length;
    await store.putBlob(trial, bytes);
    added.blobs += (await store.blobNames(trial)).length - before;
  }
  return added;
}
