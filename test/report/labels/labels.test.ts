import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planOf } from '../../../src/findings/plan.ts';
import { cutListSheets } from '../../../src/report/labels/cutListSheets.ts';
import { bandLength, flagSheets } from '../../../src/report/labels/flagSheets.ts';
import { labelSheets } from '../../../src/report/labels/labelSheets.ts';
import { PAPERS } from '../../../src/report/labels/paper.ts';
import { type PieceLabel, pieceLabels } from '../../../src/report/labels/pieceLabels.ts';
import { qrMarks } from '../../../src/report/labels/qrMarks.ts';
import { slate } from '../../../src/report/labels/slate.ts';
import { cable, trialOf } from '../../findings/plan/trials.ts';
import { expectClose } from '../../tolerance.ts';
import { tagsOf } from '../markup.ts';

const SQUARE = [
  [true, true, false],
  [false, true, true],
  [true, false, true],
];
const plan = planOf(trialOf(cable('harrow'), cable('sedge')), { draws: 0 });

function label(more: Partial<PieceLabel> = {}): PieceLabel {
  return {
    code: 'KR',
    cable: 'Harrow & Sedge No. 2',
    specimen: 'h-a1',
    length: '300 mm',
    purpose: 'strip and weigh',
    qr: SQUARE,
    outerDiameter: 16,
    ...more,
  };
}

/** Dark modules that the bars of a drawn code cover, as `x y`. */
function covered(svg: string): string[] {
  return [...svg.matchAll(/M(\d+) (\d+)h(\d+)v1h-(\d+)z/g)].flatMap(([, x, y, wide, back]) => {
    expect(wide).toBe(back);
    return Array.from({ length: Number(wide) }, (_, i) => `${Number(x) + i} ${y}`);
  });
}

describe('a drawn QR code', () => {
  it('covers the dark modules and no others, whatever the matrix', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 25 }), fc.infiniteStream(fc.boolean()), (n, bits) => {
        const matrix = Array.from({ length: n }, () => Array.from({ length: n }, () => bits.next().value));
        const dark = matrix.flatMap((row, y) => row.flatMap((on, x) => (on ? [`${x + 4} ${y + 4}`] : [])));
        expect(covered(qrMarks(matrix, 0, 0, 20)).sort()).toEqual(dark.sort());
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });

  it('is scaled to its size with four blank modules round it', () => {
    expect(qrMarks(SQUARE, 1, 2, 22)).toContain('translate(1.000 2.000) scale(2.00000)');
  });

  it('is nothing for no matrix, and refuses one that is not square', () => {
    expect(qrMarks(null, 0, 0, 20)).toBe('');
    expect(() => qrMarks([[true, false]], 0, 0, 20)).toThrow(RangeError);
  });
});

describe('labels of a plan', () => {
  const options = { blind: false, linkOf: (code: string) => `bench ${code}`, matrixOf: () => SQUARE };

  it('are one for each piece, by code', () => {
    const labels = pieceLabels(plan, options);
    const codes = plan.cables.flatMap((c) => c.pieces.map((p) => p.code));
    expect(labels.map((l) => l.code)).toEqual([...codes].sort());
    expect(labels.find((l) => l.specimen === 'harrow-a1')).toMatchObject({
      length: '300\u00a0mm',
      purpose: 'strip and weigh',
    });
  });

  it('and the cut list give lengths in the units that were chosen', () => {
    const units = { perLength: 'ft' } as const;
    const inches = pieceLabels(plan, { ...options, units }).find((l) => l.specimen === 'harrow-a1')!;
    expect(inches.length.replaceAll('\u00a0', ' ')).toBe('11 13/16 in');
    const list = cutListSheets(plan, 'Club trial', 'Letter', units).join('').replaceAll('\u00a0', ' ');
    expect(list).toContain('>11 13/16 in<');
    expect(list).toContain('bought 9 ft 10 1/8 in.');
    expect(list).not.toMatch(/\d mm\b|\d m\b/);
  });

  it('name the cable beside the piece, and stay within label and flag', () => {
    const long = pieceLabels(
      planOf(trialOf(cable('c1', { maker: 'Harrow & Sedge', model: 'No. 2 Flexible Marine' })), { draws: 0 }),
      options,
    );
    expect(new Set(long.map((l) => l.cable))).toEqual(new Set(['Harrow & Sedge No. 2 Flexible Marine']));
    for (const [sheets, height] of [
      [labelSheets(long, 'A4'), 28],
      [flagSheets(long, 'A4'), 18],
    ] as const) {
      expect(sheets.join('')).toMatch(/>Harrow &amp; Sedge/);
      expect(sheets.join('')).toMatch(/>c1-a1</);
      // Half a millimetre for what hangs below the line.
      const feet = [...sheets.join('').matchAll(/<text x="[\d.]+" y="([\d.]+)"/g)].map(([, y]) => Number(y));
      expect(feet.length).toBeGreaterThan(3);
      for (const foot of feet) expect(foot).toBeLessThan(height - 0.5);
    }
  });

  it('name no piece and no cable while the trial is blind', () => {
    const labels = pieceLabels(plan, { ...options, blind: true });
    const sheets = [...labelSheets(labels, 'A4'), ...flagSheets(labels, 'A4')].join('');
    expect(sheets).not.toMatch(/harrow|sedge/i);
    expect(sheets).toContain(labels[0]!.code);
  });
});

