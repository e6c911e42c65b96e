import { signal } from '@preact/signals';
import { allCards, type CardLook } from '../../../../report/publish/cards/card.ts';
import type { PublishShown, PublishSubject } from '../../worker/jobs.ts';
import { cardQuery, fetchFile, handOver, plainName, zipped } from './files.ts';

/** How far the cards of a trial are; null while none are drawn. */
export const drawing = signal<{ done: number; of: number } | null>(null);

let stop: AbortController | null = null;

export function stopDrawing(): void {
  stop?.abort();
}

interface AllOf {
  trial: string;
  subject: PublishSubject;
  shown: PublishShown;
  look: CardLook;
  /** Text for the description box, put beside the cards. */
  description: string;
}

/** Has every card drawn, one after the other, and hands over one .zip; answers a sentence on what came of it. */
export async function saveAllCards({ trial, subject, shown, look, description }: AllOf): Promise<string> {
  const cards = allCards(shown.findings);
  const files: [string, string | Uint8Array][] = [['description.txt', `${description}\n`]];
  stop = new AbortController();
  const { signal: stopped } = stop;
  try {
    for (const { name, wish } of cards) {
      drawing.value = { done: files.length - 1, of: cards.length };
      const found = await fetchFile(`/api/card?${cardQuery(trial, subject, wish, look)}`, stopped);
      if (stopped.aborted) return 'Stopped; nothing was saved.';
      if (!found.ok) return found.sentence;
      files.push([`${name}.png`, new Uint8Array(await found.blob.arrayBuffer())]);
    }
    const name = `${plainName(trial)}-cards.zip`;
    handOver(await zipped(files), name);
    return `${name} with ${cards.length} cards is among your downloads.`;
  } finally {
    drawing.value = null;
  }
}
