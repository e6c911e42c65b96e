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
  // Arrival numbers, the store's own name, and devices. Entries that were there count as having arrived in the order of
  // their ids. A journal now lies on the disk in the order of arrival, which is how it is read.
  `CREATE TABLE shelf (name TEXT NOT NULL);
   INSERT INTO shelf (name) VALUES (lower(hex(randomblob(16))));
   CREATE TABLE arrived (
     trial TEXT NOT NULL,
     seq INTEGER NOT NULL,
     id TEXT NOT NULL,
     kind TEXT NOT NULL,
     at TEXT NOT NULL,
     said_by TEXT NOT NULL,
     device TEXT NOT NULL,
     body TEXT NOT NULL,
     PRIMARY KEY (trial, seq)
   ) WITHOUT ROWID;
   INSERT INTO arrived (trial, seq, id, kind, at, said_by, device, body)
     SELECT trial, row_number() OVER (PARTITION BY trial ORDER BY id), id, kind, at, said_by, device, body FROM entries
     ORDER BY trial, id;
   DROP TABLE entries;
   ALTER TABLE arrived RENAME TO entries;
   CREATE UNIQUE INDEX entries_by_id ON entries (trial, id);
   CREATE INDEX entries_by_kind ON entries (trial, kind, id);
   ALTER TABLE trials ADD COLUMN last INTEGER NOT NULL DEFAULT 0;
   UPDATE trials SET last = (SELECT count(*) FROM entries WHERE entries.trial = trials.trial);
   CREATE TABLE devices (
     id TEXT NOT NULL PRIMARY KEY,
     name TEXT NOT NULL,
     role TEXT NOT NULL,
     token_hash TEXT NOT NULL UNIQUE,
     added_at TEXT NOT NULL,
     seen_at TEXT,
     revoked_at TEXT
   ) WITHOUT ROWID;`,
  // A check sum of what was said, made when it is written. Rows from before have none.
  'ALTER TABLE entries ADD COLUMN sum INTEGER;',
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

/** How many migrations a file has had. */
export function userVersion(database: Database.Database): number {
  const rows = database.pragma('user_version') as { user_version: number }[];
  return rows[0]?.user_version ?? 0;
}
