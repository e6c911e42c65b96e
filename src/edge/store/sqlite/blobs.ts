import type Database from 'libsql';
import { blobName } from '../blobName.ts';
import { refuseUnfitBlob } from '../refuse.ts';

export function putBlob(database: Database.Database, trial: string, bytes: Uint8Array): string {
  refuseUnfitBlob(bytes);
  const name = blobName(bytes);
  database
    .prepare('INSERT INTO blobs (trial, name, bytes) VALUES (?, ?, ?) ON CONFLICT DO NOTHING')
    .run(trial, name, Buffer.from(bytes));
  return name;
}

export function getBlob(database: Database.Database, trial: string, name: string): Uint8Array | null {
  const [row] = database.prepare('SELECT bytes FROM blobs WHERE trial = ? AND name = ?').all(trial, name) as {
    bytes: ArrayBuffer | Uint8Array;
  }[];
  return row === undefined ? null : new Uint8Array(row.bytes);
}

export function blobNames(database: Database.Database, trial: string): string[] {
  const rows = database.prepare('SELECT name FROM blobs WHERE trial = ? ORDER BY name').all(trial);
  return (rows as { name: string }[]).map((row) => row.name);
}
