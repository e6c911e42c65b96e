import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';
import { demoFindings } from '../docs/make/demoFindings.ts';
import { strayWords } from '../docs/make/findingsFields.ts';
import { fillBlocks } from '../docs/make/markedBlocks.ts';
import { madePages } from '../docs/make/pages.ts';
import { tablesOf } from '../docs/make/simulatedFigures.ts';
import { Findings } from '../src/findings/schema.ts';
import { QUANTITY_NAMES } from '../src/journal/quantities.ts';
import { TABLES } from '../src/journal/tables.ts';
import { PROJECT_ROOT } from './support/sourceFiles.ts';
import { projectTextFiles } from './support/trackedFiles.ts';

const read = (path: string): string => readFileSync(join(PROJECT_ROOT, path), 'utf8');
const pages = projectTextFiles().filter((file) => file.path.endsWith('.md'));

/** Code between fences and ticks is no text: a link in it is none. */
const withoutCode = (page: string): string => page.replace(/```[\s\S]*?```/g, '').replace(/`[^`\n]*`/g, '');

/** The targets of the links and pictures of a page. */
function linksOf(page: string): string[] {
  return [...withoutCode(page).matchAll(/\]\(([^)\s]+)\)|src="([^"]+)"/g)].map((match) => (match[1] ?? match[2])!);
}

/** The names that a page can be linked to by: its headings as the usual renderers name them, and anchors set by hand. */
function anchorsOf(page: string): string[] {
  const headings = [...page.matchAll(/^#+ (.+)$/gm)].map((match) =>
    match[1]!
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\s_-]/gu, '')
      .trim()
      .replace(/\s/g, '-'),
  );
  return [...headings, ...[...page.matchAll(/<a id="([^"]+)">/g)].map((match) => match[1]!)];
}

function brokenLinks(path: string, text: string): string[] {
  return linksOf(text).flatMap((link) => {
    if (/^[a-z]+:/.test(link)) return [];
    const [file = '', anchor] = link.split('#');
    const target = file === '' ? path : normalize(join(dirname(path), file)).replaceAll('\\', '/');
    if (!existsSync(join(PROJECT_ROOT, target))) return [`${path}: ${link} is not there`];
    const found = anchor === undefined || anchorsOf(target === path ? text : read(target)).includes(anchor);
    return found ? [] : [`${path}: ${link} has no such heading`];
  });
}

describe('the documents', () => {
  it('are there', () => {
    const paths = pages.map((page) => page.path);
    for (const path of ['README.md', 'CHANGELOG.md', 'CONTRIBUTING.md', 'docs/method.md', 'docs/first-trial.md'])
      expect(paths).toContain(path);
  });

  it.each(pages.map((page) => [page.path, page.text]))('%s links to what is there', (path, text) => {
    expect(brokenLinks(path, text)).toEqual([]);
  });

  it('find a broken link', () => {
    const text = '# A b\n[a](nowhere.md) [b](#c) [c](#a-b) `[d](nowhere.md)` [e](https://example.org/x)';
    expect(brokenLinks('README.md', text)).toEqual([
      'README.md: nowhere.md is not there',
      'README.md: #c has no such heading',
    ]);
  });
});

describe('what the program says of itself', () => {
  const made = [...madePages(read)];

  it.each(made)('%s is current (node scripts/docs.mjs writes it anew)', (path, text) => {
    expect(read(path)).toBe(text);
  });

  it('names every file, column and quantity of the package', () => {
    const page = read('docs/file-format.md');
    for (const table of TABLES) {
      const [, after = ''] = page.split(`### ${table.file}\n`);
      const [section] = after.split('\n#');
      for (const column of table.columns)
        expect(section, `${table.file}, ${column.name}`).toContain(`\`${column.name}\``);
    }
    for (const name of QUANTITY_NAMES) expect(page).toContain(`| \`${name}\` |`);
  });

  it('explains every field of the findings, and none that is not there', () => {
    expect(strayWords()).toEqual([]);
  });

  it('describes findings as they really are: nothing more, nothing less', () => {
    const findings = JSON.parse(JSON.stringify(demoFindings()));
    expect(Findings.parse(findings)).toEqual(findings);
  });
});

describe('a page with made parts', () => {
  const makers = { a: () => 'new', b: () => 'x' };

  it('keeps what people wrote and replaces what stands between the marks', () => {
    const page = 'before\n<!-- made: a -->\nold\nolder\n<!-- end -->\nafter\n';
    const filled = 'before\n<!-- made: a -->\nnew\n<!-- end -->\nafter\n';
    expect(fillBlocks(page, makers)).toBe(filled);
    expect(fillBlocks(filled, makers)).toBe(filled);
  });

  it('must not name a block that nothing makes, nor leave one open', () => {
    expect(() => fillBlocks('<!-- made: c -->\n<!-- end -->', makers)).toThrow(/"c"/);
    expect(() => fillBlocks('<!-- made: a -->\n', makers)).toThrow(/1 blocks begin and 0 end/);
    expect(() => fillBlocks('<!-- made: a -->\n<!-- made: b -->\n<!-- end -->', makers)).toThrow(/2 blocks begin/);
  });

  it('reads tables under their headings', () => {
    const page = '## A\n\n| x | y |\n| --- | --- |\n| 1 | 2 |\n| 3 | 4 |\n\n## B\n\n| z |\n| --- |\n| 5 |\n';
    expect(tablesOf(page)).toEqual([
      {
        heading: 'A',
        rows: [
          { x: '1', y: '2' },
          { x: '3', y: '4' },
        ],
      },
      { heading: 'B', rows: [{ z: '5' }] },
    ]);
  });
});
