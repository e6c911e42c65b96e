import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry } from '../../src/journal/entry.ts';
import { fold } from '../../src/trial/fold.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { entry, onePiece } from './entries.ts';

const SEED = 20261125;

const at = (clock: string) => `2026-10-03T${clock}Z`;
const mass = (id: string, specimen: string, time: string, more: Record<string, string> = {}) =>
  entry('reading', {
    reading: id,
    specimen,
    quantity: 'conductor_mass',
    value: '93.1',
    unit: 'g',
    ...(time ? { at: at(time) } : {}),
    ...more,
  });
const retag = (name: string, row: Record<string, string>) =>
  entry('retag', { retag: name, kind: 'swap', specimen: 'q1', becomes: 's1', why: 'tags mixed up', ...row });

/** Two cables with a piece each, read at ten, eleven and twelve. */
const TWO_PIECES: Entry[] = [
  ...onePiece(),
  entry('cable', { cable: 'salt', claimed_size: '4 AWG' }),
  entry('specimen', { specimen: 's1', cable: 'salt', cut_length: '300' }),
  ...['10', '11', '12'].flatMap((hour) => [
    mass(`q-${hour}`, 'q1', `${hour}:00`),
    mass(`s-${hour}`, 's1', `${hour}:00`),
  ]),
];

const pieces = (trial: Trial) => Object.fromEntries(trial.readings.map((one) => [one.reading, one.specimen]));
const AS_TYPED = { 'q-10': 'q1', 's-10': 's1', 'q-11': 'q1', 's-11': 's1', 'q-12': 'q1', 's-12': 's1' };

describe('a swap', () => {
  it('changes the pieces of what was read in its span, both ends included', () => {
    const trial = fold([...TWO_PIECES, retag('t', { from: at('11:00'), until: at('12:00') })]);
    expect(pieces(trial)).toEqual({ ...AS_TYPED, 'q-11': 's1', 's-11': 'q1', 'q-12': 's1', 's-12': 'q1' });
    const moved = trial.readings.find(({ reading }) => reading === 'q-11')!;
    expect([moved.cable, moved.row.specimen, moved.retagged]).toEqual(['salt', 'q1', ['t']]);
    const still = trial.readings.find(({ reading }) => reading === 'q-10')!;
    expect([still.cable, still.retagged]).toEqual(['quill', []]);
    expect(trial.remarks).toEqual([]);
  });

  it.each([
    ['from the beginning', { until: at('10:30') }, ['q-10', 's-10']],
    ['to the end', { from: at('11:30') }, ['q-12', 's-12']],
    ['up to when it was said, not beyond', { from: at('10:30'), at: at('11:30') }, ['q-11', 's-11']],
    ['for a whole day', { from: '2026-10-03', until: '2026-10-03' }, Object.keys(AS_TYPED)],
    ['for no time', { from: at('08:00'), until: at('09:00') }, []],
  ])('may hold %s', (_what, span, wanted) => {
    const trial = fold([...TWO_PIECES, retag('t', span)]);
    expect(trial.readings.filter(({ retagged }) => retagged.length > 0).map(({ reading }) => reading)).toEqual(wanted);
  });

  it('undoes itself when it is said twice', () => {
    const span = { from: at('10:30') };
    const trial = fold([...TWO_PIECES, retag('t', span), retag('u', span)]);
    expect(pieces(trial)).toEqual(AS_TYPED);
    expect(trial.readings.find(({ reading }) => reading === 'q-11')!.retagged).toEqual(['t', 'u']);
  });

  it('corrected by a later row of its name counts once, as corrected', () => {
    const trial = fold([...TWO_PIECES, retag('t', {}), retag('t', { from: at('11:30') })]);
    expect(pieces(trial)).toEqual({ ...AS_TYPED, 'q-12': 's1', 's-12': 'q1' });
  });

  it('leaves struck readings as they were, and moves a correction with what it replaces', () => {
    const trial = fold([
      ...TWO_PIECES,
      mass('q-11b', 'q1', '11:05', { replaces: 'q-11', why: 'digits swapped' }),
      entry('strike', { reading: 'q-12', why: 'draught' }),
      retag('t', { from: at('10:30') }),
    ]);
    const of = (id: string) => trial.readings.find(({ reading }) => reading === id)!;
    expect([of('q-12').specimen, of('q-12').standing, of('q-12').retagged]).toEqual(['q1', 'struck', []]);
    expect([of('q-11').specimen, of('q-11').standing]).toEqual(['s1', 'replaced']);
    expect([of('q-11b').specimen, of('q-11b').standing]).toEqual(['s1', 'counted']);
  });

  it('moves judgements, jackets and amps along', () => {
    const trial = fold([
      ...TWO_PIECES,
      entry('judgement', { judgement: 'j1', left: 'q1', right: 's1', result: 'left', at: at('11:00') }),
      entry('judgement', { judgement: 'j2', left: 'q1', right: 's1', result: 'left', at: at('10:00') }),
      entry('endurance', {
        specimen: 'q1',
        test: 'scrape',
        amount: '9',
        unit: 'strokes',
        outcome: 'failed',
        at: at('11:00'),
      }),
      entry('current', { specimen: 's1', time_s: '0', current_A: '100' }),
      retag('t', { from: at('10:30'), until: at('11:30') }),
      retag('u', { specimen: 's1', becomes: 'q2', kind: 'tag' }),
    ]);
    const judged = Object.fromEntries(trial.judgements.map(({ judgement, left, right }) => [judgement, [left, right]]));
    expect(judged).toEqual({ j1: ['q2', 'q1'], j2: ['q1', 'q2'] });
    expect(trial.judgements.find(({ judgement }) => judgement === 'j1')!.retagged).toEqual(['t', 'u']);
    expect(trial.endurance.map(({ specimen }) => specimen)).toEqual(['q2']);
    expect(trial.currents.map(({ specimen, row }) => [specimen, row.specimen])).toEqual([['q2', 's1']]);
  });
});

