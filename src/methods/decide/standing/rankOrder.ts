/**
 * Weights from an order of importance: the mean of all weights that keep the order, w_k = (1/m) Σ_{i ≥ k} 1/i.
 *
 * Things of one group are held equally important and share their places' weights.
 *
 * Source: F. H. Barron, B. E. Barrett, "Decision quality using ranked attribute weights", Management Science 42 (1996): the
 * rank-order centroid.
 *
 * @param groups numbers of the things, 0 to m − 1, the most important group first; every number once.
 * @throws RangeError when a number is missing or stands twice.
 * @example rankOrderCentroid([[0], [1]]) // 0.75, 0.25
 */
export function rankOrderCentroid(groups: readonly (readonly number[])[]): Float64Array {
  const m = checkedCount(groups);
  const byPlace = new Float64Array(m);
  for (let k = m - 1, sum = 0; k >= 0; k--) {
    sum += 1 / (k + 1);
    byPlace[k] = sum / m;
  }
  const weights = new Float64Array(m);
  let place = 0;
  for (const group of groups) {
    const sum = byPlace.subarray(place, place + group.length).reduce((a, b) => a + b, 0);
    for (const thing of group) weights[thing] = sum / group.length;
    place += group.length;
  }
  return weights;
}

/** How many things the groups hold. @throws RangeError unless they hold 0 to m − 1, each once. */
export function checkedCount(groups: readonly (readonly number[])[]): number {
  const all = groups.flat();
  if (all.length === 0 || new Set(all).size !== all.length || all.some((i) => !(i >= 0 && i < all.length)))
    throw new RangeError('an order of importance names every criterion once');
  return all.length;
}
