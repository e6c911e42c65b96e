import { describe, expect, it } from 'vitest';
import { blankFieldSentences } from '../../../src/edge/page/store/blankFields.ts';
import { fieldTroubles } from '../../../src/edge/page/store/fieldTroubles.ts';
import { readField } from '../../../src/edge/page/store/readField.ts';
import { type SixFields, USUAL_BARE } from '../../../src/findings/quick.ts';
import { defaultDisplayUnits } from '../../../src/units/display.ts';

const BLANK: SixFields = { label: '', mass: '', length: '', ohms: '', contacts: '', temperature: '' };

/** 2026-11-25, in milliseconds since 1970. */
const NOW = Date.UTC(2026, 10, 25);
const troublesOf = (fields: Partial<SixFields>, bare = USUAL_BARE) => fieldTroubles({ ...BLANK, ...fields }, bare, NOW);

describe('fieldTroubles', () => {
  it('says what was found and what was expected, field by field', () => {
    const troubles = troublesOf({ mass: '300 mm', ohms: '0.76', temperature: '-400 C', length: '12 cm' });
    expect(Object.keys(troubles).sort()).toEqual(['mass', 'ohms', 'temperature']);
    expect(troubles.mass?.found).toContain('300 mm');
    expect(troubles.temperature?.found).toContain('absolute zero');
  });

  it.each<[keyof SixFields, string, string, RegExp]>([
    ['mass', '-5 g', '"-5 g"', /a mass above zero/],
    ['mass', '0', '"0"', /a mass above zero/],
    ['mass', '1e9 kg', '"1e9 kg"', /at most 10 t/],
    ['length', '-300', '"-300"', /a length above zero/],
    ['length', '90 km', '"90 km"', /at most 10 km/],
    ['ohms', '0 mohm', '"0 mohm"', /above zero/],
    ['ohms', '-1 mohm', '"-1 mohm"', /above zero/],
    ['contacts', '0 mm', '"0 mm"', /a length above zero/],
    ['temperature', '2000 C', '"2000 C"', /between −60 °C and 200 °C/],
  ])('tells an impossible %s of %s under its own field', (name, text, found, expected) => {
    const whole = { label: '2 AWG', mass: '95.6 g', length: '300 mm', ohms: '0.76 mohm', contacts: '1500' };
    const troubles = troublesOf({ ...whole, temperature: '20', [name]: text });
    expect(Object.keys(troubles)).toEqual([name]);
    expect(troubles[name]!.found).toBe(found);
    expect(troubles[name]!.expected).toMatch(expected);
  });

  it('finds an impossible value even where the field that it needs is blank', () => {
    expect(Object.keys(troublesOf({ contacts: '-1 m' }))).toEqual(['contacts']);
    expect(Object.keys(troublesOf({ temperature: '900' }))).toEqual(['temperature']);
  });

  it('takes a bare number in the units of the page', () => {
    expect(troublesOf({ temperature: '212' })).toHaveProperty('temperature');
    expect(troublesOf({ temperature: '212' }, { ...USUAL_BARE, temperature: 'F' })).toEqual({});
  });
});

describe('readField', () => {
  it.each<[keyof SixFields, string, string]>([
    ['temperature', '68', '68 °C'],
    ['temperature', '68 F', '68 °F'],
    ['temperature', '-3', '−3 °C'],
    ['length', '1', '1 mm'],
    ['length', '1 3/8 in', '1.375 in'],
    ['ohms', '0.34 mohm', '0.34 mΩ'],
    ['mass', '95,6', '95.6 g'],
  ])('echoes %s "%s" as %s', (name, text, said) => {
    expect(readField(name, text, USUAL_BARE)).toEqual({ ok: true, value: said });
  });

  it('takes bare numbers in Fahrenheit and inches where those were chosen', () => {
    const bare = { mass: 'oz', length: 'in', temperature: 'F' };
    expect(readField('temperature', '68', bare)).toMatchObject({ value: '68 °F' });
    expect(readField('contacts', '59', bare)).toMatchObject({ value: '59 in' });
    expect(readField('mass', '3.4', bare)).toMatchObject({ value: '3.4 oz' });
  });

  it('echoes a label with its metal, and what of it cannot be tested', () => {
    const said = (text: string) => {
      const read = readField('label', text, USUAL_BARE);
      return read.ok ? read.value : read.found;
    };
    expect(said('1/0 AWG OFC')).toMatch(/^1\/0 AWG, .*; copper; oxygen-free: not testable with these tools$/);
    expect(said('2 AWG')).toMatch(/; no metal named$/);
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
