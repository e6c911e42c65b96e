/** How {@link brentRoot} stops. */
export interface RootOptions {
  /** Largest half-width of the final bracket, in the unit of x; the last bits of x bound it from below. */
  tolerance?: number;
  /** Most evaluations of f before giving up. */
  maximumEvaluations?: number;
}

/**
 * Root of a continuous function of one variable in a bracket, by Brent's method: inverse quadratic or secant steps while
 * they shrink the bracket, bisection when they do not, so it never leaves [a, b] and always ends.
 *
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4. Not for a double root, where f
 * does not change sign.
 *
 * @param f continuous on [a, b].
 * @throws RangeError when f(a) and f(b) have the same sign, f is not a number, or the evaluations run out.
 * @example brentRoot((x) => x * x - 2, 0, 2, { tolerance: 1e-14 }) // 1.414213562373095
 */
export function brentRoot(f: (x: number) => number, a: number, b: number, options: RootOptions = {}): number {
  const { tolerance = 1e-12, maximumEvaluations = 200 } = options;
  // `best` is the estimate, `other` the end of the bracket across the root, `previous` the estimate before.
  let previous = a;
  let best = b;
  let fPrevious = valueAt(f, a);
  let fBest = valueAt(f, b);
  if (fPrevious === 0) return a;
  if (fBest === 0) return b;
  if (fPrevious > 0 === fBest > 0)
    throw new RangeError(`no sign change between ${a} (${fPrevious}) and ${b} (${fBest})`);
  let other = previous;
  let fOther = fPrevious;
  let step = best - previous;
  let stepBefore = step;

  for (let n = 2; n < maximumEvaluations; n++) {
    if (fBest > 0 === fOther > 0) {
      other = previous;
      fOther = fPrevious;
      step = best - previous;
      stepBefore = step;
    }
    if (Math.abs(fOther) < Math.abs(fBest)) {
      previous = best;
      best = other;
      other = previous;
      fPrevious = fBest;
      fBest = fOther;
      fOther = fPrevious;
    }
    const least = 2 * Number.EPSILON * Math.abs(best) + 0.5 * tolerance;
    const half = 0.5 * (other - best);
    if (Math.abs(half) <= least || fBest === 0) return best;
    const proposed = interpolatedStep(previous, best, other, fPrevious, fBest, fOther);
    const shrinks = Math.abs(fPrevious) > Math.abs(fBest) && Math.abs(stepBefore) >= least;
    const inside =
      proposed * half > 0 && Math.abs(proposed) < Math.min(1.5 * Math.abs(half), 0.5 * Math.abs(stepBefore));
    if (shrinks && inside) {
      stepBefore = step;
      step = proposed;
    } else {
      step = half;
      stepBefore = half;
    }
    previous = best;
    fPrevious = fBest;
    best += Math.abs(step) > least ? step : Math.sign(half) * least;
    fBest = valueAt(f, best);
  }
  throw new RangeError(`no root to ${tolerance} within ${maximumEvaluations} evaluations between ${a} and ${b}`);
}

/** Step from b to where the curve through the points crosses zero: a straight line through two, a sideways parabola through three. */
function interpolatedStep(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const s = fb / fa;
  if (a === c) return ((c - b) * s) / (s - 1);
  const q = fa / fc;
  const r = fb / fc;
  const numerator = s * ((c - b) * q * (q - r) - (b - a) * (r - 1));
  return numerator / -((q - 1) * (r - 1) * (s - 1));
}

function valueAt(f: (x: number) => number, x: number): number {
  const y = f(x);
  if (Number.isNaN(y)) throw new RangeError(`the function is not a number at ${x}`);
  return y;
}
