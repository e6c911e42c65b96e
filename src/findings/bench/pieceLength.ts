import { median } from '../../numerics/describe.ts';
import type { Trial } from '../../trial/trial.ts';

type Held = Pick<Trial, 'specimens' | 'readings' | 'cables'>;

/** A length that was read agrees with the length that was cut within this factor, up or down; a slip makes more. Ours. */
export const SAME_LENGTH = 1.25;

/** The length a piece was cut to, or bought in where it was never cut, m; null when neither is on record. */
export function cutLengthOf({ specimens, cables }: Held, specimen: string): number | null {
  const piece = specimens.find((each) => each.specimen === specimen);
  if (piece?.cutLength !== null && piece?.cutLength !== undefined) return piece.cutLength;
  if (piece?.kind !== 'whole') return null;
  return cables.find((each) => each.cable === piece.cable)?.boughtLength ?? null;
}

/** Whether two lengths can be the same one, read twice. */
export const sameLength = (a: number, b: number): boolean => a / b <= SAME_LENGTH && b / a <= SAME_LENGTH;

/**
 * Lengths that a piece may have, m, the likeliest first: as read and as cut where both are on record and differ by more than a
 * sound reading does. What weighs as it should by either of them is not what was misread.
 */
export function lengthsOf(trial: Held, specimen: string): number[] {
  const read = trial.readings.filter(
    (r) => r.standing === 'counted' && r.specimen === specimen && r.quantity === 'conductor_length',
  );
  const cut = cutLengthOf(trial, specimen);
  if (read.length === 0) return cut === null ? [] : [cut];
  const middle = median(read.map((r) => r.value));
  return cut === null || sameLength(middle, cut) ? [middle] : [cut, middle];
}
