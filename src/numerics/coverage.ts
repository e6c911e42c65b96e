/**
 * Intervals that hold a stated share of a sample of draws.
 *
 * Source: JCGM 101:2008, 7.7: with M sorted values and q = pM (rounded to a whole number), every pair (y₍ᵣ₎, y₍ᵣ₊q₎) is a coverage
 * interval for probability p.
 */

/**
 * The coverage interval with equal shares of the draws outside on either side: r = (M − q)/2, rounded to a whole number.
 *
 * @param sorted draws in ascending order.
 * @param level share that it holds, such as 0.95.
 * @throws RangeError when the level is outside (0, 1) or there are too few draws for it (1/(1 − level) or fewer).
 */
export function equalTailedInterval(sorted: Float64Array, level: number): [number, number] {
  const q = heldDraws(sorted, level);
  const r = Math.max(1, Math.floor((sorted.length - q + 1) / 2));
  return [sorted[r - 1], sorted[Math.min(sorted.length, r + q) - 1]];
}

/**
 * The shortest coverage interval; of several equally short ones the lowest. It lies where draws are densest, so for a lopsided
 * distribution it is shorter than the equal-tailed one, and it is not carried along by a change of scale (to logarithms, say).
 *
 * Arguments and throws as {@link equalTailedInterval}.
 */
export function shortestInterval(sorted: Float64Array, level: number): [number, number] {
  const q = heldDraws(sorted, level);
  let best = 0;
  for (let r = 1; r + q < sorted.length; r++) if (sorted[r + q] - sorted[r] < sorted[best + q] - sorted[best]) best = r;
  return [sorted[best], sorted[best + q]];
}

function heldDraws(sorted: Float64Array, level: number): number {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, got ${level}`);
  const q = Math.round(level * sorted.length);
  if (q < 1 || q >= sorted.length)
    throw new RangeError(`${sorted.length} draws are too few for an interval of level ${level}`);
  return q;
}
