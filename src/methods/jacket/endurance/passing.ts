import { binomialInterval } from '../../../numerics/binomialInterval.ts';
import { twoShares } from '../../../numerics/twoShares.ts';
import { withHolm } from './compareCables.ts';
import { type PairOfCables, pairsOf, partedBands } from './partedBands.ts';

/** Pieces that came through a test that is passed or not. */
export interface Passing {
  n: number;
  passed: number;
  /** Clopper–Pearson. */
  interval: [number, number];
}

export interface PassingPair extends PairOfCables {
  /** Fisher's exact test, and the least p that tables with these totals could give. */
  p: number;
  smallest: number;
  pHolm: number;
  parted: boolean;
}

export interface PassingAnalysis {
  cables: Passing[];
  pairs: PassingPair[];
  band: (number | null)[];
  order: number[];
}

/** Shares that passed, and which cables they tell apart. */
export function analysePassing(counts: readonly { n: number; passed: number }[], level: number): PassingAnalysis {
  const cables = counts.map(({ n, passed }) => ({ n, passed, interval: binomialInterval(passed, n, level) }));
  const indices = pairsOf(counts.length);
  const tests = indices.map(({ a, b }) => twoShares(counts[a].passed, counts[a].n, counts[b].passed, counts[b].n));
  const corrected = withHolm(tests.map(({ p }) => p));
  const pairs = indices.map(({ a, b }, i) => ({
    a,
    b,
    ...tests[i],
    pHolm: corrected[i]!,
    parted: corrected[i]! < 1 - level,
  }));
  const shares = counts.map(({ n, passed }) => passed / n);
  return { cables, pairs, ...partedBands(shares, pairs) };
}
