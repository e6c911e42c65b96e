import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import { openMemoryStore } from '../../../src/edge/store/memory/open.ts';
import { DamagedData, type Store, StoreRefusal } from '../../../src/edge/store/store.ts';
import type { Entry } from '../../../src/journal/entry.ts';
import { entryOf, idOf } from '../../contract/store.ts';
import { tempFolder } from '../../support/tempFolder.ts';
import { ask, benchOn, post, smallPage } from './bench.ts';

const page = smallPage(tempFolder());
interface Page {
  entries: Entry[];
  next: number;
}

let store: Store;
let app: ReturnType<typeof benchOn>;
beforeEach(() => {
  store = openMemoryStore();
  app = benchOn(page, store);
});

describe('what the page asks', () => {
  it('is kept once, and given back in the order in which it arrived', async () => {
    const body = { trial: 'fen', entries: [entryOf(2), entryOf(1)] };
    const name = await store.name();
    const kept = { accepted: [idOf(2), idOf(1)], refused: [], last: 2, store: name };
    expect(await (await post(app, body)).json()).toEqual({ ...kept, added: 2, known: 0 });
    expect(await (await post(app, body)).json()).toEqual({ ...kept, added: 0, known: 2 });
    const all = await ask(app, '/api/entries?trial=fen');
    expect(all.headers.get('cache-control')).toBe('no-store');
    expect(await all.json()).toEqual({ entries: [entryOf(2), entryOf(1)], next: 2, store: name });
    const rest = await (await ask(app, '/api/entries?trial=fen&after=1')).json();
    expect(rest).toEqual({ entries: [entryOf(1)], next: 2, store: name });
    const none = await (await ask(app, '/api/entries?trial=fen&after=2')).json();
    expect(none).toEqual({ entries: [], next: 2, store: name });
    expect(await (await ask(app, '/api/trials')).json()).toMatchObject([{ trial: 'fen', entries: 2 }]);
  });

  it('finds what arrived late under an older id', async () => {
    await post(app, { trial: 'fen', entries: [entryOf(5)] });
    await post(app, { trial: 'fen', entries: [entryOf(3)] });
    expect(await (await ask(app, '/api/entries?trial=fen&after=1')).json()).toMatchObject({
      entries: [{ id: idOf(3) }],
    });
  });

  it.each([
    ['as much as is asked for', '&limit=7', 7],
    ['no more than ten thousand', '', 10_000],
    ['no more than ten thousand when more is asked for', '&limit=99999', 10_000],
  ])('comes in pages: %s', async (_what, query, size) => {
    const many = Array.from({ length: 10_500 }, (_, n) => entryOf(n + 1));
    await store.append('fen', many);
    const first = (await (await ask(app, `/api/entries?trial=fen${query}`)).json()) as Page;
    expect(first.entries).toEqual(many.slice(0, size));
    const rest = (await (await ask(app, `/api/entries?trial=fen&after=${first.next}`)).json()) as Page;
    expect(rest.entries[0]).toEqual(many[size]);
  });
});