describe('a changed tag', () => {
  it('moves what was recorded on one piece to another, and nothing back', () => {
    const trial = fold([...TWO_PIECES, retag('t', { kind: 'tag', from: at('11:30') })]);
    expect(pieces(trial)).toEqual({ ...AS_TYPED, 'q-12': 's1' });
  });

  it('may name a piece that is described later: what it moves there is remarked on', () => {
    const trial = fold([...TWO_PIECES, retag('t', { kind: 'tag', becomes: 'x9', from: at('11:30') })]);
    expect(trial.readings.find(({ reading }) => reading === 'q-12')).toMatchObject({ specimen: 'x9', cable: '' });
    expect(trial.remarks.map(({ code }) => code)).toEqual(['not-yet-described', 'not-yet-described']);
    expect(trial.remarks.map(({ text }) => text).join(' ')).toContain('Repair t names piece x9');
  });
});

describe('a repair', () => {
  it.each([
    ['of nothing', { from: at('08:00'), until: at('09:00') }, 'retag-without-effect'],
    ['of no known kind', { kind: 'shuffle' }, 'cannot-be-read'],
    ['of a span that cannot be read', { from: 'lunch' }, 'cannot-be-read'],
  ])('%s is remarked on and moves nothing', (_what, row, code) => {
    const trial = fold([...TWO_PIECES, retag('t', row)]);
    expect(trial.remarks.map((one) => one.code)).toEqual([code]);
    expect(pieces(trial)).toEqual(AS_TYPED);
  });

  it('of a span counts readings without a time as of the first day, and says so', () => {
    const trial = fold([...TWO_PIECES, mass('untimed', 'q1', ''), retag('t', { from: at('10:30') })]);
    expect(pieces(trial).untimed).toBe('q1');
    expect(trial.remarks).toMatchObject([{ code: 'retag-of-untimed', readings: ['untimed'] }]);
    expect(fold([...TWO_PIECES, mass('untimed', 'q1', ''), retag('t', {})]).remarks).toEqual([]);
  });
});

describe('repairs, for all journals', () => {
  const spans = fc.record(
    { from: fc.constantFrom(at('10:30'), at('11:30')), until: fc.constantFrom(at('11:00'), at('12:00')) },
    { requiredKeys: [] },
  );
  const repairs = fc
    .array(fc.record({ span: spans, kind: fc.constantFrom('swap', 'tag'), way: fc.boolean() }), { maxLength: 5 })
    .map((all) =>
      all.map(({ span, kind, way }, i) =>
        retag(`t${i}`, { kind, specimen: way ? 'q1' : 's1', becomes: way ? 's1' : 'q1', ...span }),
      ),
    );

  it('do not depend on the order in which entries arrive', () => {
    const chance = repairs.chain((all) => {
      const journal = [...TWO_PIECES, ...all];
      return fc.tuple(fc.constant(journal), fc.shuffledSubarray(journal, { minLength: journal.length }));
    });
    fc.assert(
      fc.property(chance, ([journal, shuffled]) => {
        expect(fold(shuffled)).toEqual(fold(journal));
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it('swaps alone lose no reading of either piece, and each swap again in turn undoes all', () => {
    fc.assert(
      fc.property(fc.array(spans, { maxLength: 4 }), (all) => {
        const there = all.map((span, i) => retag(`t${i}`, span));
        const back = [...all].reverse().map((span, i) => retag(`b${i}`, span));
        const once = Object.values(pieces(fold([...TWO_PIECES, ...there]))).sort();
        expect(once).toEqual(Object.values(AS_TYPED).sort());
        expect(pieces(fold([...TWO_PIECES, ...there, ...back]))).toEqual(AS_TYPED);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });
});
