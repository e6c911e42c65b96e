import type { TrialPlan } from '../../../findings/plan.ts';
import type { Findings, Measured } from '../../../findings/schema.ts';
import type { StarterAnswers } from '../../../findings/starter.ts';
import type { Entry } from '../../../journal/entry.ts';
import type { Paper } from '../../../report/labels/paper.ts';
import type { Photo } from '../../../report/package/photos.ts';
import type { Refusal } from '../../../report/package/refusal.ts';
import type { Reading } from '../../../trial/trial.ts';
import type { DisplayUnits } from '../../../units/display.ts';

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
  /** Photos that came along, by their SHA-256. */
  photos: Photo[];
  notes: string[];
}

/** What a journal says, and what follows from it. */
export interface Assayed {
  findings: Findings;
  place: string;
  /** All readings in fold order, struck and replaced ones included. */
  readings: Reading[];
}

/** What a plan prints. */
export type SheetKind = 'labels' | 'flags' | 'cut-list';

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
  /** Entries that are new since the last time to the metal area of the cables that are named. */
  soFar: {
    ask: { fresh: boolean; news: readonly Entry[]; cables: readonly string[] };
    answer: { cable: string; area: Measured }[];
  };
  /** What a first trial is asked, and who says it, to the entries that make the trial. */
  start: {
    ask: { answers: StarterAnswers; trial: string; at: string; by: string; device: string };
    answer: Entry[];
  };
  /** Entries to the plan of their trial; `draws` imagined cables say what it would show, 0 leaves that out. */
  plan: { ask: { entries: readonly Entry[]; draws: number; withSmallest: boolean }; answer: TrialPlan };
  /** Entries to sheets for the printer, an SVG each. `linkTo` is what a code is put behind for its QR; null for none. */
  sheets: {
    ask: {
      entries: readonly Entry[];
      what: SheetKind;
      paper: Paper;
      blind: boolean;
      linkTo: string | null;
      units: DisplayUnits;
    };
    answer: string[];
  };
  /** Entries, and the photos that are to come along, to the bytes of a .zip that anyone can read and compute again. */
  pack: { ask: { entries: readonly Entry[]; findings: Findings | null; photos: readonly Photo[] }; answer: Uint8Array };
}

export type JobKind = keyof Jobs;

/** A message to the worker. */
export type Asked = { [K in JobKind]: { number: number; kind: K; ask: Jobs[K]['ask'] } }[JobKind];

/** A message from the worker: how many draws are done, the answer, or one sentence that says what stood in the way. */
export type Answered =
  | { number: number; drawn: number }
  | { number: number; ok: true; answer: Jobs[JobKind]['answer'] }
  | { number: number; ok: false; sentence: string };
