import type { Metal } from '../../methods/metal/hypotheses.ts';

/** Belief from which a metal, or copper as a family, is named. */
const NAMED_FROM = 0.95;

/**
 * The metal to name: the most believed one when it is settled; "copper" when bare and tinned copper together are settled but
 * not which of the two; null otherwise.
 */
export function metalFound(belief: ReadonlyMap<Metal, number>): string | null {
  const of = (m: Metal) => belief.get(m) ?? 0;
  const copper = of('copper') + of('tinned copper');
  const clad = of('copper-clad aluminium') + of('tinned clad aluminium');
  for (const [metal, p] of belief) if (p >= NAMED_FROM && metal !== 'other') return metal;
  if (copper >= NAMED_FROM) return of('tinned copper') > of('copper') * 4 ? 'tinned copper' : 'copper';
  if (clad >= NAMED_FROM) return 'copper-clad aluminium';
  return null;
}
