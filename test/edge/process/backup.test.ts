import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Entry } from '../../../src/journal/entry.ts';
import { entryOf, idOf } from '../../contract/entries.ts';
import { builtProgramIn, type Ran, ranToEnd, startedBench } from '../../support/builtProgram.ts';
import { type ThrowawayPostgres, throwawayPostgres, whyNoPostgres } from '../../support/postgres.ts';
import { tempFolder } from '../../support/tempFolder.ts';

const folder = tempFolder();
const reason = whyNoPostgres();
let cli = '';
let homes = 0;

beforeAll(() => {
  cli = join(builtProgramIn(folder), 'dist', 'cli.js');
}, 120_000);

const newHome = () => join(folder, `shelf ${homes++}`);
const cupel = (home: string, args: readonly string[], env: Record<string, string> = {}): Ran =>
  ranToEnd(cli, args, { home, cwd: folder, env });
const start = (home: string, env: Record<string, string> = {}) =>
  startedBench(cli, ['--port', '0', '--no-open'], { home, cwd: folder, env });

async function append(address: string, n: number): Promise<void> {
  const body = JSON.stringify({ trial: 'fen', entries: [entryOf(n)] });
  const headers = { 'content-type': 'application/json' };
  const answer = await fetch(`${address}/api/entries`, { method: 'POST', headers, body });
  expect(answer.ok).toBe(true);
}

describe('backup and restore at the command line', () => {
  it.each(['backup', 'restore'])('cupel %s --help shows an example', (command) => {
    const { code, stdout } = cupel(newHome(), [command, '--help']);
    expect(code).toBe(0);
    expect(stdout).toMatch(/Examples?:\n {2}cupel/);
  });

  it('works while the bench runs, and brings a damaged shelf back', async () => {
    const home = newHome();
    const shelf = join(home, 'shelf.sqlite');
    const file = join(folder, 'shelf of today.cupel');
    const bench = await start(home);
    await append(bench.address, 1);
    const taken = cupel(home, ['backup', '-o', file]);
    expect(taken).toMatchObject({ code: 0, stderr: '' });
    expect(taken.stdout).toMatch(/^.*shelf of today\.cupel: 2 trials with \d+ entries\.\n$/);
    const again = cupel(home, ['backup', '-o', file]);
    expect(again).toMatchObject({ code: 1, stdout: '' });
    expect(again.stderr).toMatch(/is there already, and a backup is never written over; name another file\.\n$/);
    await append(bench.address, 2);
    const held = cupel(home, ['restore', file]);
    expect(held).toMatchObject({ code: 1, stdout: '' });
    expect(held.stderr).toMatch(/is in use: stop the bench/);
    await append(bench.address, 3);
    bench.child.kill('SIGTERM');
    await bench.ended;

    const bytes = readFileSync(shelf);
    bytes.fill(0x5a, 4096, 12_288);
    writeFileSync(shelf, bytes);
    const damaged = cupel(home, ['bench', '--no-open', '--port', '0']);
    expect(damaged).toMatchObject({ code: 1, stdout: '' });
    expect(damaged.stderr.trim().split('\n')).toHaveLength(1);
    expect(damaged.stderr).toContain(`put it back with: cupel restore "${file}"`);

    const restored = cupel(home, ['restore', file]);
    expect(restored).toMatchObject({ code: 0, stderr: '' });
    expect(restored.stdout).toMatch(
      /^The backup holds 2 trials with \d+ entries, as they were backed up\.\nAdded from the shelf that was there: 2 entries that the backup did not hold\.\nThe shelf holds 2 trials with \d+ entries\.\nWhat was there before is kept in .*until.*\n$/,
    );
    expect(readdirSync(home).filter((name) => name.includes('until'))).toHaveLength(1);
    const next = await start(home);
    const kept = (await (await fetch(`${next.address}/api/entries?trial=fen`)).json()) as { entries: Entry[] };
    expect(kept.entries.map(({ id }) => id)).toEqual([1, 2, 3].map(idOf));
    await append(next.address, 1);
    next.child.kill('SIGTERM');
    await next.ended;
  });

  it.each([
    ['a file that is not there', 'nowhere.cupel', /nowhere\.cupel is not there; name the file of a backup\.\n$/],
    [
      'what is no backup',
      'letter.cupel',
      /letter\.cupel cannot be put back: it is not a database\. Nothing was changed\.\n$/,
    ],
  ])('refuses %s in one sentence', (_, name, sentence) => {
    const home = newHome();
    writeFileSync(join(folder, 'letter.cupel'), 'Dear all,');
    const ran = cupel(home, ['restore', join(folder, name)]);
    expect(ran).toMatchObject({ code: 1, stdout: '' });
    expect(ran.stderr).toMatch(sentence);
    expect(existsSync(join(home, 'shelf.sqlite'))).toBe(false);
  });

  it('makes a shelf of what can still be read, and refuses an exact copy of nothing', async () => {
    const home = newHome();
    const bench = await start(home);
    await append(bench.address, 1);
    bench.child.kill('SIGKILL');
    await bench.ended;
    expect(cupel(home, ['restore', '--exactly']).code).toBe(2);
    const made = cupel(home, ['restore']);
    expect(made).toMatchObject({ code: 0, stderr: '' });
    expect(made.stdout).toMatch(
      /^Read from the shelf that was there: \d+ entries\.\nThe shelf holds 2 trials with \d+ entries\.\nWhat was there/,
    );
    expect(cupel(newHome(), ['restore'])).toMatchObject({ code: 1, stdout: '' });
  });

  it('wants a file to write', () => {
    expect(cupel(newHome(), ['backup']).code).toBe(2);
  });

  it('refuses a DATABASE_URL that names no PostgreSQL', () => {
    const ran = cupel(newHome(), ['backup', '-o', join(folder, 'x')], { DATABASE_URL: 'mysql://hush@here/x' });
    expect(ran).toMatchObject({ code: 1, stdout: '' });
    expect(ran.stderr).toMatch(/^DATABASE_URL names no PostgreSQL database .*\n$/);
    expect(ran.stderr).not.toContain('hush');
  });
});

describe.skipIf(reason !== null)(`with DATABASE_URL${reason === null ? '' : ` (${reason})`}`, () => {
  let server: ThrowawayPostgres;
  beforeAll(async () => {
    server = await throwawayPostgres();
  }, 60_000);
  afterAll(async () => {
    await server.remove();
  });

  it('the shelf is in the database, for every bench that names it', async () => {
    const env = { DATABASE_URL: server.url };
    const [one, two] = [await start(newHome(), env), await start(newHome(), env)];
    await append(one.address, 1);
    const trials = (await (await fetch(`${two.address}/api/trials`)).json()) as { trial: string }[];
    expect(trials.map((line) => line.trial).sort()).toEqual(['fen', 'fenwater-2-awg']);
    const file = join(folder, 'club.cupel');
    expect(cupel(newHome(), ['backup', '-o', file], env)).toMatchObject({ code: 0, stderr: '' });
    await append(two.address, 2);
    const restored = cupel(newHome(), ['restore', file], env);
    expect(restored).toMatchObject({ code: 0, stderr: '' });
    expect(restored.stdout).toMatch(/is kept in cupel_until_/);
    await append(one.address, 3);
    for (const bench of [one, two]) {
      bench.child.kill('SIGTERM');
      await bench.ended;
    }
  });
});
