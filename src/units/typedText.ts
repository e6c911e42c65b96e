import { NUMBER_IN_FRONT } from './typedQuantity.ts';
import { findUnit } from './unit.ts';

/** What was typed into one field: the number, and the unit behind it as far as one was typed. */
export interface SplitTyped {
  number: string;
  /** As typed; empty where none was, or where the text is no number with one unit (`5 ft 6 in`): then `number` is all of it. */
  unit: string;
}

/** Takes `29.5in`, `.948 mohm` or `1 3/8"` apart, both parts as typed. A text that is no number with one known unit stays whole. */
export function splitTyped(text: string): SplitTyped {
  const whole = { number: text.trim(), unit: '' };
  const front = NUMBER_IN_FRONT.exec(text);
  if (front === null) return whole;
  const rest = text.slice(front[0].length).trim();
  return rest !== '' && findUnit(rest) !== null ? { number: front[0].trim(), unit: rest } : whole;
}

/** A unit as printed: `mohm` → `mΩ`; none for a count; what is not understood stays as typed. */
export function unitText(unit: string): string {
  const symbol = unit.trim() === '' ? '' : (findUnit(unit)?.symbol ?? unit.trim());
  return symbol === '1' ? '' : symbol;
}

/**
 * A typed value with its unit, once: a unit behind the number counts before that of the unit cell, as it does when the value
 * is read. A value of two parts (`5 ft 6 in`) carries its units already.
 *
 * @example typedText('.948 mohm', 'mohm') // '.948 mΩ'
 */
export function typedText(value: string, unit: string): string {
  const { number, unit: own } = splitTyped(value);
  if (own !== '') return `${number} ${unitText(own)}`.trim();
  return carriesUnits(number) ? number : `${number} ${unitText(unit)}`.trim();
}

/** Whether a text carries its units within, as `5 ft 6 in` does; an exponent (`1e9`) is none. */
export const carriesUnits = (number: string): boolean => /\d\s*[^\d\s.,/]/u.test(withoutExponent(number));

/** `1.2e3` without what would look like a unit; fractions written as one sign and every kind of dash count as digits. */
const withoutExponent = (number: string) => number.replace(/e[+\-−]?\d+$/i, '').replace(/[½⅓⅔¼¾⅕-⅞⅐⅑⅒⁄‐‑–−-]/gu, '');
