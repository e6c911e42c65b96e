import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { candidateFrom } from '../backup/candidate.ts';
import { copyStore } from '../backup/copy.ts';
import { asideStamp, type Restored } from '../backup/restored.ts';
import { sealOf } from '../backup/seal.ts';
import { type Store, StoreRefusal } from '../store.ts';
import { type Base, inTransaction, quoted, tablesIn } from './base.ts';
import { openBase, openPostgresStore, SCHEMA } from './open.ts';
import { refusalOf } from './trouble.ts';

/**
 * Puts a backup back into the database. It is copied into a schema of its own and compared with the backup there; then
 * both schemas change names in one step, for all benches that use the database. What was there stays under a dated name.
 */
export async function restorePostgres(file: string, url: string, now: Date, schema = SCHEMA): Promise<Restored> {
  const candidate = await candidateFrom(file, join(tmpdir(), `cupel-restoring-${process.pid}.sqlite`));
  const fresh = `${schema}_restoring_${asideStamp(now)}`;
  try {
    const store = await openPostgresStore(url, fresh);
    try {
      await fill(store, candidate.store, candidate.held.digest);
    } finally {
      await store.close();
    }
    const aside = await swap(url, schema, fresh, `${schema}_until_${asideStamp(now)}`);
    return { held: candidate.held, sealed: candidate.sealed, aside };
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

/** Answers the name that the former schema has now; null when there was none. */
async function swap(url: string, schema: string, fresh: string, until: string): Promise<string | null> {
  const base = await openBase(url, schema);
  try {
    return await inTransaction(base, async (asked) => {
      const { rows } = await asked.query(`SELECT 1 FROM pg_catalog.pg_namespace WHERE nspname = $1`, [schema]);
      const there = rows.length > 0;
      if (there) {
        await asked.query(lockSentence(base));
        await asked.query(`ALTER SCHEMA ${quoted(schema)} RENAME TO ${quoted(until)}`);
      }
      await asked.query(`ALTER SCHEMA ${quoted(fresh)} RENAME TO ${quoted(schema)}`);
      return there ? until : null;
    });
  } catch (error) {
    throw refusalOf(error, url);
  } finally {
    await base.pool.end();
  }
}

/** Waits for every append under way; the next ones wait for us and then go to the new tables. */
function lockSentence({ schema }: Base): string {
  const { trials, entries, blobs, devices } = tablesIn(schema);
  return `LOCK TABLE ${trials}, ${entries}, ${blobs}, ${devices} IN ACCESS EXCLUSIVE MODE`;
}
