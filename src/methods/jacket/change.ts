import { mean, sampleStandardDeviation } from '../../numerics/describe.ts';
import { studentTQuantile } from '../../numerics/distributions.ts';

/** Change of something over an exposure, as a share of what it was before. */
export interface Change {
  /** Pieces. */
  n: number;
  mean: number;
  u: number;
  interval: [number, number];
}

/**
 * Mean of the relative changes of several pieces with Student's interval over the pieces, or, where it is wider, with what the tool's
 * steps leave open. One piece has the tool's doubt alone, and says nothing of others.
 *
 * @param pairs before and after of each piece, any one unit
 * @param doubt standard uncertainty of one difference by the tool's steps and scatter, same unit
 * @throws RangeError without pairs.
 */
export function meanChange(pairs: readonly { before: number; after: number }[], doubt: number, level: number): Change {
  if (pairs.length === 0) throw new RangeError('a change needs a piece measured before and after');
  const changes = pairs.map(({ before, after }) => after / before - 1);
  const n = changes.length;
  const value = mean(changes);
  const byTool = doubt / mean(pairs.map((p) => p.before)) / Math.sqrt(n);
  const byPieces = n > 1 ? sampleStandardDeviation(changes) / Math.sqrt(n) : 0;
  const u = Math.max(byTool, byPieces);
  // What the tool's steps say is known; what a few pieces scatter is not.
  const half = Math.max(NORMAL_95 * byTool, n > 1 ? studentTQuantile((1 + level) / 2, n - 1) * byPieces : 0);
  return { n, mean: value, u, interval: [value - half, value + half] };
}

/** Coverage factor of the tool's own doubt. */
const NORMAL_95 = 2;
