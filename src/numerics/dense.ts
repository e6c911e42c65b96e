/**
 * Small dense symmetric systems, row-major in flat arrays: the assay solves thousands of them with 2 to 12 unknowns, so
 * no object is made per element and every routine works in the arrays that it is given.
 */

/**
 * Cholesky factor L of a symmetric positive definite matrix, L·Lᵀ = a, written into the lower triangle of `a` in place.
 *
 * @param a row-major n × n; only the lower triangle is read.
 * @returns ln det a.
 * @throws RangeError when the matrix is not positive definite.
 */
export function choleskyInPlace(a: Float64Array, n: number): number {
  let logDet = 0;
  for (let j = 0; j < n; j++) {
    let d = a[j * n + j];
    for (let k = 0; k < j; k++) d -= a[j * n + k] * a[j * n + k];
    if (!(d > 0)) throw new RangeError(`matrix of order ${n} is not positive definite at row ${j + 1}`);
    const root = Math.sqrt(d);
    a[j * n + j] = root;
    logDet += Math.log(d);
    for (let i = j + 1; i < n; i++) {
      let s = a[i * n + j];
      for (let k = 0; k < j; k++) s -= a[i * n + k] * a[j * n + k];
      a[i * n + j] = s / root;
    }
  }
  return logDet;
}

/** Solves L·Lᵀ x = b in place, L from {@link choleskyInPlace}. */
export function solveCholesky(l: Float64Array, n: number, b: Float64Array, offset = 0): void {
  for (let i = 0; i < n; i++) {
    let s = b[offset + i];
    for (let k = 0; k < i; k++) s -= l[i * n + k] * b[offset + k];
    b[offset + i] = s / l[i * n + i];
  }
  for (let i = n - 1; i >= 0; i--) {
    let s = b[offset + i];
    for (let k = i + 1; k < n; k++) s -= l[k * n + i] * b[offset + k];
    b[offset + i] = s / l[i * n + i];
  }
}

/** Inverse of a symmetric positive definite matrix, as a new row-major array. Throws like {@link choleskyInPlace}. */
export function inverseSymmetric(a: Float64Array, n: number): Float64Array {
  const l = Float64Array.from(a);
  choleskyInPlace(l, n);
  const inverse = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    inverse[j * n + j] = 1;
    // Rows of a symmetric inverse are its columns, so one row can be solved in place.
    solveCholesky(l, n, inverse, j * n);
  }
  return inverse;
}

/** a·b for row-major a (n × m) and b (m × p). */
export function multiply(a: Float64Array, b: Float64Array, n: number, m: number, p: number): Float64Array {
  const c = new Float64Array(n * p);
  for (let i = 0; i < n; i++)
    for (let k = 0; k < m; k++) {
      const x = a[i * m + k];
      if (x !== 0) for (let j = 0, into = i * p, from = k * p; j < p; j++) c[into + j] += x * b[from + j];
    }
  return c;
}

/** a·bᵀ for row-major a (n × m) and b (p × m). */
export function multiplyTransposed(a: Float64Array, b: Float64Array, n: number, m: number, p: number): Float64Array {
  const c = new Float64Array(n * p);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < p; j++) {
      let s = 0;
      for (let k = 0; k < m; k++) s += a[i * m + k] * b[j * m + k];
      c[i * p + j] = s;
    }
  return c;
}
