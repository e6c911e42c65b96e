import { describe, expect, it } from 'vitest';
import { specimenRow } from '../../../src/findings/plan/cablePieces.ts';
import { planOf } from '../../../src/findings/plan.ts';
import { SPECIMEN_TABLE } from '../../../src/journal/kinds/specimen.ts';
import { checkRow } from '../../../src/journal/rowCheck.ts';
import { fold } from '../../../src/trial/fold.ts';
import { expectClose } from '../../tolerance.ts';
import { entry } from '../../trial/entries.ts';
import { cable, DESCRIBED, setting, TOOLS, trialOf } from './trials.ts';

const NO_POWER = { draws: 0 };
/** m, as the plan has it unless set otherwise. */
const SAW_LOSS = 0.002;
const codes = (plan: ReturnType<typeof planOf>) => plan.cables.flatMap((c) => c.pieces.map((p) => p.code));

describe('the plan of two cables', () => {
  const trial = trialOf(cable('harrow'), cable('sedge'));
  const plan = planOf(trial, NO_POWER);

  it('cuts a piece to bend, one to take apart out of it, and keeps one back', () => {
    const [harrow] = plan.cables;
    expect(harrow!.pieces.map((p) => [p.specimen, p.kind, p.cutFrom])).toEqual([
      ['harrow-whole', 'whole', null],
      ['harrow-b1', 'bend', 'harrow-whole'],
      ['harrow-a1', 'apart', 'harrow-b1'],
      ['harrow-kept', 'kept', 'harrow-whole'],
    ]);
    expect(harrow!.shortBy).toBe(0);
    expectClose(harrow!.leftover, 3 - harrow!.needed, { relative: 1e-12 });
  });

  it('gives every piece a code of its own', () => {
    expect(new Set(codes(plan)).size).toBe(8);
  });

  it('proposes rows that the door lets in', () => {
    for (const piece of plan.cables.flatMap((c) => c.pieces))
      expect(checkRow(SPECIMEN_TABLE, specimenRow(piece), { now: Date.UTC(2026, 10, 1) })).toEqual([]);
  });

  it('reads ohms before it cuts, and adds up its minutes', () => {
    const steps = plan.steps.map((s) => s.step);
    expect(steps.slice(0, 3)).toEqual(['ohms', 'bend', 'cut']);
    expectClose(
      plan.minutes,
      plan.steps.reduce((sum, s) => sum + s.minutes, 0),
      { relative: 1e-12 },
    );
    expect(plan.order[0]).toMatchObject({ step: 'ohms', round: 1 });
  });

  it('has the cables lie in the room first', () => {
    expect(plan.conditioning).toMatchObject({ hours: 2, celsius: 20 });
    expect(plan.conditioning.text).toMatch(/at 20 °C, for 2 hours/);
  });

  it('keeps its codes and its order while readings come in', () => {
    const later = trialOf(
      cable('harrow'),
      cable('sedge'),
      entry('specimen', { specimen: 'harrow-whole', cable: 'harrow', kind: 'whole', code: codes(plan)[0]! }),
      entry('reading', {
        reading: 'r1',
        specimen: 'harrow-whole',
        quantity: 'resistance',
        value: '0.95',
        unit: 'mohm',
        at_length: '2800',
      }),
    );
    const then = planOf(later, NO_POWER);
    expect(codes(then)).toEqual(codes(plan));
    expect(then.order).toEqual(plan.order);
  });

  it('takes pieces on record as they are', () => {
    const own = entry('specimen', { specimen: 'H7', cable: 'harrow', kind: 'bend', cut_length: '450', code: 'KR' });
    const [harrow] = planOf(trialOf(cable('harrow'), own), NO_POWER).cables;
    expect(harrow!.pieces.filter((p) => p.kind === 'bend')).toMatchObject([
      { specimen: 'H7', length: 0.45, code: 'KR', onRecord: true },
    ]);
    expect(harrow!.pieces.find((p) => p.kind === 'apart')!.cutFrom).toBe('H7');
  });
});

