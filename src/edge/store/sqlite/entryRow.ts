import { crc32 } from 'node:zlib';
import type { Entry } from '../../../journal/entry.ts';
import { DamagedData } from '../store.ts';
import { decoded } from './text.ts';

/** What is read of one row of the table `entries`. */
export interface EntryRow {
  seq: number;
  /** CRC-32 of `said`; null in rows that the first version wrote. */
  sum: number | null;
  /** What was said, packed; null when the row is damaged. */
  said: ArrayBuffer | Uint8Array | null;
}

/** Stands between the parts of what was said. No entry holds it: the check at every door refuses it. */
export const BETWEEN = '\0';

/**
 * The columns that a reading query asks for: see {@link EntryRow}. Text as bytes and numbers as numbers, because the driver
 * ends the whole process at a text that is none, which is what any cell of a damaged row may hold.
 */
export const READ_COLUMNS = `CAST(seq AS INTEGER) AS seq, CAST(sum AS INTEGER) AS sum, CAST(${['id', 'kind', 'at', 'said_by', 'device', 'body'].join(' || char(0) || ')} AS BLOB) AS said`;

/** The columns of a row in the order in which they are inserted: trial, seq, id, kind, at, said_by, device, body, sum. */
export function rowOf(entry: Entry, seq: number) {
  const said = [entry.id, entry.kind, entry.at, entry.by, entry.device, JSON.stringify(entry.body)] as const;
  return [entry.trial, seq, ...said, crc32(said.join(BETWEEN))] as const;
}

/**
 * The entry of a row, which is compared with the sum that was written with it: a disk that changed one digit of a
 * reading would otherwise change a finding. Null when the row is not what was written.
 */
export function soundEntryOf(trial: string, { sum, said }: EntryRow): Entry | null {
  const bytes = said === null ? null : new Uint8Array(said);
  if (bytes === null || (sum !== null && crc32(bytes) !== sum)) return null;
  const [id, kind, at, by, device, body] = decoded(bytes)?.split(BETWEEN) ?? [];
  if (body === undefined) return null;
  try {
    return { id, kind, at, by, device, trial, body: JSON.parse(body) } as Entry;
  } catch {
    return null;
  }
}

/**
 * The same for whoever must have the journal whole.
 *
 * @throws DamagedData when the row is not what was written.
 */
export function entryOf(trial: string, row: EntryRow): Entry {
  const entry = soundEntryOf(trial, row);
  if (entry !== null) return entry;
  throw new DamagedData(
    `Entry number ${row.seq} of trial "${trial}" is not what was written: the disk damaged the shelf.`,
  );
}
