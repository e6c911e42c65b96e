import type Database from 'libsql';
import { blobName } from '../blobName.ts';
import { refuseAlteredBlob, refuseUnfitBlob } from '../refuse.ts';
import { type Bytes, textOf } from './text.ts';

export function putBlob(database: Database.Database, trial: string, bytes: Uint8Array): string {
  refuseUnfitBlob(bytes);
  const name = blobName(bytes);
  database
    // The name is made of the content, so that other bytes under it can only be damaged ones.
    .prepare(
      `INSERT INTO blobs (trial, name, bytes) VALUES (?, ?, ?) ON CONFLICT (trial, name)
       DO UPDATE SET bytes = excluded.bytes WHERE blobs.bytes IS NOT excluded.bytes`,
    )
    .run(trial, name, Buffer.from(bytes));
  return name;
}

export function getBlob(database: Database.Database, trial: string, name: string): Uint8Array | null {
  const [row] = database
    .prepare('SELECT CAST(bytes AS BLOB) AS bytes FROM blobs WHERE trial = ? AND name = ?')
    .all(trial, name) as { bytes: Bytes }[];
  return row === undefined ? null : refuseAlteredBlob(name, new Uint8Array(row.bytes));
}

export function blobNames(database: Database.Database, trial: string): string[] {
  const rows = database
    .prepare('SELECT CAST(name AS BLOB) AS name FROM blobs WHERE trial = ? ORDER BY blobs.name')
    .all(trial);
  return (rows as { name: Bytes }[]).map(({ name }) => textOf(name));
}
