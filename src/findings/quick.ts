import type { Entry, EntryKind } from '../journal/entry.ts';
import { type ReadLabelText, splitLabelText } from './claims/splitLabelText.ts';

/** One cable, six fields, each as somebody types it; blank where it is not known. */
export interface SixFields {
  /** Size and metal as on the label: `2 AWG OFC`. */
  label: string;
  mass: string;
  length: string;
  ohms: string;
  contacts: string;
  temperature: string;
}

export interface QuickOptions {
  trial: string;
  /** ISO 8601, UTC. */
  at: string;
  /** Makes one UUIDv7 a call, in rising order. */
  newId: () => string;
  by?: string;
  device?: string;
  /** Units that a number without one is taken in; grams, millimetres and degrees Celsius when left out. */
  bare?: BareUnits;
  /** Title of the trial; made of the label when left out. */
  title?: string;
  /** The day it was begun, ISO 8601; not said when left out. */
  openedOn?: string;
}

/** Units for a bare number. Ohms have none, because Ω and mΩ are both usual. */
export interface BareUnits {
  mass: string;
  /** Of the weighed length and of the length between the contacts. */
  length: string;
  temperature: string;
}

export const USUAL_BARE: BareUnits = { mass: 'g', length: 'mm', temperature: 'C' };

interface Typed {
  value: string;
  unit: string;
}

const NUMBER_THEN_UNIT = /^([-+−]?[\d.,\s/½¼¾⅛⅜⅝⅞-]*[\d½¼¾⅛⅜⅝⅞](?:e[-+]?\d+)?)\s*(.*)$/iu;

/** Parts a typed quantity into the number and the unit, both as typed; a text with several numbers stays whole. */
function parted(text: string, bare: string): Typed {
  const found = NUMBER_THEN_UNIT.exec(text.trim());
  if (!found || /\d/.test(found[2].replace(/\b(?:1000|100)\b/g, ''))) return { value: text.trim(), unit: bare };
  return { value: found[1].trim(), unit: found[2].trim() || bare };
}

/**
 * The entries of a small trial that six fields make: one cable, one piece, up to one mass and one resistance. The same fold
 * and the same assay answer it as answer a whole trial, and it can be kept as the start of one.
 *
 * Fields that are blank are left out; what they leave open is in the findings. Nothing is checked here: the fields are read
 * where they are typed, and again by the fold.
 */
export function quickEntries(fields: SixFields, o: QuickOptions): Entry[] {
  const entry = (kind: EntryKind, body: Record<string, string>): Entry => ({
    id: o.newId(),
    trial: o.trial,
    kind,
    at: o.at,
    by: o.by ?? '',
    device: o.device ?? '',
    body: Object.fromEntries(Object.entries(body).filter(([, v]) => v !== '')),
  });
  const label: ReadLabelText = splitLabelText(fields.label);
  const bare = o.bare ?? USUAL_BARE;
  const length = fields.length.trim() && parted(fields.length, bare.length);
  const list = [
    entry('trial', { trial: o.trial, title: o.title ?? usualTitle(fields), opened_on: o.openedOn ?? '' }),
    entry('cable', {
      cable: 'one',
      maker: 'One cable',
      claimed_size: label.size || 'not stated',
      claimed_metal: label.metal,
      claimed_strands: label.strands?.count ?? '',
      claimed_strand_diameter: label.strands?.diameter ?? '',
      claimed_strand_unit: label.strands?.unit ?? '',
    }),
    entry('specimen', {
      specimen: 'one-piece',
      cable: 'one',
      cut_length: length ? length.value : '',
      cut_length_unit: length ? length.unit : '',
      kind: 'apart',
    }),
  ];
  if (length)
    list.push(entry('reading', { reading: 'length', specimen: 'one-piece', quantity: 'conductor_length', ...length }));
  if (fields.mass.trim())
    list.push(
      entry('reading', {
        reading: 'mass',
        specimen: 'one-piece',
        quantity: 'conductor_mass',
        ...parted(fields.mass, bare.mass),
      }),
    );
  if (fields.ohms.trim()) list.push(entry('reading', ohmsRow(fields, bare)));
  return list;
}

function usualTitle(fields: SixFields): string {
  return fields.label.trim() ? `One cable, ${fields.label.trim()}` : 'One cable';
}

function ohmsRow(fields: SixFields, bare: BareUnits): Record<string, string> {
  const contacts = fields.contacts.trim() && parted(fields.contacts, bare.length);
  const temperature = fields.temperature.trim() && parted(fields.temperature, bare.temperature);
  return {
    reading: 'ohms',
    specimen: 'one-piece',
    quantity: 'resistance',
    ...parted(fields.ohms, ''),
    at_length: contacts ? contacts.value : '',
    at_length_unit: contacts ? contacts.unit : '',
    temperature: temperature ? temperature.value : '',
    temperature_unit: temperature ? temperature.unit : '',
  };
}
