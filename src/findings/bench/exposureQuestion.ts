import { median } from '../../numerics/describe.ts';
import { readingValue } from '../../trial/makeReading.ts';
import type { Trial } from '../../trial/trial.ts';
import { typedText } from '../../units/typedText.ts';
import { type CandidateReading, questionFor } from './questionFor.ts';

/** Two readings of one piece at one time differ by less than this, by ratio; a slip of unit or point makes more. Ours. */
export const SAME_TIME = 1.1;
/** What a fluid or heat seldom does to mass or diameter, by ratio. Ours. */
const SELDOM = 1.5;

interface Candidate extends CandidateReading {
  /** What it was exposed to. */
  set: string;
  /** As it is called: `Mass before`. */
  words: string;
  /** The quantity that a whole piece is read in, whose label and length say what can be. */
  like: string;
}

/**
 * Whether a reading before or after an exposure deserves a question: far from its own repeats, which it would be averaged with, from
 * what the piece was before or after, or from what such a piece can read. It asks; it never stops anything.
 */
export function exposureQuestion(trial: Trial, c: Candidate): string {
  const outcome = readingValue(c.quantity, c.value, c.unit);
  if (!outcome.ok) return '';
  const figure = outcome.value.value;
  const shown = typedText(c.value, c.unit);
  const of = (quantity: string) =>
    trial.readings.filter(
      (r) => r.standing === 'counted' && r.specimen === c.specimen && r.quantity === quantity && r.set.trim() === c.set,
    );
  const apart = (by: number, middle: number) => figure > by * middle || figure < middle / by;
  const own = of(c.quantity);
  if (own.length > 0 && apart(SAME_TIME, median(own.map((r) => r.value))))
    return `${c.words}, ${shown}, is far from ${textOf(own)} read of this piece at the same time; both count, as their mean. Is the unit right, and is one of them to be taken back?`;
  const other = of(
    c.quantity.endsWith('_before') ? c.quantity.replace('_before', '_after') : c.quantity.replace('_after', '_before'),
  );
  if (other.length > 0 && apart(SELDOM, median(other.map((r) => r.value))))
    return `${c.words}, ${shown}, beside ${textOf(other)} ${c.quantity.endsWith('_before') ? 'after' : 'before'}: a piece seldom changes so much. Are the piece, the unit and the decimal point right?`;
  return questionFor(trial, { specimen: c.specimen, quantity: c.like, value: c.value, unit: c.unit })?.text ?? '';
}

const textOf = (readings: Trial['readings']) =>
  readings.map((r) => typedText(r.row.value ?? '', r.row.unit ?? '')).join(', ');
