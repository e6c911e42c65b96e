import { afterEach, describe, expect, it, vi } from 'vitest';
import { listen } from '../../../../src/edge/server/listen.ts';
import { type LiveHub, type LivePace, liveHub } from '../../../../src/edge/server/live/liveHub.ts';
import { liveStream } from '../../../../src/edge/server/live/liveStream.ts';
import { openMemoryStore } from '../../../../src/edge/store/memory/open.ts';
import { entryOf } from '../../../contract/store.ts';
import { tempFolder } from '../../../support/tempFolder.ts';
import { ask, benchOn, post, smallPage } from '../bench.ts';
import { fromPhone, paired, sharedBench } from '../share/shared.ts';

const page = smallPage(tempFolder());
const SELDOM: LivePace = { beatMs: 60_000, lookMs: 60_000 };

const closing: (() => unknown)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0)) await close();
});

async function liveBench(pace: LivePace = SELDOM) {
  const store = openMemoryStore();
  await store.append('fen', [entryOf(1)]);
  const live = liveHub(store, pace);
  closing.push(live.close);
  return { store, live, app: benchOn(page, store, { live }) };
}

/** Reads a stream of events piece by piece. */
function earOf(answer: Response) {
  const reader = (answer.body as ReadableStream<Uint8Array>).getReader();
  return {
    async next(): Promise<string | null> {
      const { done, value } = await reader.read();
      return done ? null : new TextDecoder().decode(value);
    },
    leave: () => reader.cancel(),
  };
}

const news = (last: number) => `event: entries\ndata: {"last":${last}}\n\n`;
const until = (what: () => boolean) => vi.waitFor(() => expect(what()).toBe(true), { timeout: 5000 });

describe('a listener', () => {
  it('hears at once how far the journal reaches, and then of each append', async () => {
    const { app } = await liveBench();
    const answer = await ask(app, '/api/live?trial=fen');
    expect(answer.headers.get('content-type')).toBe('text/event-stream; charset=utf-8');
    expect(answer.headers.get('cache-control')).toBe('no-store');
    const ear = earOf(answer);
    expect(await ear.next()).toBe(news(1));
    await post(app, { trial: 'fen', entries: [entryOf(2), entryOf(3)] });
    expect(await ear.next()).toBe(news(3));
  });

  it('hears nothing of another trial, nor of what was known', async () => {
    const { app, store } = await liveBench();
    await store.append('moor', [entryOf(1, { trial: 'moor' })]);
    const ear = earOf(await ask(app, '/api/live?trial=fen'));
    await ear.next();
    await post(app, { trial: 'moor', entries: [entryOf(2, { trial: 'moor' })] });
    await post(app, { trial: 'fen', entries: [entryOf(1)] });
    await post(app, { trial: 'fen', entries: [entryOf(4)] });
    expect(await ear.next()).toBe(news(2));
  });

  it('who reads slowly gets the newest number, and nothing piles up', async () => {
    const { app } = await liveBench();
    const ear = earOf(await ask(app, '/api/live?trial=fen'));
    for (let n = 2; n <= 60; n += 1) await post(app, { trial: 'fen', entries: [entryOf(n)] });
    expect(await ear.next()).toBe(news(1));
    expect(await ear.next()).toBe(news(60));
  });

  it('hears within one look of what another program wrote', async () => {
    const { app, store } = await liveBench({ beatMs: 60_000, lookMs: 5 });
    const ear = earOf(await ask(app, '/api/live?trial=fen'));
    await ear.next();
    await store.append('fen', [entryOf(2)]);
    expect(await ear.next()).toBe(news(2));
  });

  it('hears a sign of life now and then', async () => {
    const { app } = await liveBench({ beatMs: 5, lookMs: 60_000 });
    const ear = earOf(await ask(app, '/api/live?trial=fen'));
    await ear.next();
    expect(await ear.next()).toBe(': still here\n\n');
  });

  it('is let go when the bench stops, and nobody comes after', async () => {
    const { app, live } = await liveBench();
    const ears = [earOf(await ask(app, '/api/live?trial=fen')), earOf(await ask(app, '/api/live?trial=fen'))];
    for (const ear of ears) await ear.next();
    live.close();
    expect(await Promise.all(ears.map((ear) => ear.next()))).toEqual([null, null]);
    expect(live.listeners()).toBe(0);
    const late = earOf(await ask(app, '/api/live?trial=fen'));
    expect([await late.next(), await late.next()].at(-1)).toBeNull();
    expect(live.listeners()).toBe(0);
  });

  it('is let go when its store breaks', async () => {
    const broken = { ...openMemoryStore(), has: async () => true, append: () => Promise.reject(new Error('gone')) };
    const live = liveHub(broken, SELDOM);
    expect((await ask(benchOn(page, broken, { live }), '/api/live?trial=fen')).status).toBe(503);
    expect(live.listeners()).toBe(0);
  });
});

