import type { PartPlace } from '../journal/kinds/seal.ts';
import type { WithdrawnKind } from '../journal/kinds/withdrawal.ts';

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

/** A row as typed, with the entry it came from. */
export interface TypedRow {
  entry: string;
  row: Readonly<Record<string, string>>;
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

export type CableRole = 'compared' | 'control' | 'reference';

export interface Cable extends TypedRow {
  cable: string;
  /** Maker and model as shown to people; the id when both are blank. */
  name: string;
  /** `control`: plain solid copper building wire that checks the tools; `reference`: stands outside the order. */
  role: CableRole;
  label: Label;
  /** Length bought, m. */
  boughtLength: number | null;
  jacketColour: string;
}

/** What the label and the seller claim; text verbatim, numbers in SI. `null`: the label does not say. */
export interface Label {
  /** Verbatim: `2 AWG`, `1/0 true spec`, `35 mm2`, `0 gauge`. */
  size: string;
  /** Verbatim: `OFC`, `100 % copper`, `CCA`, or empty. */
  metal: string;
  strands: number | null;
  /** m */
  strandDiameter: number | null;
  /** K */
  temperature: number | null;
  /** Ω/m */
  ohmsPerMetre: number | null;
  /** kg/m */
  massPerMetre: number | null;
  /** m */
  outerDiameter: number | null;
  printedOnJacket: string;
}

export interface Fitting extends TypedRow {
  fitting: string;
  kind: string;
  /** m */
  bore: number;
  triedWith: string | null;
  tried: string | null;
}

export interface Instrument extends TypedRow {
  instrument: string;
  /** As typed: 'kitchen scale', 'digital caliper', 'four-wire meter' … */
  kind: string;
  /** SI unit of what it reads. */
  resolution: number;
  limit: ErrorLimit;
  /** As stated or assumed, before any check; only on a tool that was checked. */
  ownLimit?: ErrorLimit;
  /** K; the span in which the limit holds, null when the box does not say. */
  validFrom: number | null;
  validTo: number | null;
}

/** Limit of error at reading x: ±(absolute + fraction · x), taken as uniform. `absolute` has counts already folded in. */
export interface ErrorLimit {
  /** SI unit of what it reads. */
  absolute: number;
  fraction: number;
  /** True when nothing was stated and the usual limit for the kind of tool was taken; every finding that leans on it says so. */
  assumed: boolean;
  /** True when the limit comes from a check against something known; findings that lean on it say so. */
  checked?: boolean;
}

/** One check of a tool. SI units of what the tool reads. */
export interface Check extends TypedRow {
  check: string;
  instrument: string;
  /** In lower case; `zero` shows drift, everything else is a known value; empty when not stated. */
  against: string;
  zero: boolean;
  known: number;
  /** How far the known thing may be from `known`. */
  knownError: number;
  read: number;
  /** K */
  temperature: number | null;
}

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

/** Where a reading stands: counted, struck out with a reason, replaced by a later one, or aside with its piece or cable. */
export type Standing = 'counted' | 'struck' | 'replaced' | 'aside';

export interface Reading extends TypedRow, Repointed {
  reading: string;
  /** The piece that it means; the piece as typed is in `row.specimen`. */
  specimen: string;
  /** Cable of the specimen. */
  cable: string;
  quantity: string;
  /** SI unit of the quantity's dimension. */
  value: number;
  /** SI: one step of what was typed (39.27 g → 0.01 g; 3/8 in → 1/8 in). */
  step: number;
  instrument: string | null;
  /** K; of the copper for a resistance. null when not stated. */
  temperature: number | null;
  /** m; distance between the voltage contacts. */
  atLength: number | null;
  /** m, one step of the typed distance; 0 when not stated. */
  atLengthStep: number;
  /** The earlier reading that this one corrects. */
  replaces: string | null;
  set: string;
  position: string;
  standing: Standing;
  /** Why it does not count, in the recorder's words; empty when it counts. */
  why: string;
}

/** What a repair of a mix-up leaves on whatever it moved. */
export interface Repointed {
  /** Names of the repairs that gave it another piece than was typed, in the order in which they were applied; usually none. */
  retagged: readonly string[];
}

/** Two pieces bent by hand; `row` holds the result and the rest as typed. */
export interface Judgement extends TypedRow, Repointed {
  judgement: string;
  /** The pieces that are meant; as typed they are in `row`. */
  left: string;
  right: string;
}

/** A row about one piece, kept as typed otherwise. */
export interface OnPiece extends TypedRow, Repointed {
  /** The piece that it means; as typed it is in `row`. */
  specimen: string;
}

/** A mix-up of pieces put right for what was read in a span of time, both ends included. */
export interface Retag extends TypedRow {
  retag: string;
  /** `swap`: the two pieces change places; `tag`: what was recorded on `specimen` belongs to `becomes`. */
  kind: 'swap' | 'tag';
  specimen: string;
  becomes: string;
  /** Milliseconds since 1970; −∞ and ∞ where the span is open. */
  from: number;
  until: number;
  why: string;
}

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

/** A part as it was sealed. The first row of its name counts; title and hiding are as said last. */
export interface SealedPart extends TypedRow {
  part: string;
  title: string;
  places: readonly PartPlace[];
  /** Id of the last entry when it was sealed. */
  upTo: string;
  /** How many rows of each mark it holds (see `heldRows.ts`); null when the seal does not say. */
  holds: ReadonlyMap<string, number> | null;
  /** SHA-256 of its content and of its findings as text, hexadecimal. */
  content: string;
  findings: string;
  level: number;
  draws: number;
  version: string;
  hidden: boolean;
  at: string | null;
  by: string;
}

/** A maker asked for a word on one cable. Days as typed. */
export interface Reply extends TypedRow {
  reply: string;
  cable: string;
  askedOn: string | null;
  deadline: string;
  receivedOn: string | null;
  noReply: boolean;
  text: string;
  answer: string;
  by: string;
}
