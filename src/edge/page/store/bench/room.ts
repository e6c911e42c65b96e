/** The temperatures that go with readings: the room's, and for ohms the copper's, told apart. */
import { computed } from '@preact/signals';
import { toCelsius } from '../../../../units/display.ts';
import { readTypedQuantity } from '../../../../units/typedQuantity.ts';
import { folded } from '../journal/journal.ts';
import { isTexts, keptSignal } from '../kept.ts';
import { units } from '../units.ts';

/** After this long a temperature is asked for anew, ms: half a day. Ours. */
const GOOD_FOR = 12 * 3_600_000;
/** Further from the target than this changes the figures, K. */
const APART = 3;

/** `text` and `at` for the room, `copper` and `copperAt` for the strands. */
const kept = keptSignal<Record<string, string>>('cupel.bench.room', {}, isTexts);

const isFresh = (at = '') => Date.now() - Date.parse(at) < GOOD_FOR;

/** The room's, as typed; empty when nothing was, or too long ago. */
export const room = computed(() => (isFresh(kept.value.at) ? (kept.value.text ?? '') : ''));

export function setRoom(text: string): void {
  kept.value = { ...kept.value, text, at: new Date().toISOString() };
}

/** That among the strands, as typed: the room is not the copper. */
const copper = computed(() => (isFresh(kept.value.copperAt) ? (kept.value.copper ?? '') : ''));

/** Whether a quantity asks for the temperature of the copper. */
export const asksForCopper = (quantity: string): boolean => quantity === 'resistance' || quantity === 'test_voltage';

/** The temperature that goes with a quantity, as typed. */
export const temperatureFor = (quantity: string): string => (asksForCopper(quantity) ? copper.value : room.value);

export function setTemperatureFor(quantity: string, text: string): void {
  if (!asksForCopper(quantity)) setRoom(text);
  else kept.value = { ...kept.value, copper: text, copperAt: new Date().toISOString() };
}

/** Unit of a temperature that is typed without one. */
export const roomUnit = computed(() => units.value.temperature);

/** What the person should know about the temperature that goes with a quantity; empty when all is well. */
export function temperatureWarning(quantity: string): string {
  const text = temperatureFor(quantity).trim();
  if (text === '')
    return asksForCopper(quantity)
      ? 'Put the thermometer among the strands and type what it shows: the room is not the copper.'
      : 'Hang a thermometer beside the pieces and type what it shows.';
  const read = readTypedQuantity(text, 'temperature', roomUnit.value);
  if (!read.ok) return `Found ${read.found}; expected ${read.expected}.`;
  const target = folded.value?.targetTemperature ?? null;
  if (target === null || Math.abs(read.value.value - target) < APART - 1e-9) return '';
  const apart = Math.abs(read.value.value - target);
  const shown = units.value.temperature === 'F' ? `${((apart * 9) / 5).toFixed(1)} °F` : `${apart.toFixed(1)} °C`;
  return `${shown} from the ${celsius(target)} this trial is measured at. Let the pieces take the room's temperature, or warm the room.`;
}

const celsius = (kelvin: number) => `${Number(toCelsius(kelvin).toFixed(1))} °C`;

export const targetText = computed(() => {
  const target = folded.value?.targetTemperature ?? null;
  return target === null ? '' : `target ${celsius(target)}`;
});