describe('what is refused, and how', () => {
  const good = entryOf(1);
  it.each([
    ['no JSON', 'hello', 'not JSON'],
    ['no object', '7', 'body without "trial"'],
    ['no list', { trial: 'fen' }, 'body without "entries"'],
    ['an empty trial', { trial: '', entries: [] }, 'body without "trial"'],
    ['an entry of another trial', { trial: 'moor', entries: [good] }, 'entry 1 of trial "fen"'],
    ['an id that is no UUIDv7', { trial: 'fen', entries: [{ ...good, id: '7' }] }, '"7" as "id" of entry 1'],
    ['a number in a row', { trial: 'fen', entries: [{ ...good, body: { value: 7 } }] }, '7 as "body.value" of entry 1'],
    ['a missing part', { trial: 'fen', entries: [{ ...good, kind: undefined }] }, 'nothing as "kind" of entry 1'],
    ['a part too many', { trial: 'fen', entries: [{ ...good, extra: 1 }] }, 'of entry 1'],
    ['a date in words', { trial: 'fen', entries: [{ ...good, at: 'today' }] }, '"today" as "at" of entry 1'],
  ])('%s', async (_what, body, found) => {
    const answer = await post(app, body);
    expect(answer.status).toBe(400);
    const { error } = (await answer.json()) as { error: Record<string, string> };
    expect(error.found).toContain(found);
    expect(error.expected).toBeTruthy();
    expect(error.advice).toBeTruthy();
    expect(await store.trials()).toEqual([]);
  });

  it.each(['id', 'at', 'body'])('an entry whose "%s" is nested thousands deep', async (part) => {
    const deep = `${'['.repeat(50_000)}${']'.repeat(50_000)}`;
    const entry = JSON.stringify({ ...good, [part]: 'HERE' }).replace('"HERE"', deep);
    const answer = await post(app, `{"trial":"fen","entries":[${entry}]}`);
    expect(answer.status).toBe(400);
  });

  it('a body that is too large', async () => {
    const answer = await post(app, ' '.repeat(32 * 1024 * 1024 + 1));
    expect(answer.status).toBe(413);
    expect(await answer.json()).toMatchObject({ error: { expected: 'at most 32 MB at a time' } });
  });

  it.each([
    ['text/plain', 'text/plain'],
    ['', 'no content type'],
  ])('another content type: "%s"', async (type, found) => {
    const answer = await post(app, { trial: 'fen', entries: [good] }, { 'content-type': type });
    expect(answer.status).toBe(415);
    expect(await answer.json()).toMatchObject({ error: { found } });
    expect(await store.has('fen')).toBe(false);
  });

  it.each([
    ['/api/entries', 400],
    ['/api/entries?trial=', 400],
    ['/api/entries?trial=nowhere', 404],
    ['/api/live', 400],
    ['/api/live?trial=nowhere', 404],
    ['/api/blobs/abc?trial=nowhere', 404],
    ['/api/nothing', 404],
    ['/api', 404],
  ])('%s', async (path, status) => {
    const answer = await ask(app, path);
    expect(answer.status).toBe(status);
    expect(await answer.json()).toHaveProperty('error.found');
  });

  it.each(['after=x', 'after=-1', 'after=1.5', 'limit=0', 'limit=x', `after=${idOf(1)}`, 'after=9999999999999999'])(
    'a page that nobody can find: %s',
    async (query) => {
      await store.append('fen', [good]);
      expect((await ask(app, `/api/entries?trial=fen&${query}`)).status).toBe(400);
    },
  );

  it('anything at all, without ever breaking', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(
          fc.string(),
          fc.json(),
          fc.jsonValue().map((x) => JSON.stringify({ trial: 'fen', entries: [x] })),
        ),
        async (text) => {
          const answer = await post(app, text);
          expect(answer.status, `status for ${text}`).toBeGreaterThanOrEqual(400);
          expect(answer.status, `status for ${text}`).toBeLessThan(500);
          expect(await answer.json()).toHaveProperty('error.expected');
        },
      ),
      { seed: 20261125, numRuns: 200 },
    );
  });
});

describe('what cannot be taken among what can', () => {
  const impossible = (n: number, body: Record<string, string>) => entryOf(n, { body: { ...entryOf(n).body, ...body } });
  interface Answer {
    accepted: string[];
    refused: { entry: number; id: string | null; found: string; expected: string; advice: string }[];
    error?: { found: string };
  }
  const sent = async (...entries: unknown[]) => {
    const answer = await post(app, { trial: 'fen', entries });
    return { status: answer.status, ...((await answer.json()) as Answer) };
  };
  const held = async () => (await store.entries('fen')).map(({ id }) => id);

  it('holds nothing else back: it is named, and the rest is kept', async () => {
    const { status, accepted, refused } = await sent(
      entryOf(1),
      impossible(2, { unit: 'furlong' }),
      entryOf(3),
      { ...entryOf(4), at: 'x' },
      7,
      entryOf(6, { trial: 'moor' }),
    );
    expect(status).toBe(200);
    expect(accepted).toEqual([idOf(1), idOf(3)]);
    expect(refused.map(({ entry, id }) => [entry, id])).toEqual([
      [2, idOf(2)],
      [4, idOf(4)],
      [5, null],
      [6, idOf(6)],
    ]);
    for (const { found, expected, advice } of refused) expect([found, expected, advice]).not.toContain('');
    expect(await held()).toEqual([idOf(1), idOf(3)]);
  });

  it.each<[string, Partial<Entry>, string]>([
    ['a unit of another quantity', { body: { ...entryOf(1).body, unit: 'mm' } }, 'value of the reading "r1"'],
    ['a unit that is none', { body: { ...entryOf(1).body, unit: 'stonk' } }, 'stonk"'],
    ['less than nothing', { body: { ...entryOf(1).body, value: '-3' } }, '"-3'],
    ['no piece', { body: { ...entryOf(1).body, specimen: '' } }, 'nothing (specimen of the reading "r1")'],
    ['a day to come', { body: { ...entryOf(1).body, at: '2026-09-01' } }, 'in the future'],
  ])('%s is told like at the other doors', async (_what, changes, found) => {
    app = benchOn(page, store, { now: () => Date.UTC(2026, 4, 2) });
    const { status, refused, error } = await sent(entryOf(1, changes));
    expect(status).toBe(400);
    expect(refused[0]?.found).toContain(found);
    expect(error?.found).toBe(refused[0]?.found);
    expect(await store.has('fen')).toBe(false);
  });

  it('is said the same again and again, and takes nothing away from what is kept', async () => {
    const list = [entryOf(1), impossible(2, { value: 'many' })];
    const first = await sent(...list);
    expect(await sent(...list)).toEqual({ ...first, added: 0, known: 1 });
    expect(await sent(list[1])).toMatchObject({ status: 400, accepted: [], refused: [{ id: idOf(2) }] });
    expect(await held()).toEqual([idOf(1)]);
  });

  it('is not taken for another entry of the same id in the same list', async () => {
    const { accepted, refused } = await sent(impossible(1, { value: 'many' }), entryOf(1));
    expect(accepted).toEqual([idOf(1)]);
    expect(refused).toMatchObject([{ entry: 1, id: idOf(1) }]);
    expect(await store.entries('fen')).toEqual([entryOf(1)]);
  });

  it('is never something that was acknowledged: what an earlier version let in stays', async () => {
    const old = impossible(2, { unit: 'furlong' });
    await store.append('fen', [old]);
    expect(await sent(old)).toMatchObject({ status: 200, accepted: [idOf(2)], refused: [], added: 0, known: 1 });
    expect(await store.entries('fen')).toEqual([old]);
  });

  it('is no kind of a later version, and no reading of a phone whose clock runs days ahead', async () => {
    app = benchOn(page, store, { now: () => Date.UTC(2026, 4, 2) });
    const ahead = '2026-05-09T10:00:00.000Z';
    const early = entryOf(2, { at: ahead, body: { ...entryOf(2).body, at: ahead } });
    const { accepted } = await sent(entryOf(1, { kind: 'a-kind-from-tomorrow', body: { unit: 'furlong' } }), early);
    expect(accepted).toEqual([idOf(1), idOf(2)]);
  });
});

