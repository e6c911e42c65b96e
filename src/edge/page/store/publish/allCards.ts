import { signal } from '@preact/signals';
import { allCards, type CardLook, cardSvg } from '../../../../report/publish/cards/card.ts';
import type { PublishShown, PublishSubject } from '../../worker/jobs.ts';
import { sentenceOf } from '../sentenceOf.ts';
import { cardFile } from './cardFile.ts';
import { fetchFile, handOver, plainName, zipped } from './files.ts';

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

/** Makes every card, one after the other, and hands over one .zip; answers a sentence on what came of it. */
export async function saveAllCards({ trial, subject, shown, look, description }: AllOf): Promise<string> {
  const cards = allCards(shown.findings);
  const files: [string, string | Uint8Array][] = [['description.txt', `${description}\n`]];
  stop = new AbortController();
  const { signal: stopped } = stop;
  // Asked once, not for every card: a computer that is gone may take long not to answer.
  const there = await fetchFile('/api/me', stopped);
  const away = !there.ok && there.away;
  try {
    for (const { name, wish } of cards) {
      drawing.value = { done: files.length - 1, of: cards.length };
      const found = await cardFile({ trial, subject, wish, look, svg: cardSvg(shown, wish, look) }, stopped, away);
      if (stopped.aborted) return 'Stopped; nothing was saved.';
      if (!found.ok) return found.sentence;
      files.push([`${name}.png`, new Uint8Array(await found.blob.arrayBuffer())]);
    }
    const name = `${plainName(trial)}-cards.zip`;
    handOver(await zipped(files), name);
    return `${name} with ${cards.length} cards is among your downloads.`;
  } catch (error) {
    return sentenceOf(error);
  } finally {
    drawing.value = null;
  }
}
