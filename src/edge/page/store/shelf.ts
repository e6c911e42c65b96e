import { signal } from '@preact/signals';
import type { TrialLine } from '../../store/store.ts';
import { fetchTrials } from './api.ts';
import { keptSignal } from './kept.ts';

export type Shelf =
  | { state: 'loading' }
  /** `sentence`: why this may be old, when the bench computer did not answer; else empty. */
  | { state: 'ready'; trials: TrialLine[]; sentence: string }
  | { state: 'failed'; sentence: string };

/** The trials that the bench computer holds. */
export const shelf = signal<Shelf>({ state: 'loading' });

/** The shelf as it was answered last, for when there is no network. */
const lastSeen = keptSignal<TrialLine[]>('cupel.shelf', [], isLines);

/** Asks for the shelf again; what stood there stays in sight until the answer is in. Without an answer the last one is shown. */
export async function loadShelf(): Promise<void> {
  const answer = await fetchTrials();
  if (answer.ok) {
    lastSeen.value = answer.value;
    shelf.value = { state: 'ready', trials: answer.value, sentence: '' };
  } else if (lastSeen.value.length === 0) shelf.value = { state: 'failed', sentence: answer.sentence };
  else shelf.value = { state: 'ready', trials: lastSeen.value, sentence: answer.sentence };
}

function isLines(kept: unknown): kept is TrialLine[] {
  return Array.isArray(kept) && kept.every((line) => typeof line?.trial === 'string' && typeof line.title === 'string');
}
