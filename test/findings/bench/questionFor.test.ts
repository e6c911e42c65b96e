import { describe, expect, it } from 'vitest';
import { type CandidateReading, questionFor } from '../../../src/findings/bench/questionFor.ts';
import { entry } from '../../trial/entries.ts';
import { cable, trialOf } from '../plan/trials.ts';

const piece = entry('specimen', { specimen: 'a1', cable: 'harrow', kind: 'apart', cut_length: '300' });
const masses = (...values: string[]) =>
  values.map((value, i) =>
    entry('reading', { reading: `m${i}`, specimen: 'a1', quantity: 'conductor_mass', value, unit: 'g' }),
  );
const mass = (value: string, more: Partial<CandidateReading> = {}): CandidateReading => ({
  specimen: 'a1',
  quantity: 'conductor_mass',
  value,
  unit: 'g',
  ...more,
});
const ask = (candidate: CandidateReading, ...values: string[]) =>
  questionFor(trialOf(cable('harrow'), piece, ...masses(...values)), candidate)?.code ?? null;

describe('a reading with fellows', () => {
  const cases: { what: string; value: string; fellows: string[]; code: string | null }[] = [
    { what: 'among them', value: '147.31', fellows: ['147.30', '147.32'], code: null },
    { what: 'ten times', value: '1473', fellows: ['147.30'], code: 'ten-times' },
    { what: 'a tenth', value: '14.73', fellows: ['147.30', '147.32'], code: 'tenth' },
    { what: 'in ounces', value: '5.196', fellows: ['147.30'], code: 'ounces' },
    { what: 'far off, of three', value: '151', fellows: ['147.30', '147.32', '147.31'], code: 'far-off' },
    {
      what: 'far off, of seven',
      value: '147.9',
      fellows: ['147.30', '147.32', '147.31', '147.33', '147.29', '147.31'],
      code: 'far-off',
    },
    { what: 'one step off equal ones', value: '147.32', fellows: ['147.31', '147.31', '147.31'], code: null },
    { what: 'typed with fewer digits', value: '147', fellows: ['147.30', '147.32', '147.31'], code: null },
    { what: 'half as much, with one fellow only', value: '73', fellows: ['147.30'], code: 'differ' },
    { what: 'as a hand may be off, with one fellow only', value: '143', fellows: ['147.30'], code: null },
    { what: 'beside one of two that differ', value: '147.31', fellows: ['125', '147.30'], code: null },
    { what: 'far from both of two that differ', value: '135', fellows: ['120', '147.30'], code: 'differ' },
    { what: 'unreadable', value: 'heavy', fellows: ['147.30'], code: null },
  ];
  it.each(cases)('$what: $code', ({ value, fellows, code }) => {
    expect(ask(mass(value), ...fellows)).toBe(code);
  });

  it('compares ohms per metre, not ohms', () => {
    const ohms = (value: string, at_length: string): CandidateReading => ({
      specimen: 'a1',
      quantity: 'resistance',
      value,
      unit: 'mohm',
      at_length,
    });
    const before = entry('reading', { reading: 'r', ...ohms('0.9', '2700') });
    const trial = trialOf(cable('harrow'), piece, before);
    expect(questionFor(trial, ohms('0.09', '270'))).toBeNull();
    expect(questionFor(trial, ohms('0.9', '270'))?.code).toBe('ten-times');
  });

  describe('of few, by one tool', () => {
    const ohms = (value: string, more: Partial<CandidateReading> = {}): CandidateReading => ({
      ...{ specimen: 'w1', quantity: 'resistance', value, unit: 'mohm' },
      ...{ at_length: '2700', temperature: '20', instrument: 'meter', ...more },
    });
    const whole = entry('specimen', { specimen: 'w1', cable: 'harrow', kind: 'whole', cut_length: '3000' });
    const askAfter = (now: CandidateReading, ...before: CandidateReading[]) =>
      questionFor(
        trialOf(cable('harrow'), whole, ...before.map((row, i) => entry('reading', { reading: `r${i}`, ...row }))),
        now,
      );
    const cases: { what: string; now: CandidateReading; before: CandidateReading[]; code: string | null }[] = [
      { what: '16 % off', now: ohms('1.04'), before: [ohms('0.897')], code: 'differ' },
      { what: 'within what clips do', now: ohms('0.93'), before: [ohms('0.897')], code: null },
      { what: 'the third beside the second', now: ohms('1.045'), before: [ohms('0.897'), ohms('1.04')], code: null },
      { what: 'over another distance', now: ohms('0.45', { at_length: '1350' }), before: [ohms('0.897')], code: null },
      { what: 'as hot as that', now: ohms('1.04', { temperature: '60' }), before: [ohms('0.897')], code: null },
      {
        what: 'clips turned round',
        now: ohms('1.04', { position: 'reverse' }),
        before: [ohms('0.897', { position: 'forward' })],
        code: null,
      },
    ];
    it.each(cases)('ohms $what: $code', ({ now, before, code }) => {
      const asked = askAfter(now, ...before)?.code ?? null;
      expect(asked === 'temperature' ? null : asked).toBe(code);
    });

    it('is told with both readings, and that one of them is off', () => {
      expect(askAfter(ohms('1.04'), ohms('0.897'))?.text).toBe(
        'The resistance, 1.04 mΩ, and the reading before, 0.897 mΩ, differ by 16 %, more than tool and hand explain: one of them is off. Keep it, or measure again?',
      );
    });

    it('grants a rough tool what it may be off by', () => {
      const rough = entry('instrument', {
        ...{ instrument: 'rough', kind: 'four-wire meter', resolution: '0.01', unit: 'mohm', max_error: '0.1' },
      });
      const one = entry('reading', { reading: 'r', ...ohms('0.897', { instrument: 'rough' }) });
      const trial = trialOf(cable('harrow'), whole, rough, one);
      expect(questionFor(trial, ohms('1.04', { instrument: 'rough' }))).toBeNull();
    });
  });

  it('says nothing of loads that differ on purpose', () => {
    const push = (value: string) => ({ specimen: 'a1', quantity: 'push_force', value, unit: 'N' });
    const before = ['1.00', '1.01', '1.02'].map((v, i) => entry('reading', { reading: `p${i}`, ...push(v) }));
    expect(questionFor(trialOf(cable('harrow'), piece, ...before), push('2.5'))).toBeNull();
  });
});

