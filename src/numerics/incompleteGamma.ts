import logGamma from '@stdlib/math-base-special-gammaln';

/** Relative size at which a further term no longer changes a double. */
const NEGLIGIBLE = 1e-17;
const MOST_TERMS = 100_000;

/**
 * Regularised upper incomplete gamma function Q(a, x) = Γ(a, x) / Γ(a), accurate relative to its own size far into the tail.
 *
 * Below x = a + 1 as 1 − P(a, x) with the series P = xᵃ e⁻ˣ / Γ(a+1) · Σ xⁿ / ((a+1)…(a+n)); above it by Legendre's
 * continued fraction, evaluated by the modified Lentz method. Source: NIST Digital Library of Mathematical Functions,
 * §8.11(i) and §8.9.
 *
 * @throws RangeError when a is not positive, x is negative, or the sum does not settle (a above about 1e9).
 */
export function upperIncompleteGamma(a: number, x: number): number {
  if (!(a > 0) || !(x >= 0)) throw new RangeError(`incomplete gamma needs a > 0 and x ≥ 0, got a = ${a}, x = ${x}`);
  if (x === 0) return 1;
  if (x === Number.POSITIVE_INFINITY) return 0;
  const logFactor = a * Math.log(x) - x - logGamma(a);
  return x < a + 1 ? 1 - (Math.exp(logFactor) / a) * lowerSeries(a, x) : Math.exp(logFactor) * upperFraction(a, x);
}

/** Σ xⁿ / ((a+1)…(a+n)), from n = 0. */
function lowerSeries(a: number, x: number): number {
  let term = 1;
  let sum = 1;
  for (let n = 1; n < MOST_TERMS; n++) {
    term *= x / (a + n);
    sum += term;
    if (term < sum * NEGLIGIBLE) return sum;
  }
  throw new RangeError(`incomplete gamma series does not settle for a = ${a}, x = ${x}`);
}

/** 1/(x+1−a− 1(1−a)/(x+3−a− 2(2−a)/(x+5−a− …))). */
function upperFraction(a: number, x: number): number {
  const tiny = 1e-300;
  let b = x + 1 - a;
  let c = 1 / tiny;
  let d = 1 / b;
  let h = d;
  for (let n = 1; n < MOST_TERMS; n++) {
    const an = -n * (n - a);
    b += 2;
    d = an * d + b;
    if (Math.abs(d) < tiny) d = tiny;
    c = b + an / c;
    if (Math.abs(c) < tiny) c = tiny;
    d = 1 / d;
    const factor = d * c;
    h *= factor;
    if (Math.abs(factor - 1) < 1e-16) return h;
  }
  throw new RangeError(`incomplete gamma fraction does not settle for a = ${a}, x = ${x}`);
}
