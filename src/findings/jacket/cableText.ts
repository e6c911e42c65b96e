import { listed } from '../flex/words.ts';
import type { EnduranceCable } from '../shapes/jacket.ts';
import { openRange, pieces, plainAmount } from './words.ts';

/** What the pieces of one cable did, and how much half of such pieces last. */
export function cableText(c: EnduranceCable, unit: string): string {
  const amounts = (outcome: string) =>
    listed(
      c.pieces
        .filter((p) => p.outcome === outcome)
        .map((p) => p.amount)
        .sort((a, b) => a - b)
        .map((a) => plainAmount(a, '')),
    );
  const did = [
    ...(c.failed > 0 ? [`${c.failed} failed, at ${amounts('failed')} ${unit}`] : []),
    ...(c.survived > 0 ? [`${c.survived} survived ${amounts('survived')} ${unit}`] : []),
  ].join('; ');
  return `${pieces(c.n).replace(/^./, (first) => first.toUpperCase())}: ${did}. ${medianText(c, unit)}`.trim();
}

function medianText({ median }: EnduranceCable, unit: string): string {
  if (!median) return '';
  const range = openRange(median.interval, unit);
  if (median.value === null)
    return range === ''
      ? 'How much half of such pieces last was not reached.'
      : `How much half of such pieces last was not reached: ${range}.`;
  const value = plainAmount(Number(median.value.toPrecision(2)), unit);
  const open = median.interval[1] === null ? ', with no upper end from so few' : '';
  return range === ''
    ? `Half of such pieces last about ${value}; so few pieces set no limits to that.`
    : `Half of such pieces last about ${value}, ${range}${open}.`;
}
