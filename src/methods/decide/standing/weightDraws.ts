import type { SeededDraws } from '../../../numerics/random.ts';
import { checkedCount } from './rankOrder.ts';

/**
 * How closely drawn weights keep to stated ones: at κ = 30 a weight of 0.2 is drawn with a standard deviation of 0.07. Common
 * practice, no source.
 */
export const CONCENTRATION = 30;

/**
 * Tastes about stated weights: draws from the Dirichlet distribution with parameters κ w, whose mean is w. A weight of 0 stays 0.
 *
 * @param weights not negative, with a sum of 1.
 * @returns one row of weights for each draw.
 */
export function drawnAbout(weights: ArrayLike<number>, draws: number, random: SeededDraws): Float64Array {
  const m = weights.length;
  const rows = new Float64Array(draws * m);
  for (let d = 0; d < draws; d++) {
    let sum = 0;
    for (let k = 0; k < m; k++) {
      const w = weights[k] > 0 ? random.gamma(CONCENTRATION * weights[k]) : 0;
      rows[d * m + k] = w;
      sum += w;
    }
    for (let k = 0; k < m; k++) rows[d * m + k] /= sum;
  }
  return rows;
}

/**
 * Tastes that keep an order of importance: evenly spread over all weights that do (sorted draws from the even simplex). Their
 * mean is the rank-order centroid. Things of one group change places among themselves at random.
 *
 * @param groups as in `rankOrderCentroid`.
 */
export function drawnInOrder(groups: readonly (readonly number[])[], draws: number, random: SeededDraws): Float64Array {
  const m = checkedCount(groups);
  const rows = new Float64Array(draws * m);
  const sorted = new Float64Array(m);
  const order = groups.map((group) => [...group]);
  for (let d = 0; d < draws; d++) {
    let sum = 0;
    for (let k = 0; k < m; k++) {
      sorted[k] = random.gamma(1);
      sum += sorted[k];
    }
    sorted.sort();
    let place = m - 1;
    for (const group of order) {
      for (let k = group.length - 1; k > 0; k--) {
        const other = random.integer(k + 1);
        [group[k], group[other]] = [group[other], group[k]];
      }
      for (const thing of group) rows[d * m + thing] = sorted[place--] / sum;
    }
  }
  return rows;
}