describe('a device that is turned away while it listens', () => {
  it.each([
    [
      'here',
      async (bench: ReturnType<typeof sharedBench>, id: string) =>
        ask(bench.app, `/api/devices/${id}`, { method: 'DELETE' }),
    ],
    [
      'by another server over the same store',
      async (bench: ReturnType<typeof sharedBench>, id: string) => bench.store.revokeDevice(id, 'now'),
    ],
  ])('hears nothing more: %s', async (_where, turnAway) => {
    let live: LiveHub | null = null;
    const bench = sharedBench(
      page,
      {},
      {
        live: {
          listen: (trial, device) => live!.listen(trial, device),
          tell: (trial, last) => live!.tell(trial, last),
          drop: (device) => live!.drop(device),
          close: () => live!.close(),
          listeners: () => live!.listeners(),
        },
      },
    );
    live = liveHub(bench.store, { beatMs: 60_000, lookMs: 5 });
    closing.push(live.close);
    await bench.store.append('fen', [entryOf(1)]);
    const { token, device } = await paired(bench, 'reader');
    const theirs = earOf(await ask(bench.app, '/api/live?trial=fen', fromPhone(token)));
    const ours = earOf(await ask(bench.app, '/api/live?trial=fen'));
    await Promise.all([theirs.next(), ours.next()]);
    await turnAway(bench, device.id);
    expect(await theirs.next()).toBeNull();
    expect(live.listeners()).toBe(1);
    await post(bench.app, { trial: 'fen', entries: [entryOf(2)] });
    expect(await ours.next()).toBe(news(2));
  });
});

describe('over real connections', () => {
  async function servedBench() {
    let port = 0;
    const store = openMemoryStore();
    await store.append('fen', [entryOf(1)]);
    const live = liveHub(store, SELDOM);
    const server = await listen(benchOn(page, store, { live, port: () => port }), 0);
    port = server.port;
    closing.push(server.stop, live.close);
    return { live, server, address: `${server.address}/api/live?trial=fen` };
  }

  it('200 who come and go leave nothing behind', async () => {
    const { live, address } = await servedBench();
    for (let round = 0; round < 20; round += 1) {
      const leaving = new AbortController();
      const answers = await Promise.all(Array.from({ length: 10 }, () => fetch(address, { signal: leaving.signal })));
      for (const answer of answers) expect(await earOf(answer).next()).toBe(news(1));
      expect(live.listeners()).toBeGreaterThanOrEqual(10);
      leaving.abort();
      await until(() => live.listeners() === 0);
    }
  });

  it('100 at once all hear, and a stop does not wait for them', async () => {
    const { live, server, address } = await servedBench();
    const ears = (await Promise.all(Array.from({ length: 100 }, () => fetch(address)))).map(earOf);
    for (const ear of ears) await ear.next();
    live.tell('fen', 2);
    expect(await Promise.all(ears.map((ear) => ear.next()))).toEqual(ears.map(() => news(2)));
    live.close();
    expect(await Promise.all(ears.map((ear) => ear.next()))).toEqual(ears.map(() => null));
    const began = performance.now();
    await server.stop();
    expect(performance.now() - began).toBeLessThan(3000);
  });
});

describe('a stream', () => {
  it('says once that its reader is gone', async () => {
    const gone = vi.fn();
    const { stream, close, tell, beat } = liveStream(gone);
    await stream.cancel();
    tell(7);
    beat();
    close();
    expect(gone).toHaveBeenCalledTimes(1);
  });
});
