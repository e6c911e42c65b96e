import type { Findings } from '../../../findings/schema.ts';
import type { Entry } from '../../../journal/entry.ts';
import type { Refusal } from '../../../report/package/refusal.ts';
import type { Reading } from '../../../trial/trial.ts';

/** One file as the browser handed it over: its path inside what was dropped, and its bytes. */
export interface BroughtFile {
  path: string;
  bytes: Uint8Array;
}

/** What a package holds once it has been read: rows for the journal, and what was refused. */
export interface PackageRead {
  trial: string;
  entries: Entry[];
  refusals: Refusal[];
  notes: string[];
}

/** What a journal says, and what follows from it. */
export interface Assayed {
  findings: Findings;
  place: string;
  /** All readings in fold order, struck and replaced ones included. */
  readings: Reading[];
}

/** Everything the worker can be asked, with what it answers. All computing happens there, so the page never stalls. */
export interface Jobs {
  /** Entries to findings: closed form with `draws` 0, held against random draws with 'auto'. */
  assay: { ask: { entries: readonly Entry[]; draws: number | 'auto' }; answer: Assayed };
  /**
   * Files, or one .zip, to entries. `name` stands in for the trial's id where no file gives one; `shelf` is what the trial
   * holds already, which is not said again.
   */
  read: {
    ask: { files: readonly BroughtFile[]; name: string; keepGood: boolean; now: string; shelf: readonly Entry[] };
    answer: PackageRead;
  };
  /** Entries to the bytes of a .zip that anyone can read and compute again. */
  pack: { ask: { entries: readonly Entry[]; findings: Findings | null }; answer: Uint8Array };
}

export type JobKind = keyof Jobs;

/** A message to the worker. */
export type Asked = { [K in JobKind]: { number: number; kind: K; ask: Jobs[K]['ask'] } }[JobKind];

/** A message from the worker: how many draws are done, the answer, or one sentence that says what stood in the way. */
export type Answered =
  | { number: number; drawn: number }
  | { number: number; ok: true; answer: Jobs[JobKind]['answer'] }
  | { number: number; ok: false; sentence: string };
