/** A smooth function on [low, high] as a sum of Chebyshev polynomials, made by {@link chebyshevOf}. */
export interface ChebyshevSeries {
  low: number;
  high: number;
  coefficients: Float64Array;
}

/**
 * The series that agrees with f at the `count` Chebyshev points of [low, high]. For a function that is smooth well beyond the
 * ends its error falls by a constant factor with every point more. Not for kinks or jumps.
 *
 * Source: L. N. Trefethen, Approximation Theory and Approximation Practice (2013), chapters 3, 4 and 8.
 *
 * @throws RangeError unless low < high and there are at least 2 points.
 */
export function chebyshevOf(f: (x: number) => number, low: number, high: number, count: number): ChebyshevSeries {
  if (!(low < high) || !(count >= 2))
    throw new RangeError(`needs low < high and 2 points, got ${low}, ${high}, ${count}`);
  const values = Float64Array.from({ length: count }, (_, i) =>
    f((low + high) / 2 + ((high - low) / 2) * Math.cos((Math.PI * (i + 0.5)) / count)),
  );
  const coefficients = Float64Array.from({ length: count }, (_, k) => {
    let sum = 0;
    for (let i = 0; i < count; i++) sum += values[i] * Math.cos((Math.PI * k * (i + 0.5)) / count);
    return ((k === 0 ? 1 : 2) * sum) / count;
  });
  return { low, high, coefficients };
}

/** Value and slope of a series at x, by Clenshaw's recurrence. Beyond the ends of its interval the series means nothing. */
export function chebyshevAt({ low, high, coefficients }: ChebyshevSeries, x: number): { value: number; slope: number } {
  const t = (2 * x - low - high) / (high - low);
  let b1 = 0;
  let b2 = 0;
  let d1 = 0;
  let d2 = 0;
  for (let k = coefficients.length - 1; k >= 1; k--) {
    const d = 2 * b1 + 2 * t * d1 - d2;
    d2 = d1;
    d1 = d;
    const b = coefficients[k] + 2 * t * b1 - b2;
    b2 = b1;
    b1 = b;
  }
  return {
    value: coefficients[0] + t * b1 - b2,
    slope: (2 / (high - low)) * (b1 + t * d1 - d2),
  };
}
