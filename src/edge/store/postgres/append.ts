import type { Entry } from '../../../journal/entry.ts';
import { refuseStrangers } from '../refuse.ts';
import type { Appended } from '../store.ts';
import { type Asked, type Base, inTransaction, type Tables } from './base.ts';
import { ROW_WIDTH, rowOf } from './entryRow.ts';
import { heldIds, lastArrival } from './read.ts';

/** Rows in one statement; PostgreSQL takes at most 65,535 values in one (protocol 3.0, message Bind: a 16-bit count). */
const ROWS_AT_ONCE = 1000;

/**
 * Appends in one transaction, so that a power cut leaves all of the entries or none; known ids are left alone.
 *
 * Two transactions may run at once, and the one that took the smaller numbers may commit last: somebody who reads in
 * between would see the larger ones, go on from there, and never meet the smaller. So the trial's own row is locked
 * first and holds the count: the next transaction gets its numbers only after this one has committed. The lock is a row
 * and no advisory lock, because a row lies where its trial lies when the tables are divided over several machines.
 */
export async function appendEntries(base: Base, trial: string, entries: readonly Entry[]): Promise<Appended> {
  refuseStrangers(trial, entries);
  if (entries.length === 0) return { added: 0, known: 0, last: await lastArrival(base, trial) };
  return inTransaction(base, async (asked) => {
    const before = await lockTrial(asked, base.tables, trial);
    const fresh = await unknownOf(asked, base.tables, trial, entries);
    for (let from = 0; from < fresh.length; from += ROWS_AT_ONCE)
      await insert(asked, base.tables, fresh.slice(from, from + ROWS_AT_ONCE), before + from + 1);
    const last = before + fresh.length;
    if (fresh.length > 0)
      await asked.query(`UPDATE ${base.tables.trials} SET last = $1 WHERE trial = $2`, [last, trial]);
    return { added: fresh.length, known: entries.length - fresh.length, last };
  });
}

/** Locks the trial's row, making it when there is none, and answers the last number that was given. */
async function lockTrial(asked: Asked, { trials }: Tables, trial: string): Promise<number> {
  const { rows } = await asked.query<{ last: string }>(
    `INSERT INTO ${trials} AS t (trial) VALUES ($1) ON CONFLICT (trial) DO UPDATE SET last = t.last RETURNING last`,
    [trial],
  );
  return Number(rows[0]!.last);
}

/** The entries that are not there yet, each once. Nobody else can add any while the trial's row is locked. */
async function unknownOf(
  asked: Asked,
  tables: Tables,
  trial: string,
  entries: readonly Entry[],
): Promise<readonly Entry[]> {
  const byId = new Map<string, Entry>();
  for (const entry of entries) if (!byId.has(entry.id)) byId.set(entry.id, entry);
  for (const id of await heldIds({ pool: asked, tables }, trial, [...byId.keys()])) byId.delete(id);
  return [...byId.values()];
}

async function insert(asked: Asked, tables: Tables, entries: readonly Entry[], firstSeq: number): Promise<void> {
  const places = entries.map(
    (_, row) => `(${Array.from({ length: ROW_WIDTH }, (_, column) => `$${row * ROW_WIDTH + column + 1}`).join(', ')})`,
  );
  await asked.query(
    `INSERT INTO ${tables.entries} (trial, seq, id, kind, at, said_by, device, body) VALUES ${places.join(', ')}`,
    entries.flatMap((entry, row) => rowOf(entry, firstSeq + row)),
  );
}
