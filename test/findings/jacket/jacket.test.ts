import { describe, expect, it } from 'vitest';
import { smallSamples } from '../../../src/findings/jacket/smallSamples.ts';
import { Findings } from '../../../src/findings/schema.ts';
import { ENDURANCE_TABLE } from '../../../src/journal/kinds/endurance.ts';
import { checkRow } from '../../../src/journal/rowCheck.ts';
import { assayTable } from '../../../src/report/text/assayTable.ts';
import { expectClose } from '../../tolerance.ts';
import { Bench, codes } from '../bench.ts';

type Cells = Readonly<Record<string, string>>;
const WALLS = ['2.00', '1.90', '1.85', '1.95', '2.05', '2.10'];

/** A bench with cables, each with three pieces to abuse. */
function bench(...cables: string[]): Bench {
  const b = new Bench().carefulTools();
  for (const cable of cables) {
    b.cable(cable, '2 AWG', 'OFC').piece(`${cable}-p`, cable);
    for (let i = 1; i <= 3; i++) b.piece(`${cable}${i}`, cable, { kind: 'abuse' });
  }
  return b;
}

function walls(b: Bench, cable: string, read = WALLS): Bench {
  read.forEach((mm, i) => {
    b.read(`${cable}-p`, 'wall_thickness', mm, 'mm', { position: `${60 * i} degrees` });
  });
  return b;
}

const tried = (b: Bench, specimen: string, amount: string, outcome: string, more: Cells = {}) =>
  b.say('endurance', { specimen, test: 'scrape', amount, unit: 'strokes', outcome, ...more });

function scraped(b: Bench, cable: string, amounts: readonly number[], end = Number.POSITIVE_INFINITY): Bench {
  amounts.forEach((a, i) => {
    tried(b, `${cable}${i + 1}`, String(Math.min(a, end)), a > end ? 'survived' : 'failed');
  });
  return b;
}

describe('what a jacket is', () => {
  const b = walls(bench('x'), 'x')
    .read('x-p', 'outer_diameter', '12.30', 'mm', { position: '0 degrees' })
    .read('x-p', 'outer_diameter', '12.42', 'mm', { position: '90 degrees' })
    .read('x-p', 'conductor_diameter', '8.40', 'mm')
    .everything('x-p', 33.6)
    .read('x-p', 'specimen_length', '300.0', 'mm', { instrument: 'rule' })
    .read('x-p', 'jacket_mass', '26.00', 'g', { instrument: 'scale' });
  const [found] = b.findings().jacket!.cables;

  it('states mean and least as the standard does, and how even the wall is', () => {
    expect(found.stated).toEqual({ mean_mm: 1.98, least_mm: 1.85 });
    expectClose(found.concentricity!.value, 1.85 / 2.1, { relative: 1e-12 });
    expectClose(found.eccentricity!, 0.25 / 2.1, { relative: 1e-12 });
    expectClose(found.out_of_round!, 0.12 / 12.36, { relative: 1e-9 });
    expect(found.round.map((r) => r.angle_degrees)).toEqual([0, 60, 120, 180, 240, 300]);
    expect(found.sentence).toBe(
      'Wall 1.98 mm on average of 6 readings, 1.85 mm at its least, the thinnest place 88 % of the thickest.',
    );
  });

  it('shares the face among metal, air and jacket', () => {
    const { metal, air, jacket } = found.shares!;
    expectClose(metal.value + air.value + jacket.value, 1, { relative: 1e-12 });
    expectClose(metal.value, b.of('x').metal_of_section!.value, { relative: 1e-6 });
  });

  it('gives mass per metre and density, and hints that stay hints', () => {
    expectClose(found.mass_per_metre!.value, 26 / 0.3, { relative: 1e-9 });
    expect(found.density!.value).toBeGreaterThan(1.25);
    expect(found.hint_text).toContain('A hint');
    expect(found.context.every((c) => c.text.includes('from memory'))).toBe(true);
  });

  it('weighed under water the density needs no diameter', () => {
    const water = bench('x')
      .read('x-p', 'jacket_mass', '26.00', 'g', { instrument: 'scale' })
      .read('x-p', 'submerged_mass', '6.00', 'g', { instrument: 'scale', position: 'jacket' })
      .findings().jacket!.cables[0];
    expect(water.density_by).toBe('weighed in water');
    expectClose(water.density!.value, (26 * 0.9982) / 20, { relative: 1e-9 });
  });

  it('says which reading a squeeze would explain, and that six readings are asked', () => {
    const squeezed = walls(bench('x'), 'x', ['2.0', '2.0'])
      .read('x-p', 'outer_diameter', '11.50', 'mm')
      .read('x-p', 'conductor_diameter', '8.40', 'mm')
      .findings();
    expect(squeezed.jacket!.cables[0].cross_check).toMatchObject({ agrees: false, squeezed: 'outer diameter' });
    expect(codes(squeezed)).toContain('wall-cross-check');
    expect(codes(squeezed)).toContain('wall-few-readings');
  });

  it('is null where nothing about jackets is on record', () => {
    expect(new Bench().cable('x', '2 AWG').findings().jacket).toBeNull();
  });
});

