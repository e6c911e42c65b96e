/** `cupel shelf` as somebody runs it who unpacked the program. */
import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { ShelfCable } from '../../../src/findings/shapes/shelf.ts';
import { builtProgramIn, ranToEnd } from '../../support/builtProgram.ts';
import { tempFolder } from '../../support/tempFolder.ts';

const folder = tempFolder();
const home = join(folder, 'home');
let program = '';
const cupel = (args: readonly string[], at = home) =>
  ranToEnd(join(program, 'dist', 'cli.js'), args, { home: at, cwd: folder });

beforeAll(() => {
  program = builtProgramIn(folder);
  expect(cupel(['import', join(program, 'demo')]).code).toBe(0);
}, 120_000);

describe('cupel shelf', () => {
  it('lists every cable, and remembers what it computed for its owner alone', () => {
    const { code, stdout, stderr } = cupel(['shelf']);
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(/^7 cables on the shelf\.\n\nCable/);
    expect(stdout).toContain('Brackenfell Boot Run');
    const kept = join(home, 'shelf-lines.jsonl');
    expect(existsSync(kept)).toBe(true);
    if (process.platform !== 'win32') expect(statSync(kept).mode & 0o077).toBe(0);
    expect(cupel(['shelf']).stdout).toBe(stdout);
  });

  it('finds by words, metal and price, in the order asked for, as lines of the shape that is published', () => {
    const { stdout } = cupel(['shelf', '--find', '2 awg', '--metal', 'copper', '--sort', '-area', '--json']);
    const lines = (JSON.parse(stdout) as unknown[]).map((line) => ShelfCable.parse(line));
    expect(lines.length).toBeGreaterThan(1);
    const areas = lines.map((line) => line.conductor_area!.value);
    expect(areas).toEqual([...areas].sort((a, b) => b - a));
    expect(cupel(['shelf', '--find', 'no such cable']).stdout).toBe('0 of 7 cables on the shelf.\n');
  });

  it('says what an empty shelf is, and refuses what it does not know', () => {
    expect(cupel(['shelf'], join(folder, 'empty'))).toMatchObject({
      code: 0,
      stdout: 'No cable is on the shelf yet.\n',
    });
    expect(cupel(['shelf', '--sort', 'beauty'])).toMatchObject({ code: 2, stdout: '' });
    expect(cupel(['shelf', '--most', 'cheap'])).toEqual({
      code: 2,
      stdout: '',
      stderr: '--most was "cheap"; expected a price a metre, such as 12.50.\n',
    });
  });
});
