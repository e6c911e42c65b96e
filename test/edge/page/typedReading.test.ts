import { describe, expect, it } from 'vitest';
import { typedReading } from '../../../src/edge/page/places/inside/typedReading.ts';
import type { Entry } from '../../../src/journal/entry.ts';
import { fold } from '../../../src/trial/fold.ts';

let count = 0;
const entry = (kind: string, body: Record<string, string>): Entry => {
  count += 1;
  return {
    id: `01900000-0000-7000-8000-${count.toString(16).padStart(12, '0')}`,
    trial: 't',
    kind,
    at: '',
    by: '',
    device: '',
    body,
  };
};

const ENTRIES = [
  entry('specimen', { specimen: 's', cable: 'quill' }),
  entry('specimen', { specimen: 'other', cable: 'saltmarsh' }),
  entry('reading', {
    reading: 'a',
    specimen: 's',
    quantity: 'conductor_mass',
    value: '95,6',
    unit: 'gr',
    instrument: 'scale',
  }),
  entry('reading', { reading: 'b', specimen: 's', quantity: 'conductor_mass', value: '59.6', unit: 'g' }),
  entry('strike', { reading: 'b', why: 'digits swapped' }),
  entry('reading', {
    reading: 'c',
    specimen: 's',
    quantity: 'resistance',
    value: '0.7',
    unit: 'mohm',
    at_length: '1500',
    at_length_unit: 'mm',
  }),
  entry('reading', {
    reading: 'd',
    specimen: 's',
    quantity: 'resistance',
    value: '0.76',
    unit: 'mohm',
    replaces: 'c',
    why: 'lead slipped',
  }),
  entry('reading', { reading: 'e', specimen: 'other', quantity: 'resistance', value: '1', unit: 'mohm' }),
];

describe('typedReading', () => {
  it('gives a reading as typed, with how and why it was put aside', () => {
    const rows = fold(ENTRIES)
      .readings.filter((reading) => reading.cable === 'quill')
      .map((reading) => typedReading(reading));
    expect(rows.map(({ reading, typed, aside }) => [reading, typed, aside])).toEqual([
      ['a', '95,6 g', ''],
      ['b', '59.6 g', 'struck: “digits swapped”'],
      ['c', '0.7 mΩ', 'replaced: “lead slipped”'],
      ['d', '0.76 mΩ', ''],
    ]);
    expect(rows[0]).toMatchObject({ what: 's, mass of the conductor', circumstances: 'scale' });
    expect(rows[2]?.circumstances).toBe('over 1500 mm');
  });
});