describe('what it lasts', () => {
  const b = scraped(
    scraped(scraped(bench('a', 'b', 'c'), 'a', [410, 460, 900], 800), 'b', [90, 120, 150]),
    'c',
    [60, 75, 100],
  );
  const findings = b.findings();
  const [test] = findings.jacket!.endurance;

  it('fits the published shape', () => {
    expect(() => Findings.parse(findings)).not.toThrow();
  });

  it('counts the survivor, orders with ties, and speaks of pieces', () => {
    expect(test).toMatchObject({ test: 'scrape', protocol: 'scrape', kind: 'amount', unit: 'strokes' });
    expect(test.cables.map((c) => [c.n, c.failed, c.survived, c.band])).toEqual([
      [3, 2, 1, 1],
      [3, 3, 0, 2],
      [3, 3, 0, 2],
    ]);
    expect(test.sentence).toBe('In the scrape test, the pieces of a lasted longest; last b and c, not parted.');
    expect(test.cables[0].text).toMatch(
      /^Three pieces: 2 failed, at 410 and 460 strokes; 1 survived 800 strokes\. Half/,
    );
    expect(test.pairs.find((p) => p.a === 'b')!.text).toMatch(/^b and c are not parted/);
  });

  it('says that few are few, and how many pieces would part neighbours', () => {
    expect(test.small_samples).toMatch(/^3 pieces of a cable are few/);
    const [first, ...others] = test.cables;
    const uneven = { ...test, cables: [{ ...first!, n: 2 }, ...others] };
    expect(smallSamples(uneven)).toMatch(/^2 to 3 pieces of a cable are few/);
    const single = test.cables.map((c) => ({
      ...c,
      n: 1,
      median: { ...c.median!, interval: [null, null] as [null, null] },
    }));
    expect(smallSamples({ ...test, cables: single })).toBe(
      '1 piece of a cable is few: no interval can be given, and cables that are not parted may well differ.',
    );
    expect(test.small_samples).toMatch(/would part b and c with about \d+ pieces of each/);
    expect(test.how_we_know.join(' ')).toMatch(/exact test of a pair cannot come below 0\.10/);
  });

  it('keeps χ² for the record and concludes from the calibrated ratio', () => {
    expect(test.logrank!.p_exact).toBeGreaterThanOrEqual(test.logrank!.p_smallest);
    expect(test.pairs.every((p) => p.parted === (p.p_holm ?? 1) < 0.05)).toBe(true);
  });

  it('per millimetre of wall a thick jacket loses its lead', () => {
    const thick = walls(
      walls(
        bench('a', 'b'),
        'a',
        WALLS.map((w) => (3 * Number(w)).toFixed(2)),
      ),
      'b',
    );
    const found = scraped(scraped(thick, 'a', [300, 330, 360]), 'b', [100, 110, 120]).findings().jacket!.endurance[0];
    expect(found.pairs[0].parted).toBe(true);
    expect(found.per_wall!.pairs[0].parted).toBe(false);
    expectClose(found.per_wall!.pairs[0].ratio!, 1, { relative: 1e-6 });
    expect(found.per_wall!.sentence).toContain('no longer shown of a over b');
  });

  it('a field without a clean cut names who was parted from whom', () => {
    const chain = [
      ['a', [300, 320, 340]],
      ['b', [210, 230, 250]],
      ['c', [150, 165, 180]],
    ] as const;
    let b3 = bench('a', 'b', 'c');
    for (const [cable, amounts] of chain) b3 = scraped(b3, cable, amounts);
    const [found] = b3.findings().jacket!.endurance;
    const across = found.pairs.filter((p) => p.parted).map((p) => p.a + p.b);
    expect(across).toContain('ac');
    if (across.length < 3) expect(found.sentence).toContain('a lasted longer than those of');
  });

  it('every so many strokes: failed between two looks', () => {
    const looked = bench('a');
    [100, 120, 150].forEach((amount, i) => {
      tried(looked, `a${i + 1}`, String(amount), 'failed', { inspected_every: '50' });
    });
    expect(looked.findings().jacket!.endurance[0].cables[0].pieces.map((p) => p.whole_at)).toEqual([50, 70, 100]);
  });

  it('different loads are different tests; a blank one goes with the one that is noted', () => {
    const loads = bench('a', 'b');
    tried(loads, 'a1', '100', 'failed', { stress: '7', stress_unit: 'N' });
    tried(loads, 'a2', '300', 'failed', { stress: '3', stress_unit: 'N' });
    expect(loads.findings().jacket!.endurance.map((t) => t.stress)).toEqual([7, 3]);
    const blank = bench('a');
    tried(blank, 'a1', '100', 'failed', { stress: '7', stress_unit: 'N' });
    tried(blank, 'a2', '120', 'failed');
    const found = blank.findings();
    expect(found.jacket!.endurance).toHaveLength(1);
    expect(codes(found)).toContain('endurance-load-not-noted');
  });

  it('one test does not move the digits of another', () => {
    const more = scraped(scraped(bench('a', 'b'), 'a', [100, 120, 150]), 'b', [200, 230, 260]);
    const before = more.findings().jacket!.endurance[0];
    more.say('endurance', { specimen: 'a1', test: 'cold bend', amount: '1', unit: 'bends', outcome: 'survived' });
    const after = more.findings().jacket!.endurance[0];
    expect(after.cables).toEqual(before.cables);
    expect(after.pairs).toEqual(before.pairs);
  });
});

