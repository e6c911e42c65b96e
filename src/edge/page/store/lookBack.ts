import { signal } from '@preact/signals';
import type { Entry } from '../../../journal/entry.ts';
import { Bench, Stopped } from '../worker/bench.ts';
import type { Assay } from './assay.ts';

/** What was inside each cable by what was known at an earlier moment; null while nobody looks back. */
export const lookedBack = signal<Assay | null>(null);

const bench = new Bench();

/** Computes the closed form from an earlier part of a journal. What was shown before stays in sight until it is done. */
export async function lookInside(entries: readonly Entry[]): Promise<void> {
  bench.stop();
  const before = lookedBack.value;
  const trial = entries[0]?.trial ?? '';
  const now = { trial, entries, place: '', readings: [], drawn: 0, sentence: '' };
  if (before === null) lookedBack.value = { ...now, stage: 'computing', findings: null };
  try {
    const assayed = await bench.ask('assay', { entries, draws: 0 });
    lookedBack.value = { ...now, ...assayed, stage: 'done' };
  } catch (error) {
    if (error instanceof Stopped) return;
    lookedBack.value = {
      ...now,
      stage: 'failed',
      findings: null,
      sentence: error instanceof Error ? error.message : '',
    };
  }
}

export function stopLooking(): void {
  bench.stop();
  lookedBack.value = null;
}
