import type { Measured } from '../../findings/shapes/measured.ts';
import { cleanCutBands } from '../../methods/flex/pairs/bands.ts';
import { normalCdf } from '../../numerics/distributions.ts';

/**
 * Bands of single figures, the smallest in band 1, by the same clean cuts as elsewhere. Errors that two figures share are
 * counted as if each had its own: fewer are parted than might be, never more.
 */
export function figureBands(figures: readonly Pick<Measured, 'value' | 'u'>[]): number[] {
  const n = figures.length;
  const chances = new Float64Array(n * n).fill(0.5);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      if (i === j) continue;
      const doubt = Math.max(Math.hypot(figures[i]!.u, figures[j]!.u), 1e-12);
      chances[i * n + j] = normalCdf((figures[j]!.value - figures[i]!.value) / doubt);
    }
  return cleanCutBands(
    figures.map((f) => -f.value),
    chances,
  ).band;
}
