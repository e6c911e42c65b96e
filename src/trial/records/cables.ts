/** What was compared: cables with what their labels claim, and the fittings tried on them. */
import type { TypedRow } from './typedRow.ts';

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
