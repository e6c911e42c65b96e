/**
 * Solves a tridiagonal system in place by elimination without pivoting, which is sound for the diagonally dominant systems
 * of conduction. `right` becomes the solution; `diagonal` is overwritten.
 *
 * @param lower lower[i] stands left of diagonal[i] (lower[0] is unused); @param upper upper[i] stands right of it.
 */
export function solveTridiagonal(
  lower: Float64Array,
  diagonal: Float64Array,
  upper: Float64Array,
  right: Float64Array,
): Float64Array {
  const n = diagonal.length;
  for (let i = 1; i < n; i++) {
    const share = lower[i] / diagonal[i - 1];
    diagonal[i] -= share * upper[i - 1];
    right[i] -= share * right[i - 1];
  }
  right[n - 1] /= diagonal[n - 1];
  for (let i = n - 2; i >= 0; i--) right[i] = (right[i] - upper[i] * right[i + 1]) / diagonal[i];
  return right;
}
