import { signal } from '@preact/signals';
import type { Findings } from '../../../findings/schema.ts';
import type { Entry } from '../../../journal/entry.ts';
import type { Reading } from '../../../trial/trial.ts';
import { Bench, Stopped } from '../worker/bench.ts';
import { fetchEntries } from './api.ts';

/** How far the computing is: nothing yet, the closed form, or the closed form held against random draws. */
export type Stage = 'fetching' | 'computing' | 'drawing' | 'stopped' | 'done' | 'failed';

export interface Assay {
  trial: string;
  stage: Stage;
  entries: readonly Entry[];
  findings: Findings | null;
  place: string;
  readings: readonly Reading[];
  /** Random draws done so far, while they are drawn. */
  drawn: number;
  /** What stood in the way; empty unless the stage is 'failed'. */
  sentence: string;
}

/** The trial that is open, with its findings. */
export const assay = signal<Assay | null>(null);

const bench = new Bench();

/** Opens a trial: fetches its entries, shows the closed form first, then holds it against random draws. */
export async function openTrial(trial: string): Promise<void> {
  if (assay.value?.trial === trial && assay.value.stage !== 'failed') return;
  bench.stop();
  assay.value = {
    trial,
    stage: 'fetching',
    entries: [],
    findings: null,
    place: '',
    readings: [],
    drawn: 0,
    sentence: '',
  };
  const fetched = await fetchEntries(trial);
  if (!fetched.ok) return change(trial, { stage: 'failed', sentence: fetched.sentence });
  change(trial, { entries: fetched.value });
  await compute(trial, fetched.value);
}

/** Stops the computing; what was found until then stays. */
export function stopComputing(): void {
  bench.stop();
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
    change(trial, { ...assayed, stage: 'drawing' });
  } catch (error) {
    return change(trial, { stage: error instanceof Stopped ? 'stopped' : 'failed', sentence: sentenceOf(error) });
  }
  await draw(trial, entries);
}

async function draw(trial: string, entries: readonly Entry[]): Promise<void> {
  change(trial, { stage: 'drawing', drawn: 0 });
  try {
    const hear = (drawn: number) => change(trial, { drawn });
    change(trial, { ...(await bench.ask('assay', { entries, draws: 'auto' }, hear)), stage: 'done' });
  } catch (error) {
    change(trial, { stage: error instanceof Stopped ? 'stopped' : 'failed', sentence: sentenceOf(error) });
  }
}

/** Changes the open trial's state; an answer for a trial that was left meanwhile changes nothing. */
function change(trial: string, next: Partial<Assay>): void {
  const now = assay.value;
  if (now?.trial === trial) assay.value = { ...now, ...next };
}

const sentenceOf = (error: unknown) => (error instanceof Error ? error.message : String(error));
