import { describe, expect, it } from 'vitest';
import type { EnduranceTest } from '../../../src/findings/shapes/jacket.ts';
import { curveReach, enduranceCurve } from '../../../src/report/jacket/enduranceCurve.ts';
import { jacketHeading } from '../../../src/report/jacket/jacketHeading.ts';
import { lastingAxis, scaleNote } from '../../../src/report/jacket/lastingAxis.ts';
import { lastingChart, perWallChart } from '../../../src/report/jacket/lastingChart.ts';
import { lastingStrip } from '../../../src/report/jacket/lastingStrip.ts';
import { shareRings } from '../../../src/report/jacket/shareRings.ts';
import { hourText, traceReach, wallTrace } from '../../../src/report/jacket/wallTrace.ts';
import { lightTheme } from '../../../src/report/theme.ts';
import { coldBent, fourJackets, scraped } from '../../fixtures/findings/jacket.ts';
import { expectClose } from '../../tolerance.ts';
import { named, numberOf, tagsOf } from '../markup.ts';

const [sedge, quill] = fourJackets.cables;
const options = { width: 1080, theme: lightTheme };

describe('a test as a picture', () => {
  const chart = lastingChart(scraped);

  it('has the longest lasting on top, those not reached above all that were', () => {
    expect(chart.rows.map(({ name }) => name)).toEqual(['Alder', 'Quill', 'Sedge', 'Rudge & Pawl']);
    expect(chart.banded).toBe(true);
  });

  it.each([
    ['Alder', 'not reached (at least 380)'],
    ['Quill', '540 (390 to 1100)'],
    ['Rudge & Pawl', '107 (at most 210)'],
  ])('%s reads %s', (name, text) => {
    const shown = chart.rows.find((row) => row.name === name)!.text;
    expect(shown).toBe(text.replace('107', '110'));
  });

  it('draws one bracket for each band of two, and none where words alone have the order', () => {
    const heavy = (test: EnduranceTest) =>
      named(lastingStrip(lastingChart(test), options), 'line').filter((t) => numberOf(t, 'stroke-width') === 2);
    expect(heavy(scraped)).toHaveLength(6);
    const inWords = { ...scraped, cables: scraped.cables.map((c) => ({ ...c, band: 1 })) };
    expect(lastingChart(inWords).banded).toBe(false);
    expect(heavy(inWords)).toHaveLength(0);
  });

  it('keeps one bracket over all where nothing at all was parted', () => {
    expect(lastingChart(coldBent).banded).toBe(true);
    const none = { ...scraped, cables: scraped.cables.map((c) => ({ ...c, band: 1 })), pairs: [] };
    expect(lastingChart(none).banded).toBe(true);
  });

  it('shows every piece, survivors open', () => {
    const dots = named(lastingStrip(chart, options), 'circle');
    expect(dots).toHaveLength(12);
    expect(dots.filter((dot) => dot.attributes.fill === lightTheme.ground)).toHaveLength(5);
  });

  it('says in words what it shows', () => {
    const [svg] = tagsOf(lastingStrip(chart, options));
    expect(svg!.attributes['aria-label']).toContain('Alder not reached (at least 380), 3 of 3 survived, band 1');
  });

  it('names what stands outside the order, and puts it last', () => {
    const cables = scraped.cables.map((c) =>
      c.cable === 'quill' ? { ...c, role: 'reference' as const, band: null } : c,
    );
    expect(lastingChart({ ...scraped, cables }).rows.at(-1)!.name).toBe('Quill, reference');
  });

  it('divides pieces by the wall of their cable', () => {
    const per = perWallChart(scraped, new Map([['sedge', 2]]))!;
    expect(per.rows.map(({ cable }) => cable)).toEqual(['quill', 'sedge']);
    expect(per.rows[1]!.pieces.map((p) => p.amount)).toEqual([45, 55, 75]);
    expect(per.rows[0]!.pieces).toEqual([]);
    expect(perWallChart(coldBent, new Map())).toBeNull();
  });

  it('shows shares of pieces from none to all', () => {
    const passed = lastingChart(coldBent);
    expect(passed.rows.map(({ text }) => text)).toEqual(['3 of 3 (29 to 100 %)', '1 of 3 (0 to 91 %)']);
    const axis = lastingAxis(passed, 200);
    expect(axis.ticks.map(({ text }) => text)).toEqual(['0 %', '25 %', '50 %', '75 %', '100 %']);
    expectClose(axis.at(0.5), 100, { absolute: 1e-9 });
  });

  it.each([320, 400, 700, 1360])('stays within %d px', (width) => {
    const svg = lastingStrip(chart, { width, theme: lightTheme });
    for (const tag of tagsOf(svg).filter((t) => t.name === 'line' || t.name === 'rect')) {
      const right = tag.name === 'line' ? numberOf(tag, 'x2') : numberOf(tag, 'x') + numberOf(tag, 'width');
      expect(right, JSON.stringify(tag)).toBeLessThanOrEqual(width + 0.01);
    }
  });

  it('keeps ends far beyond the pieces from stretching the axis', () => {
    const far = lastingChart(scraped).rows.map((row) => (row.cable === 'quill' ? { ...row, high: 1e9 } : row));
    const axis = lastingAxis({ rows: far, scale: 'amount' }, 100);
    expect(axis.at(500)).toBeGreaterThan(60);
    expectClose(axis.at(1e9), 100, { absolute: 1e-9 });
  });

  it('escapes names', () => {
    const rude = scraped.cables.map((c) => ({ ...c, name: '<b>&"' }));
    expect(lastingStrip(lastingChart({ ...scraped, cables: rude }), options)).not.toContain('<b>');
  });
});

