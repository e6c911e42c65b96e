import { signal } from '@preact/signals';
import { fetchTrials, type TrialLine } from './api.ts';

export type Shelf =
  | { state: 'loading' }
  | { state: 'ready'; trials: TrialLine[] }
  | { state: 'failed'; sentence: string };

/** The trials that the bench computer holds. */
export const shelf = signal<Shelf>({ state: 'loading' });

/** Asks for the shelf again; what stood there stays in sight until the answer is in. */
export async function loadShelf(): Promise<void> {
  const answer = await fetchTrials();
  shelf.value = answer.ok ? { state: 'ready', trials: answer.value } : { state: 'failed', sentence: answer.sentence };
}
