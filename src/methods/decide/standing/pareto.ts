/**
 * Things that no other thing beats in every respect: on the edge where one gains in one respect only by losing in another.
 * Equal things are both on it.
 *
 * @param goods things × respects, row-major; more is better in every respect (turn the sign where less is better).
 * @returns one flag for each thing.
 * @example onEdge(Float64Array.of(1, 2, 2, 1, 1, 1), 2) // [true, true, false]
 */
export function onEdge(goods: ArrayLike<number>, respects: number): boolean[] {
  const n = goods.length / respects;
  const beats = (a: number, b: number) => {
    let better = false;
    for (let k = 0; k < respects; k++) {
      const [mine, other] = [goods[a * respects + k], goods[b * respects + k]];
      if (mine < other) return false;
      if (mine > other) better = true;
    }
    return better;
  };
  return Array.from({ length: n }, (_, i) => {
    for (let j = 0; j < n; j++) if (j !== i && beats(j, i)) return false;
    return true;
  });
}

/**
 * Chance of being on the edge when the figures are known only by joint draws.
 *
 * @param drawn one array for each respect: draw after draw one number for each thing; more is better.
 */
export function chanceOnEdge(drawn: readonly Float64Array[], count: number): Float64Array {
  const draws = drawn[0].length / count;
  const hits = new Float64Array(count);
  const goods = new Float64Array(count * drawn.length);
  for (let d = 0; d < draws; d++) {
    for (let i = 0; i < count; i++)
      for (let k = 0; k < drawn.length; k++) goods[i * drawn.length + k] = drawn[k][d * count + i];
    onEdge(goods, drawn.length).forEach((on, i) => {
      if (on) hits[i]++;
    });
  }
  return hits.map((h) => h / draws);
}