describe('passed or not, and fluids', () => {
  const b = bench('a', 'b');
  for (const [piece, outcome] of [
    ['a1', 'survived'],
    ['a2', 'survived'],
    ['a3', 'survived'],
    ['b1', 'failed'],
    ['b2', 'failed'],
    ['b3', 'survived'],
  ]) {
    b.say('endurance', { specimen: piece, test: 'fluid: diesel', amount: '20', unit: 'h', outcome });
    b.read(piece, 'mass_before', '20.00', 'g', { set: 'diesel' }).read(piece, 'mass_after', '20.40', 'g', {
      set: 'diesel',
    });
  }
  b.read('a1', 'diameter_before', '12.00', 'mm', { set: 'diesel' });
  const found = b.findings();

  it('shares have exact intervals', () => {
    const [test] = found.jacket!.endurance;
    expect(test).toMatchObject({ kind: 'passed', exposure: 20, protocol: 'fluid' });
    expectClose(test.cables[0].passed!.interval[0], 0.2924017738212866, { relative: 1e-9 });
    expect(test.sentence).toMatch(/^3 of 3 of a and 1 of 3 of b came through/);
  });

  it('what changed is told with its interval; half a pair is asked for', () => {
    expectClose(found.jacket!.exposures[0].mass!.value, 0.02, { relative: 1e-9 });
    expect(found.jacket!.exposures[0].text).toMatch(/^a, diesel, three pieces: mass grew by 2\.0 %/);
    expect(codes(found, 'a')).toContain('exposure-not-paired');
  });
});

