import { createHash } from 'node:crypto';
import type Database from 'libsql';
import { type Bytes, textOf } from '../sqlite/text.ts';
import type { ReadingStore } from '../store.ts';

/** What a backup says of itself, so that it can be trusted years later without anything beside it. */
export interface Seal {
  /** When it was taken, ISO 8601 in UTC. */
  takenAt: string;
  trials: number;
  entries: number;
  blobs: number;
  /** SHA-256 in hexadecimal over every entry in the order of arrival, and the name of every blob. */
  digest: string;
}

/** Entries that are read at a time. */
const PAGE = 5000;

/**
 * Reads everything that a store holds and sums it up. The same for the same journals in SQLite and in PostgreSQL, of
 * this version and of later ones, because it goes by what the store answers and not by how it keeps it.
 */
export async function sealOf(store: ReadingStore, takenAt: string): Promise<Seal> {
  const hash = createHash('sha256');
  const say = (...words: unknown[]) => hash.update(`${JSON.stringify(words)}\n`);
  const seal = { takenAt, trials: 0, entries: 0, blobs: 0 };
  for (const trial of await store.trialNames()) {
    seal.trials += 1;
    say('trial', trial);
    for await (const page of pagesOf(store, trial)) {
      seal.entries += page.length;
      for (const { id, kind, at, by, device, body } of page) say(id, kind, at, by, device, Object.entries(body));
    }
    for (const name of await store.blobNames(trial)) {
      seal.blobs += 1;
      const bytes = (await store.getBlob(trial, name)) ?? new Uint8Array();
      say('blob', name, createHash('sha256').update(bytes).digest('hex'));
    }
  }
  return { ...seal, digest: hash.digest('hex') };
}

/** A trial's journal in the order of arrival, some entries at a time. */
export async function* pagesOf(store: ReadingStore, trial: string) {
  for (let seq = 0; ; ) {
    const { entries, next } = await store.entriesSince(trial, seq, PAGE);
    if (entries.length === 0) return;
    yield entries;
    seq = next;
  }
}

const TABLE = 'CREATE TABLE seal (taken_at TEXT, trials INTEGER, entries INTEGER, blobs INTEGER, digest TEXT)';

export function writeSeal(database: Database.Database, { takenAt, trials, entries, blobs, digest }: Seal): void {
  database.exec(TABLE);
  database.prepare('INSERT INTO seal VALUES (?, ?, ?, ?, ?)').run(takenAt, trials, entries, blobs, digest);
}

/** The seal of a backup; null when the file is a plain shelf, such as a copy made by hand. */
export function readSeal(database: Database.Database): Seal | null {
  const there = database.prepare(`SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = 'seal'`).all();
  if (there.length === 0) return null;
  const [row] = database
    .prepare('SELECT CAST(taken_at AS BLOB) AS at, trials, entries, blobs, CAST(digest AS BLOB) AS sum FROM seal')
    .all() as { at: Bytes; trials: number; entries: number; blobs: number; sum: Bytes }[];
  if (row === undefined) return null;
  const { trials, entries, blobs } = row;
  return { takenAt: textOf(row.at), trials, entries, blobs, digest: textOf(row.sum) };
}

/** Takes the seal off: the file is about to become a shelf, which grows. */
export function breakSeal(database: Database.Database): void {
  database.exec('DROP TABLE IF EXISTS seal');
}
