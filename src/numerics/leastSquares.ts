import { compensatedSum } from './describe.ts';

/** What a linear least-squares fit found. */
export interface LeastSquares {
  coefficients: number[];
  /** Standard errors of the coefficients. */
  errors: number[];
  /** Covariance of the coefficients. */
  covariance: number[][];
  /** Sum of squared residuals, its degrees of freedom n − p, and √(sum/dof). */
  residualSquares: number;
  dof: number;
  residualSd: number;
}

/**
 * Linear least squares: the coefficients b that make Σ(yᵢ − Σⱼ Xᵢⱼ bⱼ)² least, by Householder's QR decomposition of the columns
 * scaled to lengths near 1 (by powers of two, so exactly).
 *
 * Not for a model that is not linear in its coefficients, and not for columns of which one is a sum of the others.
 *
 * Source: G. H. Golub, C. F. Van Loan, Matrix Computations, 4th ed. (2013), §5.2–5.3.
 *
 * @param rows the model matrix X, one row for each observation.
 * @param y observations.
 * @throws RangeError when the lengths differ, there are not more rows than columns, or the columns depend on each other.
 */
export function leastSquares(rows: readonly (readonly number[])[], y: readonly number[]): LeastSquares {
  const n = rows.length;
  const p = rows[0]?.length ?? 0;
  if (y.length !== n) throw new RangeError(`${n} rows but ${y.length} observations`);
  if (p === 0 || n <= p) throw new RangeError(`${n} observations cannot determine ${p} coefficients and their errors`);
  if (rows.some((row) => row.length !== p)) throw new RangeError('all rows need the same number of columns');

  const scale = columnScales(rows, p);
  const columns = scale.map((s, j) => Float64Array.from(rows, (row) => row[j] / s));
  const qr = decompose(columns, n);
  const scaled = solve(qr, Float64Array.from(y));
  const residualSquares = compensatedSum(residualsOf(columns, y, scaled).map((r) => r * r));
  const dof = n - p;
  const variance = residualSquares / dof;
  const inverse = inverseOfTriangle(qr.r, p);
  const covariance = scale.map((si, i) =>
    scale.map((sj, j) => {
      let sum = 0;
      for (let k = Math.max(i, j); k < p; k++) sum += inverse[i][k] * inverse[j][k];
      return (variance * sum) / (si * sj);
    }),
  );
  return {
    coefficients: scale.map((s, j) => scaled[j] / s),
    errors: covariance.map((row, j) => Math.sqrt(row[j])),
    covariance,
    residualSquares,
    dof,
    residualSd: Math.sqrt(variance),
  };
}

/** Householder vectors, one for each column, and the triangle R by rows. */
interface Decomposition {
  vectors: Float64Array[];
  r: number[][];
}

/** For each column the power of two nearest to its length. */
function columnScales(rows: readonly (readonly number[])[], p: number): number[] {
  return Array.from({ length: p }, (_, j) => {
    const length = Math.sqrt(compensatedSum(rows.map((row) => row[j] * row[j])));
    if (!(length > 0) || !Number.isFinite(length)) throw new RangeError(`column ${j + 1} is all zero or not finite`);
    return 2 ** Math.round(Math.log2(length));
  });
}

function decompose(columns: readonly Float64Array[], n: number): Decomposition {
  const p = columns.length;
  const work = columns.map((column) => Float64Array.from(column));
  const vectors: Float64Array[] = [];
  for (let k = 0; k < p; k++) {
    const column = work[k];
    const length = Math.sqrt(dot(column, column, k));
    // Scaled columns have length near 1: what is left of one after the others is about the sine of its angle to them.
    if (!(length > n * Number.EPSILON)) throw new RangeError(`column ${k + 1} is a combination of those before it`);
    const v = new Float64Array(n);
    for (let i = k; i < n; i++) v[i] = column[i];
    v[k] += column[k] < 0 ? -length : length;
    const norm = Math.sqrt(dot(v, v, k));
    for (let i = k; i < n; i++) v[i] /= norm;
    for (let j = k; j < p; j++) reflect(work[j], v, k);
    vectors.push(v);
  }
  return { vectors, r: Array.from({ length: p }, (_, i) => work.map((column) => column[i])) };
}

function solve({ vectors, r }: Decomposition, b: Float64Array): Float64Array {
  const p = vectors.length;
  vectors.forEach((v, k) => {
    reflect(b, v, k);
  });
  const x = new Float64Array(p);
  for (let i = p - 1; i >= 0; i--) {
    let sum = b[i];
    for (let j = i + 1; j < p; j++) sum -= r[i][j] * x[j];
    x[i] = sum / r[i][i];
  }
  return x;
}

/** x − 2 v vᵀx for a unit vector v that is zero before `from`. */
function reflect(x: Float64Array, v: Float64Array, from: number): void {
  const twice = 2 * dot(x, v, from);
  for (let i = from; i < x.length; i++) x[i] -= twice * v[i];
}

function dot(a: Float64Array, b: Float64Array, from: number): number {
  let sum = 0;
  for (let i = from; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}

/** y − X b, each residual summed in compensated form: where terms are large and nearly cancel, that is what is left. */
function residualsOf(columns: readonly Float64Array[], y: readonly number[], b: Float64Array): Float64Array {
  return Float64Array.from(y, (value, i) => compensatedSum([value, ...columns.map((column, j) => -column[i] * b[j])]));
}

function inverseOfTriangle(r: readonly (readonly number[])[], p: number): number[][] {
  const inverse = Array.from({ length: p }, () => new Array<number>(p).fill(0));
  for (let j = p - 1; j >= 0; j--) {
    inverse[j][j] = 1 / r[j][j];
    for (let i = j - 1; i >= 0; i--) {
      let sum = 0;
      for (let k = i + 1; k <= j; k++) sum += r[i][k] * inverse[k][j];
      inverse[i][j] = -sum / r[i][i];
    }
  }
  return inverse;
}
