import { existsSync } from 'node:fs';
import Database from 'libsql';
import { type Seal, sealOf, writeSeal } from '../backup/seal.ts';
import { StoreRefusal } from '../store.ts';
import { openSound, sqliteStoreOn } from './open.ts';
import { closeDatabase } from './prepared.ts';

/**
 * Writes a whole copy of the shelf in `path` to the new file `to`, of one moment, while others may go on writing, and
 * seals it. Devices are left out: a backup that is put back must not let in again who was turned away since.
 *
 * @throws StoreRefusal when there is no shelf, or it is damaged.
 */
export async function backUpSqlite(path: string, to: string, takenAt: string): Promise<Seal> {
  if (!existsSync(path)) throw new StoreRefusal(`There is no shelf in ${path} yet, so there is nothing to back up.`);
  const shelf = openSound(path);
  try {
    shelf.prepare('VACUUM INTO ?').run(to);
  } finally {
    closeDatabase(shelf);
  }
  const copy = new Database(to);
  try {
    // Overwrites what it deletes: nobody should find the hashes in the free space of the copy.
    copy.exec('PRAGMA synchronous = FULL; PRAGMA secure_delete = ON; DELETE FROM devices;');
    const seal = await sealOf(sqliteStoreOn(copy), takenAt);
    writeSeal(copy, seal);
    return seal;
  } finally {
    closeDatabase(copy);
  }
}
