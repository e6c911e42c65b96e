import { SeededDraws } from '../../numerics/random.ts';

const text = new TextEncoder();
/** Keeps the parts of a key apart, so that `a` + `bc` is not `ab` + `c`. */
const BETWEEN = '\u001f';

/**
 * Random order of names in which every name keeps its luck: each gets a seeded draw of its own and they are sorted by it. A
 * name that joins later falls in somewhere and leaves the order of the others as it was, so that a half-done round stands.
 *
 * @param seed any text; the same seed gives the same order
 */
export function stableShuffle(names: readonly string[], seed: string): string[] {
  return names
    .map((name) => ({ name, at: luckOf(name, seed) }))
    .sort((a, b) => a.at - b.at || (a.name < b.name ? -1 : a.name > b.name ? 1 : 0))
    .map(({ name }) => name);
}

/** The draw of one name, in (0, 1). */
function luckOf(name: string, seed: string): number {
  const key = text.encode(`${seed}${BETWEEN}${name}${BETWEEN}`.padEnd(8, BETWEEN));
  return new SeededDraws(key).uniform();
}
