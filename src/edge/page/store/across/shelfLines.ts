import { computed, signal } from '@preact/signals';
import { type IndexedCable, indexedShelf } from '../../../../findings/across/searchShelf.ts';
import type { ShelfNews } from '../../../shelf/lineBook.ts';
import { ask } from '../api.ts';
import { type KeptTrial, keepLines, readKeptLines } from './keptLines.ts';

export interface ShelfLines {
  state: 'loading' | 'asking' | 'ready';
  trials: ReadonlyMap<string, KeptTrial>;
  /** Trials that the bench computer has not told yet. */
  left: number;
  /** Why this may be old, when the bench computer did not answer; else empty. */
  sentence: string;
  /** Titles of trials that the disk damaged. */
  damaged: readonly string[];
}

/** Every cable of every trial, as far as it was told. */
export const shelfLines = signal<ShelfLines>({
  state: 'loading',
  trials: new Map(),
  left: 0,
  sentence: '',
  damaged: [],
});

/** Lines that were prepared for searching once: they never change, only whole trials are told anew. */
const prepared = new WeakMap<KeptTrial, IndexedCable[]>();

function preparedOf(kept: KeptTrial): IndexedCable[] {
  const ready = prepared.get(kept) ?? indexedShelf(kept.cables);
  prepared.set(kept, ready);
  return ready;
}

/** The lines ready for searching, trial by trial. */
export const indexed = computed<IndexedCable[]>(() => [...shelfLines.value.trials.values()].flatMap(preparedOf));

let asking: Promise<void> | null = null;

/** Shows what this browser keeps at once, then asks the bench computer for what changed until nothing is left. */
export function loadLines(): Promise<void> {
  asking ??= load().finally(() => {
    asking = null;
  });
  return asking;
}

async function load(): Promise<void> {
  if (shelfLines.peek().trials.size === 0) {
    const kept = await readKeptLines();
    change({ trials: new Map(kept.map((each) => [each.trial, each])), state: 'asking' });
  } else change({ state: 'asking' });
  for (;;) {
    const { trials } = shelfLines.peek();
    const have = Object.fromEntries([...trials.values()].map(({ trial, mark }) => [trial, mark]));
    const answer = await ask<ShelfNews>('/api/cables', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ have }),
    });
    if (!answer.ok) return change({ state: 'ready', sentence: answer.sentence });
    const { trials: news, gone, left, damaged } = answer.value;
    take(news, gone);
    change({ left, damaged, sentence: '', ...(left === 0 ? { state: 'ready' } : {}) });
    void keepLines(news, gone);
    if (left === 0) return;
  }
}

function take(news: readonly KeptTrial[], gone: readonly string[]): void {
  if (news.length + gone.length === 0) return;
  const trials = new Map(shelfLines.peek().trials);
  for (const trial of gone) trials.delete(trial);
  for (const each of news) trials.set(each.trial, each);
  change({ trials });
}

function change(next: Partial<ShelfLines>): void {
  shelfLines.value = { ...shelfLines.peek(), ...next };
}
