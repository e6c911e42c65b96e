import Database from 'libsql';
import { copyStore } from '../backup/copy.ts';
import { type Seal, sealOf, writeSeal } from '../backup/seal.ts';
import { migrate } from '../sqlite/migrations.ts';
import { sqliteStoreOn } from '../sqlite/open.ts';
import { closeDatabase } from '../sqlite/prepared.ts';
import { StoreRefusal } from '../store.ts';
import { openBase, postgresReading, SCHEMA } from './open.ts';
import type { Read } from './read.ts';
import { refusalOf } from './trouble.ts';

/**
 * Writes everything in the database to the new file `to`, of one moment, while others may go on writing: the same kind
 * of file as a backup of a SQLite shelf, so that either can be put back from it. The copy is compared with the
 * database before it is sealed.
 */
export async function backUpPostgres(url: string, to: string, takenAt: string, schema = SCHEMA): Promise<Seal> {
  const base = await openBase(url, schema);
  const client = await base.pool.connect();
  try {
    // One moment for all queries (manual, "Repeatable Read Isolation Level").
    await client.query('BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY');
    return await copyFrom({ pool: client, tables: base.tables }, to, takenAt);
  } catch (error) {
    throw refusalOf(error, url);
  } finally {
    client.release(true);
    await base.pool.end();
  }
}

async function copyFrom(moment: Read, to: string, takenAt: string): Promise<Seal> {
  const reading = postgresReading(moment);
  const file = new Database(to);
  try {
    file.pragma('synchronous = FULL');
    migrate(file);
    const copy = sqliteStoreOn(file);
    await copyStore(reading, copy);
    const seal = await sealOf(reading, takenAt);
    if ((await sealOf(copy, takenAt)).digest !== seal.digest)
      throw new StoreRefusal('The copy is not what is in the database; nothing was kept. Try again.');
    writeSeal(file, seal);
    return seal;
  } finally {
    closeDatabase(file);
  }
}
