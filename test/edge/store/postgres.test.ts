import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPostgresStore } from '../../../src/edge/store/postgres/open.ts';
import { StoreRefusal } from '../../../src/edge/store/store.ts';
import { entryOf, idOf } from '../../contract/entries.ts';
import { storeContract } from '../../contract/store.ts';
import { type ThrowawayPostgres, throwawayPostgres, whyNoPostgres } from '../../support/postgres.ts';

const reason = whyNoPostgres();
let server: ThrowawayPostgres;
let schemas = 0;
const nextSchema = () => `shelf "${schemas++}"`;

describe.skipIf(reason !== null)(`PostgreSQL${reason === null ? '' : ` (${reason})`}`, () => {
  beforeAll(async () => {
    server = await throwawayPostgres();
  }, 60_000);
  afterAll(async () => {
    await server.remove();
  });

  storeContract('PostgreSQL', () => openPostgresStore(server.url, nextSchema()));

  describe('the database', () => {
    const asked = async (text: string) => {
      const client = new pg.Client({ connectionString: server.url });
      await client.connect();
      try {
        return (await client.query({ text, rowMode: 'array' })).rows as string[][];
      } finally {
        await client.end();
      }
    };

    it('is served to several benches at once, which find it made', async () => {
      const schema = nextSchema();
      const benches = await Promise.all([1, 2, 3, 4, 5, 6].map(() => openPostgresStore(server.url, schema)));
      await Promise.all(benches.map((bench, n) => bench.append('fen', [entryOf(n), entryOf(9)])));
      for (const bench of benches) expect(await bench.entries('fen')).toHaveLength(7);
      expect(new Set(await Promise.all(benches.map((bench) => bench.name()))).size).toBe(1);
      for (const bench of benches) await bench.close();
    });

    it('is divided by trial: every key of entries, blobs and trials begins with it', async () => {
      const schema = nextSchema();
      await (await openPostgresStore(server.url, schema)).close();
      const keys = await asked(
        `SELECT tablename, indexdef FROM pg_indexes WHERE schemaname = '${schema}' ORDER BY tablename, indexname`,
      );
      const divided = keys.filter(([table]) => ['entries', 'blobs', 'trials'].includes(table!));
      expect(divided).toHaveLength(5);
      for (const [table, key] of divided) expect(key, table).toMatch(/\(trial[,)]/);
    });

    it('keeps a reader from passing over an entry whose writer commits last', async () => {
      const schema = nextSchema();
      const store = await openPostgresStore(server.url, schema);
      await store.append('fen', [entryOf(1)]);
      const slow = new pg.Client({ connectionString: server.url });
      await slow.connect();
      // A writer that has its number and has not committed yet, as `append` leaves it half way.
      const at = `"${schema.replaceAll('"', '""')}"`;
      await slow.query('BEGIN');
      await slow.query(`UPDATE ${at}.trials SET last = last + 1 WHERE trial = 'fen'`);
      await slow.query(
        `INSERT INTO ${at}.entries (trial, seq, id, kind, at, said_by, device, body)
         VALUES ('fen', 2, '${idOf(2)}', 'note', '', '', '', '{}')`,
      );
      let done = false;
      const fast = store.append('fen', [entryOf(3)]).then((outcome) => {
        done = true;
        return outcome;
      });
      await new Promise((resume) => setTimeout(resume, 150));
      expect(done).toBe(false);
      expect((await store.entriesSince('fen', 1)).entries).toEqual([]);
      await slow.query('COMMIT');
      await slow.end();
      expect(await fast).toMatchObject({ added: 1, last: 3 });
      expect((await store.entriesSince('fen', 1)).entries.map((entry) => entry.id)).toEqual([2, 3].map(idOf));
      await store.close();
    });

    it('is refused when a newer Cupel made it', async () => {
      const schema = nextSchema();
      await (await openPostgresStore(server.url, schema)).close();
      await asked(`UPDATE "${schema.replaceAll('"', '""')}".shelf SET version = 9999`);
      await expect(openPostgresStore(server.url, schema)).rejects.toThrow(/newer Cupel/);
    });

    it('is refused in a sentence without the password when it cannot be used', async () => {
      const at = (change: (url: URL) => void) => {
        const url = new URL(server.url);
        url.password = 'hush';
        change(url);
        return url.href;
      };
      const cases: [string, RegExp][] = [
        [at((url) => Object.assign(url, { port: '1' })), /127\.0\.0\.1:1\/postgres does not answer/],
        [at((url) => Object.assign(url, { pathname: '/nowhere' })), /no such database at 127\.0\.0\.1:\d+\/nowhere/],
        [at((url) => Object.assign(url, { username: 'nobody-known' })), /does not know this user/],
      ];
      for (const [url, sentence] of cases) {
        const refusal = await openPostgresStore(url).catch((error: unknown) => error);
        expect(refusal).toBeInstanceOf(StoreRefusal);
        expect((refusal as Error).message).toMatch(sentence);
        expect((refusal as Error).message).not.toMatch(/hush|nobody-known/);
      }
    });

    it('goes on after it was away, and says so meanwhile', async () => {
      const store = await openPostgresStore(server.url, nextSchema());
      await store.append('fen', [entryOf(1)]);
      await server.crash();
      await expect(store.append('fen', [entryOf(2)])).rejects.toThrow(/does not answer/);
      await server.start();
      expect(await store.append('fen', [entryOf(1), entryOf(2)])).toEqual({ added: 1, known: 1, last: 2 });
      await store.close();
    });

    it('acknowledges only what is on disk, whatever it is set to', async () => {
      const lax = await throwawayPostgres(['synchronous_commit=off']);
      try {
        const store = await openPostgresStore(lax.url);
        for (let n = 0; n < 20; n += 1) await store.append('fen', [entryOf(n)]);
        await lax.crash();
        await lax.start();
        expect(await store.entries('fen')).toHaveLength(20);
        await store.close();
      } finally {
        await lax.remove();
      }
    });

    it('is refused when it does not wait for the disk at all', async () => {
      const careless = await throwawayPostgres(['fsync=off']);
      try {
        await expect(openPostgresStore(careless.url)).rejects.toThrow(/fsync = off/);
      } finally {
        await careless.remove();
      }
    });
  });
});
