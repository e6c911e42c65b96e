import { describe, expect, it } from 'vitest';
import { downloadAddresses, machinePlaces, tooLong, wordsSaid, wordsWritten } from './support/houseRules.ts';
import { projectTextFiles } from './support/trackedFiles.ts';

const files = projectTextFiles();
const code = files.filter((file) => /\.(ts|tsx|mjs|css|py)$/.test(file.path));
const program = code.filter((file) => /^src\/.*\.tsx?$/.test(file.path));
const writing = files.filter((file) => /^(docs\/|README|demo\/).*\.?(md|csv|json)$/.test(file.path));

describe('the house', () => {
  it('has files to look at', () => {
    expect(program.length).toBeGreaterThan(5);
  });

  it('keeps every file short', () => {
    expect(code.flatMap(tooLong)).toEqual([]);
  });

  it('names no folder of one machine and no registry', () => {
    expect(files.flatMap(machinePlaces)).toEqual([]);
  });

  it('records no download address in the lockfile', () => {
    const lockfile = files.find((file) => file.path === 'package-lock.json');
    expect(lockfile === undefined ? [] : downloadAddresses(lockfile.text)).toEqual([]);
  });

  it('never lets the program promise, accuse or crown', () => {
    expect(program.flatMap(wordsSaid)).toEqual([]);
  });

  it('writes the same way in the docs and the demo', () => {
    expect(writing.flatMap(wordsWritten)).toEqual([]);
  });
});

describe('the house rules can be broken', () => {
  const at = (text: string, path = 'src/report/a.ts') => ({ path, text });
  const machine = ['', 'tmp', 'x'].join('/');

  it('by a long file', () => {
    expect(tooLong(at('x\n'.repeat(400)))).toEqual([]);
    expect(tooLong(at('x\n'.repeat(401)))).toHaveLength(1);
  });

  it('by a folder of one machine, but not by a word that looks like one', () => {
    expect(machinePlaces(at(`read ${machine}`))).toHaveLength(1);
    expect(machinePlaces(at('frame/work/x and node:os tmpdir()'))).toEqual([]);
  });

  it('by a download address', () => {
    expect(downloadAddresses('{\n  "resolved": "https://example.org/x.tgz"\n}')).toHaveLength(1);
  });

  it.each([`const a = 'This cable is safe.';`, `const a = \`\${x} was sold as copper\`;`, `const a = 'fake copper';`])(
    'by words: %s',
    (text) => {
      expect(wordsSaid(at(text))).toHaveLength(1);
    },
  );

  it('by a word between tags', () => {
    expect(wordsSaid(at('const a = <p>The verdict</p>;', 'src/edge/page/a.tsx'))).toHaveLength(1);
  });

  it('but not by a name or a comment', () => {
    expect(
      wordsSaid(at(`// safe here\nconst safe = schema.safeParse('unsafely named'); export type A = 'fake';`)),
    ).toEqual([]);
  });

  it('by a word in the docs', () => {
    expect(wordsWritten(at('Our verdict:', 'docs/a.md'))).toHaveLength(1);
    expect(wordsWritten(at('Cupel never says that a cable is safe.', 'docs/a.md'))).toEqual([]);
  });
});
