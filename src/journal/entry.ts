/**
 * One thing that a person said, appended to a trial's journal and never edited or deleted.
 *
 * `id` is a UUIDv7 made by the writer: sorting entries by id gives the one order in which they are folded, so two devices
 * that hold the same set of entries hold the same trial, whatever order they arrived in.
 */
export interface Entry {
  id: string;
  trial: string;
  /** Names the table that `body` is a row of. Kinds that this version does not know are kept and skipped. */
  kind: string;
  /** When it was said, ISO 8601 in UTC. */
  at: string;
  /** Who said it; may be empty. */
  by: string;
  /** Which device it was said on; may be empty. */
  device: string;
  /** The row as it was typed: column name → text. Nothing is converted before the fold. */
  body: Readonly<Record<string, string>>;
}

/** The kinds that this version understands; each is one file of the data package and one file in `kinds/`. */
export const ENTRY_KINDS = [
  'trial',
  'cable',
  'fitting',
  'instrument',
  'check',
  'specimen',
  'evidence',
  'reading',
  'strike',
  'retag',
  'judgement',
  'endurance',
  'current',
  'withdrawal',
  'note',
  'setting',
  'blinding',
  'seal',
  'reply',
] as const;

export type EntryKind = (typeof ENTRY_KINDS)[number];
