import { cleanCutBands } from '../../flex/pairs/bands.ts';

/** Two cables by their numbers, the first before the second. */
export interface PairOfCables {
  a: number;
  b: number;
}

/** Every pair of so many cables, in the order of their numbers. */
export const pairsOf = (count: number): PairOfCables[] =>
  Array.from({ length: count }, (_, a) =>
    Array.from({ length: count - a - 1 }, (_later, k) => ({ a, b: a + 1 + k })),
  ).flat();

/**
 * Order and bands of cables that a test parted, or not: a parted pair stands as its estimates do, for certain, and one that is not
 * parted either way. One cable alone has no band.
 *
 * @param estimates what the cables are put in order by, the larger first
 */
export function partedBands(
  estimates: readonly number[],
  pairs: readonly (PairOfCables & { parted: boolean })[],
): { order: number[]; band: (number | null)[] } {
  const n = estimates.length;
  const chances = new Float64Array(n * n).fill(0.5);
  for (const { a, b, parted } of pairs) {
    if (parted) chances[a * n + b] = estimates[a] > estimates[b] ? 1 : 0;
    chances[b * n + a] = 1 - chances[a * n + b];
  }
  const { order, band } = cleanCutBands(estimates, chances);
  return { order, band: n > 1 ? band : [null] };
}
