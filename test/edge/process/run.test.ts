import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { RUN_FIELDS } from '../../../docs/make/runFields.ts';
import { builtProgramIn, type Ran, ranToEnd } from '../../support/builtProgram.ts';
import { tempFolder } from '../../support/tempFolder.ts';

const folder = tempFolder();
let program = '';
let demo = '';

beforeAll(() => {
  program = builtProgramIn(folder);
  demo = join(program, 'demo');
}, 120_000);

const cupel = (...args: readonly string[]): Ran =>
  ranToEnd(join(program, 'dist', 'cli.js'), args, { home: join(folder, 'shelf'), cwd: folder, env: {} });
const run = (...args: readonly string[]) => cupel('run', demo, '--length', '4m', ...args);

/** Paths of all fields of a JSON value; a figure with its interval is one. */
function fieldsOf(value: unknown, at = '', found = new Set<string>()): Set<string> {
  if (Array.isArray(value)) for (const item of value) fieldsOf(item, `${at}[]`, found);
  else if (typeof value === 'object' && value !== null && !('interval' in value))
    for (const [name, child] of Object.entries(value)) {
      const path = at === '' ? name : `${at}.${name}`;
      found.add(path);
      fieldsOf(child, path, found);
    }
  return found;
}

describe('cupel run', () => {
  it('prints a row for each cable, an estimate, and cautions', () => {
    const { code, stdout, stderr } = run('--load', '90A');
    expect([code, stderr]).toEqual([0, '']);
    for (const word of [
      'Brackenfell',
      'Saltmarsh',
      'Nominal sizes',
      '2/0 AWG',
      'An estimate',
      'Clad aluminium needs lugs',
    ])
      expect(stdout).toContain(word);
    expect(stdout).not.toContain('House wire');
  });

  it('--json holds the same, of the cables that were asked for', () => {
    const { code, stdout } = run('--load', '600W', '--peak', '900W', '--cable', 'quill', '--sizes', 'none', '--json');
    const json = JSON.parse(stdout);
    expect(code).toBe(0);
    expect(json.cables.map((c: { cable: string }) => c.cable)).toEqual(['quill']);
    expect(json.cables[0].resting.peak_A.value).toBeGreaterThan(900 / 12.6);
    expect(json.curves).toHaveLength(1);
  });

  it('--overload says how long each lasts, in the table and in JSON', () => {
    const asked = ['--load', '90A', '--cable', 'quill', '--sizes', 'none', '--overload', '250A'];
    expect(run(...asked).stdout).toMatch(/Quill comes to its 60 °C after [\d.]+ (s|min) at 250 A\./);
    const { overload } = JSON.parse(run(...asked, '--json').stdout);
    expect(overload).toEqual([{ cable: 'quill', current_A: 250, seconds_to_rating: expect.any(Number) }]);
  });

  it('prints no field that the documents do not explain, and all that they do', () => {
    const profile = join(folder, 'all.csv');
    writeFileSync(profile, '0,20\n60,90\n');
    const options = ['--load', '90A', '--profile', profile, '--overload', '250A', '--json'];
    const printed = fieldsOf(JSON.parse(run(...options).stdout));
    // The same fields again, told once.
    const once = [...printed].filter((field) => !/^cables\[\]\.(charging|fuse_each)\./.test(field));
    const explained = RUN_FIELDS.map(([field]) => field);
    expect(once.filter((field) => !explained.includes(field))).toEqual([]);
    // Every cable of the invented trial can be run.
    const absent = explained.filter((field) => !printed.has(field) && !field.startsWith('left_out[].'));
    expect(absent).toEqual([]);
  });

  it('runs a profile through it', () => {
    const profile = join(folder, 'winch.csv');
    writeFileSync(profile, 's,A\n0,20\n60,220\n90,20\n600,20\n');
    const { stdout } = run('--load', '20A', '--cable', 'quill', '--profile', profile);
    expect(stdout).toMatch(/Under the profile Quill.* comes to \d+ °C after \d+ s/);
    writeFileSync(profile, '0,20\n60,oops\n');
    expect(run('--load', '20A', '--profile', profile)).toMatchObject({ code: 1 });
  });

  it.each([
    [['--load', '90A', '--supply', '72'], 1, /has 72 V at rest; expected is direct current of at most 60 V/],
    [['--load', '90A', '--supply', '230VAC'], 1, /mains/],
    [['--load', '0A'], 1, /load is 0/],
    [['--load', '120A', '--overload', '100A'], 1, /^The overload of 100 A lies below the 120 A that the load itself/],
    [['--load', '90'], 2, /--load was "90"/],
    [['--load', '90A', '--cable', 'nobody'], 2, /No cable called "nobody"/],
    [[], 2, /--load/],
  ] as const)('%j ends with %i and one sentence', (args, code, words) => {
    const ran = run(...args);
    expect([ran.code, ran.stdout]).toEqual([code, '']);
    expect(ran.stderr).toMatch(words);
    expect(ran.stderr.trim().split('\n')).toHaveLength(1);
  });

  it('--help shows an example', () => {
    expect(cupel('run', '--help').stdout).toMatch(/Examples?:\n {2}cupel run/);
  });
});
