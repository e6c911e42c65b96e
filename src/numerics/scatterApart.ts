import { fUpperTail } from './distributions.ts';
import { pooledVariance, type RepeatSquares, type RepeatVariance, squaresOf, typeA } from './typeA.ts';

/** The repeats of one thing that was measured: one inner list for each way of measuring it. */
export type RepeatsOfOne = readonly ArrayLike<number>[];

/** What stands behind a reading on one of several things. */
export interface ScatterOfOne extends RepeatVariance {
  /** How many times as widely its repeats scatter as those of the others (standard deviations); null where they are alike. */
  apart: number | null;
}

/** Chance of being called apart among things that scatter alike, for all of them together. */
const APART_BELOW = 0.01;

/** The one whose scatter stands furthest out of the others', if it stands out at all, and by how many times. */
function furthest(kept: readonly number[], spreads: readonly RepeatSquares[], resolution: number) {
  const own = kept.map((i) => spreads[i]);
  const tested = own.filter((s) => s.dof > 0).length;
  const all = { squares: own.reduce((sum, s) => sum + s.squares, 0), dof: own.reduce((sum, s) => sum + s.dof, 0) };
  let found: { thing: number; times: number; p: number } | null = null;
  for (const thing of kept) {
    const { squares, dof } = spreads[thing];
    if (dof === 0 || dof === all.dof) continue;
    const rest = { squares: Math.max(all.squares - squares, 0), dof: all.dof - dof };
    // Others that all fell on one step are no steadier than the display shows.
    const leaning = pooledVariance(rest, { resolution, repeatability: resolution / 2 }).variance;
    const others = Math.max(rest.squares / rest.dof, leaning);
    if (!(others > 0)) continue;
    const ratio = squares / dof / others;
    const p = ratio > 1 ? fUpperTail(ratio, dof, rest.dof) * tested : 1;
    if (p < APART_BELOW && (found === null || p < found.p)) found = { thing, times: Math.sqrt(ratio), p };
  }
  return found;
}

/**
 * Variance of one reading due to repeats (see {@link typeA}), pooled over all things measured but for those whose own scatter
 * stands far out of the others': one slip on one piece then widens the figure of that piece alone.
 *
 * A thing stands apart when the variance of its repeats is larger than that of the rest together by the F test, one-sided, with
 * a chance of 1 % for all things together (Bonferroni); the furthest is taken out first, and the rest looked at again. It keeps
 * its own variance, with four degrees of freedom more than its repeats have.
 *
 * Source: after W. G. Cochran, Annals of Eugenics 11 (1941) 47, and ISO 5725-2:2019, 8.3, which tests the largest variance of
 * equally many repeats; F against the rest is the same for two and serves unequal numbers. From memory.
 *
 * @returns one for each thing, in the order given.
 */
export function scatterOfEach(things: readonly RepeatsOfOne[], resolution: number): ScatterOfOne[] {
  const spreads = things.map(squaresOf);
  let kept = things.map((_, i) => i);
  const apart = new Map<number, number>();
  for (let next = furthest(kept, spreads, resolution); next !== null; next = furthest(kept, spreads, resolution)) {
    const { thing, times } = next;
    apart.set(thing, times);
    kept = kept.filter((i) => i !== thing);
  }
  const common = typeA({ groups: kept.flatMap((i) => [...things[i]]), resolution });
  return things.map((_, i) => {
    const times = apart.get(i);
    if (times === undefined) return { ...common, apart: null };
    const own = spreads[i];
    return { ...pooledVariance(own, { resolution, repeatability: Math.sqrt(own.squares / own.dof) }), apart: times };
  });
}
