/** What is in the big field, and what is carried along from one reading to the next. */
import { computed, signal } from '@preact/signals';
import { quantityNamed } from '../../../../journal/quantities.ts';
import type { Dimension } from '../../../../units/dimension.ts';
import { findUnit } from '../../../../units/unit.ts';
import { folded } from '../journal/journal.ts';
import { isTexts, keptSignal } from '../kept.ts';
import { inHand } from './inHand.ts';

/** The text in the field, exactly as typed. */
export const typed = signal('');
/** What is wrong with it, in a sentence; empty while nothing is. */
export const trouble = signal('');
/** How the contacts stand or which face is up, as far as it matters. */
export const position = signal('');
/** Length between the voltage contacts of the piece in hand, as typed; null: as for the reading before. */
export const contactsTyped = signal<{ specimen: string; text: string } | null>(null);

/** Units to choose from at the bench. */
export const UNITS: Partial<Record<Dimension, readonly string[]>> = {
  length: ['mm', 'in', 'cm', 'm', 'ft', 'mil'],
  mass: ['g', 'kg', 'oz', 'lb'],
  resistance: ['mohm', 'uohm', 'ohm'],
  voltage: ['mV', 'uV', 'V'],
  current: ['A', 'mA'],
  force: ['gf', 'N', 'kgf', 'lbf'],
  angle: ['deg', 'rad'],
  ratio: ['%'],
};

const chosenUnits = keptSignal<Record<string, string>>('cupel.bench.units', {}, isTexts);

/** Units that the quantity in hand can be typed in; empty for a count. */
export const unitChoices = computed<readonly string[]>(() => {
  const dimension = quantityNamed(inHand.value?.item.quantity ?? '')?.dimension ?? null;
  return dimension === null ? [] : (UNITS[dimension] ?? []);
});

/** The unit that goes with what is typed: chosen here, or that of the reading before, or that of the tool. */
export const unit = computed(() => {
  const now = inHand.value;
  if (now === null || unitChoices.value.length === 0) return '';
  const { quantity, instrument } = now.item;
  const fits = (text: string | undefined) => text !== undefined && fitsIn(text, quantity);
  const kept = chosenUnits.value[quantity];
  if (fits(kept)) return kept!;
  const trial = folded.value;
  const before = trial?.readings.findLast((reading) => reading.quantity === quantity)?.row.unit;
  if (fits(before)) return before!;
  const tool = trial?.instruments.find((each) => each.instrument === instrument)?.row.unit;
  return fits(tool) ? tool! : unitChoices.value[0]!;
});

const fitsIn = (text: string, quantity: string) =>
  text !== '' && findUnit(text)?.dimension === quantityNamed(quantity)?.dimension;

/** Changes the unit; what is typed stays as it is. */
export function chooseTypedUnit(next: string): void {
  const quantity = inHand.value?.item.quantity;
  if (quantity !== undefined) chosenUnits.value = { ...chosenUnits.value, [quantity]: next };
}

/** The next of the units, round and round: the unit key of the keypad. */
export function nextUnit(): void {
  const choices = unitChoices.value;
  const at = choices.findIndex((each) => findUnit(each)?.symbol === findUnit(unit.value)?.symbol);
  if (choices.length > 0) chooseTypedUnit(choices[(at + 1) % choices.length]!);
}

/** Adds to the field, as a key does. */
export function typeInto(text: string): void {
  typed.value += text;
  trouble.value = '';
}

/**
 * The fraction key, for `3/8` and `1 3/8` without a slash among the keys: after a whole number it sets a space, then, pressed
 * again, a stroke instead; after a space and a number, the stroke.
 */
export function fractionKey(): void {
  const text = typed.value;
  if (/^\d+$/.test(text)) typeInto(' ');
  else if (/^\d+ \d+$/.test(text)) typeInto('/');
  else if (/^\d+[ /]$/.test(text)) typed.value = text.endsWith(' ') ? `${text.slice(0, -1)}/` : `${text.slice(0, -1)} `;
}

export function eraseLast(): void {
  typed.value = typed.value.slice(0, -1);
  trouble.value = '';
}

export function clearField(): void {
  typed.value = '';
  trouble.value = '';
}

/** Length between the voltage contacts: typed now, or carried along from the piece's last reading. */
export const contacts = computed(() => {
  const specimen = inHand.value?.item.specimen ?? '';
  if (contactsTyped.value?.specimen === specimen) return contactsTyped.value.text;
  const before = folded.value?.readings.findLast(
    (reading) => reading.specimen === specimen && reading.quantity === 'resistance' && reading.row.at_length,
  );
  return before === undefined ? '' : `${before.row.at_length} ${before.row.at_length_unit || 'mm'}`;
});
