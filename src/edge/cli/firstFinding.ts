import type { CableFindings, Findings } from '../../findings/schema.ts';
import { type Compared, compareJson, type Difference } from './firstDifference.ts';

/** A difference, with the cable that it is about when it is about one. */
export type FindingDifference = Difference & { cable: string | null };

export interface FindingsCompared {
  /** The first difference. Null when there is none. */
  first: FindingDifference | null;
  /** Largest relative difference that passed for none; 0 when every digit is the same. */
  largest: number;
}

/**
 * Compares published findings with computed ones: cable by cable, whatever their order, then the rest. Of one cable a
 * figure that differs is named rather than the sentence in front of it that the figure changed.
 */
export function compareFindings(published: Findings, computed: Findings, tolerance: number): FindingsCompared {
  const ours = new Map(computed.cables.map((cable) => [cable.cable, cable]));
  let largest = 0;
  const compared = (a: unknown, b: unknown): Compared => {
    const result = compareJson(a, b, tolerance);
    largest = Math.max(largest, result.largest);
    return result;
  };
  for (const theirs of published.cables) {
    const { first, firstFigure } = compared(theirs, ours.get(theirs.cable));
    const found = firstFigure ?? first;
    if (found !== null) return { first: { ...found, cable: shownName(theirs) }, largest };
  }
  const rest = (findings: Findings) => ({ ...findings, cables: findings.cables.map(({ cable }) => cable) });
  const { first } = compared(rest(published), rest(computed));
  return { first: first && { ...first, cable: null }, largest };
}

const shownName = ({ name, cable }: CableFindings): string => name || cable;

/** Where a difference lies: `Quill, conductor_area.value`. */
export const placeText = ({ cable, place }: FindingDifference): string =>
  cable === null ? place : `${cable}, ${place}`;

/** One side of a difference as JSON, cut where it is long. */
export const sideText = (value: unknown): string =>
  value === undefined ? 'nothing' : JSON.stringify(value).slice(0, 120);
