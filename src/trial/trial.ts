import type { Cable, Fitting } from './records/cables.ts';
import type { Aside, Blinding, Note, Withdrawal } from './records/notes.ts';
import type { Evidence, Specimen } from './records/pieces.ts';
import type { Reply, SealedPart } from './records/publishing.ts';
import type { Judgement, OnPiece, Reading, Retag } from './records/readings.ts';
import type { Check, Instrument } from './records/tools.ts';
import type { TypedRow } from './records/typedRow.ts';

export type * from './records/cables.ts';
export type * from './records/notes.ts';
export type * from './records/pieces.ts';
export type * from './records/publishing.ts';
export type * from './records/readings.ts';
export type * from './records/tools.ts';
export type * from './records/typedRow.ts';

/**
 * What the journal means: a trial as plain data, in SI units (m, kg, Ω, K), with what was typed kept beside each number.
 * Made only by the fold. Every record names the entry that it came from.
 */
export interface Trial {
  trial: string;
  title: string;
  purpose: string;
  place: string;
  /** K; null when no target was stated. */
  targetTemperature: number | null;
  openedOn: string | null;
  disclosure: string;
  /** The row that describes the trial as typed; null while nobody described it. */
  described: TypedRow | null;
  cables: Cable[];
  fittings: Fitting[];
  instruments: Instrument[];
  /** Tools held against something known; what follows for a tool is already in its `limit`. */
  checks: Check[];
  specimens: Specimen[];
  evidence: Evidence[];
  /** In the order in which they were taken, struck and replaced ones included (see `standing`). */
  readings: Reading[];
  /** Rows that strike a reading out, kept as typed so that export gives them back. */
  strikes: TypedRow[];
  /** Mix-ups of pieces put right, in the order in which they were said; already applied to what is below and above. */
  retags: Retag[];
  /** Tables that the assay does not use: rows as typed, with the pieces that they mean. */
  judgements: Judgement[];
  endurance: OnPiece[];
  currents: OnPiece[];
  notes: Note[];
  /** What is planned, by name of the setting; blank values are left out. Names are an open list, see `journal/settings.ts`. */
  settings: Readonly<Record<string, string>>;
  /** The rows of `settings` as typed, so that export gives them back. */
  settingRows: TypedRow[];
  blinding: Blinding;
  /** Parts that were sealed, in the order in which that was done. */
  parts: SealedPart[];
  /** Rows of parts.csv as typed, so that export gives them back. */
  sealRows: TypedRow[];
  /** What makers were asked and what they replied. */
  replies: Reply[];
  /** Every act of putting something aside or taking it up again, in the order in which they were said. */
  withdrawals: Withdrawal[];
  /** Rows that stand aside now, with everything that hangs on them: they are in no table above. */
  aside: Aside[];
  /** The act that put the whole trial away; null while it is not. */
  putAway: Withdrawal | null;
  /** Things worth saying that did not stop anything: an unlikely value, a reference that points nowhere yet. */
  remarks: Remark[];
}

export interface Remark {
  /** Stable, kebab-case: 'ten-times-its-fellows', 'looks-like-ounces', 'temperature-apart', 'not-yet-described' … */
  code: string;
  /** The cable concerned, when there is one. */
  cable: string | null;
  /** Ids of the readings concerned. */
  readings: string[];
  /** One plain sentence: what was found, what was expected, what to do. */
  text: string;
}
