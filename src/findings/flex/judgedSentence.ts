import type { Judged } from '../shapes/flex.ts';
import { bandSentence, bandsOf, listed } from './words.ts';

/** Judgements of each pair from which an order is spoken of. By simulation: fewer cannot make bands. */
export const FEWEST_A_PAIR = 3;

/** What the judged pairs say, in words made from the bands. */
export function judgedSentence(judged: Judged, names: ReadonlyMap<string, string>, pairsOfCables: number): string {
  const ranked = [...judged.cables].sort((a, b) => b.ability - a.ability);
  const how = judged.blinded.every((b) => b === 'open') ? 'Judged by hand, openly' : 'Judged by hand';
  const sentences: string[] = [];
  if (judged.groups.length > 1) {
    const groups = judged.groups.map((g) => listed(g.map((c) => names.get(c) ?? c)));
    sentences.push(`No judgement joins these groups, so nothing is said across them: ${groups.join('; ')}.`);
  } else {
    const bands = bandSentence(bandsOf(ranked), how);
    if (bands) sentences.push(bands);
    const first = judged.cables.filter((c) => c.band === 1).map((c) => c.cable);
    const isFirstBand = first.length === judged.best_set.length && first.every((c) => judged.best_set.includes(c));
    if (judged.best_set.length > 1 && !isFirstBand && judged.best_set.length < judged.cables.length)
      sentences.push(`The easiest is among ${listed(judged.best_set.map((c) => names.get(c) ?? c))}.`);
  }
  const each = judged.pairs / Math.max(pairsOfCables, 1);
  if (each < FEWEST_A_PAIR) {
    const more = FEWEST_A_PAIR * pairsOfCables - judged.pairs;
    sentences.push(
      `That rests on ${each.toFixed(1).replace(/\.0$/, '')} judgements a pair; ${FEWEST_A_PAIR} are the least to speak of an order, which takes ${more} more.`,
    );
  }
  return sentences.join(' ');
}