describe('a first reading', () => {
  it('stands beside what its label lets expect: 1/0 over 300 mm is about 148 g', () => {
    expect(ask(mass('147.3'))).toBeNull();
    expect(ask(mass('1473'))).toBe('ten-times');
    expect(ask(mass('5.2'))).toBe('ounces');
  });

  it('of clad aluminium is no slip', () => {
    expect(ask(mass('57'))).toBeNull();
  });

  it('has nothing to stand beside where the label gives no area', () => {
    const trial = trialOf(cable('harrow', { claimed_size: 'thick' }), piece);
    expect(questionFor(trial, mass('1473'))).toBeNull();
  });
});

describe('a wild first reading', () => {
  const bend = entry('specimen', { specimen: 'b1', cable: 'harrow', kind: 'bend', cut_length: '370' });
  const whole = entry('specimen', {
    specimen: 'w1',
    cable: 'harrow',
    kind: 'whole',
    cut_length: '6',
    cut_length_unit: 'ft',
  });
  const long = entry('specimen', { specimen: 'l1', cable: 'harrow', kind: 'apart', cut_length: '750' });
  const trial = trialOf(cable('harrow'), piece, bend, whole, long);
  const cases: [specimen: string, quantity: string, value: string, unit: string, at: string, code: string | null][] = [
    ['w1', 'resistance', '99999', 'mohm', '5 ft 6 in', 'too-much'],
    ['w1', 'resistance', '0.000001', 'mohm', '5 ft 6 in', 'too-little'],
    ['w1', 'resistance', '0.55', 'mohm', '5 ft 6 in', null],
    ['w1', 'resistance', '0.9', 'mohm', '5 ft 6 in', null],
    ['w1', 'resistance', '99999', 'mohm', '', 'too-much'],
    ['w1', 'resistance', '0.55', 'mohm', '', 'no-contacts'],
    ['w1', 'resistance', '0.55', 'mohm', '5 m', 'contacts'],
    ['w1', 'resistance', '0.55', 'mohm', '1 3/8 in', 'contacts'],
    ['l1', 'specimen_mass', '5000', 'kg', '', 'too-much'],
    ['l1', 'specimen_mass', '5', 'g', '', 'too-little'],
    ['l1', 'specimen_mass', '560', 'g', '', null],
    ['l1', 'conductor_mass', '5000', 'kg', '', 'too-much'],
    ['l1', 'jacket_mass', '140', 'g', '', null],
    ['l1', 'jacket_mass', '140', 'kg', '', 'too-much'],
    ['l1', 'conductor_length', '1 3/8 in', 'mm', '', 'too-little'],
    ['l1', 'conductor_length', '29.5', 'in', '', null],
    ['l1', 'conductor_length', '7500', 'mm', '', 'ten-times'],
    ['b1', 'overhang', '9999', 'in', '', 'too-much'],
    ['b1', 'overhang', '300', 'mm', '', null],
    ['b1', 'tip_drop', '-9999', 'mm', '', 'too-much'],
    ['l1', 'outer_diameter', '15', 'mm', '', null],
    ['l1', 'outer_diameter', '15', 'in', '', 'too-much'],
    ['l1', 'strand_diameter', '0.25', 'mm', '', null],
    ['l1', 'strand_diameter', '25', 'mm', '', 'too-much'],
    ['l1', 'strand_count', '1064', '', '', null],
    ['l1', 'strand_count', '900000', '', '', 'too-much'],
  ];
  it.each(cases)('%s %s %s %s over "%s": %s', (specimen, quantity, value, unit, at_length, code) => {
    expect(questionFor(trial, { specimen, quantity, value, unit, at_length })?.code ?? null).toBe(code);
  });

  it('is told with what could be, in the unit that was typed', () => {
    const asked = questionFor(trial, { specimen: 'l1', quantity: 'specimen_mass', value: '5000 kg', unit: 'g' });
    expect(asked?.text).toMatch(
      /^The mass of the whole piece, 5000 kg, is far above what a cable labelled .* can read, 0\.0\d+ to [\d.]+ kg\./,
    );
  });

  it('of a length does not put the blame on the mass that comes after it', () => {
    const slipped = entry('reading', {
      reading: 'x',
      specimen: 'l1',
      quantity: 'conductor_length',
      value: '1 3/8',
      unit: 'in',
    });
    const massOf = (value: string) =>
      questionFor(trialOf(cable('harrow'), long, slipped), {
        specimen: 'l1',
        quantity: 'conductor_mass',
        value,
        unit: 'g',
      })?.code ?? null;
    expect(massOf('369')).toBeNull();
    expect(massOf('3690')).toBe('ten-times');
  });

  it('is no measure for the right one that follows', () => {
    expect(ask(mass('147.3'), '1473')).toBeNull();
    expect(ask(mass('1474'), '1473')).toBe('ten-times');
  });
});

describe('a temperature', () => {
  it.each([
    ['22.9', 'C', null],
    ['23', 'C', 'temperature'],
    ['17', 'C', 'temperature'],
    ['68', 'F', null],
    ['75', 'F', 'temperature'],
    ['', '', null],
  ])('%s %s against 20 °C: %s', (temperature, temperature_unit, code) => {
    expect(ask(mass('147.3', { temperature, temperature_unit }))).toBe(code);
  });
});
