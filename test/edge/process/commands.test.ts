import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { Findings } from '../../../src/findings/schema.ts';
import { builtProgramIn, type Ran, ranToEnd } from '../../support/builtProgram.ts';
import { tempFolder } from '../../support/tempFolder.ts';

const TRIAL = 'fenwater-2-awg';
const folder = tempFolder();
let program = '';
let demo = '';
let homes = 0;

beforeAll(() => {
  program = builtProgramIn(folder);
  demo = join(program, 'demo');
}, 120_000);

const newHome = () => join(folder, `shelf ${homes++}`);
function cupel(args: readonly string[], home = newHome(), env: Record<string, string> = {}): Ran {
  return ranToEnd(join(program, 'dist', 'cli.js'), args, { home, cwd: folder, env });
}

/** Copies the demo and changes one of its files. */
function changedDemo(name: string, file: string, change: (text: string) => string): string {
  const copy = join(folder, name);
  cpSync(demo, copy, { recursive: true });
  writeFileSync(join(copy, file), change(readFileSync(join(copy, file), 'utf8')));
  return copy;
}

describe('help and version', () => {
  it('cupel --help lists every command with an example', () => {
    const { code, stdout, stderr } = cupel(['--help']);
    expect([code, stderr]).toEqual([0, '']);
    for (const command of ['bench', 'assay', 'import', 'export', 'verify', 'Examples:'])
      expect(stdout).toContain(command);
  });

  it.each(['bench', 'assay', 'import', 'export', 'verify'])('cupel %s --help shows an example', (command) => {
    const { code, stdout } = cupel([command, '--help']);
    expect(code).toBe(0);
    expect(stdout).toMatch(/Examples?:\n {2}cupel/);
  });

  it('names no default that says nothing', () => {
    for (const command of ['bench', 'assay', 'import', 'export']) {
      const { stdout } = cupel([command, '--help']);
      expect(stdout).not.toMatch(/default:\s*(false|\{|\[)/);
    }
    expect(cupel(['assay', '--help']).stdout).toMatch(/\(default:\s+0\.95\)/);
  });

  it('cupel --version is the version of package.json', () => {
    const { version } = JSON.parse(readFileSync(join(program, 'package.json'), 'utf8')) as { version: string };
    expect(cupel(['--version']).stdout).toBe(`${version}\n`);
  });

  it('the launcher finds the built program by itself', () => {
    const home = newHome();
    const ran = ranToEnd(join(program, 'bin', 'cupel.mjs'), ['--version'], { home, cwd: folder });
    expect(ran).toEqual({ code: 0, stdout: cupel(['--version']).stdout, stderr: '' });
  });
});

describe('wrong use', () => {
  it.each([
    [['nonsense'], "Unknown command 'nonsense'. See cupel --help.\n"],
    [['asay'], "Unknown command 'asay'. Did you mean assay? See cupel --help.\n"],
    [['assay'], "Missing required argument 'package'. See cupel assay --help.\n"],
    [['assay', 'x', '--jsn'], "Unknown option '--jsn'. Did you mean --json? See cupel assay --help.\n"],
    [['assay', 'x', '--level', '3'], '--level was "3"; expected a number from 0.5 to 0.9999, such as 0.95.\n'],
    [['assay', 'x', '--draws', 'lots'], '--draws was "lots"; expected auto, or a whole number up to 100000000.\n'],
    [
      ['assay', 'nowhere'],
      'No trial called "nowhere" is on the shelf, which is empty, and no folder or .zip of that name is here.\n',
    ],
    [['assay', 'no/where.zip'], 'no/where.zip is not there; name the folder or the .zip of a data package.\n'],
    [['export', 'x'], "Required option '-o, --output <path>' not specified. See cupel export --help.\n"],
    [['--port', 'high'], '--port was "high"; expected a whole number from 0 to 65535.\n'],
  ])('cupel %j ends with 2 and one sentence', (args, sentence) => {
    expect(cupel(args)).toEqual({ code: 2, stdout: '', stderr: sentence });
  });
});

describe('cupel assay', () => {
  it('--json prints findings that keep to their schema, and nothing else', () => {
    const { code, stdout, stderr } = cupel(['assay', demo, '--json', '--draws', '0']);
    expect([code, stderr]).toEqual([0, '']);
    const findings = Findings.parse(JSON.parse(stdout));
    expect(findings.trial).toBe(TRIAL);
    expect(findings.cables).toHaveLength(7);
  });

  it('prints the same from a folder, a .zip and the shelf', () => {
    const home = newHome();
    const zip = join(folder, 'same.zip');
    expect(cupel(['export', demo, '-o', zip, '--draws', '0'], home).code).toBe(0);
    expect(cupel(['import', zip], home).code).toBe(0);
    const ways = [demo, zip, TRIAL].map((named) => cupel(['assay', named, '--json', '--draws', '0'], home).stdout);
    expect(ways[0]).toContain('"cables"');
    expect(ways[1]).toBe(ways[0]);
    expect(ways[2]).toBe(ways[0]);
  });

  it('prints a table of at most 80 columns for people', () => {
    const { code, stdout } = cupel(['assay', demo, '--draws', '0']);
    expect(code).toBe(0);
    expect(stdout).toContain('Brackenfell');
    expect(Math.max(...stdout.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(80);
  });

  it('--units and --level change what is printed', () => {
    const [usual, gauge, sure] = [[], ['--units', 'awg'], ['--level', '0.99']].map(
      (more) => cupel(['assay', demo, '--draws', '0', ...more]).stdout,
    );
    expect(gauge).not.toBe(usual);
    expect(sure).not.toBe(usual);
  });

  it('refuses a package with a bad row: exit code 1, file, line and column on stderr, nothing on stdout', () => {
    const bad = changedDemo(
      'bad row',
      'readings.csv',
      (text) => `${text.trimEnd()}\nx99,no-such-piece,conductor_mass,12,g\n`,
    );
    const { code, stdout, stderr } = cupel(['assay', bad, '--json']);
    expect([code, stdout]).toEqual([1, '']);
    expect(stderr).toContain('readings.csv');
    expect(stderr).toMatch(/no-such-piece/);
    expect(stderr).toMatch(/was not taken: one thing in it was refused \(above\)\.\n$/);
    expect(stderr).not.toMatch(/\bat .*\.js:\d+/);
  });

  it.each([
    ['an empty folder', (place: string) => mkdirSync(place), ''],
    ['a .zip that is none', (place: string) => writeFileSync(`${place}.zip`, 'hello'), '.zip'],
    ['a file of another kind', (place: string) => writeFileSync(`${place}.ods`, 'hello'), '.ods'],
  ])('refuses %s in one sentence', (what, make, ending) => {
    const place = join(folder, what);
    make(place);
    const { code, stdout, stderr } = cupel(['assay', place + ending]);
    expect([code, stdout]).toEqual([1, '']);
    expect(stderr.length).toBeGreaterThan(20);
    expect(stderr).not.toMatch(/\bat .*\.js:\d+/);
  });

  it('keeps quiet when its reader has seen enough', () => {
    const line = `"${process.execPath}" "${join(program, 'dist', 'cli.js')}" assay "${demo}" --json --draws 0`;
    const ran = ranToEnd(
      '-e',
      [
        `const { spawn } = require('node:child_process');
       const child = spawn(process.execPath, ${JSON.stringify([join(program, 'dist', 'cli.js'), 'assay', demo, '--json', '--draws', '0'])});
       child.stdout.once('data', () => child.stdout.destroy());
       child.stderr.pipe(process.stderr);
       child.on('exit', (code) => console.log('ended with', code));`,
      ],
      { home: newHome() },
    );
    expect(ran, line).toEqual({ code: 0, stdout: 'ended with 0\n', stderr: '' });
  });
});

describe('cupel import', () => {
  it('keeps a package once', () => {
    const home = newHome();
    const first = cupel(['import', demo], home);
    expect(first.code).toBe(0);
    expect(first.stdout).toMatch(new RegExp(`^${TRIAL}: \\d+ rows kept\\.\n$`));
    const kept = /\d+ rows/.exec(first.stdout.slice(TRIAL.length))?.[0];
    expect(cupel(['import', demo], home).stdout).toBe(
      `${TRIAL}: 0 rows kept, ${kept?.split(' ')[0]} were there already.\n`,
    );
  });

  it('keeps nothing of a package with a bad row, or the good rows when asked', () => {
    const home = newHome();
    const bad = changedDemo(
      'bad reading',
      'readings.csv',
      (text) => `${text.trimEnd()}\nx98,also-no-such-piece,conductor_mass,12,g\n`,
    );
    expect(cupel(['import', bad], home)).toMatchObject({ code: 1, stdout: '' });
    expect(cupel(['assay', TRIAL], home).code).toBe(2);
    const kept = cupel(['import', bad, '--keep-good'], home);
    expect(kept.code).toBe(1);
    expect(kept.stdout).toMatch(/rows kept\.\n$/);
    expect(kept.stderr).toContain('also-no-such-piece');
    expect(cupel(['assay', TRIAL, '--draws', '0'], home).code).toBe(0);
  });

  it('says so when the shelf is damaged', () => {
    const home = newHome();
    mkdirSync(home);
    writeFileSync(join(home, 'shelf.sqlite'), 'no database '.repeat(500));
    const { code, stderr } = cupel(['import', demo], home);
    expect(code).toBe(1);
    expect(stderr).toMatch(/^The shelf in .* is damaged \(it is not a database\); nothing was changed\. .*\n$/);
  });
});

describe('a trial that is not there', () => {
  it('is told with those that are', () => {
    const home = newHome();
    cupel(['import', demo], home);
    for (const args of [
      ['assay', 'nosuch'],
      ['export', 'nosuch', '-o', 'x.zip'],
    ])
      expect(cupel(args, home)).toEqual({
        code: 2,
        stdout: '',
        stderr: `No trial called "nosuch" is on the shelf; it holds: ${TRIAL}.\n`,
      });
  });
});

describe('a place that cannot be written to', () => {
  it.runIf(process.platform === 'linux')('has no shelf made in it, and one sentence says so', () => {
    expect(cupel(['import', demo], '/proc/nope')).toEqual({
      code: 1,
      stdout: '',
      stderr:
        'The folder /proc/nope cannot be made: /proc takes no folders; name another place for the shelf in CUPEL_HOME.\n',
    });
  });

  it.each(['out.zip', 'out'])('gets no row of folders made for %s', (name) => {
    const { code, stdout, stderr } = cupel(['export', demo, '-o', join(folder, 'nope', 'deep', name)]);
    expect([code, stdout]).toEqual([1, '']);
    expect(stderr).toMatch(
      /^Nothing was written: the folder .*deep is not there; make it first, or name another place\.\n$/,
    );
    expect(existsSync(join(folder, 'nope'))).toBe(false);
  });
});

describe('cupel export and cupel verify', () => {
  /** A copy, to be spoilt, of what the demo is exported to in closed form. */
  function exportedCopy(name: string): string {
    const once = join(folder, 'exported once');
    if (!existsSync(once)) expect(cupel(['export', demo, '-o', once, '--draws', '0']).code).toBe(0);
    const copy = join(folder, name);
    cpSync(once, copy, { recursive: true });
    return copy;
  }

  it('export writes a package that verifies to the last digit', { timeout: 240_000 }, () => {
    const out = join(folder, 'for the club');
    expect(cupel(['export', demo, '-o', out])).toMatchObject({ code: 0, stderr: '' });
    expect(readdirSync(out)).toEqual(
      expect.arrayContaining(['cables.csv', 'datapackage.json', 'findings.json', 'readings.csv']),
    );
    const { code, stdout } = cupel(['verify', out]);
    expect([code, stdout.split('\n').at(-2)]).toEqual([0, 'Computed again: every digit of findings.json is the same.']);
  });

  it('export leaves what is there alone, unless told to replace it', () => {
    const out = join(folder, 'full');
    mkdirSync(out);
    writeFileSync(join(out, 'letter.txt'), 'keep me');
    const refused = cupel(['export', demo, '-o', out, '--draws', '0']);
    expect(refused).toMatchObject({ code: 1, stdout: '' });
    expect(refused.stderr).toContain('is not empty');
    expect(existsSync(join(out, 'cables.csv'))).toBe(false);
    expect(cupel(['export', demo, '-o', out, '--draws', '0', '--replace']).code).toBe(0);
    expect(readFileSync(join(out, 'letter.txt'), 'utf8')).toBe('keep me');
  });

  it('export writes the same bytes twice', () => {
    const [one, two] = ['one.zip', 'two.zip'].map((name) => join(folder, name)) as [string, string];
    for (const out of [one, two]) expect(cupel(['export', demo, '-o', out, '--draws', '0']).code).toBe(0);
    expect(readFileSync(one).equals(readFileSync(two))).toBe(true);
  });

  it('verify says which figure was changed', () => {
    const out = exportedCopy('doctored');
    const path = join(out, 'findings.json');
    const findings = JSON.parse(readFileSync(path, 'utf8')) as Findings;
    const area = findings.cables[1]?.conductor_area;
    if (!area) throw new Error('The demo has no second area to change.');
    area.value *= 1.001;
    writeFileSync(path, JSON.stringify(findings));
    const { code, stderr } = cupel(['verify', out]);
    expect(code).toBe(1);
    expect(stderr).toContain(
      `findings.json differs first at ${findings.cables[1]?.name}, conductor_area.value: published ${area.value}, computed `,
    );
  });

  it('verify says that the tables were changed', () => {
    const out = exportedCopy('changed later');
    const path = join(out, 'cables.csv');
    writeFileSync(path, readFileSync(path, 'utf8').replace('2 AWG', '4 AWG'));
    const { code, stdout, stderr } = cupel(['verify', out]);
    expect(code).toBe(1);
    expect(stderr).toMatch(
      /^The tables of .*changed later were changed after findings\.json was computed from them: rows of cables\.csv; otherwise than in a sealed part reads cables\.csv \S+\.\n/,
    );
    expect(stderr).toMatch(
      /Computed again from the tables as they are, the first difference is at .+, .+: published .+, computed .+\. Cables share tools, /,
    );
    expect(stderr, 'the sealed rows have not changed').toContain('Part 1, What is inside: rows and findings are those');
    expect(stdout).not.toContain('clean');
  });

  it('verify says when the package does not tell which table was changed', () => {
    const out = exportedCopy('changed and untold');
    const path = join(out, 'trial.csv');
    writeFileSync(path, readFileSync(path, 'utf8').replace(/Six 2 AWG/, 'Half a dozen 2 AWG'));
    writeFileSync(join(out, 'datapackage.json'), '{}');
    const { code, stderr } = cupel(['verify', out]);
    expect(code).toBe(1);
    expect(stderr).toMatch(/: the package does not say which table or row\.\n[\s\S]* at title: published "Six 2 AWG/);
  });

  it('verify says what it checked when there are no published figures', () => {
    const { code, stdout } = cupel(['verify', demo]);
    expect(code).toBe(0);
    expect(stdout).toMatch(/reads clean: \d+ rows, content [0-9a-f]{64}\./);
    expect(stdout).toContain('no findings.json');
    for (const part of ['Part 1, What is inside', 'Part 2, How they bend, last and carry'])
      expect(stdout).toContain(`${part}: rows and findings are those that were sealed`);
  });

  it('verify refuses findings that are none', () => {
    const out = exportedCopy('scribbled');
    writeFileSync(join(out, 'findings.json'), '{"engine": 7');
    expect(cupel(['verify', out])).toMatchObject({ code: 1 });
  });
});

describe('errors', () => {
  it('show where they come from only when asked', () => {
    const args = ['assay', join(folder, 'neither.ods')];
    writeFileSync(join(folder, 'neither.ods'), '');
    expect(cupel(args).stderr.split('\n')).toHaveLength(2);
    expect(cupel(args, newHome(), { CUPEL_DEBUG: '1' }).stderr).toMatch(/\n\s+at /);
  });
});

describe('photos', () => {
  it('come in with a package, go out with it as they were, and can be left out', () => {
    const photo = Buffer.from([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3]);
    const sha = createHash('sha256').update(photo).digest('hex');
    const copy = changedDemo('demo with a photo', 'trial.csv', (text) => text);
    mkdirSync(join(copy, 'photos'));
    writeFileSync(join(copy, 'photos', `${sha}.jpg`), photo);
    writeFileSync(join(copy, 'notes.csv'), `note,about,which,photo,shot\nn1,cable,quill,${sha},print\n`);
    const home = newHome();
    expect(cupel(['import', copy], home).stdout).toMatch(/rows and 1 photo kept\.\n$/);
    const out = join(folder, 'with the photo');
    expect(cupel(['export', TRIAL, '-o', out, '--draws', '0'], home).stdout).toMatch(/, 1 of them a photo\.\n$/);
    expect(readFileSync(join(out, 'photos', `${sha}.jpg`)).equals(photo)).toBe(true);
    const without = join(folder, 'without.zip');
    const said = cupel(['export', TRIAL, '-o', without, '--draws', '0', '--without-photos'], home);
    expect([said.code, said.stdout.includes('photo')]).toEqual([0, false]);
    expect(cupel(['import', without]).stderr).toBe('One photo that its rows name did not come along.\n');
    writeFileSync(join(copy, 'photos', `${sha}.jpg`), 'another picture');
    expect(cupel(['verify', copy])).toMatchObject({
      code: 1,
      stderr: expect.stringContaining('a photo that is not the one its name stands for'),
    });
  }, 60_000);
});
