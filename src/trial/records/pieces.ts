/** What was cut, and what the eye saw. */
import type { TypedRow } from './typedRow.ts';

export type SpecimenKind = 'whole' | 'bend' | 'apart' | 'abuse' | 'kept' | '';

export interface Specimen extends TypedRow {
  specimen: string;
  cable: string;
  code: string;
  /** m, as cut; null when not stated. */
  cutLength: number | null;
  /** m, one step of the typed cut length; 0 when not stated. */
  cutLengthStep: number;
  cutFrom: string | null;
  kind: SpecimenKind;
}

export interface Evidence extends TypedRow {
  cable: string;
  look: string;
  where: string;
  /** How many strands were looked at, and how many of them showed it; null when not stated. */
  count: number | null;
  seenIn: number | null;
  seen: string;
}
