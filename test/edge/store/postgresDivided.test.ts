import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPostgresStore } from '../../../src/edge/store/postgres/open.ts';
import type { Store } from '../../../src/edge/store/store.ts';
import { entryOf } from '../../contract/entries.ts';
import { storeContract } from '../../contract/store.ts';
import { type ThrowawayPostgres, throwawayPostgres, whyNoPostgres } from '../../support/postgres.ts';

/** How many parts each table is divided into. */
const PARTS = 4;
const DIVIDED = ['trials', 'entries', 'blobs'];
const reason = whyNoPostgres();
let server: ThrowawayPostgres;
let schemas = 0;

async function asked(text: string, values?: unknown[]): Promise<string[][]> {
  const client = new pg.Client({ connectionString: server.url });
  await client.connect();
  try {
    return (await client.query({ text, values, rowMode: 'array' })).rows as string[][];
  } finally {
    await client.end();
  }
}

/** The store's own tables, keys included, divided by trial into parts: as far as one server can stand for several. */
async function openDivided(schema = `divided_${schemas++}`): Promise<Store> {
  await (await openPostgresStore(server.url, schema)).close();
  for (const table of DIVIDED) {
    const name = `${schema}.${table}`;
    const parts = Array.from(
      { length: PARTS },
      (_, part) =>
        `CREATE TABLE ${name}_part_${part} PARTITION OF ${name} FOR VALUES WITH (MODULUS ${PARTS}, REMAINDER ${part});`,
    );
    await asked(
      `ALTER TABLE ${name} RENAME TO ${table}_whole;
       CREATE TABLE ${name} (LIKE ${name}_whole INCLUDING ALL) PARTITION BY HASH (trial);
       DROP TABLE ${name}_whole;
       ${parts.join('\n')}`,
    );
  }
  return openPostgresStore(server.url, schema);
}

describe.skipIf(reason !== null)(`PostgreSQL divided by trial${reason === null ? '' : ` (${reason})`}`, () => {
  beforeAll(async () => {
    server = await throwawayPostgres();
  }, 60_000);
  afterAll(async () => {
    await server.remove();
  });

  storeContract('PostgreSQL divided by trial', () => openDivided());

  it('looks for a trial in one part only, whatever is asked of it', async () => {
    const schema = `divided_${schemas++}`;
    const store = await openDivided(schema);
    for (const trial of ['fen', 'moor', 'heath', 'heron', 'teal', 'wren'])
      await store.append(trial, [entryOf(1, { trial })]);
    const queries = await queriesOf(async () => {
      await store.append('fen', [entryOf(1), entryOf(2)]);
      await store.append('fen', []);
      await store.entries('fen', '', 10);
      await store.entriesSince('fen', 0, 10);
      await store.has('fen');
      await store.getBlob('fen', await store.putBlob('fen', new TextEncoder().encode('abc')));
      await store.blobNames('fen');
    });
    await store.close();
    const divided = queries.filter(({ text }) => DIVIDED.some((table) => text.includes(`"${schema}".${table}`)));
    expect(divided.length).toBeGreaterThanOrEqual(11);
    for (const { text, values } of divided) {
      const parts = new Set((await explained(text, values)).match(/\b\w+_part_\d\b/g));
      // An INSERT of given values names the whole table in its plan and goes where the key of each row says.
      if (/^\s*INSERT/.test(text)) expect(values.filter((value) => value === 'fen').length, text).toBeGreaterThan(0);
      else expect(parts.size, text).toBe(1);
    }
  });

  async function explained(text: string, values: unknown[]): Promise<string> {
    return (await asked(`EXPLAIN ${text}`, values)).flat().join('\n');
  }
});

/** Every query with values that is sent to the database while `work` runs. */
async function queriesOf(work: () => Promise<void>): Promise<{ text: string; values: unknown[] }[]> {
  const queries: { text: string; values: unknown[] }[] = [];
  const prototype = pg.Client.prototype as unknown as { query: (...args: unknown[]) => unknown };
  const { query } = prototype;
  prototype.query = function (this: unknown, ...args: unknown[]) {
    if (typeof args[0] === 'string' && Array.isArray(args[1])) queries.push({ text: args[0], values: args[1] });
    return query.apply(this, args);
  };
  try {
    await work();
  } finally {
    prototype.query = query;
  }
  return queries;
}
