import { SeededDraws } from '../random.ts';
import type { Lifetime } from './lifetime.ts';
import { logRankScores } from './logRankScores.ts';

export interface PermutationTest {
  /** Share of the ways to deal the same lifetimes to groups of these sizes that part them as far or farther. */
  p: number;
  /** The least p that any dealing of these lifetimes could have given. */
  smallest: number;
  /** Every way was counted; false: a seeded sample of them. */
  exact: boolean;
  /** How many ways were counted. */
  ways: number;
}

/** Up to so many ways all are counted. */
const MOST_COUNTED = 20_000;
const SAMPLED = 100_000;
/** Sums that differ by less than this count as equal. */
const EQUAL = 1e-9;

/**
 * Log-rank test of groups by permutation, right for any number of specimens: the scores of all are dealt anew to groups of the
 * same sizes. Statistic: Σ (sum of scores)²/size over the groups, which for two groups orders as |sum of one|.
 *
 * All ways are counted up to 20,000 of them, else 100,000 seeded ones are drawn and the observed one is counted with them.
 *
 * @returns null when nothing failed, or there are fewer than two groups with something in them.
 */
export function permutationLogRank(groups: readonly (readonly Lifetime[])[], seed: string): PermutationTest | null {
  const filled = groups.filter((g) => g.length > 0);
  if (filled.length < 2) return null;
  const sizes = filled.map((g) => g.length);
  const scores = logRankScores(filled.flat());
  const observed = statistic(scores, sizes);
  if (!scores.some((c) => Math.abs(c) > EQUAL)) return null;
  return waysToDeal(sizes) <= MOST_COUNTED ? counted(scores, sizes, observed) : sampled(scores, sizes, observed, seed);
}

function statistic(scores: Float64Array, sizes: readonly number[]): number {
  let at = 0;
  let total = 0;
  for (const size of sizes) {
    let sum = 0;
    for (let i = 0; i < size; i++) sum += scores[at++];
    total += (sum * sum) / size;
  }
  return total;
}

/** N! / (n₁! n₂! …) */
export function waysToDeal(sizes: readonly number[]): number {
  let ways = 1;
  let placed = 0;
  for (const size of sizes) for (let i = 1; i <= size; i++) ways = (ways * ++placed) / i;
  return Math.round(ways);
}

function counted(scores: Float64Array, sizes: readonly number[], observed: number): PermutationTest {
  const room = [...sizes];
  const sums = new Float64Array(sizes.length);
  let ways = 0;
  let asFar = 0;
  let most = -1;
  let atMost = 0;
  const deal = (i: number): void => {
    if (i === scores.length) {
      let s = 0;
      for (let g = 0; g < sums.length; g++) s += (sums[g] * sums[g]) / sizes[g];
      ways++;
      if (s >= observed - EQUAL) asFar++;
      if (s > most + EQUAL) {
        most = s;
        atMost = 1;
      } else if (s > most - EQUAL) atMost++;
      return;
    }
    for (let g = 0; g < room.length; g++) {
      if (room[g] === 0) continue;
      room[g]--;
      sums[g] += scores[i];
      deal(i + 1);
      sums[g] -= scores[i];
      room[g]++;
    }
  };
  deal(0);
  return { p: asFar / ways, smallest: atMost / ways, exact: true, ways };
}

function sampled(scores: Float64Array, sizes: readonly number[], observed: number, seed: string): PermutationTest {
  const draws = new SeededDraws(seed);
  const dealt = Float64Array.from(scores);
  let asFar = 1;
  for (let n = 0; n < SAMPLED; n++) {
    for (let i = dealt.length - 1; i > 0; i--) {
      const j = draws.integer(i + 1);
      const kept = dealt[i];
      dealt[i] = dealt[j];
      dealt[j] = kept;
    }
    if (statistic(dealt, sizes) >= observed - EQUAL) asFar++;
  }
  const ways = SAMPLED + 1;
  return { p: asFar / ways, smallest: Math.max(1 / ways, leastShare(sizes)), exact: false, ways };
}

/** Groups of one size can change places without a change of the statistic, so no p is below this. */
function leastShare(sizes: readonly number[]): number {
  const alike = new Map<number, number>();
  for (const size of sizes) alike.set(size, (alike.get(size) ?? 0) + 1);
  let same = 1;
  for (const count of alike.values()) for (let i = 2; i <= count; i++) same *= i;
  return same / waysToDeal(sizes);
}
