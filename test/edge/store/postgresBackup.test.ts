import { existsSync } from 'node:fs';
import { join } from 'node:path';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { notedBackups } from '../../../src/edge/store/backup/list.ts';
import { takeBackup } from '../../../src/edge/store/backup/take.ts';
import { openShelf } from '../../../src/edge/store/openShelf.ts';
import { restorePostgres } from '../../../src/edge/store/postgres/restore.ts';
import { openSqliteStore } from '../../../src/edge/store/sqlite/open.ts';
import { restoreSqlite } from '../../../src/edge/store/sqlite/restore.ts';
import { entryOf, idOf } from '../../contract/entries.ts';
import { type ThrowawayPostgres, throwawayPostgres, whyNoPostgres } from '../../support/postgres.ts';
import { tempFolder } from '../../support/tempFolder.ts';

const folder = tempFolder();
const NOW = new Date('2026-11-25T10:15:30.000Z');
const LATER = new Date('2026-11-26T10:15:30.000Z');
const PHOTO = Uint8Array.from([0xff, 0xd8, 0xff, ...Array(9000).keys()]);
const reason = whyNoPostgres();
let server: ThrowawayPostgres;

describe.skipIf(reason !== null)(`backups of PostgreSQL${reason === null ? '' : ` (${reason})`}`, () => {
  beforeAll(async () => {
    server = await throwawayPostgres();
  }, 60_000);
  afterAll(async () => {
    await server.remove();
  });
  const place = () => ({ kind: 'postgres', url: server.url }) as const;
  const list = join(folder, 'backups.jsonl');

  it('are files like any other, which go back into PostgreSQL or into a file of one’s own', async () => {
    const store = await openShelf(place());
    await store.append(
      'fen',
      Array.from({ length: 6000 }, (_, n) => entryOf(6000 - n)),
    );
    const photo = await store.putBlob('moor', PHOTO);
    await store.addDevice({ id: 'p', name: 'phone', role: 'keeper', tokenHash: '5e'.repeat(32), at: '' });
    const name = await store.name();
    const before = await store.entriesSince('fen', 0);
    const writing = Promise.all(
      Array.from({ length: 30 }, (_, n) => store.append('heath', [entryOf(n, { trial: 'heath' })])),
    );
    const to = join(folder, 'club.cupel');
    const line = await takeBackup(place(), to, list, NOW);
    await writing;
    expect(line.entries).toBeGreaterThanOrEqual(6000);
    expect(line).toMatchObject({ file: to, blobs: 1, of: expect.stringMatching(/^127\.0\.0\.1:\d+\/postgres$/) });
    expect(notedBackups(list, line.of)).toEqual([line]);
    await expect(takeBackup(place(), to, list, NOW)).rejects.toThrow(/never written over/);

    // While a bench writes: what it is told to be kept is in the one schema or the other, whole.
    let written = 0;
    let going = true;
    const bench = (async () => {
      while (going) {
        const n = 10_000 + written;
        const { last } = await store.append('fen', [entryOf(n)]);
        written += 1;
        expect(last).toBeGreaterThan(6000);
      }
    })();
    const restored = await restorePostgres(to, server.url, LATER);
    going = false;
    await bench;
    expect(restored).toMatchObject({ sealed: true, aside: 'cupel_until_2026-11-26-101530' });
    const { entries } = await store.entriesSince('fen', 0);
    expect(entries.slice(0, 6000)).toEqual(before.entries);
    expect(await store.getBlob('moor', photo)).toEqual(PHOTO);
    expect(await store.name()).not.toBe(name);
    expect(await store.devices()).toEqual([]);
    const kept = new Set(entries.map((entry) => entry.id));
    expect(written).toBeGreaterThan(0);
    for (let n = 0; n < written; n += 1) expect(kept.has(idOf(10_000 + n)), `entry ${n} of ${written}`).toBe(true);
    const [count] = await asked(`SELECT count(*) FROM "${restored.aside}".entries WHERE trial = 'fen'`);
    expect(restored.salvaged?.entries).toBeGreaterThanOrEqual(Number(count?.[0]) - 6000);
    expect(await asked(`SELECT last FROM cupel.trials WHERE trial = 'fen'`)).toEqual([[String(entries.length)]]);
    expect(await asked(`SELECT seq FROM cupel.entries WHERE trial = 'fen' ORDER BY seq`)).toEqual(
      entries.map((_, n) => [String(n + 1)]),
    );
    await store.close();

    const path = join(folder, 'own', 'shelf.sqlite');
    expect(await restoreSqlite(to, path, NOW)).toMatchObject({ sealed: true, aside: null });
    const own = openSqliteStore(path);
    expect(await own.entriesSince('fen', 0)).toEqual(before);
    expect(await own.getBlob('moor', photo)).toEqual(PHOTO);
    await own.close();
  });

  it('of a shelf in a file go into PostgreSQL', async () => {
    const path = join(folder, 'file', 'shelf.sqlite');
    const file = openSqliteStore(path);
    await file.append('heron', [entryOf(2, { trial: 'heron' }), entryOf(1, { trial: 'heron' })]);
    const to = join(folder, 'from a file.cupel');
    await takeBackup({ kind: 'sqlite', path }, to, list, NOW);
    const wanted = await file.entriesSince('heron', 0);
    await file.close();
    await restorePostgres(to, server.url, NOW, true);
    const store = await openShelf(place());
    expect(await store.entriesSince('heron', 0)).toEqual(wanted);
    expect(await store.trialNames()).toEqual(['heron']);
    await store.close();
  });

  it('that cannot be taken leave nothing behind', async () => {
    const to = join(folder, 'never.cupel');
    const url = server.url.replace(/:\d+\//, ':1/');
    await expect(takeBackup({ kind: 'postgres', url }, to, list, NOW)).rejects.toThrow(/does not answer/);
    expect(existsSync(to)).toBe(false);
  });

  async function asked(text: string): Promise<string[][]> {
    const client = new pg.Client({ connectionString: server.url });
    await client.connect();
    const { rows } = await client.query({ text, rowMode: 'array' });
    await client.end();
    return rows as string[][];
  }
});