describe('the scale of a test', () => {
  it('is said to go by ratio where it does, as its ticks show', () => {
    const at = (scale: 'amount' | 'share') => {
      const row = { ...lastingChart(scraped).rows[0]!, low: 20, value: 60, high: 200, pieces: [] };
      return lastingAxis({ rows: [row], scale }, 600);
    };
    const amount = at('amount');
    expectClose(amount.at(40) - amount.at(20), amount.at(200) - amount.at(100), { relative: 1e-9 });
    expect(scaleNote({ scale: 'amount' })).toContain('logarithmic');
    const share = at('share');
    expectClose(share.at(0.5) - share.at(0.25), share.at(0.75) - share.at(0.5), { relative: 1e-9 });
    expect(scaleNote({ scale: 'share' })).toBe('');
  });
});

describe('an endurance curve', () => {
  const draw = (place: number) =>
    enduranceCurve(scraped.cables[place]!, {
      width: 300,
      height: 160,
      theme: lightTheme,
      unit: 'strokes',
      most: curveReach(scraped.cables),
    });

  it('steps down at each failure and says so', () => {
    const [svg] = tagsOf(draw(0));
    expect(svg!.attributes['aria-label']).toBe(
      'Sedge: 67 % whole after 90 strokes, 5 % to 95 %; 33 % whole after 110 strokes, 1 % to 77 %; 0 % whole after 150 strokes.',
    );
  });

  it('is level where nothing failed, with every survivor apart', () => {
    const drawn = draw(3);
    expect(tagsOf(drawn)[0]!.attributes['aria-label']).toBe('Alder: no piece failed; 3 of 3 survived.');
    const heights = named(drawn, 'circle').map((dot) => numberOf(dot, 'cy'));
    expect(new Set(heights).size).toBe(3);
  });
});

describe('the wall round the clock', () => {
  it('puts 12 on top and goes round with the clock, as far out as the wall is thick', () => {
    const dots = named(wallTrace(sedge!, { size: 200, theme: lightTheme, most: 2.02 }), 'circle').filter(
      (t) => numberOf(t, 'r') === 3.5,
    );
    const at = dots.map((dot) => [numberOf(dot, 'cx') - 100, 100 - numberOf(dot, 'cy')] as const);
    expectClose(at[0]![0], 0, { absolute: 0.02 });
    expectClose(at[0]![1], 74, { absolute: 0.02 });
    expect(at[1]![0]).toBeGreaterThan(0);
    expectClose(Math.hypot(...at[3]!), (74 * 1.74) / 2.02, { absolute: 0.02 });
    expect(at[3]![1]).toBeLessThan(0);
  });

  it('draws nothing without places, and has room for every wall', () => {
    const nowhere = { ...sedge!, round: sedge!.round.map((r) => ({ ...r, angle_degrees: null })) };
    expect(wallTrace(nowhere, { size: 200, theme: lightTheme, most: 3 })).toBe('');
    expect(traceReach([sedge!, quill!])).toBeGreaterThan(3.57);
  });

  it.each([
    [0, '12 o’clock'],
    [178, '6 o’clock'],
    [359, '12 o’clock'],
    [44, '1 o’clock'],
  ])('%d degrees is %s', (angle, text) => {
    expect(hourText(angle)).toBe(text);
  });
});

describe('rings of shares', () => {
  it('have areas in the proportion of the shares', () => {
    const ringed = { ...quill!, outerDiameter: 10, jacketColour: 'red', metal: 'copper' as const, copperShare: null };
    const radii = named(shareRings(ringed, { scalePxPerMm: 10, size: 120, theme: lightTheme }), 'circle').map((t) =>
      numberOf(t, 'r'),
    );
    expectClose(radii[0]!, 50, { absolute: 1e-9 });
    expectClose(1 - (radii[1]! / radii[0]!) ** 2, 0.713, { absolute: 1e-3 });
    expectClose((radii[2]! / radii[0]!) ** 2, 0.174, { absolute: 1e-3 });
  });
});

describe('the heading', () => {
  it('tells walls and how far the tests part the cables', () => {
    expect(jacketHeading(fourJackets)).toBe(
      'Walls run from 1.90 mm (Sedge) to 3.36 mm (Quill). The scrape test parts four of six pairs of cables and cold bend none of one.',
    );
  });

  it.each([
    [true, 'The scrape test parts the two cables.'],
    [false, 'The scrape test does not part the two cables.'],
  ])('of two cables says whether they are parted: %s', (parted, sentence) => {
    const [scrape] = fourJackets.endurance;
    const endurance = [{ ...scrape!, pairs: [{ ...scrape!.pairs[0]!, parted }] }];
    expect(jacketHeading({ ...fourJackets, sentence: '', endurance })).toBe(sentence);
  });

  it('falls back on what there is', () => {
    const one = { ...fourJackets, cables: [sedge!], endurance: [], sentence: '' };
    expect(jacketHeading(one)).toBe(sedge!.sentence);
    expect(jacketHeading({ ...one, cables: [], sentence: '' })).toContain('a second cable');
  });
});
