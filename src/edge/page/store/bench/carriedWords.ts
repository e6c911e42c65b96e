/** What goes along with the next reading, in one line: for a screen that has no room for the fields. */
import { OVER_CONTACTS } from '../../../../findings/bench/withoutContacts.ts';
import { valueWords } from './names.ts';

/** What is carried along, as typed; empty for what was not. */
export interface CarriedAlong {
  temperature: string;
  temperatureUnit: string;
  /** `target 20 °C`, where the temperature is off it; else empty. */
  offTarget: string;
  contacts: string;
  contactsUnit: string;
  /** 'forward', 'reverse' or nothing said. */
  position: string;
}

const CLIPS: Readonly<Record<string, string>> = { forward: 'clips forward', reverse: 'clips reversed' };

/** `16.5 °C · 1900 mm between the contacts`; what is lacking is said, too. */
export function carriedWords(quantity: string, along: CarriedAlong): string {
  const warmth = along.temperature.trim();
  const off = along.offTarget === '' ? '' : `, ${along.offTarget}`;
  const parts = [warmth === '' ? 'no temperature yet' : `${warmth} °${along.temperatureUnit}${off}`];
  if (OVER_CONTACTS.has(quantity)) {
    const distance = along.contacts.trim();
    const shown = `${valueWords(distance, along.contactsUnit)} between the contacts`;
    parts.push(distance === '' ? 'no distance between the contacts yet' : shown);
    parts.push(CLIPS[along.position] ?? '');
  }
  return parts.filter((part) => part !== '').join(' · ');
}
