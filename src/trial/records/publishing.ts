/** What was shown to others, and what came back. */
import type { PartPlace } from '../../journal/kinds/seal.ts';
import type { TypedRow } from './typedRow.ts';

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
