import { describe, expect, it } from 'vitest';
import type { Entry } from '../../src/journal/entry.ts';
import { fold } from '../../src/trial/fold.ts';
import { entry, onePiece, reading } from './entries.ts';

const remarksOn = (...entries: Entry[]) =>
  fold([...onePiece(), ...entries]).remarks.map(({ code, cable, readings }) => ({ code, cable, readings }));
const masses = (...values: string[]) => values.map((value, i) => reading(`r${i}`, 'conductor_mass', value, 'g'));

/** Four cables of one label, a piece of each, one mass of each. */
function field(values: Record<string, [value: string, unit: string, length: string]>, size = '2 AWG'): Entry[] {
  return Object.entries(values).flatMap(([cable, [value, unit, cut_length]]) => [
    entry('cable', { cable, claimed_size: size }),
    entry('specimen', { specimen: `${cable}1`, cable, cut_length }),
    entry('reading', { reading: `m-${cable}`, specimen: `${cable}1`, quantity: 'conductor_mass', value, unit }),
  ]);
}

describe('remarks on values', () => {
  it('says nothing about repeats that agree', () => {
    expect(remarksOn(...masses('93.10', '93.12', '93.09'))).toEqual([]);
  });

  it('flags a slip of the decimal point among repeats, and only that one', () => {
    expect(remarksOn(...masses('93.10', '9.312', '93.09'))).toEqual([
      { code: 'ten-times-its-fellows', cable: 'quill', readings: ['r1'] },
    ]);
  });

  it('flags both of two that differ, since either may be wrong', () => {
    expect(remarksOn(...masses('93.10', '931.2'))).toEqual([
      { code: 'ten-times-its-fellows', cable: 'quill', readings: ['r0', 'r1'] },
    ]);
  });

  it('knows ounces typed as grams among repeats', () => {
    expect(remarksOn(...masses('93.10', '3.28', '93.09'))).toEqual([
      { code: 'looks-like-ounces', cable: 'quill', readings: ['r1'] },
    ]);
  });

  it('lets struck and replaced readings be', () => {
    expect(remarksOn(...masses('93.10', '9.312', '93.09'), entry('strike', { reading: 'r1', why: 'slip' }))).toEqual(
      [],
    );
  });

  it('knows a cable weighed in ounces among cables of its label, whatever their lengths', () => {
    const fellows = field({
      a: ['93', 'g', '300'],
      b: ['180', 'g', '600'],
      c: ['3.3', 'g', '300'],
      d: ['91', 'g', '300'],
    });
    expect(remarksOn(...fellows)).toEqual([{ code: 'looks-like-ounces', cable: 'c', readings: ['m-c'] }]);
    const right = field({
      a: ['93', 'g', '300'],
      b: ['180', 'g', '600'],
      c: ['3.3', 'oz', '300'],
      d: ['28', 'g', '300'],
    });
    expect(remarksOn(...right)).toEqual([]);
  });

  it('knows ounces by the label alone, for a single cable', () => {
    // 2 AWG is 33.6 mm²: 300 mm of it in copper weigh about 90 g, or 3.2 oz; in aluminium 27 g.
    expect(remarksOn(...masses('3.2'))).toEqual([{ code: 'looks-like-ounces', cable: 'quill', readings: ['r0'] }]);
    expect(remarksOn(...masses('90'))).toEqual([]);
    expect(remarksOn(...masses('27'))).toEqual([]);
    expect(remarksOn(...masses('12'))).toEqual([]);
  });

  it('does not compare cables of different labels, nor control pieces', () => {
    const thick = field({ a: ['93', 'g', '300'], b: ['91', 'g', '300'], c: ['92', 'g', '300'] });
    const thin = field({ z: ['9', 'g', '300'] }, '12 AWG');
    const control = entry('cable', { cable: 'z', claimed_size: '2 AWG', role: 'control' });
    expect(remarksOn(...thick, ...thin)).toEqual([]);
    expect(remarksOn(...thick, ...thin, control)).toEqual([]);
  });

  it('flags what is wider than what it lies in', () => {
    const diameter = (id: string, quantity: string, value: string) => reading(id, quantity, value, 'mm');
    const bundle = diameter('b', 'conductor_diameter', '7.6');
    const jacket = diameter('o', 'outer_diameter', '11.2');
    expect(remarksOn(bundle, jacket, diameter('s', 'strand_diameter', '0.25'))).toEqual([]);
    expect(remarksOn(bundle, jacket, diameter('s', 'strand_diameter', '25'))).toEqual([
      { code: 'strand-wider-than-bundle', cable: 'quill', readings: ['s'] },
    ]);
    expect(remarksOn(diameter('b', 'conductor_diameter', '12.6'), jacket).map(({ code }) => code)).toEqual([
      'bundle-wider-than-jacket',
    ]);
    expect(remarksOn(jacket, diameter('w', 'wall_thickness', '18')).map(({ code }) => code)).toEqual([
      'wall-wider-than-cable',
    ]);
  });

  it('lets one solid wire be its own strand and bundle by two tools', () => {
    expect(
      remarksOn(reading('s', 'strand_diameter', '2.053', 'mm'), reading('b', 'conductor_diameter', '2.05', 'mm')),
    ).toEqual([]);
  });
});

describe('remarks on temperatures', () => {
  const at = (...temperatures: string[]) =>
    temperatures.map((temperature, i) => reading(`t${i}`, 'resistance', '0.97', 'mohm', { temperature }));

  it('flags three degrees from the rest, not two and a half', () => {
    expect(remarksOn(...at('20', '20.5', '22.5'))).toEqual([]);
    expect(remarksOn(...at('20', '20', '23'))).toEqual([
      { code: 'temperature-apart', cable: 'quill', readings: ['t2'] },
    ]);
    expect(remarksOn(...at('20', '20', '17'))).toHaveLength(1);
  });

  it('knows Fahrenheit for what it is', () => {
    const fahrenheit = reading('f', 'resistance', '0.97', 'mohm', { temperature: '68', temperature_unit: 'F' });
    expect(remarksOn(...at('20', '20'), fahrenheit)).toEqual([]);
  });
});

describe('remarks on references', () => {
  it('says what is not described yet', () => {
    const remarks = fold([
      ...onePiece(),
      entry('specimen', { specimen: 'z1', cable: 'zebra' }),
      entry('reading', { reading: 'r1', specimen: 'y1', quantity: 'conductor_mass', value: '1', unit: 'g' }),
      reading('r2', 'conductor_mass', '1', 'g', { instrument: 'balance' }),
      reading('r3', 'conductor_mass', '1', 'g', { replaces: 'r0' }),
      entry('strike', { reading: 'r9', why: 'slip' }),
    ]).remarks;
    expect(remarks.every(({ code }) => code === 'not-yet-described')).toBe(true);
    expect(remarks.map(({ text }) => text)).toEqual([
      'Piece z1 is of cable zebra, which is not described yet.',
      'Piece y1 has readings but is not described yet; they are not used.',
      'Tool balance is not described yet; a usual limit of error is assumed.',
      'Reading r0 is said to be replaced but is not on record.',
      'Reading r9 is struck out but is not on record.',
    ]);
  });
});

describe('evidence', () => {
  it.each([
    ['10', 10, null],
    ['3 of 10', 10, 3],
    ['3/10', 10, 3],
    ['', null, null],
    ['some', null, null],
  ])('count "%s"', (count, looked, seenIn) => {
    const trial = fold([entry('evidence', { cable: 'quill', look: 'scraped_strand', seen: 'white core', count })]);
    expect(trial.evidence[0]).toMatchObject({ count: looked, seenIn });
  });
});
