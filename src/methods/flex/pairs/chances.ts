import { choleskyInPlace } from '../../../numerics/dense.ts';
import { normalCdf } from '../../../numerics/distributions.ts';
import { SeededDraws } from '../../../numerics/random.ts';

/** Abilities as far as they are known: normal about the estimates. */
export interface KnownAbilities {
  abilities: Float64Array;
  /** Row-major count × count. */
  covariance: Float64Array;
}

/** P that thing i has a greater ability than j, for all i and j, row-major; ½ on the diagonal: Φ((aᵢ − aⱼ)/sd). */
export function chancesOfPairs({ abilities, covariance }: KnownAbilities): Float64Array {
  const n = abilities.length;
  const chances = new Float64Array(n * n).fill(0.5);
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++) {
      const variance = covariance[i * n + i] + covariance[j * n + j] - 2 * covariance[i * n + j];
      const p = normalCdf((abilities[i] - abilities[j]) / Math.sqrt(Math.max(variance, 1e-300)));
      chances[i * n + j] = p;
      chances[j * n + i] = 1 - p;
    }
  return chances;
}

/**
 * Draws from the abilities, one row of `count` for each draw; the same seed gives the same digits.
 *
 * A share of 1e-12 of the variance is added so that abilities known exactly (one held at 0) can be drawn too.
 */
export function drawAbilities(known: KnownAbilities, draws: number, seed: string | SeededDraws): Float64Array {
  const n = known.abilities.length;
  const factor = Float64Array.from(known.covariance);
  const largest = Math.max(1e-12, ...Array.from({ length: n }, (_, i) => factor[i * n + i]));
  for (let i = 0; i < n; i++) factor[i * n + i] += 1e-12 * largest;
  choleskyInPlace(factor, n);
  const random = typeof seed === 'string' ? new SeededDraws(seed) : seed;
  const z = new Float64Array(n);
  const rows = new Float64Array(draws * n);
  for (let d = 0; d < draws; d++) {
    random.fillNormal(z);
    for (let i = 0; i < n; i++) {
      let sum = known.abilities[i];
      for (let k = 0; k <= i; k++) sum += factor[i * n + k] * z[k];
      rows[d * n + i] = sum;
    }
  }
  return rows;
}

/** Chance of each place for each thing, row-major count × count: row i holds P(place 1), P(place 2) … of thing i. */
export function placeChances(rows: Float64Array, count: number): Float64Array {
  const draws = rows.length / count;
  const counts = new Float64Array(count * count);
  for (let d = 0; d < draws; d++)
    for (let i = 0; i < count; i++) {
      let above = 0;
      for (let j = 0; j < count; j++)
        if (rows[d * count + j] > rows[d * count + i] || (rows[d * count + j] === rows[d * count + i] && j < i))
          above++;
      counts[i * count + above]++;
    }
  return counts.map((n) => n / draws);
}

/** The smallest set of things, by chance of being first, whose chances sum to at least `level`; the likeliest first. */
export function bestSet(chanceOfBest: readonly number[], level: number): number[] {
  const order = chanceOfBest.map((_, i) => i).sort((a, b) => chanceOfBest[b] - chanceOfBest[a] || a - b);
  let sum = 0;
  const set: number[] = [];
  for (const i of order) {
    // Chances are sums of equal shares of draws: a few last bits must not ask for one thing more.
    if (sum >= level - 1e-9) break;
    set.push(i);
    sum += chanceOfBest[i];
  }
  return set;
}
