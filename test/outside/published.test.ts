/** What is published, read by programs that know nothing of us: PDF readers, an HTML checker, a JSON-LD parser, a profile, a PNG decoder. */
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Ajv from 'ajv';
import { HtmlValidate } from 'html-validate';
import jsonld from 'jsonld';
import { PNG } from 'pngjs';
import { beforeAll, describe, expect, it } from 'vitest';
import { embeddedFonts } from '../../src/edge/publish/fonts.ts';
import { reportPdf } from '../../src/edge/publish/pdf.ts';
import { cardPng } from '../../src/edge/publish/png.ts';
import { writePackage } from '../../src/report/package/writePackage.ts';
import { CARD_SIZES } from '../../src/report/publish/cards/canvas.ts';
import { type CardWish, cardSvg } from '../../src/report/publish/cards/card.ts';
import { cellText } from '../../src/report/publish/document/blocks.ts';
import { figureRows } from '../../src/report/publish/document/cables.ts';
import { reportDocument } from '../../src/report/publish/document/reportDocument.ts';
import { reportHtml } from '../../src/report/publish/html/reportHtml.ts';
import { reportTypst } from '../../src/report/publish/print/reportTypst.ts';
import { DEMO_DOCUMENTS } from '../gallery/demoReports.ts';
import { demoPublished, demoUnderNames } from '../support/demoReport.ts';
import { HOSTILE_NAMES } from '../support/hostile.ts';
import { tempFolder } from '../support/tempFolder.ts';

const demo = demoPublished();
/** Six of them at a time: the trial has six cables. */
const { typst, quotes, ...first } = HOSTILE_NAMES;
const hostile = demoUnderNames(Object.values(first));
const quoted = demoUnderNames([typst, quotes]);
const document = reportDocument(demo);
const rude = reportDocument(hostile);
const MADE = Date.UTC(2026, 11, 1) / 1000;

type Tools = Readonly<Record<'pdftotext' | 'qpdf', string | null>>;
const parts = new URL('../../scripts/parts/pdfTools.mjs', import.meta.url).href;
const { findOrInstallPdfTools } = (await import(parts)) as { findOrInstallPdfTools: () => Tools };
const { pdftotext, qpdf } = findOrInstallPdfTools();
const missing = (tool: string | null, name: string) =>
  tool === null ? ` (skipped: no ${name} here, and it may not be installed unasked)` : '';

/** Text as a reader pulls it out: lines and columns run together, no-break spaces as plain ones. */
const flat = (text: string): string => text.replace(/[\s\u00a0\u202f\u200b]+/g, '');

/** Words, figures and signs as they stand between blanks. */
const wordsOf = (text: string): Set<string> =>
  new Set(text.split(/[\s\u00a0\u202f|]+/).filter((word) => /[\p{L}\p{N}]/u.test(word)));

