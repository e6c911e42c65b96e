import { describe, expect, it } from 'vitest';
import { type CarriedAlong, carriedWords } from '../../../src/edge/page/store/bench/carriedWords.ts';

const along = (more: Partial<CarriedAlong> = {}): CarriedAlong => ({
  ...{ temperature: '', temperatureUnit: 'C', offTarget: '', contacts: '', contactsUnit: 'mm', position: '', ...more },
});

describe('what goes along with a reading, in a line', () => {
  it.each([
    ['resistance', along(), 'no temperature yet · no distance between the contacts yet'],
    [
      'resistance',
      along({ temperature: '20.4', contacts: '1900', position: 'reverse' }),
      '20.4 °C · 1900 mm between the contacts · clips reversed',
    ],
    [
      'resistance',
      along({ temperature: '68', temperatureUnit: 'F', contacts: '5 ft 6 in' }),
      '68 °F · 5 ft 6 in between the contacts',
    ],
    ['conductor_mass', along({ contacts: '1900', position: 'forward' }), 'no temperature yet'],
    ['conductor_mass', along({ temperature: '16', offTarget: 'target 20 °C' }), '16 °C, target 20 °C'],
  ])('%s: %#', (quantity, carried, words) => {
    expect(carriedWords(quantity, carried)).toBe(words);
  });
});
