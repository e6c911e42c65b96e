import { describe, expect, it } from 'vitest';
import { blankFieldSentences } from '../../../src/edge/page/store/blankFields.ts';
import { fieldTroubles } from '../../../src/edge/page/store/fieldTroubles.ts';
import type { SixFields } from '../../../src/findings/quick.ts';
import { defaultDisplayUnits } from '../../../src/units/display.ts';

const BLANK: SixFields = { label: '', mass: '', length: '', ohms: '', contacts: '', temperature: '' };

describe('fieldTroubles', () => {
  it('says what was found and what was expected, field by field', () => {
    const troubles = fieldTroubles({ ...BLANK, mass: '300 mm', ohms: '0.76', temperature: '-400 C', length: '12 cm' });
    expect(Object.keys(troubles).sort()).toEqual(['mass', 'ohms', 'temperature']);
    expect(troubles.mass?.found).toContain('300 mm');
    expect(troubles.temperature?.found).toContain('absolute zero');
  });
});

describe('blankFieldSentences', () => {
  const sentences = (fields: Partial<typeof BLANK>, units = defaultDisplayUnits) =>
    blankFieldSentences({ ...BLANK, ...fields }, units);

  it('names what was assumed for a temperature that nobody took', () => {
    const all = { label: '2 AWG', mass: '1', length: '1', ohms: '1', contacts: '1' };
    expect(sentences(all)).toEqual([
      'Temperature blank: 0 to 35 °C assumed, which widens the answer. Tape a thermometer to the copper.',
    ]);
    expect(sentences(all, { ...defaultDisplayUnits, temperature: 'F' })[0]).toContain('32 to 95 °F');
  });

  it('asks only for what matters to the fields that are filled', () => {
    expect(sentences({ label: '2 AWG', mass: '95 g' })).toEqual([
      'Length blank: a weight says nothing without the length that was weighed.',
    ]);
    expect(sentences({ label: '2 AWG' })).toEqual([]);
  });
});
