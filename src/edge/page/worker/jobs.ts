import type { DrawnFourWire, DrawnHeating } from '../../../findings/current/drawn.ts';
import type { StatedWithLog } from '../../../findings/current/logRows.ts';
import type { RunCandidates } from '../../../findings/current/runCables.ts';
import type { TrialPlan } from '../../../findings/plan.ts';
import type { Findings, Measured, Warning } from '../../../findings/schema.ts';
import type { Decide } from '../../../findings/shapes/decide.ts';
import type { OrderNow } from '../../../findings/standing/orderBy.ts';
import type { StarterAnswers } from '../../../findings/starter.ts';
import type { Entry } from '../../../journal/entry.ts';
import type { PartPlace } from '../../../journal/kinds/seal.ts';
import type { LogColumn, LogLayout } from '../../../methods/current/log/columns.ts';
import type { Paper } from '../../../report/labels/paper.ts';
import type { Photo } from '../../../report/package/photos.ts';
import type { Refusal } from '../../../report/package/refusal.ts';
import type { ReportDocument } from '../../../report/publish/document/blocks.ts';
import type { LicenceOffered } from '../../../report/publish/licences.ts';
import type { Reading, SealedPart, Trial } from '../../../trial/trial.ts';
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

/** A logger's file as it would be kept, and what it says. */
export interface LogBrought {
  rows: Record<string, string>[];
  /** Rows of the file. */
  readings: number;
  unreadable: { rows: number; first: number | null };
  gaps: number;
  /** s: the usual step, and the whole span. */
  step: number;
  seconds: number;
  /** A, and K or why nothing is said. */
  heatings: { current: number; steadyRise: number | null; refused: string | null }[];
}

/** What somebody holds important, as it is tried out: shares by criterion, an order of importance, or a job. */
export type WishSent = { numbers: Record<string, number> } | { ranking: string[][] } | { job: string };

/** Where the cables stand; `full` with everything beside the order, null where only the order was asked for. */
export interface StandingSaid {
  order: OrderNow;
  full: { decide: Decide; warnings: Warning[] } | null;
}

/** What is looked at before it is published: a sealed part, or a draft of some places. */
export interface PublishSubject {
  /** Name of a sealed part; null for a draft. */
  part: string | null;
  places: readonly PartPlace[];
}

/** What is published of it: what cards are made of, and the report. */
export interface PublishShown {
  trial: Trial;
  findings: Findings;
  part: SealedPart | null;
  document: ReportDocument;
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
  /** Entries and their findings to what Amps draws, and to the measured cables as candidates for a run. */
  amps: {
    ask: { entries: readonly Entry[]; findings: Findings };
    answer: { heatings: DrawnHeating[]; fourWires: DrawnFourWire[]; candidates: RunCandidates };
  };
  /** A logger's file to rows of currents.csv; it tells how many characters are done. `metal`: what was found of the cable. */
  log: {
    ask: {
      text: string;
      layout: LogLayout;
      columns: readonly LogColumn[];
      stated: StatedWithLog;
      metal: string | null;
    };
    answer: LogBrought;
  };
  /**
   * Entries that are new to the worker, or null, and what counts, to where the cables stand. `scales` are tried out before the
   * trial's own; `wish` null takes the trial's own weights; `quick` leaves out what does not follow a slider.
   */
  standing: {
    ask: {
      fresh: readonly Entry[] | null;
      draws: number;
      scales: Record<string, string>;
      wish: WishSent | null;
      quick: boolean;
    };
    answer: StandingSaid | null;
  };
  /** Entries to what is published of them. */
  publish: {
    ask: { entries: readonly Entry[]; subject: PublishSubject; licence: LicenceOffered; units: DisplayUnits };
    answer: PublishShown;
  };
  /** Files to the bytes of a .zip. */
  zip: { ask: { files: readonly (readonly [name: string, content: string | Uint8Array])[] }; answer: Uint8Array };
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