describe('bad input, each with its sentence', () => {
  const warned = (b: Bench, code: string) => b.findings().warnings.find((w) => w.code === code)?.text ?? '';
  const now = Date.UTC(2026, 10, 25);
  const row = { specimen: 'a1', test: 'scrape', amount: '12', unit: 'strokes', outcome: 'failed' };

  it.each([
    [{ ...row, amount: '0' }, 'amount'],
    [{ ...row, amount: '-5' }, 'amount'],
    [{ ...row, amount: '', outcome: 'survived' }, 'amount'],
    [{ ...row, amount: 'many' }, 'amount'],
    [{ ...row, outcome: 'melted' }, 'outcome'],
    [{ ...row, inspected_every: '0' }, 'inspected_every'],
  ])('the door refuses %j', (cells, column) => {
    expect(checkRow(ENDURANCE_TABLE, cells, { now }).map((p) => p.column)).toEqual([column]);
  });

  it.each([
    ['endurance-amount-impossible', '-5', 'failed', 'it must be above zero'],
    ['endurance-amount-missing', '', 'survived', 'say at what amount the test was ended'],
    ['endurance-outcome-missing', '5', '', 'whether the piece failed'],
  ])('what came past it: %s', (code, amount, outcome, says) => {
    expect(warned(tried(bench('a'), 'a1', amount, outcome), code)).toContain(says);
  });

  it('mixed units: most rows count, newtons are taken for each other', () => {
    const mixed = tried(tried(tried(bench('a'), 'a1', '100', 'failed'), 'a2', '120', 'failed'), 'a3', '30', 'failed', {
      unit: 's',
    });
    expect(warned(mixed, 'endurance-units-mixed')).toContain('a3 left out');
    expect(mixed.findings().jacket!.endurance[0].cables[0].n).toBe(2);
    const forces = bench('a');
    forces.say('endurance', { specimen: 'a1', test: 'pinch', amount: '98.0665', unit: 'N', outcome: 'failed' });
    forces.say('endurance', { specimen: 'a2', test: 'pinch', amount: '10', unit: 'kgf', outcome: 'failed' });
    const [test] = forces.findings().jacket!.endurance;
    expectClose(test.cables[0].pieces[1].amount, 98.0665, { relative: 1e-9 });
  });

  it('a piece that failed twice counts once', () => {
    const twice = tried(tried(bench('a'), 'a1', '100', 'failed'), 'a1', '140', 'failed');
    expect(warned(twice, 'endurance-failed-twice')).toContain(
      'failed twice in the scrape test, at 100 strokes and at 140',
    );
    expect(twice.findings().jacket!.endurance[0].cables[0]).toMatchObject({ n: 1, pieces: [{ amount: 100 }] });
  });

  it('a survivor later reported failed went on; one that had failed before is a contradiction', () => {
    const later = tried(tried(bench('a'), 'a1', '500', 'survived'), 'a1', '650', 'failed');
    expect(warned(later, 'endurance-survivor-failed-later')).toContain('failed at 650 strokes');
    expect(later.findings().jacket!.endurance[0].cables[0].pieces[0]).toMatchObject({ amount: 650, outcome: 'failed' });
    const before = tried(tried(bench('a'), 'a1', '500', 'survived'), 'a1', '300', 'failed');
    expect(warned(before, 'endurance-contradicts')).toContain('both cannot be');
    expect(before.findings().jacket).toBeNull();
  });

  it('a row that replaces another stands for it, without a word', () => {
    const put = tried(bench('a'), 'a1', '100', 'failed', { endurance: 'e1' });
    tried(put, 'a1', '140', 'failed', { endurance: 'e2', replaces: 'e1', why: 'read the counter wrong' });
    const found = put.findings();
    expect(found.jacket!.endurance[0].cables[0].pieces).toMatchObject([{ amount: 140 }]);
    expect(codes(found)).not.toContain('endurance-failed-twice');
    tried(put, 'a2', '90', 'failed', { replaces: 'e9' });
    expect(warned(put, 'endurance-replaces-nothing')).toContain('"e9"');
  });

  it('a piece nobody described, and pieces at different temperatures', () => {
    expect(warned(tried(bench('a'), 'zz', '5', 'failed'), 'endurance-piece-not-known')).toContain('zz');
    const apart = tried(tried(bench('a'), 'a1', '100', 'failed', { temperature: '5' }), 'a2', '130', 'failed', {
      temperature: '25',
    });
    expect(warned(apart, 'endurance-temperatures-apart')).toContain('20.0 °C apart');
  });
});

describe('the block in the terminal', () => {
  const findings = scraped(
    scraped(walls(walls(bench('a', 'b'), 'a'), 'b'), 'a', [410, 460, 900], 800),
    'b',
    [90, 120, 150],
  ).findings();

  it('shows walls, who failed, and how long half last', () => {
    const text = assayTable(findings);
    expect(text).toMatch(/a +1\.9\d+ ± 0\.\d+ +1\.85/);
    expect(text).toMatch(/a +2 of 3 +\d+ +\d+ to \d+ +1/);
    expect(text).toContain('few');
  });

  it.each([60, 80])('stays within %i columns, in plain characters too', (width) => {
    for (const ascii of [false, true]) {
      const lines = assayTable(findings, { width, ascii }).split('\n');
      expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(width);
    }
  });
});
