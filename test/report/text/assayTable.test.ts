import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assayTable } from '../../../src/report/text/assayTable.ts';
import { displayWidth } from '../../../src/report/text/displayWidth.ts';
import { measured } from '../../fixtures/findings/build.ts';
import { brackenfell, quill, rudeNames, sixCables, unmeasured } from '../../fixtures/findings.ts';

const lines = (text: string): string[] => text.split('\n');
const widest = (text: string): number => Math.max(...lines(text).map(displayWidth));

describe('the findings in a terminal', () => {
  const table = assayTable(sixCables);

  it('say what was found of each cable in one row', () => {
    const row = (name: string): string => lines(table).find((line) => line.startsWith(name)) ?? '';
    expect(row('Quill')).toMatch(/^Quill +28\.6 ± 0\.3 +2\.7 +85 ± 1 +copper +falls short$/);
    expect(row('Harrow & Sedge')).toMatch(/33\.1 ± 0\.4 .* not settled$/);
    expect(row('Saltmarsh')).toMatch(/26\.9 ± 1\.0 .* not told +falls short$/);
    expect(table).toContain('if copper');
    expect(table).toContain('on metal');
  });

  it('give a wide figure by both its ends, under the others, and leave the others where they are', () => {
    const wide = {
      ...quill,
      conductor_area: measured(56, 22.7, 'mm2', []),
      copper_of_claim: measured(0.79, 0.3, '1', []),
    };
    const made = lines(assayTable({ ...sixCables, cables: [brackenfell, wide] }));
    const [usual, ranged] = ['Brackenfell', 'Quill'].map((name) => made.find((line) => line.startsWith(name))!);
    expect(ranged).toMatch(/^Quill +33 to 79 +not told +49 to 110 +copper/);
    const alone = lines(assayTable({ ...sixCables, cables: [brackenfell] })).find((line) =>
      line.startsWith('Brackenfell'),
    );
    expect(usual).toBe(alone);
    const end = (line: string, text: string): number => line.indexOf(text) + text.length;
    expect(end(ranged!, '33 to 79')).toBe(end(usual!, '± 0.3'));
    expect(assayTable({ ...sixCables, cables: [wide] })).toMatch(/Two\s+figures\s+with\s+“to”/);
    expect(table).not.toContain('“to”');
  });

  it('draw the limit through every bar at one column', () => {
    const chart = lines(table).slice(lines(table).findIndex((line) => line.includes('limit 32.96')));
    const column = chart[0]!.indexOf('│');
    const rows = chart.slice(0, 8);
    for (const row of rows) expect('│┿╪┼╋').toContain([...row][column]);
    expect(rows.filter((row) => row.includes('╋'))).toHaveLength(6);
  });

  it('have the area in mm² beside the gauge where gauge was asked for, not the gauge twice', () => {
    const made = lines(assayTable(sixCables, { width: 120, units: { area: 'awg' } }));
    const quillRow = made.find((line) => line.startsWith('Quill'))!;
    expect(quillRow).toMatch(/^Quill +2\.7\d? ± 0\.0\d +28\.6 ± 0\.3 +85 ± 1 +copper/);
    const head = made.find((line) => line.startsWith('Cable '))!;
    expect(head.match(/AWG/g)).toHaveLength(1);
    expect(head).toContain('mm²');
    const thick = {
      ...quill,
      conductor_area: measured(60, 0.5, 'mm2', []),
      effective_gauge_text: 'between 1/0 and 2/0',
    };
    const rows = lines(
      assayTable({ ...sixCables, cables: [thick, brackenfell] }, { width: 120, units: { area: 'awg' } }),
    );
    const at = rows.findIndex((line) => line.startsWith('Quill'));
    expect(rows[at]).toMatch(/^Quill +60\.0 ± 0\.5 +85 ± 1/);
    expect(rows[at + 1]).toContain('between 1/0 and 2/0');
  });

  it('put the control piece first, and not among the rows', () => {
    expect(table.indexOf('Our tools said copper')).toBeLessThan(table.indexOf('Brackenfell'));
    expect(table).not.toContain('Solid 12 AWG building wire  ');
  });

  it('say what to take again, what is missing and what to read next', () => {
    expect(table).toContain('Take again: strand count');
    expect(table).toContain('One more measurement');
    const silent = assayTable({ ...sixCables, warnings: [] });
    expect(silent).toContain('Take again: strand count');
    expect(silent).toMatch(
      /Missing: resistance, without which the metal is not told; wall\s+thickness; strand count\./,
    );
    expect(silent).toContain('Assumed: kitchen scale');
  });

  it('end every sentence once', () => {
    const said = assayTable({
      ...sixCables,
      cables: [
        {
          ...quill,
          missing: ['No ohms were read.', 'No wall was read.'],
          assumed: ['Scale: a gram.', 'Rule: half a mm.'],
        },
      ],
      warnings: [],
    });
    expect(said.replace(/\s+/g, ' ')).toContain('Quill: No ohms were read. No wall was read.');
    expect(said.replace(/\s+/g, ' ')).toContain('Quill: Scale: a gram. Rule: half a mm.');
    expect(said).not.toMatch(/\.[.,;]/);
  });

  it('do not say a thing twice', () => {
    expect(table.match(/Take again/g)).toHaveLength(1);
    expect(table).not.toContain('Missing:');
  });

  it('put a dash where nothing is known', () => {
    const row = lines(assayTable({ ...sixCables, cables: [unmeasured] })).find((line) =>
      line.startsWith('Not weighed'),
    );
    expect(row).toMatch(/^Not weighed yet( +—){5}$/);
  });

  it('give sizes between the aughts a line of their own', () => {
    const thick = { ...brackenfell, effective_gauge_text: 'between 1/0 and 2/0, 40 % of the way' };
    expect(lines(assayTable({ ...sixCables, cables: [thick] }))).toContain('  between 1/0 and 2/0, 40 % of the way');
  });

  it('set references after the compared cables, in brackets, with a word on it', () => {
    const text = assayTable({ ...sixCables, cables: [{ ...quill, role: 'reference' }, brackenfell] });
    expect(text.indexOf('(Quill)')).toBeGreaterThan(text.indexOf('Brackenfell'));
    expect(text).toMatch(/Names in brackets are\s+references/);
  });

  it('draw no limit where the cables are held to different ones', () => {
    const other = { ...quill, claims: quill.claims.map((claim) => ({ ...claim, required: 30 })) };
    expect(assayTable({ ...sixCables, cables: [brackenfell, other] })).not.toContain('limit 3');
  });

  it('are plain ASCII where that is asked', () => {
    expect(assayTable(rudeNames, { ascii: true })).toMatch(/^[\x20-\x7e\n]*$/);
    expect(assayTable(sixCables, { ascii: true })).toMatch(/Quill +28\.6 \+\/- 0\.3/);
  });

  it('say nothing that a terminal would obey', () => {
    expect(assayTable(rudeNames).replaceAll('\n', '')).not.toMatch(/\p{Cc}|[\u202a-\u202e]/u);
  });

  it.each([80, 60, 66, 77, 100, 200])('keep within %d columns', (width) => {
    for (const findings of [sixCables, rudeNames]) {
      for (const ascii of [false, true]) {
        for (const area of ['mm2', 'awg', 'kcmil'] as const) {
          expect(widest(assayTable(findings, { width, ascii, units: { area } }))).toBeLessThanOrEqual(width);
        }
      }
    }
  });

  it('keep within 80 columns whatever the names, figures and words', () => {
    const text = fc.string({ unit: 'grapheme', maxLength: 120 });
    const value = fc.double({ min: 1e-3, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(
        text,
        text,
        text,
        value,
        fc.double({ min: 1e-9, max: 2, noNaN: true }),
        (name, words, condition, x, share) => {
          const area = measured(x, x * share, 'mm2', [], condition);
          const rude = {
            ...brackenfell,
            name,
            conductor_area: area,
            metal_found: words,
            effective_gauge_text: words,
            copper_of_claim: measured(x, x * share, '1', []),
          };
          const made = assayTable({
            ...sixCables,
            title: name,
            sentence: words,
            cables: [rude, quill],
            warnings: [{ code: words, cable: rude.cable, text: words }],
          });
          expect(widest(made)).toBeLessThanOrEqual(80);
          expect(made).not.toContain('NaN');
        },
      ),
      { seed: 9, numRuns: 200 },
    );
  });
});
