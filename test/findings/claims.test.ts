/** What each kind of label asks for, and what comes of it. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../tolerance.ts';
import { type Bench, CLAD, claimOf, codes, oneCable, outcomes } from './bench.ts';

const AWG2 = 33.6308;
const judged = (size: string, metal: string, mm2: number, inside?: Parameters<Bench['weigh']>[2]) =>
  oneCable(size, metal).everything('p', mm2, inside).of('x');

describe('which readings belong to the label', () => {
  const TABLE: readonly (readonly [size: string, vague: boolean, ofLabel: string[], folded: string[]])[] = [
    ['2 AWG', false, ['copper held', 'AWG by area', 'AWG by resistance'], ['SAE size']],
    ['0 gauge', true, ['copper held', 'AWG by area', 'AWG by resistance', 'SAE size'], []],
    ['4 ga', true, ['copper held', 'AWG by area', 'AWG by resistance', 'SAE size'], []],
    ['1/0 true spec', false, ['copper held', 'AWG by area', 'AWG by resistance'], ['SAE size']],
    ['2 AWG oversized', false, ['copper held', 'AWG by area', 'AWG by resistance'], ['SAE size']],
    ['35 mm2', false, ['copper held', 'IEC 60228', 'ISO 19642'], []],
    ['40 mm2', false, ['copper held', 'mm² by area'], []],
    ['250 kcmil', false, ['copper held', 'kcmil by area'], []],
    ['heavy duty', true, [], []],
  ];
  it.each(TABLE)('%s', (size, vague, ofLabel, folded) => {
    const bench = oneCable(size, '').everything('p', 33.6);
    const c = bench.of('x');
    expect(c.label.vague).toBe(vague);
    expect(c.claims.filter((each) => each.of_label).map((each) => each.reading)).toEqual(ofLabel);
    expect(c.claims.filter((each) => !each.of_label).map((each) => each.reading)).toEqual(folded);
    const said = codes(bench.findings(), 'x').filter((code) => code === 'vague-label' || code === 'label-not-read');
    expect(said).toEqual(!vague ? [] : ofLabel.length === 0 ? ['label-not-read'] : ['vague-label']);
    for (const claim of c.claims) expect(claim.source.length, claim.reading).toBeGreaterThan(5);
  });

  it('a size that cannot be read leaves nothing to judge by, and says so', () => {
    const c = judged('heavy duty', 'OFC', 33.6);
    expect(c.label.read_as).toContain('not readable');
    expect(c.label.claimed_area_mm2).toBeNull();
    expect(c.copper_of_claim).toBeNull();
    expect(c.conductor_area).not.toBeNull();
    expect(outcomes(c)).toEqual({ metal: 'meets', 'oxygen-free': null });
  });
});

describe('what is asked for', () => {
  it('AWG: the nominal area less 2 %, as copper and as area', () => {
    const c = judged('2 AWG', 'OFC', 33.6);
    for (const reading of ['copper held', 'AWG by area']) {
      const claim = claimOf(c, reading)!;
      expectClose(claim.nominal!, AWG2, { relative: 1e-5 });
      expectClose(claim.required!, 0.98 * AWG2, { relative: 1e-5 });
      expectClose(claim.tolerance!, -0.02, { absolute: 1e-12 });
      expect(claim.outcome).toBe('meets');
    }
  });

  it('oversized: all of the nominal area', () => {
    const claim = claimOf(judged('2 AWG oversized', 'OFC', 33.3), 'AWG by area')!;
    expectClose(claim.required!, AWG2, { relative: 1e-5 });
    expect(claim.tolerance).toBe(0);
    expect(claim.outcome).not.toBe('meets');
    expect(claimOf(judged('2 AWG', 'OFC', 33.3), 'AWG by area')!.probability_met).toBeGreaterThan(
      claim.probability_met!,
    );
  });

  it('kcmil: 250 of them are 126.7 mm²', () => {
    expectClose(claimOf(judged('250 kcmil', 'copper', 126), 'kcmil by area')!.nominal!, 126.677, { relative: 1e-5 });
  });

  it('mm²: a resistance, and only as much copper as could give it', () => {
    const c = judged('35 mm2', 'copper', 33);
    expectClose(claimOf(c, 'IEC 60228')!.required!, 0.554, { relative: 1e-9 });
    expect(claimOf(c, 'IEC 60228')!.outcome).toBe('meets');
    expectClose(claimOf(c, 'copper held')!.required!, 31.12, { relative: 1e-3 });
    expect(claimOf(c, 'copper held')!.outcome).toBe('meets');
  });

  it('resistance of AWG: between the strict and the generous limit nothing is settled', () => {
    // 2 AWG: 0.5127 mΩ/m for solid copper, +2 % asked for, up to 9 % allowed to some constructions.
    const outcome = (mm2: number) => claimOf(judged('2 AWG', 'OFC', mm2), 'AWG by resistance')!.outcome;
    expect(outcome(34.9)).toBe('meets');
    expect(outcome(33.0)).toBe('not settled');
    expect(outcome(29)).toBe('falls short');
  });

  it('ohms and strands as the label states them', () => {
    const bench = (ohms: string, strands: string) =>
      oneCable('2 AWG', 'OFC', { claimed_ohms: ohms, claimed_strands: strands }).everything('p', 33.6).of('x');
    expect(outcomes(bench('0.56 mohm/m', '665'))).toMatchObject({ 'ohms as stated': 'meets', 'strand count': 'meets' });
    expect(outcomes(bench('0.47 mohm/m', '750'))).toMatchObject({
      'ohms as stated': 'falls short',
      'strand count': 'falls short',
    });
  });
});

describe('metals', () => {
  it('OFC is two claims: copper, and oxygen-free, of which nothing is said', () => {
    const c = judged('2 AWG', '99.9 % OFC', 33.6);
    expect(outcomes(c)).toMatchObject({ metal: 'meets', 'oxygen-free': null, '99.9 %': null });
    const free = claimOf(c, 'oxygen-free')!;
    expect(free.probability_met).toBeNull();
    expect(free.note).toContain('Not testable');
  });

  it('copper on the label and clad aluminium inside: the metal falls short, and so does the copper', () => {
    const c = judged('2 AWG', 'OFC', 35, CLAD);
    expect(c.metal_found).toBe('copper-clad aluminium');
    expect(outcomes(c)).toMatchObject({ metal: 'falls short', 'copper held': 'falls short', 'AWG by area': 'meets' });
    expectClose(c.metal_of_claim!.value, 35 / AWG2, { relative: 0.02 });
    expect(c.copper_of_claim!.value).toBeLessThan(0.2);
    expectClose(c.copper_share!.value, 0.125, { absolute: 0.03 });
  });

  it('clad aluminium that says so: no copper is asked for, and the limit of copper is not its limit', () => {
    const c = judged('2 AWG', 'CCA', 35, CLAD);
    expect(claimOf(c, 'copper held')).toBeUndefined();
    expect(outcomes(c)).toMatchObject({ metal: 'meets', 'AWG by area': 'meets', 'AWG by resistance': null });
    expect(claimOf(c, 'AWG by resistance')!.note).toContain('for copper');
    expect(c.copper_of_claim).toBeNull();
    expectClose(c.metal_of_claim!.value, 35 / AWG2, { relative: 0.02 });
    expect(c.sentence).not.toContain('falls short');
  });

  it('a label that names no metal is held to copper by its size, not by a claim on the metal', () => {
    const c = judged('2 AWG', '', 33.6);
    expect(claimOf(c, 'metal')).toBeUndefined();
    expect(claimOf(c, 'copper held')).toMatchObject({ outcome: 'meets' });
    expect(claimOf(c, 'copper held')!.note).toContain('no metal');
  });

  it('the share of the label that is copper: 1 for a full cable, less for a short one', () => {
    for (const mm2 of [AWG2, 0.87 * AWG2, 1.05 * AWG2]) {
      const c = judged('2 AWG', 'OFC', mm2);
      expectClose(c.copper_of_claim!.value, mm2 / AWG2, { relative: 0.012, because: 'tin is not ruled out' });
      const [low, high] = c.copper_of_claim!.interval;
      expect(low < mm2 / AWG2 && mm2 / AWG2 < high).toBe(true);
    }
  });
});

describe('mass alone', () => {
  const massOnly = (mm2: number, metal = 'OFC', inside?: Parameters<Bench['weigh']>[2]) =>
    oneCable('2 AWG', metal).weigh('p', mm2, inside).of('x');

  it('never says of an area that it falls short', () => {
    for (const mm2 of [5, 15, 25, 30, 33])
      for (const claim of massOnly(mm2).claims.filter((c) => c.reading.includes('area') || c.reading === 'SAE size'))
        expect(claim.outcome, `${mm2} mm², ${claim.reading}`).not.toBe('falls short');
  });

  it('says that the copper is not there when the piece is too light, whatever it is made of', () => {
    for (const [mm2, inside] of [
      [30.5, undefined],
      [25, undefined],
      [33.6, CLAD],
    ] as const)
      expect(claimOf(massOnly(mm2, 'OFC', inside), 'copper held')!.outcome, `${mm2} mm²`).toBe('falls short');
  });

  it('cannot say that the copper is there: another metal may weigh as much', () => {
    expect(claimOf(massOnly(33.6), 'copper held')!.outcome).toBe('not settled');
    const { metal_found, next_reading, conductor_area, spread_from } = massOnly(33.6);
    expect(metal_found).toBeNull();
    // The area is shown "if copper": its budget is of that, and the next reading is there to tell the metal.
    expect(conductor_area!.condition).toBe('if copper');
    expect(spread_from[0].label).toBe('Lay of the strands');
    expect(next_reading!.half_width_now).toBeNull();
    expect(next_reading!.text).toContain('tells the metal');
    expect(next_reading!.half_width_then).toBeLessThan(2);
  });
});

describe('settings', () => {
  it('stricter levels leave more open', () => {
    const bench = oneCable('2 AWG', 'OFC').everything('p', 32.4);
    const [loose] = bench.findings({ levels: { meetsAbove: 0.5, shortBelow: 0.499 } }).cables;
    const [strict] = bench.findings({ levels: { meetsAbove: 0.999999, shortBelow: 0.000001 } }).cables;
    expect(claimOf(loose, 'AWG by area')!.outcome).not.toBe('not settled');
    expect(claimOf(strict, 'AWG by area')!.outcome).toBe('not settled');
  });
});
