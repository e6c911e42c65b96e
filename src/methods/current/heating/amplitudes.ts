/** Sum of products of two columns; of a column with itself where one is given. */
export function dot(a: Float64Array, b: Float64Array = a): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}

/** Determinants below this share of their largest are two curves that are one. */
const ALIKE = 1e-12;

/**
 * Amplitudes, none negative, with which two curves come nearest to a log, from their products: a and b with the log, each with
 * itself, and with one another. Where the best pair has a negative one, or the two are alike, the curve that explains more stands alone.
 */
export function pairOfAmplitudes(ay: number, by: number, aa: number, bb: number, ab: number): [number, number] {
  const determinant = aa * bb - ab * ab;
  if (determinant > ALIKE * aa * bb) {
    const a = (ay * bb - by * ab) / determinant;
    const b = (by * aa - ay * ab) / determinant;
    if (a >= 0 && b >= 0) return [a, b];
  }
  const alone = (cy: number, cc: number) => (cy > 0 ? cy ** 2 / cc : 0);
  return alone(ay, aa) > alone(by, bb) ? [Math.max(0, ay / aa), 0] : [0, Math.max(0, by / bb)];
}

/** Amplitudes, none negative, of one or two curves that come nearest to a log, and what they leave of it. */
export function amplitudesOf(
  curves: readonly Float64Array[],
  y: Float64Array,
): { amplitudes: number[]; residual: Float64Array } {
  const [c, d] = curves;
  const amplitudes = d
    ? pairOfAmplitudes(dot(c, y), dot(d, y), dot(c), dot(d), dot(c, d))
    : [Math.max(0, dot(c, y) / dot(c))];
  const residual = y.map((v, i) => v - curves.reduce((sum, curve, k) => sum + amplitudes[k] * curve[i], 0));
  return { amplitudes, residual };
}
