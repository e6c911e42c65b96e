import { crc32 } from 'node:zlib';
import type { Entry } from '../../../journal/entry.ts';
import { StoreRefusal } from '../store.ts';
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
const BETWEEN = '\0';

/** The columns that a reading query asks for: see {@link EntryRow}. As bytes, because a damaged text stops the driver. */
export const READ_COLUMNS = `seq, sum, CAST(${['id', 'kind', 'at', 'said_by', 'device', 'body'].join(' || char(0) || ')} AS BLOB) AS said`;

/** The columns of a row in the order in which they are inserted: trial, seq, id, kind, at, said_by, device, body, sum. */
export function rowOf(entry: Entry, seq: number) {
  const said = [entry.id, entry.kind, entry.at, entry.by, entry.device, JSON.stringify(entry.body)] as const;
  return [entry.trial, seq, ...said, crc32(said.join(BETWEEN))] as const;
}

/**
 * The entry of a row, which is compared with the sum that was written with it: a disk that changed one digit of a
 * reading would otherwise change a finding.
 *
 * @throws StoreRefusal when the row is not what was written.
 */
export function entryOf(trial: string, { seq, sum, said }: EntryRow): Entry {
  const bytes = said === null ? null : new Uint8Array(said);
  if (bytes === null || (sum !== null && crc32(bytes) !== sum)) throw damagedEntry(trial, seq);
  const [id, kind, at, by, device, body] = decoded(bytes)?.split(BETWEEN) ?? [];
  if (body === undefined) throw damagedEntry(trial, seq);
  try {
    return { id, kind, at, by, device, trial, body: JSON.parse(body) } as Entry;
  } catch {
    throw damagedEntry(trial, seq);
  }
}

function damagedEntry(trial: string, seq: number): StoreRefusal {
  return new StoreRefusal(
    `Entry number ${seq} of trial "${trial}" is not what was written: the disk damaged the shelf. Stop Cupel and put the last good backup back with cupel restore.`,
  );
}