describe('what the pieces of one cable take', () => {
  const piece = (name: string, more: object) =>
    entry('specimen', { specimen: name, cable: 'harrow', kind: 'abuse', cut_length: '120', ...more });

  it('counts the pieces on record, too, where they take more than the plan', () => {
    const without = planOf(trialOf(cable('harrow')), NO_POWER).cables[0]!;
    const more = [1, 2, 3, 4, 5, 6].map((n) => piece(`x${n}`, { cut_from: 'w' }));
    const whole = piece('w', { kind: 'whole', cut_length: '3000' });
    const heated = piece('hot', { kind: '', cut_length: '600', cut_from: 'w' });
    const [harrow] = planOf(trialOf(cable('harrow'), whole, ...more, heated), NO_POWER).cables;
    const cut = without.pieces.filter((p) => p.cutFrom === 'harrow-whole');
    const planned = cut.reduce((sum, p) => sum + p.length! + SAW_LOSS, 0);
    expectClose(harrow!.recorded, 6 * 0.12 + 0.6, { relative: 1e-12 });
    expectClose(harrow!.needed, planned + 6 * (0.12 + SAW_LOSS) + 0.6 + SAW_LOSS, { relative: 1e-12 });
    expectClose(harrow!.leftover, 3 - harrow!.needed, { relative: 1e-12 });
    expect(harrow!.cuts).toBe(without.cuts + 7);
  });

  it('stays as it was once the proposed pieces are on record', () => {
    const first = planOf(trialOf(cable('harrow')), NO_POWER).cables[0]!;
    const rows = first.pieces.map((each) => entry('specimen', specimenRow(each)));
    const [then] = planOf(trialOf(cable('harrow'), ...rows), NO_POWER).cables;
    expectClose(then!.needed, first.needed, { relative: 1e-12 });
    expect(then!.cuts).toBe(first.cuts);
  });

  it('is not short of a saw cut where the pieces on record are just what was bought', () => {
    const halves = [1, 2].map((n) => piece(`x${n}`, { cut_length: '1500' }));
    const only = [setting('methods', 'abuse'), setting('kept_mm', '0'), setting('abuse_pieces', '2')];
    const more = [...only, setting('bend_pieces', '0'), ...halves];
    const [harrow] = planOf(trialOf(cable('harrow'), ...more), NO_POWER).cables;
    expectClose(harrow!.needed, 3 + 2 * SAW_LOSS, { relative: 1e-12 });
    expect([harrow!.shortBy, harrow!.leftover]).toEqual([0, 0]);
  });

  it('takes a piece of no said kind for the bought length itself', () => {
    const [harrow] = planOf(trialOf(cable('harrow'), piece('p', { kind: '', cut_length: '3000' })), NO_POWER).cables;
    expect(harrow!.recorded).toBe(0);
    expect(harrow!.shortBy).toBe(0);
  });
});

describe('settings of the plan', () => {
  it('choose methods, repeats and pieces', () => {
    const plan = planOf(
      trialOf(
        cable('harrow'),
        setting('methods', 'weigh, abuse'),
        setting('repeats', '2'),
        setting('abuse_pieces', '4'),
      ),
      NO_POWER,
    );
    expect(plan.steps.map((s) => s.step)).toEqual(['cut', 'strip', 'weigh', 'abuse']);
    expect(plan.steps.find((s) => s.step === 'weigh')!.blocks).toHaveLength(2);
    expect(plan.cables[0]!.pieces.filter((p) => p.kind === 'abuse')).toHaveLength(4);
  });

  it('buy whole feet, and cost what they cost', () => {
    const priced = cable('harrow', { bought_length: '', price: '5', price_per: 'foot', currency: 'USD' });
    const plan = planOf(trialOf(priced, setting('sold_in', 'feet')), NO_POWER);
    const feet = plan.cables[0]!.toBuy / 0.3048;
    expectClose(feet, Math.round(feet), { relative: 1e-9 });
    expect(plan.cables[0]!.toBuy).toBeGreaterThanOrEqual(plan.cables[0]!.needed);
    expectClose(plan.cables[0]!.cost!.amount, 5 * feet, { relative: 1e-9 });
    expect(plan.cost).toEqual([plan.cables[0]!.cost]);
  });

  it('that cannot be read leave the default', () => {
    const plan = planOf(trialOf(cable('harrow'), setting('methods', 'guess'), setting('kept_mm', 'long')), NO_POWER);
    expect([...plan.settings.methods]).toContain('ohms');
    expect(plan.settings.keptLength).toBe(0.3);
  });
});

