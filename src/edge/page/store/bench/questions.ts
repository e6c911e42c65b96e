/** Doubts about readings that were kept. A reading counts until somebody says otherwise, and its question stands until then. */
import { computed, signal } from '@preact/signals';
import { folded } from '../journal/journal.ts';
import { isTexts, keptSignal } from '../kept.ts';
import { type Chosen, inHand, takeUp } from './inHand.ts';
import { valueWords } from './names.ts';
import { type JustKept, lastKept } from './sitting.ts';

export interface OpenQuestion {
  about: Omit<JustKept, 'pressed'>;
  text: string;
}

/** What was asked and not answered yet on this device: the question by the reading. */
const asking = keptSignal<Record<string, string>>('cupel.bench.asked', {}, isTexts);
/** So many are kept in this browser; older ones are let go. Ours. */
const MOST_KEPT = 300;

/** Open questions of this trial, the newest first. One is answered when its reading is kept, replaced or struck out. */
export const openQuestions = computed<readonly OpenQuestion[]>(() => {
  const open = asking.value;
  if (Object.keys(open).length === 0) return [];
  const readings = folded.value?.readings ?? [];
  return readings
    .filter((each) => each.standing === 'counted' && Object.hasOwn(open, each.reading))
    .map(({ reading, specimen, quantity, row }) => ({
      about: { reading, specimen, quantity, shown: valueWords(row.value ?? '', row.unit ?? '') },
      text: open[reading]!,
    }))
    .reverse();
});

/** The question about the reading just kept; null when there is none. */
export const asked = computed<OpenQuestion | null>(
  () => openQuestions.value.find(({ about }) => about.reading === lastKept.value?.reading) ?? null,
);

/** The reading that the next one is to replace, after "measure again", and what was in hand when that was said. */
export const again = signal<(OpenQuestion['about'] & { backTo: Chosen | null }) | null>(null);

export function ask(reading: string, text: string): void {
  asking.value = Object.fromEntries([...Object.entries(asking.value), [reading, text]].slice(-MOST_KEPT));
}

/** Answers a question: the reading stays as it is. */
export function keepIt({ about }: OpenQuestion): void {
  const { [about.reading]: _, ...others } = asking.value;
  asking.value = others;
}

/** Takes the piece up again: the next reading on it replaces the one in doubt, and until then the question stands. */
export function measureAgain({ about }: OpenQuestion): void {
  const now = inHand.value?.item;
  takeUp(about);
  again.value = { ...about, backTo: now === undefined ? null : { specimen: now.specimen, quantity: now.quantity } };
}
