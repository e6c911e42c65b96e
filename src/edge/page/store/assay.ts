import { effect, signal, untracked } from '@preact/signals';
import type { Findings } from '../../../findings/schema.ts';
import type { Entry } from '../../../journal/entry.ts';
import { entriesByCode } from '../../../trial/byCode.ts';
import type { Reading } from '../../../trial/trial.ts';
import { Bench, Stopped } from '../worker/bench.ts';
import { folded, held, openJournal } from './journal/journal.ts';
import { REST_BEFORE_DRAWS_MS } from './restBeforeDraws.ts';
import { sentenceOf } from './sentenceOf.ts';

/** How far the computing is: nothing yet, the closed form, or the closed form held against random draws. */
export type Stage = 'fetching' | 'computing' | 'drawing' | 'stopped' | 'done' | 'failed';

export interface Assay {
  trial: string;
  stage: Stage;
  entries: readonly Entry[];
  findings: Findings | null;
  place: string;
  /** True while cables and pieces are shown by their codes only. */
  blind?: boolean;
  readings: readonly Reading[];
  /** Random draws done so far, while they are drawn. */
  drawn: number;
  /** What stood in the way; empty unless the stage is 'failed'. */
  sentence: string;
}

/** The trial that is open, with its findings. */
export const assay = signal<Assay | null>(null);

const bench = new Bench();

/**
 * Opens a trial and follows its journal until the answer is called: shows the closed form first, then holds it against
 * random draws; begins anew when an entry comes. Without a network it goes by what this browser holds.
 */
export function followTrial(trial: string): () => void {
  if (assay.peek()?.trial !== trial || assay.peek()?.stage === 'failed') assay.value = fetching(trial);
  void openJournal(trial);
  followers += 1;
  const stop = effect(() => {
    const now = held.value;
    if (now?.trial !== trial) return;
    const { journal } = now.outbox;
    if (journal.length === 0 && now.link === 'away') change(trial, { stage: 'failed', sentence: now.sentence });
    // A journal that was never read to its end is waited for, unless the bench computer is out of reach.
    if (journal.length > 0 && now.asked) untracked(() => take(trial, journal));
  });
  if (putOff !== null) void drawOnceSettled(trial, putOff);
  return () => {
    followers -= 1;
    stop();
  };
}

/** How many follow the open trial just now. */
let followers = 0;
/** The entries whose draws were put off because nobody followed any more; null for none. */
let putOff: readonly Entry[] | null = null;

function fetching(trial: string): Assay {
  return { trial, stage: 'fetching', entries: [], findings: null, place: '', readings: [], drawn: 0, sentence: '' };
}

/** The journal that was taken last, before anything was put under codes. */
let taken: readonly Entry[] = [];

/** Computes anew, unless just this journal is being or was computed. While the trial is blind, everything goes by code. */
function take(trial: string, journal: readonly Entry[]): void {
  const now = assay.peek();
  if (now?.trial !== trial || (taken === journal && now.entries.length > 0)) return;
  const blind = folded.peek()?.blinding.blind ?? false;
  const entries = blind ? entriesByCode(journal, folded.peek()!) : journal;
  taken = journal;
  bench.stop();
  // Names that stood there must not stand on while the codes are computed.
  change(trial, { entries, blind, ...(blind && !now.blind ? { findings: null } : {}) });
  void compute(trial, entries);
}

/** Stops the computing; what was found until then stays. */
export function stopComputing(): void {
  bench.stop();
  const now = assay.peek();
  // Between the closed form and the draws nothing is under way that the worker could be stopped in.
  if (now?.stage === 'drawing' && now.drawn === 0) change(now.trial, { stage: 'stopped' });
}

/** Lets go of the open trial, so that opening it again fetches anew. */
export function closeTrial(): void {
  bench.stop();
  assay.value = null;
}

/** Goes on after a stop: with the random draws, or from the start where nothing had been found yet. */
export async function goOn(): Promise<void> {
  const now = assay.value;
  if (now === null) return;
  await (now.findings === null ? compute(now.trial, now.entries) : draw(now.trial, now.entries));
}

async function compute(trial: string, entries: readonly Entry[]): Promise<void> {
  change(trial, { stage: 'computing' });
  try {
    const assayed = await bench.ask('assay', { entries, draws: 0 });
    if (assay.peek()?.entries !== entries) return;
    change(trial, { ...assayed, stage: 'drawing' });
  } catch (error) {
    if (assay.peek()?.entries !== entries) return;
    return change(trial, { stage: error instanceof Stopped ? 'stopped' : 'failed', sentence: sentenceOf(error) });
  }
  await drawOnceSettled(trial, entries);
}

const restBeforeDraws = () => new Promise((resume) => setTimeout(resume, REST_BEFORE_DRAWS_MS));

/** Draws after the rest, unless the answer was stopped, replaced or left meanwhile; what was left goes on when it is followed again. */
async function drawOnceSettled(trial: string, entries: readonly Entry[]): Promise<void> {
  putOff = null;
  await restBeforeDraws();
  if (assay.peek()?.entries !== entries || assay.peek()?.stage !== 'drawing') return;
  if (followers === 0) putOff = entries;
  else await draw(trial, entries);
}

async function draw(trial: string, entries: readonly Entry[]): Promise<void> {
  change(trial, { stage: 'drawing', drawn: 0 });
  try {
    const hear = (drawn: number) => change(trial, { drawn });
    const assayed = await bench.ask('assay', { entries, draws: 'auto' }, hear);
    if (assay.peek()?.entries === entries) change(trial, { ...assayed, stage: 'done' });
  } catch (error) {
    if (assay.peek()?.entries !== entries) return;
    change(trial, { stage: error instanceof Stopped ? 'stopped' : 'failed', sentence: sentenceOf(error) });
  }
}

/** Changes the open trial's state; an answer for a trial that was left meanwhile changes nothing. */
function change(trial: string, next: Partial<Assay>): void {
  // Looked at without following it: this is also called from within an effect, which would else set off itself.
  const now = assay.peek();
  if (now?.trial === trial) assay.value = { ...now, ...next };
}
