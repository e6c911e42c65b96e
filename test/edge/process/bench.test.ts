import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import type { TrialLine } from '../../../src/edge/store/store.ts';
import type { Entry } from '../../../src/journal/entry.ts';
import { entryOf } from '../../contract/store.ts';
import { builtProgramIn, type RunOptions, ranToEnd, startedBench } from '../../support/builtProgram.ts';
import { tempFolder } from '../../support/tempFolder.ts';

const folder = tempFolder();
let cli = '';
let homes = 0;

beforeAll(() => {
  cli = join(builtProgramIn(folder), 'dist', 'cli.js');
}, 120_000);

const newOptions = (): RunOptions => ({ home: join(folder, `shelf ${homes++}`), cwd: folder });
const start = (options: RunOptions) => startedBench(cli, ['--port', '0', '--no-open'], options);

async function trialsAt(address: string): Promise<TrialLine[]> {
  return (await (await fetch(`${address}/api/trials`)).json()) as TrialLine[];
}

async function append(address: string, trial: string, entries: Entry[]): Promise<boolean> {
  const body = JSON.stringify({ trial, entries });
  const answer = await fetch(`${address}/api/entries`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body,
  });
  return answer.ok;
}

describe('the bench as a process', () => {
  it('serves the page, shows the invented trial on an empty shelf, and stops when asked', async () => {
    const bench = await start(newOptions());
    const page = await fetch(`${bench.address}/`);
    expect(page.status).toBe(200);
    expect(await page.text()).toContain('<title>');
    expect(await trialsAt(bench.address)).toMatchObject([
      { trial: 'fenwater-2-awg', cables: 7, openedOn: '2026-10-03' },
    ]);
    bench.child.kill('SIGTERM');
    if (process.platform !== 'win32') expect(await bench.ended).toBe(0);
  });

  it('hands out everything that the page names', async () => {
    const bench = await start(newOptions());
    const html = await (await fetch(`${bench.address}/trial/fenwater-2-awg/inside`)).text();
    const named = [...html.matchAll(/(?:src|href)="(\/[^"]+)"/g)].map((match) => match[1]);
    expect(named.length).toBeGreaterThan(0);
    for (const path of named) expect((await fetch(bench.address + path)).status, path).toBe(200);
    bench.child.kill('SIGTERM');
    await bench.ended;
  });

  it('keeps what it was given, and leaves a shelf that holds something as it is', async () => {
    const options = newOptions();
    const first = await start(options);
    expect(await append(first.address, 'fen', [entryOf(1)])).toBe(true);
    first.child.kill('SIGINT');
    await first.ended;
    const second = await start(options);
    expect((await trialsAt(second.address)).map((line) => line.trial).sort()).toEqual(['fen', 'fenwater-2-awg']);
    second.child.kill('SIGTERM');
    await second.ended;
  });

  it('refuses a port that is taken when it was asked for, in one sentence', async () => {
    const bench = await start(newOptions());
    const port = new URL(bench.address).port;
    const ran = ranToEnd(cli, ['bench', '--port', port, '--no-open'], newOptions());
    expect(ran).toMatchObject({ code: 2, stdout: '' });
    expect(ran.stderr).toBe(
      `Port ${port} is taken by another program; name another one with --port, or leave it out.\n`,
    );
    bench.child.kill('SIGTERM');
    await bench.ended;
  });

  it('loses nothing that it acknowledged when it is killed in the middle of its work', async () => {
    const options = newOptions();
    let acknowledged = 0;
    let sent = 0;
    for (const killAfter of [5, 23, 41]) {
      const bench = await start(options);
      const until = acknowledged + killAfter;
      const sending = (async () => {
        for (;;) {
          const n = sent++;
          if (!(await append(bench.address, 'fen', [entryOf(n)]))) throw new Error(`entry ${n} was refused`);
          acknowledged = n + 1;
          if (acknowledged === until) bench.child.kill('SIGKILL');
        }
      })();
      await expect(sending).rejects.toThrow();
      await bench.ended;
      sent = acknowledged;
    }
    const bench = await start(options);
    const { entries: kept } = (await (await fetch(`${bench.address}/api/entries?trial=fen`)).json()) as {
      entries: Entry[];
    };
    expect(acknowledged).toBeGreaterThanOrEqual(69);
    expect(kept.slice(0, acknowledged)).toEqual(Array.from({ length: acknowledged }, (_, n) => entryOf(n)));
    bench.child.kill('SIGTERM');
    await bench.ended;
  });
});
