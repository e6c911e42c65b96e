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
    { what: 'half as much, with one fellow only', value: '73', fellows: ['147.30'], code: null },
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
