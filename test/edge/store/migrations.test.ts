import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'libsql';
import { describe, expect, it } from 'vitest';
import { MIGRATIONS } from '../../../src/edge/store/sqlite/migrations.ts';
import { openSqliteStore } from '../../../src/edge/store/sqlite/open.ts';
import { entryOf, idOf } from '../../contract/entries.ts';
import { tempFolder } from '../../support/tempFolder.ts';

const folder = tempFolder();
/** SHA-256 of "abc": FIPS 180-2, appendix B.1. */
const ABC = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';

/** A file as the first version wrote it, with entries that came in any order, and a photo. */
function oldFile(name: string): string {
  const path = join(folder, name, 'shelf.sqlite');
  mkdirSync(dirname(path), { recursive: true });
  const database = new Database(path);
  database.pragma('journal_mode = WAL');
  database.exec(`${MIGRATIONS[0]} PRAGMA user_version = 1;`);
  const insert = database.prepare(
    'INSERT INTO entries (trial, id, kind, at, said_by, device, body) VALUES (?, ?, ?, ?, ?, ?, ?)',
  );
  for (const [trial, numbers] of [
    ['fen', [3, 1, 2]],
    ['moor', [7]],
  ] as const) {
    database.prepare('INSERT INTO trials (trial) VALUES (?)').run(trial);
    for (const n of numbers) {
      const { id, kind, at, by, device, body } = entryOf(n);
      insert.run(trial, id, kind, at, by, device, JSON.stringify(body));
    }
  }
  database.prepare('INSERT INTO trials (trial) VALUES (?)').run('bare');
  database.prepare('INSERT INTO blobs (trial, name, bytes) VALUES (?, ?, ?)').run('fen', ABC, Buffer.from('abc'));
  database.close();
  return path;
}

describe('a file of the first version', () => {
  it('opens and keeps everything', async () => {
    const store = openSqliteStore(oldFile('kept'));
    expect(await store.entries('fen')).toEqual([1, 2, 3].map((n) => entryOf(n)));
    expect(await store.entries('moor')).toEqual([entryOf(7, { trial: 'moor' })]);
    expect(await store.getBlob('fen', ABC)).toEqual(new TextEncoder().encode('abc'));
    const lines = await store.trials();
    expect(lines.map((line) => [line.trial, line.entries])).toEqual([
      ['bare', 0],
      ['fen', 3],
      ['moor', 1],
    ]);
    await store.close();
  });

  it('has its entries numbered in the order of their ids, and counts on', async () => {
    const store = openSqliteStore(oldFile('numbered'));
    expect(await store.append('fen', [entryOf(2), entryOf(0)])).toEqual({ added: 1, known: 1, last: 4 });
    const { entries, next } = await store.entriesSince('fen', 0);
    expect(entries.map((entry) => entry.id)).toEqual([1, 2, 3, 0].map(idOf));
    expect(next).toBe(4);
    expect(await store.append('bare', [entryOf(1, { trial: 'bare' })])).toMatchObject({ last: 1 });
    expect(await store.devices()).toEqual([]);
    await store.close();
  });

  it('gets a name once', async () => {
    const path = oldFile('named');
    const first = openSqliteStore(path);
    const name = await first.name();
    await first.close();
    const again = openSqliteStore(path);
    expect(await again.name()).toBe(name);
    await again.close();
    const other = openSqliteStore(oldFile('another'));
    expect(await other.name()).not.toBe(name);
    await other.close();
  });
});
