import { binomialInterval } from '../../../numerics/binomialInterval.ts';
import { twoShares } from '../../../numerics/twoShares.ts';
import { cleanCutBands } from '../../flex/pairs/bands.ts';
import { withHolm } from './compareCables.ts';

/** Pieces that came through a test that is passed or not. */
export interface Passing {
  n: number;
  passed: number;
  /** Clopper–Pearson. */
  interval: [number, number];
}

export interface PassingPair {
  a: number;
  b: number;
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
  const indices = counts.flatMap((_, a) => counts.slice(a + 1).map((__, k) => ({ a, b: a + 1 + k })));
  const tests = indices.map(({ a, b }) => twoShares(counts[a].passed, counts[a].n, counts[b].passed, counts[b].n));
  const corrected = withHolm(tests.map(({ p }) => p));
  const pairs = indices.map(({ a, b }, i) => ({
    a,
    b,
    ...tests[i],
    pHolm: corrected[i]!,
    parted: corrected[i]! < 1 - level,
  }));
  const k = counts.length;
  const share = counts.map(({ n, passed }) => passed / n);
  const chances = new Float64Array(k * k).fill(0.5);
  for (const { a, b, parted } of pairs) {
    if (parted) chances[a * k + b] = share[a] > share[b] ? 1 : 0;
    chances[b * k + a] = 1 - chances[a * k + b];
  }
  const { order, band } = cleanCutBands(share, chances);
  return { cables, pairs, band: k > 1 ? band : [null], order };
}