describe('warnings of the plan', () => {
  const warned = (...entries: Parameters<typeof trialOf>) =>
    planOf(trialOf(...entries), NO_POWER).warnings.map((w) => w.code);
  const whole = entry('specimen', { specimen: 'w', cable: 'harrow', kind: 'whole' });
  const ohms = entry('reading', {
    reading: 'r',
    specimen: 'w',
    quantity: 'resistance',
    value: '0.95',
    unit: 'mohm',
    at_length: '2800',
  });

  it('ask for ohms on the whole length before the first cut, until they are there', () => {
    expect(warned(cable('harrow'))).toContain('no-ohms-on-whole');
    expect(warned(cable('harrow'), whole)).toContain('no-ohms-on-whole');
    expect(warned(cable('harrow'), whole, ohms)).not.toContain('no-ohms-on-whole');
    expect(warned(cable('harrow'), whole, ohms, entry('strike', { reading: 'r', why: 'loose clip' }))).toContain(
      'no-ohms-on-whole',
    );
  });

  it('refuse an ordinary multimeter, and a caliper on strands', () => {
    const multimeter = entry('instrument', { instrument: 'dmm', kind: 'multimeter', resolution: '0.1', unit: 'ohm' });
    const caliper = entry('instrument', { instrument: 'cal', kind: 'digital caliper', resolution: '0.01', unit: 'mm' });
    expect(warned(cable('harrow'), multimeter, caliper)).toEqual(
      expect.arrayContaining(['tool-refused', 'caliper-on-strands']),
    );
  });

  it('say how much cable is lacking', () => {
    expect(warned(cable('harrow', { bought_length: '0.5' }))).toContain('too-short');
    expect(warned(cable('harrow', { bought_length: '' }))).not.toContain('too-short');
  });

  it('say when the pieces on record are longer together than what was bought', () => {
    const piece = (name: string, length: string, from = '') =>
      entry('specimen', { specimen: name, cable: 'harrow', kind: 'abuse', cut_length: length, cut_from: from });
    const three = [piece('x1', '700'), piece('x2', '700'), piece('x3', '700')];
    const bought = (length: string, ...more: ReturnType<typeof piece>[]) =>
      planOf(trialOf(cable('harrow', { bought_length: length }), ...three, ...more), NO_POWER);
    const said = bought('2').warnings.filter((w) => w.cable === 'harrow');
    expect(said.map((w) => w.code)).toContain('more-than-bought');
    expect(said.map((w) => w.code)).not.toContain('too-short');
    expect(said.map((w) => w.text).join()).toContain(
      'the pieces on record add up to 2100 mm, but 2000 mm were bought.',
    );
    const codesAt = (length: string) => bought(length).warnings.map((w) => w.code);
    expect(codesAt('2.1')).not.toContain('more-than-bought');
    // What is cut from another piece is in that one already.
    expect(bought('2.5', piece('x4', '300', 'x1')).cables[0]!.recorded).toBeCloseTo(2.1, 12);
  });

  it('say when a piece is longer than what it is cut from', () => {
    const parent = entry('specimen', { specimen: 'p', cable: 'harrow', kind: 'bend', cut_length: '400' });
    const child = entry('specimen', {
      specimen: 'c',
      cable: 'harrow',
      kind: 'apart',
      cut_length: '500',
      cut_from: 'p',
    });
    expect(warned(cable('harrow'), parent, child)).toContain('longer-than-its-parent');
  });

  const priced = (name: string, price: string, more = {}) =>
    cable(name, { price, price_per: 'foot', currency: 'USD', ...more });

  it('ask about a price under the metal’s own value', () => {
    // 1/0 holds about 0.15 kg of copper a foot: at 9 a kg, 1.35.
    expect(warned(priced('harrow', '1.20'))).toContain('price-under-metal');
    expect(warned(priced('harrow', '1.60'))).not.toContain('price-under-metal');
    expect(warned(priced('harrow', '1.20', { claimed_metal: 'CCA' }))).not.toContain('price-under-metal');
    expect(warned(priced('harrow', '1.20'), setting('copper_price_per_kg', '7'))).not.toContain('price-under-metal');
    expect(warned(priced('harrow', '120', { currency: 'JPY' }))).not.toContain('price-under-metal');
  });

  it('mark a price that cannot be read, and say that no total has it', () => {
    const plan = planOf(trialOf(priced('a', 'cheap'), priced('b', '3,75 USD', { currency: '' })), NO_POWER);
    expect(plan.warnings.filter((w) => w.code === 'price-not-read').map((w) => [w.cable, w.text])).toEqual([
      ['a', expect.stringContaining('the price “cheap” cannot be read, so no total has it')],
    ]);
    expect(plan.cost.map((c) => c.currency)).toEqual(['USD']);
  });

  it('make one total of one currency, however it is written, and say when there are several', () => {
    const totals = (...prices: [string, string][]) => {
      const cables = prices.map(([price, currency], i) => priced(`c${i}`, price, { currency }));
      const plan = planOf(trialOf(...cables), NO_POWER);
      return [plan.cost.map((c) => c.currency), plan.warnings.some((w) => w.code === 'mixed-currencies')];
    };
    expect(totals(['$4.29', ''], ['3.75', ''])).toEqual([['$'], false]);
    expect(totals(['$4.29', ''], ['3,75 USD', ''], ['4', 'usd'])).toEqual([['USD'], false]);
    expect(totals(['4.29 $', ''], ['5', 'CAD'])).toEqual([['CAD'], false]);
    expect(totals(['4,29 €', ''], ['5', 'USD'], ['6', ''])).toEqual([['EUR', 'USD', ''], true]);
  });

  it('say a price for the length that the row counts in', () => {
    const said = (more: object) => {
      const cables = ['5', '5', '12'].map((price, i) => priced(`c${i}`, price, more));
      return planOf(trialOf(...cables), NO_POWER).warnings.find((w) => w.code === 'price-apart')?.text;
    };
    expect(said({})).toMatch(/costs 12\.00 USD a foot, its fellows about 5\.00 USD a foot\./);
    expect(said({ price_per: 'metre' })).toMatch(/costs 12\.00 USD a metre, its fellows about 5\.00 USD a metre\./);
    expect(said({ price_per: '', bought_length: '2', bought_length_unit: 'm' })).toMatch(/costs 6\.00 USD a metre/);
  });

  it('ask about a price far from its fellows, once there are two', () => {
    expect(warned(priced('a', '4'), priced('b', '5'), priced('c', '12'))).toContain('price-apart');
    expect(warned(priced('a', '4'), priced('c', '12'))).not.toContain('price-apart');
    expect(warned(priced('a', '4'), priced('b', '5'), priced('c', '6'))).not.toContain('price-apart');
  });
});

