import pg from 'pg';
import { type ReadingStore, type Store, StoreRefusal } from '../store.ts';
import { appendEntries } from './append.ts';
import { type Asked, type Base, tablesIn } from './base.ts';
import { blobNames, getBlob, putBlob } from './blobs.ts';
import { postgresDevices } from './devices.ts';
import { migrate } from './migrations.ts';
import {
  hasTrial,
  heldIds,
  type Read,
  readArrived,
  readEntries,
  readName,
  readTrialNames,
  readTrials,
  renameStore,
} from './read.ts';
import { refusalOf, tellingTrouble, whereIs } from './trouble.ts';

/** The schema that holds the tables, apart from whatever else is in the database. */
export const SCHEMA = 'cupel';
/** Connections that one bench holds at most. */
const MOST_CONNECTIONS = 10;
/** How long to wait for a connection, ms. */
const CONNECTION_WAIT_MS = 5000;
/** Whatever the server's default is: a statement that waited for a lock must see what the one before it committed. */
const BEGIN = 'BEGIN ISOLATION LEVEL READ COMMITTED';

/**
 * Opens the store kept in a PostgreSQL database, making its tables when there are none. An append is answered once the
 * database has it on disk. Plain SQL with the same file names as the SQLite store: a query builder over both would be
 * longer than the two dozen queries, and the current one does not run on Node 20.
 *
 * @throws StoreRefusal with a sentence when the database cannot be reached, or would not keep what it acknowledges.
 */
export async function openPostgresStore(url: string, schema: string = SCHEMA): Promise<Store> {
  const base = await openBase(url, schema);
  try {
    await migrate(base);
  } catch (error) {
    await base.pool.end();
    throw refusalOf(error, url);
  }
  return tellingTrouble(storeOn(base), url);
}

/** A connection pool that is known to work. The caller ends it. */
export async function openBase(url: string, schema: string): Promise<Base> {
  const pool = new pg.Pool({
    connectionString: url,
    max: MOST_CONNECTIONS,
    connectionTimeoutMillis: CONNECTION_WAIT_MS,
    keepAlive: true,
    application_name: 'cupel',
  });
  // A connection that breaks while nobody uses it is replaced by the next question; unheard, it would end the process.
  pool.on('error', () => {});
  try {
    return { pool, schema, tables: tablesIn(schema), begin: await beginDurably(pool, url) };
  } catch (error) {
    await pool.end();
    throw refusalOf(error, url);
  }
}

/** `synchronous_commit = off` acknowledges what a power cut may still take; it is turned on for our transactions. */
async function beginDurably(pool: Asked, url: string): Promise<string> {
  const { rows } = await pool.query<{ fsync: string; commit: string }>(
    `SELECT current_setting('fsync') AS fsync, current_setting('synchronous_commit') AS commit`,
  );
  if (rows[0]?.fsync === 'off')
    throw new StoreRefusal(
      `The database at ${whereIs(url)} runs with fsync = off and may lose what it acknowledged; turn it on in postgresql.conf.`,
    );
  return rows[0]?.commit === 'off' ? `${BEGIN}; SET LOCAL synchronous_commit = on` : BEGIN;
}

function storeOn(base: Base): Store {
  let open = true;
  return {
    ...postgresDevices(base),
    ...postgresReading(base),
    append: (trial, entries) => appendEntries(base, trial, entries),
    heldIds: (trial, ids) => heldIds(base, trial, ids),
    rename: () => renameStore(base),
    putBlob: (trial, bytes) => putBlob(base, trial, bytes),
    async close() {
      if (!open) return;
      open = false;
      await base.pool.end();
    },
  };
}

/** The reading half of a store: from the pool, or from one connection that sees one moment only. */
export function postgresReading(read: Read): ReadingStore {
  return {
    entries: (trial, after, limit) => readEntries(read, trial, after, limit),
    entriesSince: (trial, seq, limit) => readArrived(read, trial, seq, limit),
    // Damage is the database's own to find and to tell: see its data checksums.
    readable: async (trial, seq, limit) => ({
      ...(await readArrived(read, trial, seq, limit)),
      damaged: [],
      advice: '',
    }),
    trials: () => readTrials(read),
    trialNames: () => readTrialNames(read),
    has: (trial) => hasTrial(read, trial),
    getBlob: (trial, name) => getBlob(read, trial, name),
    blobNames: (trial) => blobNames(read, trial),
    name: () => readName(read),
  };
}
