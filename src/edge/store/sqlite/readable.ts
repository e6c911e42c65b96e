import type Database from 'libsql';
import { type Readable, USUAL_ADVICE } from '../store.ts';
import { unlessDamaged } from './damage.ts';
import { type EntryRow, soundEntryOf } from './entryRow.ts';
import { prepared } from './prepared.ts';
import { BY_ARRIVAL, lastArrival, NO_LIMIT } from './read.ts';

/** By how much the stretch that is asked for shrinks where a part of it cannot be read, and grows again after. */
const STEP = 8;
const MOST_ROWS = 10_000;

/**
 * A stretch of a journal as far as it can be read. Numbers have no gaps, so that a number that does not come is a damaged
 * entry, whether its row was changed or its page of the file cannot be read at all.
 */
export function readReadable(
  database: Database.Database,
  trial: string,
  seq: number,
  limit: number = NO_LIMIT,
): Readable {
  const end = lastNumber(database, trial);
  const most = limit < 0 ? Number.POSITIVE_INFINITY : limit;
  const rows = rowsAfter(database, trial, seq, most, end);
  // Fewer than were asked for: there is nothing after them.
  const next = rows.length < most ? Math.max(seq, end, rows.at(-1)?.seq ?? 0) : rows.at(-1)!.seq;
  const sound = new Map(rows.map((row) => [row.seq, soundEntryOf(trial, row)]));
  const damaged: number[] = [];
  for (let number = seq + 1; number <= next; number += 1) if (!sound.get(number)) damaged.push(number);
  const entries = [...sound.values()].filter((entry) => entry !== null);
  return { entries, next, damaged, advice: damaged.length === 0 ? '' : USUAL_ADVICE };
}

/** Rows after a number, at most so many; in smaller and smaller steps around what cannot be read. */
function rowsAfter(database: Database.Database, trial: string, seq: number, most: number, end: number): EntryRow[] {
  const statement = prepared(database, BY_ARRIVAL);
  const found: EntryRow[] = [];
  let at = seq;
  for (let step = MOST_ROWS; found.length < most; ) {
    const wanted = Math.min(step, most - found.length);
    const rows = unlessDamaged(() => statement.all(trial, at, wanted) as EntryRow[]);
    if (rows === null && wanted > 1) step = Math.ceil(wanted / STEP);
    else if (rows === null) at += 1;
    else {
      // A number that cannot be is one that the disk made up.
      const possible = rows.filter((row) => row.seq > at && row.seq <= Math.max(end, at + wanted));
      found.push(...possible);
      if (rows.length < wanted) return found;
      at = Math.max(at + 1, possible.at(-1)?.seq ?? 0);
      step = Math.min(step * STEP, MOST_ROWS);
    }
    if (rows === null && at >= end) return found;
  }
  return found;
}

/** Bytes that an entry takes at the least: its id alone has 36, in the table and in an index. */
const SMALLEST_ENTRY = 72;

/** The number of the last entry, as far as anything tells it, and no more than the file has room for. */
function lastNumber(database: Database.Database, trial: string): number {
  const told = unlessDamaged(() => lastArrival(database, trial)) ?? 0;
  const [size] = database
    .prepare('SELECT page_count * page_size AS size FROM pragma_page_count, pragma_page_size')
    .all() as {
    size: number;
  }[];
  const room = Math.floor((size?.size ?? 0) / SMALLEST_ENTRY);
  if (told > 0 && told <= room) return told;
  const query = 'SELECT CAST(max(seq) AS INTEGER) AS last FROM entries WHERE trial = ?';
  const [row] = unlessDamaged(() => prepared(database, query).all(trial) as { last: number | null }[]) ?? [];
  return Math.min(room, Math.max(told, row?.last ?? 0));
}
