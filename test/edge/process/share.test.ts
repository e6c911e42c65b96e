import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { localAddresses } from '../../../src/edge/server/share/localAddresses.ts';
import type { TrialLine } from '../../../src/edge/store/store.ts';
import { builtProgramIn, ranToEnd, startedBench } from '../../support/builtProgram.ts';
import { tempFolder } from '../../support/tempFolder.ts';

const folder = tempFolder();
let cli = '';
let homes = 0;
beforeAll(() => {
  cli = join(builtProgramIn(folder), 'dist', 'cli.js');
}, 120_000);

const newHome = () => ({ home: join(folder, `shelf ${homes++}`), cwd: folder });
const json = { 'content-type': 'application/json' };

describe('the bench as a process, shared', () => {
  const [address] = localAddresses();
  it.skipIf(address === undefined)(
    'lets a phone in by the code that it printed (needs a network besides loopback)',
    async () => {
      const bench = await startedBench(cli, ['--share', '--port', '0', '--no-open'], newHome());
      const heard: string[] = [];
      bench.child.stdout?.on('data', (text: Buffer) => heard.push(String(text)));
      const { code, url } = (await (await fetch(`${bench.address}/api/share/open`, { method: 'POST' })).json()) as {
        code: string;
        url: string;
      };
      const shared = new URL(url).origin;
      expect((await fetch(`${shared}/api/trials`)).status).toBe(401);
      const body = JSON.stringify({ code, name: 'Phone' });
      const { token } = (await (await fetch(`${shared}/api/pair`, { method: 'POST', headers: json, body })).json()) as {
        token: string;
      };
      const authorization = `Bearer ${token}`;
      const trials = (await (
        await fetch(`${shared}/api/trials`, { headers: { authorization } })
      ).json()) as TrialLine[];
      expect(trials.map(({ trial }) => trial)).toEqual(['fenwater-2-awg']);
      const live = await fetch(`${shared}/api/live?trial=fenwater-2-awg`, { headers: { authorization } });
      const { value } = await (live.body as ReadableStream<Uint8Array>).getReader().read();
      expect(new TextDecoder().decode(value)).toContain('event: entries');
      const began = performance.now();
      bench.child.kill('SIGTERM');
      if (process.platform !== 'win32') expect(await bench.ended).toBe(0);
      expect(performance.now() - began).toBeLessThan(5000);
    },
  );

  it('says nothing of phones, and listens to none, unless it was asked to', async () => {
    const bench = await startedBench(cli, ['--port', '0', '--no-open'], newHome());
    expect(await (await fetch(`${bench.address}/api/share`)).json()).toMatchObject({ sharing: false, addresses: [] });
    if (address !== undefined) await expect(fetch(bench.address.replace('127.0.0.1', address))).rejects.toThrow();
    bench.child.kill('SIGTERM');
    await bench.ended;
  });

  it.each([
    ['a certificate without its key', ['--tls-cert', 'bench.crt'], '--tls-cert and --tls-key go together'],
    ['a certificate that is not there', ['--tls-cert', 'a.crt', '--tls-key', 'a.key'], 'a.crt could not be read'],
    [
      'a role that there is none of',
      ['--role', 'owner'],
      '--role was "owner"; expected one of keeper, recorder, reader',
    ],
    ['a name with a port', ['--host', 'bench.local:80'], '--host was "bench.local:80"'],
  ])('refuses %s in one sentence', (_what, args, sentence) => {
    const ran = ranToEnd(cli, ['bench', '--share', '--no-open', '--port', '0', ...args], newHome());
    expect(ran.code).toBe(2);
    expect(ran.stderr).toContain(sentence);
    expect(ran.stderr.trim().split('\n')).toHaveLength(1);
  });
});
