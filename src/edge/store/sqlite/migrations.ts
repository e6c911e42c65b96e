import type Database from 'libsql';
import { StoreRefusal } from '../store.ts';

/**
 * What brings an older file up to date, oldest first; a file's `user_version` says how many of them it has had. Never
 * change one that was published: add another.
 */
export const MIGRATIONS: readonly string[] = [
  `CREATE TABLE trials (trial TEXT NOT NULL PRIMARY KEY) WITHOUT ROWID;
   CREATE TABLE entries (
     trial TEXT NOT NULL,
     id TEXT NOT NULL,
     kind TEXT NOT NULL,
     at TEXT NOT NULL,
     said_by TEXT NOT NULL,
     device TEXT NOT NULL,
     body TEXT NOT NULL,
     PRIMARY KEY (trial, id)
   ) WITHOUT ROWID;
   CREATE INDEX entries_by_kind ON entries (trial, kind, id);
   CREATE TABLE blobs (
     trial TEXT NOT NULL,
     name TEXT NOT NULL,
     bytes BLOB NOT NULL,
     PRIMARY KEY (trial, name)
   );`,
];

/** Brings the file's tables up to this version, each step in one transaction. Throws when the file is newer than we are. */
export function migrate(database: Database.Database): void {
  const had = userVersion(database);
  if (had > MIGRATIONS.length)
    throw new StoreRefusal('The shelf was written by a newer Cupel than this one; update Cupel, and nothing is lost.');
  for (let step = had; step < MIGRATIONS.length; step += 1) {
    const run = database.transaction(() => {
      // Another process may have done this step between our look and our turn.
      if (userVersion(database) !== step) return;
      database.exec(`${MIGRATIONS[step]} PRAGMA user_version = ${step + 1};`);
    });
    run.immediate();
  }
}

function userVersion(database: Database.Database): number {
  const rows = database.pragma('user_version') as { user_version: number }[];
  return rows[0]?.user_version ?? 0;
}
