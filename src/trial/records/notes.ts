/** What was said about the rest: notes, what stands aside, whether names are hidden. */
import type { WithdrawnKind } from '../../journal/kinds/withdrawal.ts';
import type { TypedRow } from './typedRow.ts';

export type NoteSubject = 'trial' | 'cable' | 'specimen' | 'reading';

/** Words or a photo about something. */
export interface Note extends TypedRow {
  note: string;
  about: NoteSubject;
  /** Name of what it is about; the trial's own name for the trial. */
  which: string;
  text: string;
  /** As typed: SHA-256 of a blob in hexadecimal, or a file name; empty when there is none. */
  photo: string;
  /** What the photo shows, in lower case; empty when nobody said. */
  shot: string;
  at: string | null;
  by: string;
  footage: string;
  timecode: string;
}

/** One thing put aside, or taken up again. */
export interface Withdrawal extends TypedRow {
  withdrawal: string;
  /** True where it takes up again what was put aside. */
  again: boolean;
  about: WithdrawnKind;
  /** Name of the thing; the trial's own name for the trial. */
  which: string;
  /** Of a fitting: only where this cable was tried in it; null: everywhere. */
  triedWith: string | null;
  why: string;
  at: string | null;
  by: string;
}

/** Tables of which rows can stand aside. */
export type AsideKind = Exclude<WithdrawnKind, 'trial'> | 'current';

/** A row that stands aside, as typed. */
export interface Aside extends TypedRow {
  kind: AsideKind;
  /** Its place among all rows of its table. */
  place: number;
  /** Name of the act that put it aside, or put aside what it hangs on. */
  withdrawal: string;
  why: string;
}

/** Whether names are hidden behind codes. */
export interface Blinding {
  /** Only codes may be shown now. */
  blind: boolean;
  /** How nobody was to know, as said when it was last blinded; empty when not stated. */
  how: string;
  /** When it was last blinded, as typed; null when never, or not stated. */
  since: string | null;
  /** It was blind once, and the names were shown since. */
  revealed: boolean;
  /** When, as typed; null when not revealed, or not stated. */
  revealedAt: string | null;
  /** Every act as typed, so that export gives them back. */
  acts: TypedRow[];
}
