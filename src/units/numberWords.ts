import { capital } from './capital.ts';
import { wholeText } from './wholeText.ts';

const SMALL = [
  'none',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** A count in a sentence: words up to twelve (`none` for 0), figures above. Throws RangeError unless a whole number ≥ 0. */
export function numberWord(n: number): string {
  if (!Number.isInteger(n) || n < 0) throw new RangeError(`A count is a whole number from 0 up, and got ${n}.`);
  return SMALL[n] ?? wholeText(n);
}

/** The same at the head of a sentence: `Two`, `None`, `14`. */
export function numberWordFirst(n: number): string {
  const word = numberWord(n);
  return capital(word);
}

/** `two of the six`, `both`, `all six`, `none of the six`: a part of a whole in words. */
export function partOf(part: number, whole: number): string {
  if (part === whole) return whole === 1 ? 'the one' : whole === 2 ? 'both' : `all ${numberWord(whole)}`;
  return `${numberWord(part)} of the ${numberWord(whole)}`;
}