describe('the PDF', () => {
  const folder = tempFolder();
  const file = (name: string) => join(folder, name);
  beforeAll(() => {
    writeFileSync(file('a4.pdf'), reportPdf(reportTypst(document, 'a4'), MADE));
    writeFileSync(file('letter.pdf'), reportPdf(reportTypst(document, 'letter'), MADE));
    writeFileSync(file('rude.pdf'), reportPdf(reportTypst(rude, 'a4'), MADE));
    writeFileSync(file('quoted.pdf'), reportPdf(reportTypst(reportDocument(quoted), 'a4'), MADE));
  });
  const textOf = (name: string) => spawnSync(pdftotext!, [file(name), '-'], { encoding: 'utf8' }).stdout;

  it.skipIf(pdftotext === null)(
    `gives every figure of the findings to pdftotext${missing(pdftotext, 'pdftotext')}`,
    () => {
      const text = flat(textOf('a4.pdf'));
      let looked = 0;
      for (const cable of demo.findings.cables.filter((c) => c.role !== 'control'))
        for (const [what, cell, interval] of figureRows(cable, {})) {
          looked++;
          expect(text, `${cable.name}, ${what}`).toContain(flat(cellText(cell)));
          expect(text, `${cable.name}, interval of ${what}`).toContain(flat(interval));
        }
      expect(looked).toBeGreaterThan(80);
      for (const c of demo.findings.decide!.cables) expect(text).toContain(flat(c.to_come_first_text));
      const judged = demo.findings.cables.filter((c) => c.role !== 'control');
      for (const claim of judged.flatMap((c) => c.claims)) expect(text).toContain(flat(claim.asks));
      expect(text).toContain(demo.findings.engine.content);
    },
  );

  it.skipIf(pdftotext === null).each(Object.keys(DEMO_DOCUMENTS))(
    `holds every word of the gallery’s %s, on both papers${missing(pdftotext, 'pdftotext')}`,
    (name) => {
      const committed = readFileSync(new URL(`../gallery/${name}`, import.meta.url), 'utf8');
      // A page lists its sections at the top, a PDF beside it; what a drawing says to a screen reader is not set as text.
      const wanted = wordsOf(committed.replace(/^\(drawing\).*$/gm, ''));
      for (const paper of ['a4', 'letter'] as const) {
        writeFileSync(file('gallery.pdf'), reportPdf(reportTypst(DEMO_DOCUMENTS[name]!(), paper), MADE));
        const text = flat(textOf('gallery.pdf'));
        const lost = [...wanted].filter((word) => !text.includes(word));
        expect(lost, `${paper}: ${lost.slice(0, 8).join(' ')}`).toEqual([]);
      }
    },
  );

  it.skipIf(pdftotext === null)(`shows hostile names as text${missing(pdftotext, 'pdftotext')}`, () => {
    const text = flat(textOf('rude.pdf'));
    for (const name of ['markup', 'formula', 'long', 'oneWord'] as const)
      expect(text, name).toContain(flat(HOSTILE_NAMES[name]));
    expect(flat(textOf('quoted.pdf'))).toContain(flat(typst));
    expect(flat(textOf('quoted.pdf'))).toContain(flat(quotes));
  });

  it.skipIf(qpdf === null)(`is sound to qpdf${missing(qpdf, 'qpdf')}`, () => {
    for (const name of ['a4.pdf', 'letter.pdf', 'rude.pdf']) {
      const checked = spawnSync(qpdf!, ['--check', file(name)], { encoding: 'utf8' });
      expect(checked.status, checked.stdout + checked.stderr).toBe(0);
      expect(checked.stdout).toContain('No syntax or stream encoding errors found');
    }
  });

  it.skipIf(qpdf === null)(`has paper size, tags, bookmarks and its fonts inside${missing(qpdf, 'qpdf')}`, () => {
    const json = (name: string) =>
      spawnSync(qpdf!, ['--json', file(name)], { encoding: 'utf8', maxBuffer: 1e9 }).stdout;
    const a4 = json('a4.pdf');
    // ISO 216: 210 × 297 mm; ANSI size A: 8.5 × 11 in; in points of 1/72 in.
    expect(a4).toMatch(/595\.27\d*,\s*841\.8/);
    expect(json('letter.pdf')).toMatch(/612,\s*792/);
    expect(a4).toContain('/StructTreeRoot');
    expect(a4).toContain('/Outlines');
    expect(a4).toMatch(/"\/Marked": true/);
    expect(a4).toMatch(/\/FontFile[23]/);
    for (const family of ['SourceSans3', 'Besley']) expect(a4).toMatch(new RegExp(`[A-Z]{6}\\+${family}`));
  });

  it('is the same bytes for the same report', () => {
    const again = reportPdf(reportTypst(document, 'a4'), MADE);
    expect(Buffer.compare(Buffer.from(again), readFileSync(file('a4.pdf')))).toBe(0);
  });
});

