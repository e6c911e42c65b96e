import type { SixFields } from '../../../findings/quick.ts';
import { UNTAKEN_TEMPERATURE } from '../../../findings/rows/tools.ts';
import { type DisplayUnits, showTemperature } from '../../../units/display.ts';

/**
 * What each blank field does to the answer, one sentence each, the costliest first. Only for fields that matter to what is
 * filled: a contact distance without ohms is no loss. A field that could not be read counts as blank, and is said not to be
 * used.
 */
export function blankFieldSentences(
  fields: SixFields,
  units: DisplayUnits,
  troubled: ReadonlySet<keyof SixFields> = new Set(),
): string[] {
  const blank = (name: keyof SixFields) => fields[name].trim() === '' || troubled.has(name);
  const state = (name: keyof SixFields) => (troubled.has(name) ? 'not used' : 'blank');
  const sentences: [boolean, string][] = [
    [blank('label'), `Label ${state('label')}: there is nothing to hold the piece against.`],
    [
      !blank('mass') && blank('length'),
      `Length ${state('length')}: a weight says nothing without the length that was weighed.`,
    ],
    [!blank('length') && blank('mass'), `Mass ${state('mass')}: weigh the bare conductor of that length.`],
    [
      !blank('ohms') && blank('contacts'),
      `Contacts ${state('contacts')}: ohms say nothing without the length that they were read over.`,
    ],
    [!blank('contacts') && blank('ohms'), `Ohms ${state('ohms')}: that length waits for a reading.`],
    [
      !blank('mass') && !blank('length') && blank('ohms'),
      `Ohms ${state('ohms')}: weight alone does not name the metal, so the area holds only if it is copper.`,
    ],
    [
      !blank('ohms') && !blank('contacts') && blank('mass'),
      `Mass ${state('mass')}: ohms alone do not name the metal, so the area holds only if it is copper.`,
    ],
    [
      !blank('ohms') && !blank('contacts') && blank('temperature'),
      `Temperature ${state('temperature')}: ${untakenTemperature(units)} assumed, which widens the answer. Tape a thermometer to the copper.`,
    ],
  ];
  return sentences.filter(([applies]) => applies).map(([, sentence]) => sentence);
}

/** What a copper temperature that nobody took is assumed to lie between: `0 to 35 °C`. */
function untakenTemperature(units: DisplayUnits): string {
  const { middle, halfWidth } = UNTAKEN_TEMPERATURE;
  const [low, high] = [middle - halfWidth, middle + halfWidth].map((kelvin) => showTemperature(kelvin, 0, units));
  return `${Math.round(low!.value)} to ${Math.round(high!.value)} ${high!.unit}`;
}
