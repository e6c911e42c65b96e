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
  specimens: Specimen[];
  evidence: Evidence[];
  /** In the order in which they were taken, struck and replaced ones included (see `standing`). */
  readings: Reading[];
  /** Rows that strike a reading out, kept as typed so that export gives them back. */
  strikes: TypedRow[];
  /** Rows of tables that the assay does not use, kept as typed so that export gives them back. */
  judgements: TypedRow[];
  endurance: TypedRow[];
  currents: TypedRow[];
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

/** Where a reading stands: counted, struck out with a reason, or replaced by a later one. */
export type Standing = 'counted' | 'struck' | 'replaced';

export interface Reading extends TypedRow {
  reading: string;
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
  set: string;
  position: string;
  standing: Standing;
  /** Why it does not count, in the recorder's words; empty when it counts. */
  why: string;
}
