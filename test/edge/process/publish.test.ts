/** From a shelf to what the world sees, as a person types it: seal, export, verify, report, card. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PNG } from 'pngjs';
import { beforeAll, describe, expect, it } from 'vitest';
import { builtProgramIn, type Ran, ranToEnd } from '../../support/builtProgram.ts';
import { PROJECT_ROOT } from '../../support/sourceFiles.ts';
import { tempFolder } from '../../support/tempFolder.ts';

const folder = tempFolder();
const demo = join(PROJECT_ROOT, 'demo');
const home = join(folder, 'shelf');
let cli = '';
let trial = '';
const cupel = (...args: string[]): Ran => ranToEnd(cli, args, { home, cwd: folder });
const done = (ran: Ran): string => {
  expect(ran.stderr).toBe('');
  expect(ran.code).toBe(0);
  return ran.stdout;
};

beforeAll(() => {
  cli = join(builtProgramIn(folder), 'dist', 'cli.js');
  trial = /^(\S+): \d+ rows/.exec(cupel('import', demo).stdout)![1]!;
}, 240_000);

describe('a trial published in parts', () => {
  it('is sealed, corrected, exported and proved', () => {
    expect(done(cupel('seal', trial, '--part', '3', '--places', 'inside', '--title', 'Inside, once more'))).toMatch(
      /^Part 3 of \S+ is sealed: content [0-9a-f]{64}\.\n(It holds the same rows and findings as part 1\.\n)?$/,
    );
    const again = cupel('seal', trial, '--part', '3', '--places', 'bend');
    expect(again).toMatchObject({ code: 1, stdout: '' });
    expect(again.stderr).toContain('sealed already');
    expect(cupel('seal', trial, '--part', '4', '--places', 'nowhere')).toMatchObject({ code: 2 });

    for (const name of ['', ' ', '../../x/<b>', 'x'.repeat(200)]) {
      const nameless = cupel('seal', trial, '--part', name, '--places', 'inside');
      expect(nameless).toMatchObject({ code: 2, stdout: '' });
      expect(nameless.stderr).toContain('expected a name of 1 to 40 characters');
    }

    // A later correction, brought in as a package of one more row.
    const correction = join(folder, 'correction');
    mkdirSync(correction);
    for (const file of ['trial.csv', 'cables.csv', 'specimens.csv', 'instruments.csv'])
      writeFileSync(join(correction, file), readFileSync(join(demo, file)));
    writeFileSync(join(correction, 'struck.csv'), 'reading,why\nr001,clips were loose\n');
    const [head, first] = readFileSync(join(demo, 'readings.csv'), 'utf8').split('\n');
    writeFileSync(join(correction, 'readings.csv'), `${head}\n${first}\n`);
    done(cupel('import', correction));

    done(cupel('export', trial, '-o', 'out', '--draws', '0'));
    expect(readdirSync(join(folder, 'out'))).toContain('sealed');
    const sealed = readdirSync(join(folder, 'out', 'sealed', '3'));
    expect(sealed).toContain('findings.json');
    expect(sealed, 'nothing of other places').not.toContain('judgements.csv');
    const proved = done(cupel('verify', 'out'));
    expect(proved).toContain('Part 3, Inside, once more: rows and findings are those that were sealed, every digit');
    expect(proved).toContain('every digit of findings.json is the same');

    done(cupel('export', 'out', '-o', 'again.zip', '--draws', '0'));
    expect(done(cupel('verify', 'again.zip'))).toContain('Part 3, Inside, once more: rows and findings');

    const readings = join(folder, 'out', 'sealed', '3', 'readings.csv');
    writeFileSync(readings, readFileSync(readings, 'utf8').replace(/,0\.971,/, ',0.917,'));
    const spoilt = cupel('verify', 'out');
    expect(spoilt.code).toBe(1);
    expect(spoilt.stderr).toContain('Part 3, Inside, once more: its rows are not those that were sealed.');
  }, 240_000);

  it('has a report of the part, with what changed since, and one of the whole', () => {
    done(cupel('report', trial, '-o', 'part.html', '--part', '3'));
    const part = readFileSync(join(folder, 'part.html'), 'utf8');
    expect(part).toContain('Part 3: Inside, once more');
    expect(part).toContain('Changed since part 3');
    expect(part).toContain('clips were loose');
    expect(part).not.toContain('How they bend');
    done(cupel('report', trial, '-o', 'whole.pdf', '--paper', 'letter'));
    expect(readFileSync(join(folder, 'whole.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
    expect(cupel('report', trial, '-o', 'whole.pdf').stderr).toContain('there already');
    expect(cupel('report', trial, '-o', 'x.doc')).toMatchObject({ code: 2 });
    expect(cupel('report', trial, '-o', 'x.html', '--part', '7')).toMatchObject({ code: 1 });
  });

  it('has cards: one, and all of them', () => {
    done(cupel('card', trial, '--cable', 'quill', '--size', '1080x1080', '--transparent', '-o', 'quill.png'));
    const png = PNG.sync.read(readFileSync(join(folder, 'quill.png')));
    expect([png.width, png.height]).toEqual([1080, 1080]);
    expect(png.data[3]).toBe(0);
    done(cupel('card', trial, '--kind', 'two', '--cable', 'quill', '--cable', 'tollgate', '-o', 'two.svg'));
    expect(readFileSync(join(folder, 'two.svg'), 'utf8')).toMatch(/^<svg /);
    mkdirSync(join(folder, 'cards'));
    expect(done(cupel('card', trial, '--all', '-o', 'cards'))).toMatch(/^\d+ cards and description\.txt/);
    const cards = readdirSync(join(folder, 'cards'));
    expect(cards).toContain('field-inside.png');
    expect(cards).toContain('description.txt');
    const stranger = cupel('card', trial, '--cable', 'zebra', '-o', 'z.png');
    expect(stranger).toMatchObject({ code: 2, stdout: '' });
    expect(stranger.stderr).toContain('There is no cable "zebra"');
  });
});