describe.each(['A4', 'Letter'] as const)('sheets of labels on %s', (paper) => {
  const { width, height } = PAPERS[paper];

  it('print at true size and hold every code once', () => {
    const many = Array.from({ length: 95 }, (_, i) => label({ code: `C${i}` }));
    const sheets = labelSheets(many, paper);
    expect(sheets.length).toBeGreaterThan(2);
    for (const svg of sheets) {
      expect(tagsOf(svg).length).toBeGreaterThan(5);
      expect(svg).toContain(`width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"`);
    }
    const shown = sheets.flatMap((svg) => [...svg.matchAll(/>(C\d+)</g)].map((m) => m[1]));
    expect(shown).toEqual(many.map((l) => l.code));
  });

  it('are none for no labels', () => {
    expect(labelSheets([], paper)).toEqual([]);
    expect(flagSheets([], paper)).toEqual([]);
  });

  it('stay on the paper, with flags for cables up to 40 mm', () => {
    const thick = [8, 16, 25, 40].map((outerDiameter) => label({ outerDiameter }));
    for (const svg of flagSheets(thick, paper)) {
      expect(tagsOf(svg).length).toBeGreaterThan(5);
      const widths = [...svg.matchAll(/<rect x="0" y="0" width="([\d.]+)" height="18"/g)].map((m) => Number(m[1]));
      expect(widths).toHaveLength(4);
      for (const flag of widths) expect(flag).toBeLessThanOrEqual(width - 20 + 0.01);
    }
  });
});

it('a flag goes once round its cable', () => {
  expectClose(bandLength(16), 16 * Math.PI + 2, { relative: 1e-12 });
});

describe('the cut list on paper', () => {
  it('has every piece, what it is cut from, and what to buy', () => {
    const [svg, more] = cutListSheets(plan, 'Club trial', 'A4');
    expect(more).toBeUndefined();
    expect(tagsOf(svg!).length).toBeGreaterThan(5);
    for (const { code, specimen } of plan.cables.flatMap((c) => c.pieces)) {
      expect(svg).toContain(`>${code}<`);
      expect(svg).toContain(`>${specimen}<`);
    }
    expect(svg).toMatch(/Needs [\d.]+\u00a0m?m with what the saw takes at 3 cuts; bought 3\.00\u00a0m\./);
  });

  it('says what to buy, and how much is lacking', () => {
    const short = cable('harrow', { bought_length: '0.5' });
    const none = cable('sedge', { bought_length: '' });
    const [svg] = cutListSheets(planOf(trialOf(short, none), { draws: 0 }), 'Club trial', 'A4');
    expect(svg).toMatch(/bought 500\u00a0mm, [\d.]+\u00a0m?m too little\./);
    expect(svg).toMatch(/buy \d\.\d\d\u00a0m\./);
  });

  it('goes on to further sheets, and keeps each cable together', () => {
    const many = Array.from({ length: 20 }, (_, i) => cable(`cable ${String(i).padStart(2, '0')}`));
    const sheets = cutListSheets(planOf(trialOf(...many), { draws: 0 }), 'Club trial', 'Letter');
    expect(sheets.length).toBeGreaterThan(2);
    for (const svg of sheets) {
      const names = (svg.match(/font-weight="600"[^>]*>cable \d\d</g) ?? []).length;
      expect(svg.match(/Needs /g)?.length).toBe(names);
    }
  });
});

describe('the slate', () => {
  const input = {
    trial: 'Club trial <1>',
    part: '2',
    step: 'weigh',
    code: 'KR',
    take: 3,
    timeOfDay: '14:07:32',
    day: '2026-10-03',
  };

  it('shows trial, part, step, code, take and the time of day', () => {
    const svg = slate(input);
    expect(tagsOf(svg).length).toBeGreaterThan(5);
    for (const text of ['Club trial &lt;1&gt;', '>2<', '>weigh<', '>KR<', '>3<', '>14:07:32<', '>2026-10-03<'])
      expect(svg).toContain(text);
  });

  it('leaves out what there is not', () => {
    for (const step of ['Mass of the whole piece', 'Mass of the conductor', 'Thickness of the jacket wall']) {
      const words = [...slate({ ...input, step }).matchAll(/>([^<]+)</g)].map(([, text]) => text);
      expect(words.join(' ')).toContain(step);
    }
    expect(slate({ ...input, code: '', part: '' })).not.toMatch(/>part<|>piece</);
  });
});
