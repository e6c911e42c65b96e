import type { CardLook, CardWish } from '../../../../report/publish/cards/card.ts';
import type { PublishSubject } from '../../worker/jobs.ts';
import { sentenceOf } from '../sentenceOf.ts';
import { cardQuery, type Fetched, fetchFile, handOver } from './files.ts';
import { pagePng } from './pagePng.ts';

export interface CardAsked {
  trial: string;
  subject: PublishSubject;
  wish: CardWish;
  look: CardLook;
  /** The card as it is looked at. */
  svg: string;
}

/** A card as PNG: by the bench computer, whose fonts hold every script, or by this browser while it is away. */
export async function cardFile({ svg, ...asked }: CardAsked, signal?: AbortSignal, here = false): Promise<Fetched> {
  const { trial, subject, wish, look } = asked;
  const found: Fetched = here
    ? { ok: false, sentence: '', away: true }
    : await fetchFile(`/api/card?${cardQuery(trial, subject, wish, look)}`, signal);
  if (found.ok || !found.away || signal?.aborted) return found;
  try {
    return { ok: true, blob: await pagePng(svg) };
  } catch (error) {
    return { ok: false, sentence: sentenceOf(error), away: true };
  }
}

/** Makes a card and hands it over; answers a sentence on what came of it. */
export async function saveCard(asked: CardAsked, name: string): Promise<string> {
  const made = await cardFile(asked);
  if (!made.ok) return made.sentence;
  handOver(made.blob, name);
  return `${name} is among your downloads.`;
}