describe('what the plan lacks', () => {
  it('is everything, for an empty trial', () => {
    const { missing, cables, minutes, sentence } = planOf(fold([DESCRIBED]));
    expect(missing.join(' ')).toMatch(/Add the cables.*tools/s);
    expect({ cables, minutes, sentence }).toEqual({ cables: [], minutes: 0, sentence: '' });
  });

  it('is nothing but a control piece for two described cables', () => {
    const { missing } = planOf(trialOf(cable('harrow'), cable('sedge')), NO_POWER);
    expect(missing).toHaveLength(1);
    expect(missing[0]).toMatch(/control piece/);
  });

  it('names cables whose size cannot be read', () => {
    const { missing } = planOf(trialOf(cable('harrow', { claimed_size: 'thick' })), NO_POWER);
    expect(missing.join()).toMatch(/size.*harrow/);
  });
});

describe('proof shots', () => {
  it('are there when a note with a photo says so, about the cable, a piece or a reading', () => {
    const note = (name: string, about: string, which: string, shot: string, photo = 'a.jpg') =>
      entry('note', { note: name, about, which, shot, photo });
    const trial = trialOf(
      cable('harrow'),
      cable('sedge'),
      entry('specimen', { specimen: 'h1', cable: 'harrow', kind: 'apart', cut_length: '300' }),
      entry('reading', { reading: 'r1', specimen: 'h1', quantity: 'conductor_mass', value: '147', unit: 'g' }),
      note('n1', 'cable', 'harrow', 'receipt'),
      note('n2', 'specimen', 'h1', 'cut face'),
      note('n3', 'reading', 'r1', 'scale display'),
      note('n4', 'cable', 'sedge', 'print'),
      entry('note', { note: 'n5', about: 'cable', which: 'harrow', shot: 'print', text: 'no photo yet' }),
    );
    const [harrow, sedge] = planOf(trial, NO_POWER).cables;
    const there = (shots: typeof harrow.shots) => shots.filter((s) => s.notes.length > 0).map((s) => s.shot);
    expect(there(harrow!.shots)).toEqual(['receipt', 'cut face', 'scale display']);
    expect(there(sedge!.shots)).toEqual(['print']);
  });
});

