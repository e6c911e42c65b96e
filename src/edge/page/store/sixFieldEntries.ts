import type { Entry } from '../../../journal/entry.ts';
import { readMetalText } from '../../../units/metalText.ts';
import type { SixFields } from './sixFieldNames.ts';

/** Who says it, when, and where its ids come from: handed in, so that the same fields always make the same entries. */
export interface Saying {
  trial: string;
  /** ISO 8601 in UTC. */
  at: string;
  /** Makes a UUIDv7, each later than the one before. */
  newId: () => string;
}

type Row = [kind: string, body: Record<string, string>];

const CABLE = 'first';
const PIECE = 'piece';

/**
 * The entries that six fields make: one cable, one piece of it, and a reading for each field that is filled. What was typed
 * is kept as typed; a bare number gets the unit that the field says it takes. Empty when nothing was measured and no label
 * was typed. A field that cannot be read must be blank here.
 */
export function sixFieldEntries(fields: SixFields, { trial, at, newId }: Saying): Entry[] {
  const typed = Object.values(fields).some((text) => text.trim() !== '');
  if (!typed) return [];
  const label = fields.label.trim();
  const rows: Row[] = [
    ['trial', { trial, title: label === '' ? 'One cable' : `One cable, label ${label}`, opened_on: at.slice(0, 10) }],
    ['cable', { cable: CABLE, maker: 'This cable', claimed_size: label, claimed_metal: metalSaid(label) }],
    ['specimen', { specimen: PIECE, cable: CABLE, kind: 'apart' }],
    ...readings(fields),
  ];
  return rows.map(([kind, body]) => ({ id: newId(), trial, kind, at, by: '', device: '', body: withoutBlanks(body) }));
}

function readings({ mass, length, ohms, contacts, temperature }: SixFields): Row[] {
  const reading = (
    name: string,
    quantity: string,
    text: string,
    bare: string,
    more: Record<string, string> = {},
  ): Row[] => {
    if (text.trim() === '') return [];
    const { value, unit } = apart(text, bare);
    return [['reading', { reading: name, specimen: PIECE, quantity, value, unit, ...more }]];
  };
  const over = contacts.trim() === '' ? null : apart(contacts, 'mm');
  const warm = temperature.trim() === '' ? null : apart(temperature, 'C');
  return [
    ...reading('length', 'conductor_length', length, 'mm'),
    ...reading('mass', 'conductor_mass', mass, 'g'),
    ...reading('ohms', 'resistance', ohms, '', {
      at_length: over?.value ?? '',
      at_length_unit: over?.unit ?? '',
      temperature: warm?.value ?? '',
      temperature_unit: warm?.unit ?? '',
    }),
  ];
}

/** The label's own words as its metal claim where they name a metal; empty where they do not. */
function metalSaid(label: string): string {
  const metal = readMetalText(label).metal;
  return metal === 'unsaid' || metal === 'unreadable' ? '' : label;
}

/** A number and the unit behind it; a text in two parts (`5' 3 1/2"`) stays whole, and its reader knows it. */
function apart(text: string, bare: string): { value: string; unit: string } {
  const trimmed = text.trim();
  const parts = /^([^\p{L}'"′″°µμΩ%]*\d[^\p{L}'"′″°µμΩ%]*?)\s*([\p{L}'"′″°µμΩ%][^\d]*)$/u.exec(trimmed);
  if (parts !== null) return { value: parts[1]!.trim(), unit: parts[2]!.trim() };
  return { value: trimmed, unit: /[\p{L}'"′″°]/u.test(trimmed) ? '' : bare };
}

function withoutBlanks(body: Record<string, string>): Record<string, string> {
  return Object.fromEntries(Object.entries(body).filter(([, text]) => text !== ''));
}
