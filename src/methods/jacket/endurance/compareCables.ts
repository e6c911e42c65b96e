import { holm } from '../../../numerics/holm.ts';
import type { CommonShape } from '../../../numerics/survival/commonShape.ts';
import type { Lifetime } from '../../../numerics/survival/lifetime.ts';
import { type LogRank, logRank } from '../../../numerics/survival/logRank.ts';
import { type PermutationTest, permutationLogRank } from '../../../numerics/survival/permutationLogRank.ts';
import {
  compareMedians,
  type EqualShapes,
  equalShapes,
  fitWeibull,
  medianOf,
} from '../../../numerics/survival/weibull.ts';
import { type Lasting, lasting } from './lasting.ts';
import { type PairOfCables, pairsOf, partedBands } from './partedBands.ts';

export interface CablePair extends PairOfCables {
  /** Median of a over median of b under the common shape; null where nothing of one failed. */
  ratio: number | null;
  interval: [number | null, number | null];
  /** Calibrated likelihood ratio under the common shape; null where there is none. */
  p: number | null;
  /** The same after Holm's correction over all pairs. */
  pHolm: number | null;
  exact: PermutationTest | null;
  exactHolm: number | null;
  /** Told apart at 1 − level. */
  parted: boolean;
}

export interface EnduranceAnalysis {
  cables: Lasting[];
  commonShape: number | null;
  equalShapes: EqualShapes | null;
  logRank: LogRank | null;
  permutation: PermutationTest | null;
  pairs: CablePair[];
  /** Band of each cable, 1 lasts longest, clean cuts between; null for fewer than two. */
  band: (number | null)[];
  /** Numbers of the cables in order, the longest lasting first. */
  order: number[];
}

export interface EnduranceOptions {
  level: number;
  /** Hexadecimal; seeds the permutations where not all are counted. null: no permutations. */
  seed: string | null;
}

/** Whether the first of a pair is the one that lasts longer, as far as the pieces say. */
export function firstLastsLonger({ ratio, interval }: Pick<CablePair, 'ratio' | 'interval'>): boolean {
  return ratio === null ? interval[0] !== null : ratio >= 1;
}

/**
 * Endurance of several cables in one test: what each one's pieces say, and what tells the cables apart.
 *
 * Pairs are parted by the likelihood ratio of a Weibull model with one shape for all cables, calibrated for few pieces, with Holm's
 * correction. Where the pieces set no shape, by the exact log-rank test with the same correction.
 *
 * @param groups lifetimes of each cable, none empty.
 */
export function analyseEndurance(
  groups: readonly (readonly Lifetime[])[],
  { level, seed }: EnduranceOptions,
): EnduranceAnalysis {
  const common = fitWeibull(groups);
  const cables = groups.map((_, i) => lasting(groups, common, i, level));
  const pairs = partedPairs(groups, common, { level, seed });
  const estimates = groups.map((lives, i) => rankBy(lives, common, cables[i], i));
  return {
    cables,
    commonShape: common?.shape ?? null,
    equalShapes: equalShapes(groups),
    logRank: groups.length > 1 ? logRank(groups) : null,
    permutation: seed === null ? null : permutationLogRank(groups, seed),
    pairs,
    ...partedBands(estimates, pairs),
  };
}

/** What cables are put in order by: the median; survivors without a failure stand above, by how far they went. */
function rankBy(lives: readonly Lifetime[], common: CommonShape | null, of: Lasting, at: number): number {
  if (of.failed === 0) return FAR + Math.max(...lives.map(({ from }) => from));
  return common ? medianOf(common, at) : (of.curveMedian.value ?? FAR);
}
/** Above any amount of a bench. */
const FAR = 1e12;

function partedPairs(
  groups: readonly (readonly Lifetime[])[],
  common: CommonShape | null,
  { level, seed }: EnduranceOptions,
): CablePair[] {
  const indices = pairsOf(groups.length);
  const compared = indices.map(({ a, b }) => (common ? compareMedians(groups, common, a, b, level) : null));
  const exact = indices.map(({ a, b }, i) =>
    seed === null && common ? null : permutationLogRank([groups[a], groups[b]], pairSeed(seed ?? NO_SEED, i)),
  );
  const corrected = withHolm(compared.map((c) => c?.p ?? null));
  const exactCorrected = withHolm(exact.map((e) => e?.p ?? null));
  return indices.map(({ a, b }, i) => {
    const deciding = common ? corrected[i] : exactCorrected[i];
    return {
      a,
      b,
      ratio: compared[i]?.ratio ?? null,
      interval: compared[i]?.interval ?? [null, null],
      p: compared[i]?.p ?? null,
      pHolm: corrected[i],
      exact: exact[i],
      exactHolm: exactCorrected[i],
      parted: deciding !== null && deciding < 1 - level,
    };
  });
}

/** Holm's correction over the pairs that were tested. */
export function withHolm(p: readonly (number | null)[]): (number | null)[] {
  const tested = p.flatMap((x, i) => (x === null ? [] : [i]));
  const adjusted = holm(tested.map((i) => p[i]!));
  return p.map((x, i) => (x === null ? null : adjusted[tested.indexOf(i)]));
}

/** Where all ways are counted or the shape decides, the seed does not matter. */
const NO_SEED = '0'.repeat(32);

/** A seed of its own for each pair: the number of the pair takes the place of the last eight digits. */
const pairSeed = (seed: string, pair: number) => `${seed.slice(0, -8)}${(pair + 1).toString(16).padStart(8, '0')}`;
