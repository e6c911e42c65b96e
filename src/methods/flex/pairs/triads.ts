import { type JudgedPair, leftShare } from './judgement.ts';

/** How far one judge agrees with himself. */
export interface SelfAgreement {
  /** Triads A over B over C over A among those where all three pairs were decided. */
  circular: number;
  /** How many triads were decided. */
  decided: number;
  /** Kendall's ζ = 1 − d/d_max, 1 without circular triads; null unless every pair was decided. */
  consistency: number | null;
}

/** Most circular triads that n things can have: (n³ − n)/24 for odd n, (n³ − 4n)/24 for even. */
export function mostCircularTriads(n: number): number {
  return n % 2 === 1 ? (n ** 3 - n) / 24 : (n ** 3 - 4 * n) / 24;
}

/**
 * Circular triads and Kendall's coefficient of consistence of one judge.
 *
 * A pair judged more than once counts as its majority; one without a majority, or a tie, is undecided.
 *
 * Source: M. G. Kendall, B. Babington Smith, Biometrika 31 (1940) 324.
 *
 * @param pairs of one judge alone
 */
export function selfAgreement(pairs: readonly JudgedPair[], count: number): SelfAgreement {
  const lead = new Float64Array(count * count);
  for (const pair of pairs) {
    lead[pair.left * count + pair.right] += leftShare(pair) - 0.5;
    lead[pair.right * count + pair.left] -= leftShare(pair) - 0.5;
  }
  const beats = (i: number, j: number) => lead[i * count + j] > 0;
  const decidedPair = (i: number, j: number) => lead[i * count + j] !== 0;
  let circular = 0;
  let decided = 0;
  for (let i = 0; i < count; i++)
    for (let j = i + 1; j < count; j++)
      for (let k = j + 1; k < count; k++) {
        if (!decidedPair(i, j) || !decidedPair(j, k) || !decidedPair(i, k)) continue;
        decided++;
        if (beats(i, j) === beats(j, k) && beats(j, k) === beats(k, i)) circular++;
      }
  const all = (count * (count - 1) * (count - 2)) / 6;
  const most = mostCircularTriads(count);
  return { circular, decided, consistency: decided === all && most > 0 ? 1 - circular / most : null };
}
