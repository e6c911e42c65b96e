import { describe, expect, it } from 'vitest';
import { PortTaken } from '../../../../src/edge/server/listen.ts';
import { tempFolder } from '../../../support/tempFolder.ts';
import { BENCH_ADDRESS, benchOn, PORT, smallPage } from '../bench.ts';
import { ask, postTo, refusalOf, sharedBench } from './shared.ts';

const page = smallPage(tempFolder());

describe('opening the bench to a phone', () => {
  it('listens once, shows a code with its QR code, and makes the one before void', async () => {
    const bench = sharedBench(page);
    expect(await (await ask(bench.app, '/api/share')).json()).toEqual({
      sharing: false,
      secure: false,
      addresses: [],
      code: null,
    });
    expect(bench.heard).toEqual([]);
    const opened = (await (await postTo(bench.app, '/api/share/open', { role: 'reader' })).json()) as {
      code: string;
      url: string;
      qr: boolean[][];
      until: string;
      role: string;
    };
    expect(opened.url).toBe(`http://${BENCH_ADDRESS}:${PORT}/pair#${opened.code}`);
    expect(opened.role).toBe('reader');
    expect(opened.until).toBe('2026-05-01T10:10:00.000Z');
    expect(opened.qr.every((row) => row.length === opened.qr.length)).toBe(true);
    const again = (await (await postTo(bench.app, '/api/share/open', '')).json()) as { code: string; role: string };
    expect(again.role).toBe('recorder');
    expect(again.code).not.toBe(opened.code);
    expect(bench.heard).toEqual([BENCH_ADDRESS]);
    const shown = (await (await ask(bench.app, '/api/share')).json()) as { code: { code: string } | null };
    expect(shown).toMatchObject({ sharing: true, addresses: [BENCH_ADDRESS], code: { code: again.code } });
  });

  it('closes the code and stays on the network, or leaves that too', async () => {
    const bench = sharedBench(page);
    await postTo(bench.app, '/api/share/open', {});
    await postTo(bench.app, '/api/share/close', {});
    expect(await (await ask(bench.app, '/api/share')).json()).toMatchObject({ sharing: true, code: null });
    expect(bench.left).toEqual([]);
    await postTo(bench.app, '/api/share/end', {});
    expect(await (await ask(bench.app, '/api/share')).json()).toMatchObject({ sharing: false, addresses: [] });
    expect(bench.left).toEqual([BENCH_ADDRESS]);
  });

  it('listens at addresses that came since', async () => {
    const addresses = ['192.168.7.1'];
    const bench = sharedBench(page, { addresses: () => addresses });
    await bench.network.open('reader');
    addresses.push('10.0.0.5');
    const { urls } = await bench.network.open('reader');
    expect(bench.heard).toEqual(['192.168.7.1', '10.0.0.5']);
    expect(urls).toHaveLength(2);
  });

  it('names a name that was given, over TLS where there is a certificate', async () => {
    const bench = sharedBench(page, { given: ['bench.local'], secure: true });
    const { urls, code } = await bench.network.open('reader');
    expect(urls).toEqual([`https://${BENCH_ADDRESS}:${PORT}/pair#${code}`, `https://bench.local:${PORT}/pair#${code}`]);
  });
});

describe('what is refused', () => {
  it('a computer on no network, and a port that another program has', async () => {
    const alone = sharedBench(page, { addresses: () => [] });
    const none = await postTo(alone.app, '/api/share/open', {});
    expect(none.status).toBe(409);
    expect(await refusalOf(none)).toContain('on no local network');
    const taken = sharedBench(page, { listenAt: () => Promise.reject(new PortTaken(PORT)) });
    expect((await postTo(taken.app, '/api/share/open', {})).status).toBe(409);
    expect(taken.network.code()).toBeNull();
  });

  it.each([[{ role: 'owner' }], ['x'], [[]]])('another role or shape: %j', async (body) => {
    const bench = sharedBench(page);
    expect((await postTo(bench.app, '/api/share/open', body)).status).toBe(400);
    expect(bench.heard).toEqual([]);
  });

  it('a large body', async () => {
    expect((await postTo(sharedBench(page).app, '/api/share/open', ' '.repeat(2000))).status).toBe(413);
  });

  it('a bench that has no network to open', async () => {
    const app = benchOn(page);
    expect((await postTo(app, '/api/share/open', {})).status).toBe(409);
    expect((await postTo(app, '/api/share/close', {})).status).toBe(200);
    expect(await (await ask(app, '/api/share')).json()).toMatchObject({ sharing: false, code: null });
  });
});
