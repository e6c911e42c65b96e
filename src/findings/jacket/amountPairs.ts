import {
  type CablePair,
  type EnduranceAnalysis,
  firstLastsLonger,
} from '../../methods/jacket/endurance/compareCables.ts';
import { piecesToPart } from '../../methods/jacket/endurance/planPieces.ts';
import { rangeText } from '../../units/rangeText.ts';
import type { EndurancePair } from '../shapes/jacket.ts';
import type { CableLives } from './enduranceTest.ts';

/** A difference smaller than this, by ratio, nobody plans more pieces for. */
const WORTH_PARTING = 1.1;
/** How often the planned pieces are to part them. */
export const PLANNED_POWER = 0.8;

/** Every pair of compared cables, with how many pieces would part neighbours that are not parted. */
export function amountPairs(
  analysis: EnduranceAnalysis,
  compared: readonly CableLives[],
  level: number,
): EndurancePair[] {
  const place = new Map(analysis.order.map((cable, i) => [cable, i]));
  return analysis.pairs.map((pair) => {
    const [a, b] = [compared[pair.a], compared[pair.b]];
    const neighbours = Math.abs(place.get(pair.a)! - place.get(pair.b)!) === 1;
    return {
      a: a.found.cable,
      b: b.found.cable,
      ratio: pair.ratio,
      interval: pair.interval,
      p: pair.p,
      p_holm: pair.pHolm,
      p_exact: pair.exact?.p ?? null,
      p_exact_holm: pair.exactHolm,
      p_smallest: pair.exact?.smallest ?? null,
      parted: pair.parted,
      pieces_to_part:
        neighbours && !pair.parted ? planned(pair, analysis, Math.max(a.lives.length, b.lives.length), level) : null,
      text: pairText(pair, a.found.name, b.found.name),
    };
  });
}

function planned(
  { ratio }: CablePair,
  { commonShape, pairs }: EnduranceAnalysis,
  now: number,
  level: number,
): number | null {
  if (ratio === null || commonShape === null) return null;
  const apart = Math.max(ratio, 1 / ratio);
  if (apart < WORTH_PARTING) return null;
  const needed = piecesToPart({ ratio: apart, shape: commonShape, power: PLANNED_POWER, pairs: pairs.length, level });
  // As many as there are did not part them, whatever the odds were.
  return needed === null ? null : Math.max(needed, now + 1);
}

/** How many times as long one lasts as the other, the longer lasting first. */
function pairText({ ratio, interval: [low, high], parted }: CablePair, a: string, b: string): string {
  const turned = !firstLastsLonger({ ratio, interval: [low, high] });
  const [longer, shorter] = turned ? [b, a] : [a, b];
  const [from, to] = turned ? [high && 1 / high, low && 1 / low] : [low, high];
  const times = ratio === null ? null : Math.max(ratio, 1 / ratio);
  const range =
    from !== null && to !== null
      ? `${rangeText(from, to)} times`
      : from !== null
        ? `at least ${Number(from.toPrecision(2))} times`
        : 'with no limits from so few pieces';
  if (times === null)
    return parted
      ? `The pieces of ${longer} lasted longer than those of ${shorter}: ${range} as long, with no upper end.`
      : `${a} and ${b} are not parted.`;
  const about = `about ${Number(times.toPrecision(2))} times as long as ${shorter} (${range})`;
  return parted
    ? `The pieces of ${longer} lasted ${about}.`
    : `${a} and ${b} are not parted: ${longer} lasted ${about}.`;
}
