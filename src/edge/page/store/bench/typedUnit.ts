/** The unit that goes with what is typed: of the tool, or as this device chose it. What another device types changes nothing here. */
import { computed } from '@preact/signals';
import { quantityNamed } from '../../../../journal/quantities.ts';
import type { Dimension } from '../../../../units/dimension.ts';
import { splitTyped, unitText } from '../../../../units/typedText.ts';
import { findUnit } from '../../../../units/unit.ts';
import { folded } from '../journal/journal.ts';
import { isTexts, keptSignal } from '../kept.ts';
import { units } from '../units.ts';
import { typed } from './field.ts';
import { inHand } from './inHand.ts';

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

/** Quantities that are read in one act with one tool: the unit of one is the unit of all. */
const ONE_ACT: readonly (readonly string[])[] = [
  ['overhang', 'tip_drop'],
  ['push_span', 'push_deflection'],
  ['specimen_mass', 'conductor_mass', 'jacket_mass', 'separator_mass', 'strands_lost', 'residue'],
  ['specimen_length', 'conductor_length'],
  ['outer_diameter', 'conductor_diameter', 'wall_thickness'],
];

/** By the first quantity of its act. */
const chosenUnits = keptSignal<Record<string, string>>('cupel.bench.units', {}, isTexts);

const actOf = (quantity: string) => ONE_ACT.find((act) => act.includes(quantity))?.[0] ?? quantity;

/** Units that the quantity in hand can be typed in; empty for a count. */
export const unitChoices = computed<readonly string[]>(() => {
  const dimension = quantityNamed(inHand.value?.item.quantity ?? '')?.dimension ?? null;
  return dimension === null ? [] : (UNITS[dimension] ?? []);
});

/** The unit that goes with a bare number: chosen on this device, or that of the tool, or that which this device shows. */
export const unit = computed(() => {
  const now = inHand.value;
  if (now === null || unitChoices.value.length === 0) return '';
  const { quantity, instrument } = now.item;
  const tool = folded.value?.instruments.find((each) => each.instrument === instrument)?.row.unit;
  const { length, mass } = units.value;
  const fits = (text: string | undefined) => text !== undefined && fitsIn(text, quantity);
  return [chosenUnits.value[actOf(quantity)], tool, length, mass].find(fits) ?? unitChoices.value[0]!;
});

const fitsIn = (text: string, quantity: string) =>
  text !== '' && findUnit(text)?.dimension === quantityNamed(quantity)?.dimension;

/** The unit that was typed behind the number itself, as printed; empty where none was. */
export const unitTyped = computed(() => unitText(splitTyped(typed.value).unit));

/** Changes the unit; what is typed stays as it is. */
export function chooseTypedUnit(next: string): void {
  const quantity = inHand.value?.item.quantity;
  if (quantity !== undefined) chosenUnits.value = { ...chosenUnits.value, [actOf(quantity)]: next };
}

/** The next of the units, round and round: the unit key of the keypad. */
export function nextUnit(): void {
  const choices = unitChoices.value;
  const at = choices.findIndex((each) => findUnit(each)?.symbol === findUnit(unit.value)?.symbol);
  if (choices.length > 0) chooseTypedUnit(choices[(at + 1) % choices.length]!);
}