describe('a journal of which the disk damaged a part', () => {
  /** The memory's store with some arrival numbers damaged, as the one in a file tells it. */
  function damagedStore(numbers: Set<number>): Store {
    const sound = openMemoryStore();
    return {
      ...sound,
      async readable(trial, seq, limit) {
        const { entries, next } = await sound.entriesSince(trial, seq, limit);
        const damaged = entries.map((_, n) => seq + n + 1).filter((number) => numbers.has(number));
        const left = entries.filter((_, n) => !numbers.has(seq + n + 1));
        return { entries: left, next, damaged, advice: damaged.length > 0 ? 'Stop Cupel.' : '' };
      },
    };
  }
  interface Told extends Page {
    store: string;
    damaged?: { numbers: number[]; found: string; advice: string };
  }

  it('is given as far as it can be read, and every reader is told, wherever they read on', async () => {
    const numbers = new Set([2, 1500]);
    const broken = damagedStore(numbers);
    await broken.append(
      'fen',
      Array.from({ length: 2000 }, (_, n) => entryOf(n + 1)),
    );
    const name = await broken.name();
    const on = benchOn(page, broken);
    const read = async (query: string) => (await (await ask(on, `/api/entries?trial=fen${query}`)).json()) as Told;
    const late = await read('&after=1999');
    expect(late).toMatchObject({ entries: [entryOf(2000)], next: 2000, damaged: { numbers: [2, 1500] } });
    expect(late.damaged?.found).toContain('2 entries of this trial (number 2 and 1500)');
    expect(late.damaged?.advice).toBe('Stop Cupel.');
    // Devices are asked for what they hold, once.
    const renamed = await broken.name();
    expect(renamed).not.toBe(name);
    const all = await read('');
    expect([all.entries.length, all.damaged?.numbers]).toEqual([1998, [2, 1500]]);
    numbers.delete(1500);
    expect((await read('&after=2000')).damaged?.numbers).toEqual([2]);
    numbers.delete(2);
    expect(await read('&after=2000')).not.toHaveProperty('damaged');
    expect(await broken.name()).toBe(renamed);
  });
});

describe('a store that cannot go on', () => {
  it.each([
    [new DamagedData('The photo x is not what was kept.', 'Stop.'), 'the photo x is not what was kept'],
    [new StoreRefusal('The shelf in /here is damaged.'), 'The shelf in /here is damaged.'],
    [new Error('SQLITE_FULL: secret inner words'), 'trouble with the file of the shelf'],
  ])('%s', async (error, found) => {
    const broken = { ...openMemoryStore(), trials: () => Promise.reject(error) };
    const answer = await ask(benchOn(page, broken), '/api/trials');
    expect(answer.status).toBe(503);
    expect(await answer.json()).toMatchObject({ error: { found } });
  });
});
