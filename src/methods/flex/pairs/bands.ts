/** Chance with which everything above a cut must beat everything below it. By simulation: equal ones are parted in about 4 %. */
export const CUT_ABOVE = 0.92;

export interface Bands {
  /** Numbers of the things in order, the first the greatest. */
  order: number[];
  /** Band of each thing, from 1. */
  band: number[];
}

/**
 * Bands by clean cuts: in order of the estimates, a cut after a place where every thing above is more likely than `cutAbove`
 * to beat every thing below.
 *
 * A rule against the leader alone parts equal things a third of the time; this one parts a pair with chance 2 (1 − t) at worst.
 *
 * @param chances P that i beats j, row-major
 */
export function cleanCutBands(estimates: ArrayLike<number>, chances: Float64Array, cutAbove = CUT_ABOVE): Bands {
  const n = estimates.length;
  const order = Array.from({ length: n }, (_, i) => i).sort((a, b) => estimates[b] - estimates[a] || a - b);
  const band = new Array<number>(n);
  let number = 1;
  order.forEach((thing, place) => {
    band[thing] = number;
    const above = order.slice(0, place + 1);
    const below = order.slice(place + 1);
    if (below.length > 0 && above.every((i) => below.every((j) => chances[i * n + j] >= cutAbove))) number++;
  });
  return { order, band };
}

/** For each thing the others that it cannot be told from: neither beats the other with the chance asked. */
export function cannotBeToldFrom(chances: Float64Array, count: number, cutAbove = CUT_ABOVE): number[][] {
  return Array.from({ length: count }, (_, i) =>
    Array.from({ length: count }, (_, j) => j).filter(
      (j) => j !== i && Math.max(chances[i * count + j], chances[j * count + i]) < cutAbove,
    ),
  );
}
