import { describe, expect, it } from 'vitest';
import { entryOf } from '../../../contract/store.ts';
import { tempFolder } from '../../../support/tempFolder.ts';
import { type Asked, BENCH_ADDRESS, PORT, smallPage } from '../bench.ts';
import { ask, fromPhone, paired, postTo, refusalOf, type SharedBench, sharedBench } from './shared.ts';

const page = smallPage(tempFolder());
const entries = { trial: 'fen', entries: [entryOf(1)] };
const LOG = new TextEncoder().encode('t,ohm\n1,2\n');
// sha256sum of those ten bytes.
const LOG_NAME = 'fe6ac1f5f7fe49efe539dab0c103f76972f10535b2ef78858da10a9ec8333d45';

/** Everything that can be asked for, by what it takes to be allowed. */
const DOORS: Record<
  'read' | 'record' | 'keep' | 'here',
  [string, (bench: SharedBench, asked: Asked) => Promise<Response>][]
> = {
  read: [
    ['list the trials', ({ app }, asked) => ask(app, '/api/trials', asked)],
    ['read a journal', ({ app }, asked) => ask(app, '/api/entries?trial=fen', asked)],
    ['listen', ({ app }, asked) => ask(app, '/api/live?trial=fen', asked)],
    ['be told who one is', ({ app }, asked) => ask(app, '/api/me', asked)],
  ],
  record: [
    ['append', ({ app }, asked) => postTo(app, '/api/entries', entries, asked)],
    [
      'keep a log',
      ({ app }, asked) => ask(app, `/api/blobs/${LOG_NAME}?trial=fen`, { ...asked, method: 'PUT', body: LOG }),
    ],
  ],
  keep: [
    ['list the devices', ({ app }, asked) => ask(app, '/api/devices', asked)],
    ['turn a device away', ({ app }, asked) => ask(app, '/api/devices/nobody', { ...asked, method: 'DELETE' })],
  ],
  here: [
    ['see the code', ({ app }, asked) => ask(app, '/api/share', asked)],
    ['have a code made', ({ app }, asked) => postTo(app, '/api/share/open', { role: 'keeper' }, asked)],
    ['close the code', ({ app }, asked) => postTo(app, '/api/share/close', {}, asked)],
    ['leave the network', ({ app }, asked) => postTo(app, '/api/share/end', {}, asked)],
  ],
};

async function benchWithTrial(): Promise<SharedBench> {
  const bench = sharedBench(page);
  await bench.store.append('fen', [entryOf(9)]);
  await bench.network.open('reader');
  return bench;
}

const MAY = {
  reader: ['read'],
  recorder: ['read', 'record'],
  keeper: ['read', 'record', 'keep'],
} as const;

describe.each(['reader', 'recorder', 'keeper'] as const)('a %s', (role) => {
  for (const [act, doors] of Object.entries(DOORS))
    for (const [what, open] of doors) {
      const may = (MAY[role] as readonly string[]).includes(act);
      it(`${may ? 'may' : 'may not'} ${what}`, async () => {
        const bench = await benchWithTrial();
        const { token } = await paired(bench, role);
        const before = await bench.store.entries('fen');
        const answer = await open(bench, fromPhone(token));
        if (may) expect([200, 404]).toContain(answer.status);
        else {
          expect(answer.status).toBe(403);
          expect(await refusalOf(answer)).toMatch(/may|itself/);
          expect(await bench.store.entries('fen')).toEqual(before);
          expect(await bench.store.blobNames('fen')).toEqual([]);
        }
      });
    }
});

describe('somebody on the network', () => {
  const strangers: [string, Asked][] = [
    ['without a token', fromPhone()],
    ['with a made-up token', fromPhone('A'.repeat(43))],
    [
      'with something else for a token',
      { ...fromPhone(), headers: { ...fromPhone().headers, authorization: 'Basic eDp5' } },
    ],
  ];
  it.each(strangers)('%s gets nothing at all', async (_who, asked) => {
    for (const doors of Object.values(DOORS))
      for (const [what, open] of doors) {
        const bench = await benchWithTrial();
        const answer = await open(bench, asked);
        expect(answer.status, what).toBe(401);
        expect(answer.headers.get('www-authenticate')).toBe('Bearer');
        expect(await refusalOf(answer)).toContain('Add this device');
        expect(await bench.store.entries('fen')).toHaveLength(1);
      }
  });

  it('gets the page, which holds no data', async () => {
    const { app } = await benchWithTrial();
    expect((await ask(app, '/', fromPhone())).status).toBe(200);
    expect((await ask(app, '/pair', fromPhone())).status).toBe(200);
  });

  const atBench = { host: `127.0.0.1:${PORT}` };
  const pretenders: [string, Asked][] = [
    ['names the bench computer as host', { ...fromPhone(), headers: atBench }],
    ['is passed on by a proxy on the bench computer', { headers: { ...atBench, 'x-forwarded-for': '203.0.113.9' } }],
    ['is passed on under another name', { from: '127.0.0.1', headers: { host: `${BENCH_ADDRESS}:${PORT}` } }],
    ['comes through no socket', { from: '', headers: atBench }],
    ['comes from an address that only begins like loopback', { from: '127.0.0.1.example', headers: atBench }],
  ];
  it.each(pretenders)('who %s is not taken for somebody at it', async (_who, asked) => {
    const { app } = await benchWithTrial();
    expect((await ask(app, '/api/trials', asked)).status).toBe(401);
    expect((await postTo(app, '/api/entries', entries, asked)).status).toBe(401);
  });
});

describe('somebody at the bench computer', () => {
  it.each(['127.0.0.1', '::1', '::ffff:127.0.0.1'])('may do everything without a token, from %s', async (from) => {
    for (const doors of Object.values(DOORS))
      for (const [what, open] of doors)
        expect([200, 404], what).toContain((await open(await benchWithTrial(), { from })).status);
  });
});

describe('a device that was turned away', () => {
  it('gets nothing any more, and the others stay', async () => {
    const bench = await benchWithTrial();
    const lost = await paired(bench, 'recorder');
    const kept = await paired(bench, 'keeper');
    const path = `/api/devices/${lost.device.id}`;
    expect((await ask(bench.app, path, { ...fromPhone(kept.token), method: 'DELETE' })).status).toBe(200);
    const answer = await postTo(bench.app, '/api/entries', entries, fromPhone(lost.token));
    expect(answer.status).toBe(401);
    expect(await refusalOf(answer)).toContain('not any more');
    expect(await bench.store.entries('fen')).toHaveLength(1);
    expect((await ask(bench.app, '/api/trials', fromPhone(kept.token))).status).toBe(200);
    const listed = (await (await ask(bench.app, '/api/devices')).json()) as { id: string; revokedAt: string | null }[];
    expect(listed.map(({ id, revokedAt }) => [id, revokedAt !== null])).toEqual([
      [lost.device.id, true],
      [kept.device.id, false],
    ]);
  });

  it('must be one that there is', async () => {
    const { app } = await benchWithTrial();
    expect((await ask(app, '/api/devices/nobody', { method: 'DELETE' })).status).toBe(404);
  });
});
