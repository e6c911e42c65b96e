import type { Judged } from '../shapes/flex.ts';
import { type EnoughJudged, FEWEST_A_PAIR } from './enoughJudged.ts';
import { bandSentence, bandsOf, listed } from './words.ts';

/** What the judged pairs say, in words made from the bands. */
export function judgedSentence(judged: Judged, names: ReadonlyMap<string, string>, enough: EnoughJudged): string {
  const ranked = [...judged.cables].sort((a, b) => b.ability - a.ability);
  const how = judged.blinded.every((b) => b === 'open') ? 'Judged by hand, openly' : 'Judged by hand';
  const sentences: string[] = [];
  if (judged.groups.length > 1) {
    const groups = judged.groups.map((g) => listed(g.map((c) => names.get(c) ?? c)));
    sentences.push(`No judgement joins these groups, so nothing is said across them: ${groups.join('; ')}.`);
  } else {
    const bands = bandSentence(bandsOf(ranked.map(({ name, band }) => ({ name, band: band ?? 1 }))), how);
    if (bands) sentences.push(bands);
    const first = judged.cables.filter((c) => c.band === 1).map((c) => c.cable);
    const isFirstBand = first.length === judged.best_set.length && first.every((c) => judged.best_set.includes(c));
    if (judged.best_set.length > 1 && !isFirstBand && judged.best_set.length < judged.cables.length)
      sentences.push(`The easiest is among ${listed(judged.best_set.map((c) => names.get(c) ?? c))}.`);
  }
  if (enough.left > 0) {
    const each = (judged.pairs / enough.pairs).toFixed(1).replace(/\.0$/, '');
    const answers = judged.pairs === 1 ? '1 answer' : `${judged.pairs} answers`;
    sentences.push(
      `That rests on ${answers}, ${each} for each pair of cables; ${FEWEST_A_PAIR} for each are the least to speak of an order, which takes ${enough.left} more.`,
    );
  }
  return sentences.join(' ');
}
