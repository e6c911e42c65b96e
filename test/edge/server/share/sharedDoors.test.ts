import { describe, expect, it } from 'vitest';
import { entryOf } from '../../../contract/store.ts';
import { tempFolder } from '../../../support/tempFolder.ts';
import { BENCH_ADDRESS, PHONE, PORT, smallPage } from '../bench.ts';
import { ask, fromPhone, paired, postTo, refusalOf, sharedBench } from './shared.ts';

const page = smallPage(tempFolder());
const SHARED = `${BENCH_ADDRESS}:${PORT}`;
const NAMES = { given: ['bench.local', 'club.example'] };

describe('the host that a request names', () => {
  it('may be an address of the network only while somebody shares', async () => {
    const bench = sharedBench(page);
    expect((await ask(bench.app, '/', fromPhone())).status).toBe(403);
    await bench.network.open('reader');
    expect((await ask(bench.app, '/', fromPhone())).status).toBe(200);
    expect((await ask(bench.app, '/')).status).toBe(200);
    await bench.network.end();
    expect((await ask(bench.app, '/', fromPhone())).status).toBe(403);
    expect((await ask(bench.app, '/')).status).toBe(200);
  });

  it.each(['bench.local:4870', 'BENCH.LOCAL', 'club.example'])('may be %s when that name was given', async (host) => {
    const bench = sharedBench(page, NAMES);
    expect((await ask(bench.app, '/', { from: PHONE, headers: { host } })).status).toBe(200);
  });

  it.each([
    '',
    'example.org',
    '192.168.7.9:4870',
    BENCH_ADDRESS,
    'bench.local:80',
    'bench.local.example.org',
    'x.club.example',
  ])('may not be "%s"', async (host) => {
    const bench = sharedBench(page, NAMES);
    await bench.network.open('reader');
    const { token } = await paired(bench, 'keeper');
    const headers = { ...fromPhone(token).headers, host };
    for (const path of ['/', '/api/trials', '/assets/main-1a2b.js']) {
      const answer = await ask(bench.app, path, { from: PHONE, headers });
      expect(answer.status).toBe(403);
      expect(await refusalOf(answer)).toContain('a request for the host');
    }
  });
});

describe('the page that sends a change', () => {
  const plain = [`http://${SHARED}`, `http://127.0.0.1:${PORT}`, 'http://bench.local:4870', 'https://club.example'];
  it.each(plain)('may be at %s', async (origin) => {
    const bench = sharedBench(page, NAMES);
    const { token } = await paired(bench, 'recorder');
    const { headers, from } = fromPhone(token);
    const sent = await postTo(
      bench.app,
      '/api/entries',
      { trial: 'fen', entries: [entryOf(1)] },
      { from, headers: { ...headers, origin } },
    );
    expect(sent.status).toBe(200);
  });

  const foreign = [
    'https://example.org',
    'null',
    `https://${SHARED}`,
    `http://${BENCH_ADDRESS}`,
    'http://192.168.7.9:4870',
  ];
  it.each(foreign)('may not be at %s, not even with a token', async (origin) => {
    const bench = sharedBench(page, NAMES);
    const { token, device } = await paired(bench, 'keeper');
    const { code } = await bench.network.open('keeper');
    const { headers, from } = fromPhone(token);
    const asked = { from, headers: { ...headers, origin } };
    const answers = [
      await postTo(bench.app, '/api/entries', { trial: 'fen', entries: [entryOf(1)] }, asked),
      await postTo(bench.app, '/api/pair', { code, name: 'x' }, asked),
      await ask(bench.app, `/api/devices/${device.id}`, { ...asked, method: 'DELETE' }),
      await ask(bench.app, '/api/blobs/abc?trial=fen', { ...asked, method: 'PUT', body: 'x' }),
      await postTo(bench.app, '/api/share/open', {}, { headers: { origin } }),
    ];
    expect(answers.map(({ status }) => status)).toEqual([403, 403, 403, 403, 403]);
    expect(await bench.store.has('fen')).toBe(false);
    expect((await bench.store.devices()).map(({ revokedAt }) => revokedAt)).toEqual([null]);
    expect(bench.network.code()?.code).toBe(code);
  });

  it('may not be another site that hides its name', async () => {
    const bench = sharedBench(page);
    const headers = { 'sec-fetch-site': 'cross-site' };
    expect((await postTo(bench.app, '/api/share/open', {}, { headers })).status).toBe(403);
  });

  it('over TLS is at https there, and still at http on the bench computer', async () => {
    const bench = sharedBench(page, { secure: true });
    const { token } = await paired(bench, 'recorder');
    const send = async (origin: string) => {
      const { from, headers } = fromPhone(token);
      const body = { trial: 'fen', entries: [entryOf(1)] };
      return (await postTo(bench.app, '/api/entries', body, { from, headers: { ...headers, origin } })).status;
    };
    expect(await send(`https://${SHARED}`)).toBe(200);
    expect(await send(`http://${SHARED}`)).toBe(403);
    expect(await send(`http://127.0.0.1:${PORT}`)).toBe(200);
  });
});

describe('a flood', () => {
  it('from one address is stopped, told how long to wait, and stops nobody else', async () => {
    const bench = sharedBench(page);
    const { token } = await paired(bench, 'reader');
    const asks = async (from = PHONE) => ask(bench.app, '/api/me', fromPhone(token, from));
    let stopped: Response | null = null;
    let answered = 0;
    for (; answered < 1100 && stopped === null; answered += 1) {
      const answer = await asks();
      if (answer.status === 429) stopped = answer;
    }
    expect(answered).toBeGreaterThan(900);
    expect(Number(stopped?.headers.get('retry-after'))).toBe(1);
    expect(await refusalOf(stopped as Response)).toContain('too many requests');
    expect((await asks('192.168.7.21')).status).toBe(200);
    expect((await ask(bench.app, '/api/me')).status).toBe(200);
    bench.pass(1000);
    expect((await asks()).status).toBe(200);
  });

  it('on the bench computer itself is its owner hard at work', async () => {
    const bench = sharedBench(page);
    for (let n = 0; n < 1100; n += 1) expect((await ask(bench.app, '/api/me')).status).toBe(200);
  });
});
