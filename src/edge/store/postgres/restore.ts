import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { candidateFrom } from '../backup/candidate.ts';
import { copyStore } from '../backup/copy.ts';
import { asideStamp, type Restored } from '../backup/restored.ts';
import { sealOf } from '../backup/seal.ts';
import type { Salvaged } from '../sqlite/salvage.ts';
import { type Store, StoreRefusal } from '../store.ts';
import { type Asked, type Base, inTransaction, quoted, type Tables, tablesIn } from './base.ts';
import { openBase, openPostgresStore, postgresReading, SCHEMA } from './open.ts';
import { refusalOf } from './trouble.ts';

/**
 * Puts a backup back into the database. It is copied into a schema of its own and compared with the backup there; then
 * both schemas change names in one step, for all benches that use the database. Unless `exactly`, whatever is there and not
 * in the backup is added in that same step. What was there stays under a dated name.
 */
export async function restorePostgres(
  file: string,
  url: string,
  now: Date,
  exactly = false,
  schema = SCHEMA,
): Promise<Restored> {
  const candidate = await candidateFrom(file, join(tmpdir(), `cupel-restoring-${process.pid}.sqlite`));
  const fresh = `${schema}_restoring_${asideStamp(now)}`;
  try {
    const store = await openPostgresStore(url, fresh);
    try {
      await fill(store, candidate.store, candidate.held.digest);
    } finally {
      await store.close();
    }
    const swapped = await swap(url, { schema, fresh, until: `${schema}_until_${asideStamp(now)}`, exactly });
    const { held, sealed } = candidate;
    return { backup: held, held: swapped.held ?? held, sealed, aside: swapped.aside, salvaged: swapped.salvaged };
  } finally {
    await candidate.discard();
  }
}

async function fill(store: Store, from: Store, digest: string): Promise<void> {
  if ((await store.trialNames()).length > 0)
    throw new StoreRefusal('Another restore has just begun in this database; try again in a moment.');
  await copyStore(from, store);
  if ((await sealOf(store, '')).digest !== digest)
    throw new StoreRefusal('What arrived in the database is not what is in the backup; nothing was changed.');
}

interface Swap {
  schema: string;
  fresh: string;
  until: string;
  exactly: boolean;
}

type Swapped = Pick<Restored, 'aside' | 'salvaged'> & { held: Restored['held'] | null };

/** Answers the name that the former schema has now, null when there was none, and what came over from it. */
async function swap(url: string, { schema, fresh, until, exactly }: Swap): Promise<Swapped> {
  const base = await openBase(url, schema);
  try {
    return await inTransaction(base, async (asked) => {
      const { rows } = await asked.query(`SELECT 1 FROM pg_catalog.pg_namespace WHERE nspname = $1`, [schema]);
      const there = rows.length > 0;
      let salvaged: Restored['salvaged'] = null;
      if (there) {
        await asked.query(lockSentence(base));
        if (!exactly) salvaged = await addWhatIsThere(asked, tablesIn(schema), tablesIn(fresh));
        await asked.query(`ALTER SCHEMA ${quoted(schema)} RENAME TO ${quoted(until)}`);
      }
      await asked.query(`ALTER SCHEMA ${quoted(fresh)} RENAME TO ${quoted(schema)}`);
      const grown = (salvaged?.entries ?? 0) + (salvaged?.blobs ?? 0) > 0;
      const held = grown ? await sealOf(postgresReading({ pool: asked, tables: tablesIn(schema) }), '') : null;
      return { aside: there ? until : null, salvaged, held };
    });
  } catch (error) {
    throw refusalOf(error, url);
  } finally {
    await base.pool.end();
  }
}

/** Copies entries and blobs that the fresh tables do not hold, numbered on from what they hold, in the order of arrival. */
async function addWhatIsThere(asked: Asked, from: Tables, to: Tables): Promise<Salvaged> {
  await asked.query(`INSERT INTO ${to.trials} (trial) SELECT trial FROM ${from.trials} ON CONFLICT (trial) DO NOTHING`);
  const entries = await asked.query(
    `INSERT INTO ${to.entries} (trial, seq, id, kind, at, said_by, device, body)
     SELECT e.trial, t.last + row_number() OVER (PARTITION BY e.trial ORDER BY e.seq), e.id, e.kind, e.at, e.said_by, e.device, e.body
     FROM ${from.entries} e JOIN ${to.trials} t ON t.trial = e.trial
     WHERE NOT EXISTS (SELECT 1 FROM ${to.entries} k WHERE k.trial = e.trial AND k.id = e.id)`,
  );
  await asked.query(
    `UPDATE ${to.trials} t SET last = n.last
     FROM (SELECT trial, max(seq) AS last FROM ${to.entries} GROUP BY trial) n WHERE n.trial = t.trial AND n.last > t.last`,
  );
  const blobs = await asked.query(
    `INSERT INTO ${to.blobs} (trial, name, bytes) SELECT trial, name, bytes FROM ${from.blobs} ON CONFLICT (trial, name) DO NOTHING`,
  );
  return { entries: entries.rowCount ?? 0, blobs: blobs.rowCount ?? 0, lost: [], lostBlobs: 0, unreadable: null };
}

/** Waits for every append under way; the next ones wait for us and then go to the new tables. */
function lockSentence({ schema }: Base): string {
  const { trials, entries, blobs, devices } = tablesIn(schema);
  return `LOCK TABLE ${trials}, ${entries}, ${blobs}, ${devices} IN ACCESS EXCLUSIVE MODE`;
}