describe('the page', () => {
  const html = reportHtml(document, { fonts: embeddedFonts() });
  const rudeHtml = reportHtml(rude, { fonts: embeddedFonts() });

  it('has no fault in the eyes of html-validate', async () => {
    // Rules of taste that go against the house's own forms are off: void elements without a slash, long titles, `tabindex` on scrolled tables.
    const validator = new HtmlValidate({
      extends: ['html-validate:recommended'],
      rules: { 'long-title': 'off', 'no-inline-style': 'error', 'require-sri': 'off' },
    });
    for (const text of [html, rudeHtml]) {
      const report = await validator.validateString(text);
      const faults = report.results.flatMap((r) =>
        r.messages.map((m) => `${m.line}:${m.column} ${m.ruleId}: ${m.message}`),
      );
      expect([...new Set(faults)].slice(0, 10)).toEqual([]);
    }
  });

  it('asks the network for nothing and is small', () => {
    expect(html).not.toMatch(/<(?:link|iframe|object|embed|img|base)\b/i);
    expect(html).not.toMatch(/@import|url\((?!data:)/i);
    expect(html.match(/<script\b[^>]*>/g)).toEqual(['<script type="application/ld+json">']);
    expect(html.length).toBeLessThan(1.5e6);
  });

  it('shows markup and formulas as text', () => {
    expect(rudeHtml).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
    expect(rudeHtml).not.toContain('<script>alert');
  });

  it('describes the data so that a JSON-LD parser finds a schema.org Dataset', async () => {
    for (const text of [html, rudeHtml]) {
      const [, json] = /<script type="application\/ld\+json">(.*?)<\/script>/s.exec(text)!;
      const expanded = await jsonld.expand(JSON.parse(json!), {
        // The vocabulary alone, in place of schema.org's own context: nothing is fetched.
        documentLoader: async (url: string) => {
          expect(url).toMatch(/^https:\/\/schema\.org\/?$/);
          return {
            contextUrl: undefined,
            documentUrl: url,
            document: { '@context': { '@vocab': 'https://schema.org/' } },
          };
        },
      } as never);
      const [dataset] = expanded as unknown as Record<string, unknown>[];
      expect(dataset!['@type']).toEqual(['https://schema.org/Dataset']);
      for (const term of [
        'name',
        'description',
        'license',
        'creator',
        'identifier',
        'variableMeasured',
        'measurementTechnique',
      ])
        expect(dataset, term).toHaveProperty([`https://schema.org/${term}`]);
    }
  });
});

/** Data Package and Tabular Data Package profiles, specs.frictionlessdata.io, as shipped with datapackage 1.1.10 (MIT), only indented anew. */
describe('the data package', () => {
  const profile = (name: string) => {
    const path = fileURLToPath(new URL(`./data/${name}.json`, import.meta.url));
    const { $schema, ...schema } = JSON.parse(readFileSync(path, 'utf8')) as Record<string, unknown>;
    // Draft 4; nothing in it that later drafts read otherwise.
    expect($schema).toContain('draft-04');
    return new Ajv({ strict: false, allErrors: true, logger: false }).compile(schema);
  };
  it.each(['tabular-data-package', 'data-package'])('keeps to the published profile: %s', (name) => {
    const judge = profile(name);
    for (const { trial } of [demo, hostile]) {
      const descriptor = JSON.parse(writePackage(trial).get('datapackage.json')!);
      if (name === 'data-package') descriptor.profile = 'data-package';
      expect(judge(descriptor), JSON.stringify(judge.errors?.slice(0, 3))).toBe(true);
      expect(judge({ ...descriptor, resources: [] }), 'a package of nothing is none').toBe(false);
    }
  });
});

describe('the cards', () => {
  const source = { findings: demo.findings, trial: demo.trial, part: null };
  const [first, second] = demo.findings.cables.map(({ cable }) => cable);
  const wishes: [string, CardWish][] = [
    ['one', { kind: 'one', about: 'inside', cables: [first!] }],
    ['two', { kind: 'two', about: 'inside', cables: [first!, second!] }],
    ['field', { kind: 'field', about: 'inside', cables: [] }],
    ['order', { kind: 'order', about: 'inside', cables: [] }],
    ['method', { kind: 'method', about: 'inside', cables: [], method: 'ohms' }],
    ['lower third', { kind: 'lower-third', about: 'inside', cables: [first!] }],
  ];
  const decoded = (wish: CardWish, size: (typeof CARD_SIZES)[number], transparent: boolean) =>
    PNG.sync.read(Buffer.from(cardPng(cardSvg(source, wish, { size, dark: false, transparent }))));

  it.each(CARD_SIZES)('%s is that size, opaque to the edge', (size) => {
    const [width, height] = size.split('x').map(Number);
    const png = decoded(wishes[0]![1], size, false);
    expect([png.width, png.height]).toEqual([width, height]);
    let least = 255;
    for (let i = 3; i < png.data.length; i += 4) least = Math.min(least, png.data[i]!);
    expect(least).toBe(255);
    // The ground of the light scheme, #E5E8E5.
    expect([...png.data.subarray(0, 3)]).toEqual([0xe5, 0xe8, 0xe5]);
  });

  it.each(wishes)('%s: without its ground the corners are clear and something is drawn', (_what, wish) => {
    const png = decoded(wish, '1920x1080', true);
    const alpha = (x: number, y: number) => png.data[4 * (y * png.width + x) + 3];
    for (const [x, y] of [
      [0, 0],
      [png.width - 1, 0],
      [0, png.height - 1],
      [png.width - 1, png.height - 1],
    ] as const)
      expect(alpha(x, y)).toBe(0);
    let drawn = 0;
    for (let i = 3; i < png.data.length; i += 4) if (png.data[i]! > 200) drawn++;
    expect(drawn).toBeGreaterThan(5000);
  });

  it('draw nothing outside the safe area', () => {
    for (const [, wish] of wishes) {
      const png = decoded(wish, '1080x1920', true);
      let outside = 0;
      for (let y = 0; y < png.height; y++)
        for (let x = 0; x < png.width; x++) {
          // Lines and discs may touch the edge of the area by their own width.
          const inside = x >= 50 && x <= 990 && y >= 150 && y <= 1640;
          if (!inside && png.data[4 * (y * png.width + x) + 3]! > 0) outside++;
        }
      expect(outside, wish.kind).toBe(0);
    }
  });
});
