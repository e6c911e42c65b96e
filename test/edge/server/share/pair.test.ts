import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { tempFolder } from '../../../support/tempFolder.ts';
import { benchOn, smallPage } from '../bench.ts';
import { ask, fromPhone, paired, postTo, refusalOf, sharedBench } from './shared.ts';

const page = smallPage(tempFolder());
const pairAs = (code: string, name = 'Phone of the kitchen') => ({ code, name });

describe('a phone with the code', () => {
  it('is let in once, and its token opens what its role opens', async () => {
    const bench = sharedBench(page);
    const { code } = await bench.network.open('reader');
    const answer = await postTo(bench.app, '/api/pair', pairAs(code.toLowerCase(), '  Field phone '), fromPhone());
    expect(answer.status).toBe(200);
    expect(answer.headers.get('cache-control')).toBe('no-store');
    expect(answer.headers.get('set-cookie')).toBeNull();
    const { token, role, device } = (await answer.json()) as Awaited<ReturnType<typeof paired>>;
    expect(role).toBe('reader');
    expect(device).toMatchObject({ name: 'Field phone', role: 'reader' });
    expect(Buffer.from(token, 'base64url')).toHaveLength(32);
    expect(await (await ask(bench.app, '/api/me', fromPhone(token))).json()).toEqual({
      role: 'reader',
      device: { id: device.id, name: 'Field phone' },
    });
    const again = await postTo(bench.app, '/api/pair', pairAs(code), fromPhone());
    expect(again.status).toBe(403);
  });

  it('leaves only the SHA-256 of its token in the store', async () => {
    const bench = sharedBench(page);
    const { token, device } = await paired(bench, 'recorder');
    expect(JSON.stringify(await bench.store.devices())).not.toContain(token);
    expect(await bench.store.deviceByToken(token)).toBeNull();
    const hash = createHash('sha256').update(token).digest('hex');
    expect((await bench.store.deviceByToken(hash))?.id).toBe(device.id);
  });

  it('gets another token each time', async () => {
    const bench = sharedBench(page);
    const tokens = [await paired(bench, 'reader'), await paired(bench, 'reader')].map(({ token }) => token);
    expect(new Set(tokens).size).toBe(2);
  });

  it('is noted as seen, not at every request', async () => {
    const bench = sharedBench(page);
    const { token } = await paired(bench, 'reader');
    const seenAt = async () => (await bench.store.devices())[0]?.seenAt;
    await ask(bench.app, '/api/me', fromPhone(token));
    expect(await seenAt()).toBe('2026-05-01T10:00:00.000Z');
    bench.pass(30_000);
    await ask(bench.app, '/api/me', fromPhone(token));
    expect(await seenAt()).toBe('2026-05-01T10:00:00.000Z');
    bench.pass(31_000);
    await ask(bench.app, '/api/me', fromPhone(token));
    expect(await seenAt()).toBe('2026-05-01T10:01:01.000Z');
  });
});

describe('a phone without the code', () => {
  it('is refused while none is open', async () => {
    const bench = sharedBench(page);
    const answer = await postTo(bench.app, '/api/pair', pairAs('K7M3QX'), fromPhone());
    expect(answer.status).toBe(403); // its host is not one of ours before somebody shares
    expect(bench.heard).toEqual([]);
    const { code } = await bench.network.open('reader');
    bench.network.close();
    const closed = await postTo(bench.app, '/api/pair', pairAs(code), fromPhone());
    expect(closed.status).toBe(403);
    expect(await refusalOf(closed)).toContain('none is open');
  });

  it('is refused with an old code', async () => {
    const bench = sharedBench(page);
    const { code, until } = await bench.network.open('reader');
    expect(until).toBe('2026-05-01T10:10:00.000Z');
    bench.pass(10 * 60_000);
    const answer = await postTo(bench.app, '/api/pair', pairAs(code), fromPhone());
    expect(answer.status).toBe(403);
    expect(await refusalOf(answer)).toContain('none is open');
    expect(bench.network.code()).toBeNull();
    expect(await bench.store.devices()).toEqual([]);
  });

  it('is refused with five wrong ones, and then the old one is void and a new one was told', async () => {
    const told: string[] = [];
    const bench = sharedBench(page, { onRenewed: ({ code }) => told.push(code) });
    const { code } = await bench.network.open('recorder');
    for (let tries = 1; tries <= 5; tries += 1) {
      const wrong = await postTo(bench.app, '/api/pair', pairAs('000000'), fromPhone());
      expect(wrong.status).toBe(403);
      expect(await refusalOf(wrong)).toContain(tries < 5 ? 'another code' : 'A new code has taken its place');
    }
    const fresh = bench.network.code()?.code ?? '';
    expect(told).toEqual([fresh]);
    expect(fresh).not.toBe(code);
    expect((await postTo(bench.app, '/api/pair', pairAs(code), fromPhone())).status).toBe(403);
    expect((await postTo(bench.app, '/api/pair', pairAs(fresh), fromPhone())).status).toBe(200);
  });

  it('is refused the eleventh try of a minute, from its address alone', async () => {
    const bench = sharedBench(page);
    await bench.network.open('reader');
    const tries = async (from: string) => postTo(bench.app, '/api/pair', pairAs('000000'), fromPhone(undefined, from));
    for (let tried = 1; tried <= 10; tried += 1) expect((await tries('192.168.7.66')).status).toBe(403);
    const eleventh = await tries('192.168.7.66');
    expect(eleventh.status).toBe(429);
    expect(Number(eleventh.headers.get('retry-after'))).toBe(6);
    expect(await refusalOf(eleventh)).toContain('too many requests');
    expect((await tries('192.168.7.67')).status).toBe(403);
    bench.pass(6_000);
    expect((await tries('192.168.7.66')).status).toBe(403);
  });

  it.each([
    ['no JSON', 'x'],
    ['no name', { code: 'K7M3QX' }],
    ['a blank name', { code: 'K7M3QX', name: '  ' }],
    ['a name with a control character', { code: 'K7M3QX', name: 'a\u0007b' }],
    ['a name without end', { code: 'K7M3QX', name: 'a'.repeat(61) }],
    ['a number for a code', { code: 7, name: 'Phone' }],
  ])('is refused with %s', async (_what, body) => {
    const bench = sharedBench(page);
    await bench.network.open('reader');
    expect((await postTo(bench.app, '/api/pair', body, fromPhone())).status).toBe(400);
    expect(bench.network.code()).not.toBeNull();
  });

  it('is refused with a body that is too large', async () => {
    const bench = sharedBench(page);
    await bench.network.open('reader');
    expect((await postTo(bench.app, '/api/pair', ' '.repeat(5000), fromPhone())).status).toBe(413);
  });

  it('finds no door at a bench that nobody can share', async () => {
    expect((await postTo(benchOn(page), '/api/pair', pairAs('K7M3QX'))).status).toBe(403);
  });
});
