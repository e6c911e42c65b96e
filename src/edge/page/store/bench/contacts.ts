/** The distance between the voltage contacts: with every reading of ohms, and for those that were kept without it. */
import { computed, signal } from '@preact/signals';
import { contactsUnknown, OVER_CONTACTS, withoutContacts } from '../../../../findings/bench/withoutContacts.ts';
import type { Reading } from '../../../../trial/trial.ts';
import { readTypedQuantity } from '../../../../units/typedQuantity.ts';
import { carriesUnits, splitTyped } from '../../../../units/typedText.ts';
import { wholeText } from '../../../../units/wholeText.ts';
import { folded } from '../journal/journal.ts';
import { units } from '../units.ts';
import { inHand } from './inHand.ts';
import { writeNote } from './remarks.ts';
import { sayAnew } from './sayAnew.ts';

/** As typed for the piece in hand; null: as for the reading before. */
const contactsTyped = signal<{ specimen: string; text: string } | null>(null);

/** Unit of a distance that is typed without one. */
export const contactsUnit = computed(() => units.value.length);

/** Typed now, or carried along from the piece's last reading. */
export const contacts = computed(() => {
  const specimen = inHand.value?.item.specimen ?? '';
  if (contactsTyped.value?.specimen === specimen) return contactsTyped.value.text;
  const before = folded.value?.readings.findLast(
    (reading) => reading.specimen === specimen && OVER_CONTACTS.has(reading.quantity) && reading.row.at_length,
  );
  return before === undefined ? '' : `${before.row.at_length} ${before.row.at_length_unit || 'mm'}`;
});

export function typeContacts(specimen: string, text: string): void {
  contactsTyped.value = { specimen, text };
}

/** What is wrong with a distance, in a sentence; empty when nothing is, or nothing was typed. */
export function contactsTrouble(text: string): string {
  if (text.trim() === '') return '';
  const read = readTypedQuantity(text, 'length', contactsUnit.value);
  if (!read.ok) return `Found ${read.found}; expected ${read.expected}.${read.advice ? ` ${read.advice}` : ''}`;
  return read.value.value > 0 ? '' : 'Expected a distance above zero.';
}

/** `1676 mm`: how a distance of feet and inches was understood; empty where it is as typed. */
export function contactsRead(text: string): string {
  const read = readTypedQuantity(text, 'length', contactsUnit.value);
  return read.ok && read.value.unit !== 'mm' ? `${wholeText(read.value.value * 1000)} mm` : '';
}

/** The distance in its two columns, number and unit as typed; none where nothing was typed. */
export function contactCells(text: string): Record<string, string> {
  const { number, unit } = splitTyped(text);
  if (number === '') return {};
  // `5 ft 6 in` carries its units.
  return { at_length: number, at_length_unit: unit || (carriesUnits(number) ? '' : contactsUnit.value) };
}

/** Readings that count and say nothing per metre, piece by piece. */
export const lackingContacts = computed<readonly { specimen: string; readings: Reading[] }[]>(() =>
  folded.value === null ? [] : withoutContacts(folded.value),
);

/** Says readings anew with the distance; what was kept without it stays on record, replaced. */
export async function addContacts(readings: readonly Reading[], text: string): Promise<string | null> {
  const wrong = text.trim() === '' ? 'Found nothing; type the distance.' : contactsTrouble(text);
  if (wrong !== '') return wrong;
  for (const reading of readings) await sayAnew(reading, contactCells(text), 'distance between the contacts added');
  return null;
}

/** Nobody knows it any more: said once, so that it is not asked again. */
export async function contactsNotKnown(readings: readonly Reading[]): Promise<void> {
  for (const { reading } of readings) await writeNote({ about: 'reading', which: reading }, contactsUnknown);
}
