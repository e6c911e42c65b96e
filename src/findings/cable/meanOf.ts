import { doubt } from '../rows/cableGroups.ts';
import type { Group } from '../rows/groups.ts';

const ROOT_THREE = Math.sqrt(3);

/** Mean of a quantity over all specimens, weighted by the number of readings, with its standard uncertainty; null when not read. */
export function meanOf(groups: readonly Group[]): { value: number; u: number } | null {
  if (groups.length === 0) return null;
  const n = groups.reduce((sum, g) => sum + g.n, 0);
  const value = groups.reduce((sum, g) => sum + g.n * g.mean, 0) / n;
  const scatter = groups.reduce((sum, g) => sum + (g.n / n) ** 2 * g.scatter.variance, 0);
  const limit = Math.max(...groups.map(doubt)) / ROOT_THREE;
  return { value, u: Math.hypot(Math.sqrt(scatter), limit) };
}
