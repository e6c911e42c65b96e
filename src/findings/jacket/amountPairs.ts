import {
  type CablePair,
  type EnduranceAnalysis,
  firstLastsLonger,
} from '../../methods/jacket/endurance/compareCables.ts';
import { MOST_PIECES, piecesToPart } from '../../methods/jacket/endurance/planPieces.ts';
import { rangeText } from '../../units/rangeText.ts';
import type { EndurancePair } from '../shapes/jacket.ts';
import type { CableLives } from './enduranceTest.ts';

/** A difference smaller than this, by ratio, nobody plans more pieces for. */
const WORTH_PARTING = 1.1;
/** How often the planned pieces are to part them. */
export const PLANNED_POWER = 0.8;

/** Cables that follow each other in the order, by their short names, the one first that comes first among the cables. */
export function neighboursOf({ order }: EnduranceAnalysis, compared: readonly CableLives[]): ReadonlySet<string> {
  const name = (i: number) => compared[i].found.cable;
  return new Set(
    order.slice(1).map((next, i) => {
      const [a, b] = [Math.min(order[i], next), Math.max(order[i], next)];
      return pairKey(name(a), name(b));
    }),
  );
}

export const pairKey = (a: string, b: string): string => JSON.stringify([a, b]);

/** Every pair of compared cables, with how many pieces would part those that are not parted, or why that cannot be said. */
export function amountPairs(
  analysis: EnduranceAnalysis,
  compared: readonly CableLives[],
  level: number,
): EndurancePair[] {
  return analysis.pairs.map((pair) => {
    const [a, b] = [compared[pair.a], compared[pair.b]];
    const plan = pair.parted
      ? { pieces: null, why: '' }
      : planned(pair, analysis, Math.max(a.lives.length, b.lives.length), level);
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
      pieces_to_part: plan.pieces,
      why_no_pieces: plan.why,
      text: pairText(pair, a.found.name, b.found.name, analysis.pairs.length),
    };
  });
}

function planned(
  { ratio }: CablePair,
  { commonShape, pairs }: EnduranceAnalysis,
  now: number,
  level: number,
): { pieces: number | null; why: string } {
  const none = (why: string) => ({ pieces: null, why });
  if (ratio === null || commonShape === null)
    return none('How many pieces would part them cannot be said: too few failed.');
  const apart = Math.max(ratio, 1 / ratio);
  if (apart < WORTH_PARTING) return none('They lasted so alike that more pieces are not worth it.');
  const needed = piecesToPart({ ratio: apart, shape: commonShape, power: PLANNED_POWER, pairs: pairs.length, level });
  // As many as there are did not part them, whatever the odds were.
  return needed === null
    ? none(`More than ${MOST_PIECES} pieces of each would be needed to part them.`)
    : { pieces: Math.max(needed, now + 1), why: '' };
}

/** How many times as long one lasts as the other, the longer lasting first. */
function pairText({ ratio, interval: [low, high], parted }: CablePair, a: string, b: string, pairs: number): string {
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
    : `${a} and ${b} are not parted: ${longer} lasted ${about}${manyAtOnce([low, high], pairs)}.`;
}

/** An interval of one pair alone may leave "as long" out although the pair is not parted: among many looked at, one does by chance. */
function manyAtOnce([low, high]: CablePair['interval'], pairs: number): string {
  const leavesOut = (low !== null && low > 1) || (high !== null && high < 1);
  return leavesOut && pairs > 1
    ? `; that range is of this pair alone, and among ${pairs} pairs looked at at once one such is found by chance too easily`
    : '';
}
