/** One cable by six fields, any of them blank. */
import { describe, expect, it } from 'vitest';
import { findingsOf } from '../../src/findings/findings.ts';
import { quickEntries, type SixFields } from '../../src/findings/quick.ts';
import { Findings } from '../../src/findings/schema.ts';
import { checkEntry } from '../../src/journal/entryCheck.ts';
import { fold } from '../../src/trial/fold.ts';
import { expectClose } from '../tolerance.ts';
import { claimOf, gramsPerMm, milliohmsPerMm } from './bench.ts';

const FULL: SixFields = {
  label: '2 AWG OFC',
  mass: (gramsPerMm(33.6) * 300).toFixed(2),
  length: '300',
  ohms: `${(milliohmsPerMm(33.6) * 1000).toFixed(3)} mohm`,
  contacts: '1000',
  temperature: '20',
};

function entriesOf(fields: SixFields) {
  let made = 0;
  const newId = () => `00000000-0000-7000-8000-${(++made).toString(16).padStart(12, '0')}`;
  return quickEntries(fields, { trial: 'quick', at: '2026-11-25T09:00:00Z', newId });
}
function answer(fields: Partial<SixFields>) {
  const findings = findingsOf(fold(entriesOf({ ...FULL, ...fields })), { draws: 0 });
  expect(Findings.safeParse(findings).error).toBeUndefined();
  expect(findings.cables).toHaveLength(1);
  return findings.cables[0];
}

describe('six fields', () => {
  it('strands on the label, as labels print them, are a claim of their own', () => {
    const [, cable] = entriesOf({ ...FULL, label: '2 AWG OFC 665 x 0.25 mm' });
    expect(cable!.body).toMatchObject({
      claimed_size: '2 AWG',
      claimed_metal: 'OFC',
      claimed_strands: '665',
      claimed_strand_diameter: '0.25',
      claimed_strand_unit: 'mm',
    });
    expect(claimOf(answer({ label: '2 AWG OFC 665 x 0.25 mm' }), 'strand count')!.asks).toBe('665 strands');
  });

  it('all filled: the area, the metal and the label judged', () => {
    const c = answer({});
    expectClose(c.conductor_area!.value, 33.6, { relative: 0.015 });
    expect(c.metal_found).toMatch(/copper$/);
    expect(claimOf(c, 'metal')!.outcome).toBe('meets');
    expect(c.missing.join(' ')).not.toMatch(/weighed|resistance|temperature/);
  });

  it.each<[keyof SixFields, (c: ReturnType<typeof answer>) => void]>([
    ['label', (c) => expect(c.label.vague && c.copper_of_claim === null && c.conductor_area !== null).toBe(true)],
    [
      'mass',
      (c) => expect(c.mass_per_metre === null && c.resistance_20C !== null && /weighed/.test(c.missing[0])).toBe(true),
    ],
    ['length', (c) => expect(c.mass_per_metre === null && c.resistance_20C !== null).toBe(true)],
    ['ohms', (c) => expect(c.resistance_20C === null && c.conductor_area!.condition === 'if copper').toBe(true)],
    ['contacts', (c) => expect(c.resistance_20C === null && c.mass_per_metre !== null).toBe(true)],
    ['temperature', (c) => expect(c.missing.some((m) => m.includes('temperature was not taken'))).toBe(true)],
  ])('%s blank: the rest is still answered', (field, check) => {
    check(answer({ [field]: '' }));
  });

  it('all blank: nothing is made up', () => {
    const c = answer({ label: '', mass: '', length: '', ohms: '', contacts: '', temperature: '' });
    expect(c.conductor_area).toBeNull();
    expect(c.next_reading!.text).toContain('Weigh the bare conductor');
  });

  it('units as typed: ounces, inches, feet, milliohms, Fahrenheit', () => {
    const c = answer({
      mass: `${((gramsPerMm(33.6) * 304.8) / 28.349523125).toFixed(3)} oz`,
      length: '12.00 in',
      contacts: '3.28084 ft',
      temperature: '68 F',
    });
    expectClose(c.conductor_area!.value, 33.6, { relative: 0.015 });
    expectClose(c.mass_per_metre!.value, gramsPerMm(33.6) * 1000, { relative: 0.003 });
    expectClose(c.resistance_20C!.value, milliohmsPerMm(33.6) * 1000, { relative: 0.003 });
  });

  it('bare numbers in the units that were chosen', () => {
    const bare = { mass: 'oz', length: 'in', temperature: 'F' };
    const typed = { ...FULL, mass: '3.4', length: '12', contacts: '59', temperature: '68' };
    const rows = quickEntries(typed, { trial: 'quick', at: '2026-11-25T09:00:00Z', newId: () => 'x', bare }).map(
      (e) => e.body,
    );
    expect(rows.find((row) => row.reading === 'mass')).toMatchObject({ value: '3.4', unit: 'oz' });
    expect(rows.find((row) => row.reading === 'length')).toMatchObject({ value: '12', unit: 'in' });
    expect(rows.find((row) => row.reading === 'ohms')).toMatchObject({
      at_length: '59',
      at_length_unit: 'in',
      temperature: '68',
      temperature_unit: 'F',
    });
  });

  it('carries the title and the moment that it is given', () => {
    const o = {
      trial: 'quick',
      at: '2026-11-25T09:00:00Z',
      newId: () => 'x',
      title: 'Mine',
      openedOn: '2026-11-25T09:00Z',
    };
    expect(quickEntries(FULL, o)[0].body).toMatchObject({ title: 'Mine', opened_on: '2026-11-25T09:00Z' });
  });

  it('makes entries that every door lets in', () => {
    for (const e of entriesOf(FULL)) expect(checkEntry(e)).toMatchObject({ ok: true });
  });
});
