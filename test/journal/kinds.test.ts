import { describe, expect, it } from 'vitest';
import type { EntryKind } from '../../src/journal/entry.ts';
import { checkRow } from '../../src/journal/rowCheck.ts';
import { tableOfKind } from '../../src/journal/tables.ts';

const NOW = Date.UTC(2026, 10, 25);

const problems = (kind: EntryKind, row: Record<string, string>) => checkRow(tableOfKind(kind)!, row, { now: NOW });
const columns = (kind: EntryKind, row: Record<string, string>) => problems(kind, row).map(({ column }) => column);

const WEIGHED = {
  check: 'k1',
  instrument: 'scale',
  against: 'check weight',
  known_value: '100',
  unit: 'g',
  read_value: '100.02',
};
const ZERO = { check: 'k2', instrument: 'scale', against: 'zero', unit: 'g', read_value: '-0.01' };
const SWAP = { retag: 't1', kind: 'swap', specimen: 'q1', becomes: 's1', why: 'tags mixed up while sawing' };

describe('a row of the newer tables', () => {
  it.each<[string, EntryKind, Record<string, string>]>([
    ['a check weight', 'check', WEIGHED],
    ['with its own error', 'check', { ...WEIGHED, known_error: '0.005' }],
    ['with a share as error', 'check', { ...WEIGHED, unit: 'mohm', known_error: '0.1 %' }],
    ['with other units in the cells', 'check', { ...WEIGHED, known_value: '0.1 kg', read_value: '3.53 oz' }],
    ['a zero', 'check', ZERO],
    ['a zero that says so', 'check', { ...ZERO, known_value: '0.00' }],
    ['ice water', 'check', { ...WEIGHED, against: 'water', unit: 'C', known_value: '0', read_value: '-0.3' }],
    ['a note on the trial', 'note', { note: 'n1', text: 'rained all day' }],
    ['a photo of a cable', 'note', { note: 'n1', about: 'cable', which: 'quill', photo: 'a1', shot: 'cut face' }],
    [
      'a note with its place in the film',
      'note',
      { note: 'n1', text: 'x', footage: 'card 2', timecode: '01:02:31:12' },
    ],
    ['a swap', 'retag', SWAP],
    ['a swap within one day', 'retag', { ...SWAP, from: '2026-10-03T14:00Z', until: '2026-10-03' }],
    ['a setting that is judged', 'setting', { setting: 'shortfall', value: '0.05' }],
    ['a setting that is not', 'setting', { setting: 'metal', value: 'either' }],
    ['a setting taken back', 'setting', { setting: 'repeats', value: '' }],
    ['a blinding', 'blinding', { act: 'blind', how: 'sleeve' }],
    ['a price by the foot', 'cable', { cable: 'q', claimed_size: '2 AWG', price_per: 'foot', tax_included: 'unknown' }],
    [
      'a price of a spool',
      'cable',
      { cable: 'q', claimed_size: '2 AWG', price_per: 'spool', price_length: '100', price_length_unit: 'ft' },
    ],
    [
      'a reading from the film',
      'reading',
      { reading: 'r', specimen: 'q1', quantity: 'conductor_mass', value: '9', unit: 'g', timecode: '12:31' },
    ],
  ])('may be %s', (_what, kind, row) => {
    expect(problems(kind, row)).toEqual([]);
  });

  it.each<[string, EntryKind, Record<string, string>, string]>([
    ['a known thing that is nothing', 'check', { ...WEIGHED, known_value: '' }, 'known_value'],
    ['a known thing below nothing', 'check', { ...WEIGHED, known_value: '-5' }, 'known_value'],
    ['a known thing of another kind', 'check', { ...WEIGHED, known_value: '12 mm' }, 'known_value'],
    ['a zero that is something', 'check', { ...ZERO, known_value: '5' }, 'known_value'],
    ['a reading of another kind', 'check', { ...WEIGHED, read_value: '12 mm' }, 'read_value'],
    ['no reading', 'check', { ...WEIGHED, read_value: '' }, 'read_value'],
    ['a unit that nobody knows', 'check', { ...WEIGHED, unit: 'furlong' }, 'unit'],
    ['an error in counts of a known thing', 'check', { ...WEIGHED, known_error: '3 counts' }, 'known_error'],
    ['an error that cannot be read', 'check', { ...WEIGHED, known_error: 'small' }, 'known_error'],
    ['another word for the known thing', 'check', { ...WEIGHED, against: 'my thumb' }, 'against'],
    ['a note about a cable without its name', 'note', { note: 'n1', about: 'cable', text: 'x' }, 'which'],
    ['a note that says nothing', 'note', { note: 'n1' }, 'text'],
    ['a place in a film that is none', 'note', { note: 'n1', text: 'x', timecode: 'later' }, 'timecode'],
    ['a piece swapped with itself', 'retag', { ...SWAP, becomes: ' q1 ' }, 'becomes'],
    ['a span that ends before it begins', 'retag', { ...SWAP, from: '2026-10-04', until: '2026-10-03' }, 'until'],
    ['a repair without a reason', 'retag', { ...SWAP, why: '' }, 'why'],
    ['a shortfall of five', 'setting', { setting: 'shortfall', value: '5' }, 'value'],
    ['half a repeat', 'setting', { setting: 'repeats', value: '2.5' }, 'value'],
    ['another way of working', 'setting', { setting: 'working', value: 'backwards' }, 'value'],
    ['another act', 'blinding', { act: 'peek' }, 'act'],
    ['a reveal to come', 'blinding', { act: 'reveal', at: '2027-01-01' }, 'at'],
    ['a price by the yard', 'cable', { cable: 'q', claimed_size: '2 AWG', price_per: 'yard' }, 'price_per'],
    [
      'shipping that may be',
      'cable',
      { cable: 'q', claimed_size: '2 AWG', shipping_included: 'maybe' },
      'shipping_included',
    ],
  ])('may not be %s', (_what, kind, row, column) => {
    expect(columns(kind, row)).toEqual([column]);
  });
});
