import { StoreRefusal } from '../store.ts';
import { type Asked, type Base, inTransaction, quoted, type Tables } from './base.ts';

/**
 * What brings an older database up to date, oldest first. Never change one that was published: add another.
 *
 * Every key begins with the trial, so that the tables can be divided by it, each trial whole on one machine. Two tables
 * are not of any trial: `shelf` (one row) and `devices` (a few dozen rows, asked for by token with each request); on a
 * database of several machines both are copied to all of them. Text is ordered by its bytes, as SQLite and JavaScript
 * order the ids, whatever the language of the server. Bodies are text, because `jsonb` would reorder and lose what was typed.
 */
export const MIGRATIONS: readonly ((names: Tables) => string)[] = [
  ({ trials, entries, blobs, devices }) => `
   CREATE TABLE ${trials} (trial text COLLATE "C" NOT NULL PRIMARY KEY, last bigint NOT NULL DEFAULT 0);
   CREATE TABLE ${entries} (
     trial text COLLATE "C" NOT NULL,
     seq bigint NOT NULL,
     id text COLLATE "C" NOT NULL,
     kind text COLLATE "C" NOT NULL,
     at text NOT NULL,
     said_by text NOT NULL,
     device text NOT NULL,
     body text NOT NULL,
     PRIMARY KEY (trial, seq)
   );
   CREATE UNIQUE INDEX entries_by_id ON ${entries} (trial, id);
   CREATE INDEX entries_by_kind ON ${entries} (trial, kind, id);
   CREATE TABLE ${blobs} (
     trial text COLLATE "C" NOT NULL,
     name text COLLATE "C" NOT NULL,
     bytes bytea NOT NULL,
     PRIMARY KEY (trial, name)
   );
   CREATE TABLE ${devices} (
     id text COLLATE "C" NOT NULL PRIMARY KEY,
     name text NOT NULL,
     role text NOT NULL,
     token_hash text COLLATE "C" NOT NULL UNIQUE,
     added_at text COLLATE "C" NOT NULL,
     seen_at text,
     revoked_at text
   );`,
];

/** Any number that no other program takes: one bench at a time makes tables. */
const LOCK = 4_870_001;

/** Makes or updates the tables. Throws when a newer Cupel made them. */
export async function migrate(base: Base): Promise<void> {
  if ((await versionOf(base.pool, base)) === MIGRATIONS.length) return;
  await inTransaction(base, async (asked) => {
    await asked.query('SELECT pg_advisory_xact_lock($1)', [LOCK]);
    // Another bench may have done it between our look and our turn.
    const had = await versionOf(asked, base);
    if (had > MIGRATIONS.length)
      throw new StoreRefusal(
        'The shelf was written by a newer Cupel than this one; update Cupel, and nothing is lost.',
      );
    if (had === 0) await makeShelf(asked, base);
    for (const step of MIGRATIONS.slice(had)) await asked.query(step(base.tables));
    await asked.query(`UPDATE ${base.tables.shelf} SET version = $1`, [MIGRATIONS.length]);
  });
}

async function makeShelf(asked: Asked, { schema, tables }: Base): Promise<void> {
  await asked.query(`CREATE SCHEMA IF NOT EXISTS ${quoted(schema)}`);
  await asked.query(`CREATE TABLE ${tables.shelf} (name text NOT NULL, version integer NOT NULL)`);
  await asked.query(`INSERT INTO ${tables.shelf} (name, version) VALUES (gen_random_uuid()::text, 0)`);
}

/** Looked up in the list of tables, which is always up to date; looking by name may answer from before the lock was had. */
async function versionOf(asked: Asked, { schema, tables }: Base): Promise<number> {
  const { rows: there } = await asked.query(
    `SELECT 1 FROM pg_catalog.pg_tables WHERE schemaname = $1 AND tablename = 'shelf'`,
    [schema],
  );
  if (there.length === 0) return 0;
  const { rows } = await asked.query<{ version: number }>(`SELECT version FROM ${tables.shelf}`);
  return rows[0]?.version ?? 0;
}
