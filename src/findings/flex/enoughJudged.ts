import type { Trial } from '../../trial/trial.ts';
import type { JudgementsRead } from './readJudgements.ts';

/** Judgements of each pair from which an order is spoken of. By simulation: fewer cannot make bands. */
export const FEWEST_A_PAIR = 3;

/** How many judgements make an order to be spoken of, and how many of those are still to come. */
export interface EnoughJudged {
  /** Pairs of cables that can be made up. */
  pairs: number;
  wanted: number;
  left: number;
}

/**
 * The one rule for how many judgements are enough: three for each pair of the cables that have a piece to bend or were judged,
 * control pieces aside, by all judges together.
 */
export function enoughJudged(
  { cables, specimens }: Pick<Trial, 'cables' | 'specimens'>,
  read: JudgementsRead,
): EnoughJudged {
  const judged = new Set(read.cables.map((c) => c.cable));
  const withPiece = new Set(specimens.flatMap((s) => (s.kind === 'bend' ? [s.cable] : [])));
  const n = cables.filter((c) => c.role !== 'control' && (judged.has(c.cable) || withPiece.has(c.cable))).length;
  const pairs = (n * (n - 1)) / 2;
  const wanted = FEWEST_A_PAIR * pairs;
  return { pairs, wanted, left: Math.max(0, wanted - read.pairs.length) };
}
