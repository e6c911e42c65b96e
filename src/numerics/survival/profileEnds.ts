import { brentRoot } from '../roots.ts';

/** So far from the estimate, on the scale of logarithms, an end is sought: a factor of a million. */
const FARTHEST = Math.log(1e6);
const FIRST_STEP = 0.25;
const TOLERANCE = 1e-9;

/**
 * Both ends of a profile interval: where w, which is 0 at the estimate and grows away from it, reaches the limit. null where it does
 * not within a factor of a million.
 *
 * @param w null where it cannot be computed; the interval is open on that side.
 */
export function profileEnds(
  w: (x: number) => number | null,
  estimate: number,
  limit: number,
): [number | null, number | null] {
  return [end(w, estimate, limit, -1), end(w, estimate, limit, 1)];
}

function end(w: (x: number) => number | null, estimate: number, limit: number, side: 1 | -1): number | null {
  let inside = estimate;
  for (let step = FIRST_STEP; step <= 2 * FARTHEST; step *= 2) {
    const x = estimate + side * Math.min(step, FARTHEST);
    const at = w(x);
    if (at === null) return null;
    if (at >= limit) return brentRoot((y) => (w(y) ?? limit) - limit, inside, x, { tolerance: TOLERANCE });
    inside = x;
  }
  return null;
}
