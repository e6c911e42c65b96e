import type { Entry } from '../../../journal/entry.ts';
import type { Arrived, TrialLine } from '../store.ts';
import { byOpening, LINE_KINDS, trialLine } from '../trialLine.ts';
import type { Asked, Tables } from './base.ts';
import { type EntryRow, entryOf } from './entryRow.ts';

/** Where to read: the pool, or one connection that sees one moment only. */
export type Read = { pool: Asked; tables: Tables };

/** PostgreSQL reads LIMIT NULL as none (manual, "LIMIT and OFFSET"). */
const NO_LIMIT = null;

export async function readEntries(
  { pool, tables }: Read,
  trial: string,
  after = '',
  limit: number | null = NO_LIMIT,
): Promise<Entry[]> {
  const query = `SELECT * FROM ${tables.entries} WHERE trial = $1 AND id > $2 ORDER BY id LIMIT $3`;
  const { rows } = await pool.query<EntryRow>(query, [trial, after, limit]);
  return rows.map(entryOf);
}

export async function readArrived(
  { pool, tables }: Read,
  trial: string,
  seq: number,
  limit: number | null = NO_LIMIT,
): Promise<Arrived> {
  const query = `SELECT * FROM ${tables.entries} WHERE trial = $1 AND seq > $2 ORDER BY seq LIMIT $3`;
  const { rows } = await pool.query<EntryRow>(query, [trial, seq, limit]);
  return { entries: rows.map(entryOf), next: Number(rows.at(-1)?.seq ?? seq) };
}

export async function heldIds({ pool, tables }: Read, trial: string, ids: readonly string[]): Promise<Set<string>> {
  if (ids.length === 0) return new Set();
  const query = `SELECT id FROM ${tables.entries} WHERE trial = $1 AND id = ANY($2)`;
  const { rows } = await pool.query<{ id: string }>(query, [trial, ids]);
  return new Set(rows.map(({ id }) => id));
}

/** Names the trials it asks for like every other query; only their list itself is asked of the whole store. */
export async function readTrials({ pool, tables }: Read): Promise<TrialLine[]> {
  const { rows: trials } = await pool.query<{ trial: string; last: string }>(
    `SELECT trial, last FROM ${tables.trials}`,
  );
  const { rows: described } = await pool.query<EntryRow>(
    `SELECT * FROM ${tables.entries} WHERE trial = ANY($1) AND kind = ANY($2) ORDER BY trial, id`,
    [trials.map(({ trial }) => trial), [...LINE_KINDS]],
  );
  const byTrial = new Map<string, EntryRow[]>(trials.map(({ trial }) => [trial, []]));
  for (const row of described) byTrial.get(row.trial)?.push(row);
  // Numbers of arrival have no gaps, so that the last one is the count.
  const lines = trials.map(({ trial, last }) =>
    trialLine(trial, (byTrial.get(trial) ?? []).map(entryOf), Number(last)),
  );
  return lines.sort(byOpening);
}

export async function readTrialNames({ pool, tables }: Read): Promise<string[]> {
  const { rows } = await pool.query<{ trial: string }>(
    `SELECT trial FROM ${tables.trials} UNION SELECT trial FROM ${tables.blobs} ORDER BY trial`,
  );
  return rows.map(({ trial }) => trial);
}

export async function hasTrial({ pool, tables }: Read, trial: string): Promise<boolean> {
  const { rows } = await pool.query(`SELECT 1 FROM ${tables.trials} WHERE trial = $1`, [trial]);
  return rows.length > 0;
}

/** Arrival number of the trial's last entry; 0 when it has none. */
export async function lastArrival({ pool, tables }: Read, trial: string): Promise<number> {
  const { rows } = await pool.query<{ last: string }>(`SELECT last FROM ${tables.trials} WHERE trial = $1`, [trial]);
  return Number(rows[0]?.last ?? 0);
}

export async function readName({ pool, tables }: Read): Promise<string> {
  const { rows } = await pool.query<{ name: string }>(`SELECT name FROM ${tables.shelf}`);
  return rows[0]!.name;
}

export async function renameStore({ pool, tables }: Read): Promise<void> {
  await pool.query(`UPDATE ${tables.shelf} SET name = gen_random_uuid()::text`);
}