describe('the power of a trial’s plan', () => {
  const draws = 200;

  it('is one sentence for the trial, and one answer for each label', () => {
    const plan = planOf(trialOf(cable('harrow'), cable('sedge'), cable('tarn', { claimed_size: '35 mm2' })), { draws });
    expect(plan.powers.map((p) => [p.size, p.cables])).toEqual([
      ['1/0 AWG', ['harrow', 'sedge']],
      ['35 mm2', ['tarn']],
    ]);
    expect(plan.sentence).toMatch(/shows a 5 % shortfall \d+ times in 100/);
  });

  it('leaves out cables that claim no copper, and control pieces', () => {
    const plan = planOf(trialOf(cable('a', { claimed_metal: 'CCA' }), cable('b', { role: 'control' })), { draws });
    expect(plan.powers).toEqual([]);
    expect(plan.sentence).toBe('');
  });

  it('says so when the tools read nothing', () => {
    const [, ...others] = TOOLS;
    const ruleAlone = fold([DESCRIBED, others[0]!, cable('harrow')]);
    expect(planOf(ruleAlone, { draws }).sentence).toMatch(/nothing of the conductor can be read/);
  });
});

describe('a piece on record while settings change', () => {
  it('keeps its length, and says how it would be cut now', () => {
    const first = planOf(trialOf(cable('harrow')), NO_POWER).cables[0]!.pieces;
    const rows = first.map((piece) => entry('specimen', specimenRow(piece)));
    const [apart] = planOf(
      trialOf(cable('harrow'), ...rows, setting('apart_mm', '900')),
      NO_POWER,
    ).cables[0]!.pieces.filter((piece) => piece.kind === 'apart');
    expect(apart).toMatchObject({ onRecord: true, length: 0.3, cutFrom: 'harrow-b1' });
    expect(apart!.planned).toEqual({ length: 0.9, cutFrom: 'harrow-whole' });
  });

  it('says nothing new of pieces that the plan no longer asks for', () => {
    const first = planOf(trialOf(cable('harrow')), NO_POWER).cables[0]!.pieces;
    const rows = first.map((piece) => entry('specimen', specimenRow(piece)));
    const pieces = planOf(trialOf(cable('harrow'), ...rows, setting('methods', 'ohms')), NO_POWER).cables[0]!.pieces;
    expect(pieces.find((piece) => piece.kind === 'bend')).toMatchObject({ onRecord: true, planned: null });
  });
});

describe('a plan that checks of the tools have changed', () => {
  const kitchen = entry('instrument', { instrument: 'kitchen', kind: 'kitchen scale', resolution: '1', unit: 'g' });
  const check = (name: string, read: string) =>
    entry('check', {
      check: name,
      instrument: 'scale',
      against: 'check weight',
      known_value: '100',
      unit: 'g',
      read_value: read,
    });
  const said = (...entries: ReturnType<typeof entry>[]) =>
    planOf(trialOf(cable('harrow'), kitchen, ...entries), NO_POWER).warnings.filter(
      (one) => one.code === 'plan-by-checks',
    );

  it('says so, with what was seen and what became of it', () => {
    const [warning] = said(check('k1', '3.7 oz'));
    expect(warning!.text).toMatch(
      /^The plan is another by what the checks showed \(scale, which read 3\.7 oz on 100 g\): weighing goes from scale to kitchen; pieces to take apart are \d+ mm instead of \d+ mm \(harrow\)\. If a check was typed wrong/,
    );
  });

  it('says nothing where it stands as it stood', () => {
    expect(said()).toEqual([]);
    expect(said(check('k1', '3.7 oz'), check('k2', '100.10'))).toEqual([]);
  });
});
