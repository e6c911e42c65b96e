import { existsSync } from 'node:fs';
import { join, posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { impurities, MAY_IMPORT, roomBreaches } from './support/rooms.ts';
import { PROJECT_ROOT, sourceFilesUnder } from './support/sourceFiles.ts';
import { importedNames } from './support/syntax.ts';

const files = sourceFilesUnder('src', ['.ts', '.tsx']);

describe('the rooms of src/', () => {
  it('import only from rooms above them, types included', () => {
    expect(files.length).toBeGreaterThan(5);
    expect(files.flatMap((file) => roomBreaches(file.path, file.text))).toEqual([]);
  });

  it('are pure down to report/: no clock, disk, network, screen or ambient chance', () => {
    expect(files.flatMap((file) => impurities(file.path, file.text))).toEqual([]);
  });

  it('name every import of ours with its ending, and the file is there', () => {
    const wrong = files.flatMap((file) =>
      importedNames(file.path, file.text)
        .filter((name) => name.startsWith('.'))
        .filter(
          (name) => !existsSync(join(PROJECT_ROOT, posix.join(posix.dirname(file.path), name.split('?')[0] ?? ''))),
        )
        .map((name) => `${file.path}: ${name} is not a file`),
    );
    expect(wrong).toEqual([]);
  });
});

describe('the checker itself finds', () => {
  const breaches: [string, string, string][] = [
    ['an arrow upwards', 'src/units/a.ts', `import { fold } from '../trial/fold.ts';`],
    ['an arrow upwards by type only', 'src/journal/a.ts', `import type { Trial } from '../trial/trial.ts';`],
    ['a type written as an import', 'src/trial/a.ts', `type F = import('../findings/schema.ts').Findings;`],
    ['an export-from', 'src/methods/assay/a.ts', `export * from '../../findings/schema.ts';`],
    ['a dynamic import', 'src/findings/a.ts', `const late = await import('../report/theme.ts');`],
    ['methods that know a trial', 'src/methods/assay/a.ts', `import type { Trial } from '../../trial/trial.ts';`],
    ['methods that know the journal', 'src/methods/metal/a.ts', `import type { Entry } from '../../journal/entry.ts';`],
    ['numerics that know a unit', 'src/numerics/a.ts', `import { ZERO_CELSIUS } from '../units/dimension.ts';`],
    ['an import from outside src', 'src/report/a.ts', `import x from '../../test/x.ts';`],
    ['a package of the edge', 'src/report/a.ts', `import { h } from 'preact';`],
    ['a part of a package of the edge', 'src/report/a.ts', `import { serve } from '@hono/node-server';`],
    ['Node.js above the edge', 'src/report/a.ts', `import { readFileSync } from 'node:fs';`],
    ['Node.js in the page', 'src/edge/page/a.ts', `import { join } from 'node:path';`],
    ['a disk in the page', 'src/edge/page/a.ts', `import { open } from '../store/sqlite/open.ts';`],
    ['a room nobody knows', 'src/cellar/a.ts', `export const x = 1;`],
  ];
  it.each(breaches)('%s', (_what, path, text) => {
    expect(roomBreaches(path, text)).toHaveLength(1);
  });

  const ambient = [
    'export const t = Date.now();',
    'export const t = new Date();',
    'export const t = Date();',
    'export const x = Math.random();',
    'export const r = fetch("x");',
    'export const e = process.env;',
    'console.log(1);',
    'export const t = performance.now();',
    'export const id = crypto.randomUUID();',
    'export const id = globalThis.crypto;',
    'setTimeout(() => {}, 1);',
    'export const u = import.meta.url;',
  ];
  it.each(ambient)('ambient use: %s', (text) => {
    expect(impurities('src/report/a.ts', text)).toHaveLength(1);
    expect(impurities('src/edge/cli/a.ts', text)).toEqual([]);
  });

  it('nothing where nothing is wrong', () => {
    const text = `
      import type { Entry } from '../journal/entry.ts';
      import { scaleLinear } from 'd3-scale';
      // process.env and Date.now() in a comment are only words
      export const said = (entry: Entry, now: Date) => 'console.log' + new Date(entry.at).getTime() + now.process;
    `;
    expect(roomBreaches('src/report/a.ts', text)).toEqual([]);
    expect(impurities('src/report/a.ts', text)).toEqual([]);
  });

  it('a rule for every room, and no room allowed to import one that may import it', () => {
    for (const [room, allowed] of Object.entries(MAY_IMPORT)) {
      for (const other of allowed) expect(MAY_IMPORT[other], `${room} ↔ ${other}`).not.toContain(room);
    }
  });
});
