/** What was read, judged and worn, and the mix-ups put right. */
import type { TypedRow } from './typedRow.ts';

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
