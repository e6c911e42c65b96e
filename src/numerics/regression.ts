import { compensatedSum, mean, sumOfSquaredDeviations } from './describe.ts';
import { leastSquares } from './leastSquares.ts';

/** A straight line y = intercept + slope · x through measured points. */
export interface StraightLine {
  intercept: number;
  slope: number;
  interceptError: number;
  slopeError: number;
  /** Correlation of the two estimates: near ±1 when x lies far from 0. */
  estimatesCorrelation: number;
  /** Standard deviation of the points about the line, with `dof` = n − 2. */
  residualSd: number;
  dof: number;
  /** Share of the spread of y that the line accounts for. */
  rSquared: number;
  /** F ratio of the line against no line, on 1 and `dof` degrees of freedom. */
  fRatio: number;
}

/**
 * Straight line through points by least squares, all errors in y and alike.
 *
 * Not when x is as uncertain as y, and not for points that drift in time.
 *
 * @param x at least 3 values, not all equal, in any unit; the slope is in units of y over units of x.
 * @throws RangeError when the lengths differ, there are fewer than 3 points, or all x are equal.
 */
export function straightLine(x: readonly number[], y: readonly number[]): StraightLine {
  requirePoints(x, y, 3);
  const xMean = mean(x);
  const yMean = mean(y);
  const sxx = sumOfSquaredDeviations(x, xMean);
  if (!(sxx > 0)) throw new RangeError('a line needs at least two different x');
  const sxy = compensatedSum(x.map((value, i) => (value - xMean) * (y[i] - yMean)));
  const slope = sxy / sxx;
  const intercept = yMean - slope * xMean;
  const residuals = x.map((value, i) => y[i] - yMean - slope * (value - xMean));
  const dof = x.length - 2;
  const left = compensatedSum(residuals.map((r) => r * r));
  const residualSd = Math.sqrt(left / dof);
  const taken = slope * slope * sxx;
  const meanSquare = xMean * xMean + sxx / x.length;
  return {
    intercept,
    slope,
    interceptError: residualSd * Math.sqrt(meanSquare / sxx),
    slopeError: residualSd / Math.sqrt(sxx),
    estimatesCorrelation: -xMean / Math.sqrt(meanSquare),
    residualSd,
    dof,
    rSquared: taken / (taken + left),
    fRatio: taken / (left / dof),
  };
}

/**
 * Value of a fitted line at x with its standard uncertainty, the correlation of slope and intercept taken into account:
 * u² = u_a² + x² u_b² + 2x u_a u_b r.
 */
export function lineAt(line: StraightLine, x: number): { value: number; u: number } {
  const a = line.interceptError;
  const b = line.slopeError * x;
  return {
    value: line.intercept + line.slope * x,
    u: Math.sqrt(Math.max(0, a * a + b * b + 2 * a * b * line.estimatesCorrelation)),
  };
}

/**
 * Correlation coefficient of paired values, Σ(x − x̄)(y − ȳ) / √(Σ(x − x̄)² Σ(y − ȳ)²), between −1 and 1.
 *
 * @throws RangeError when the lengths differ, there are fewer than 2 pairs, or one of the two does not vary.
 */
export function correlationCoefficient(x: readonly number[], y: readonly number[]): number {
  requirePoints(x, y, 2);
  const xMean = mean(x);
  const yMean = mean(y);
  const squares = sumOfSquaredDeviations(x, xMean) * sumOfSquaredDeviations(y, yMean);
  if (!(squares > 0)) throw new RangeError('values that do not vary have no correlation');
  return compensatedSum(x.map((value, i) => (value - xMean) * (y[i] - yMean))) / Math.sqrt(squares);
}

/** A line y = slope · x held to pass through the origin. */
export interface OriginLine {
  slope: number;
  slopeError: number;
  residualSd: number;
  dof: number;
}

/**
 * Line through the origin by least squares: slope Σxy/Σx².
 *
 * Only where nothing is certain to give nothing: an offset (a thermal voltage, a zero error) goes unseen into the slope.
 *
 * @throws RangeError when the lengths differ, there are fewer than 2 points, or all x are 0.
 */
export function lineThroughOrigin(x: readonly number[], y: readonly number[]): OriginLine {
  requirePoints(x, y, 2);
  const sxx = compensatedSum(x.map((value) => value * value));
  if (!(sxx > 0)) throw new RangeError('a line through the origin needs an x other than 0');
  const slope = compensatedSum(x.map((value, i) => value * y[i])) / sxx;
  const dof = x.length - 1;
  const residualSd = Math.sqrt(compensatedSum(x.map((value, i) => (y[i] - slope * value) ** 2)) / dof);
  return { slope, slopeError: residualSd / Math.sqrt(sxx), residualSd, dof };
}

/** A polynomial Σ coefficients[k] xᵏ with what {@link leastSquares} says of it. */
export interface Polynomial {
  coefficients: number[];
  errors: number[];
  residualSd: number;
  dof: number;
  rSquared: number;
}

/**
 * Polynomial through points by least squares, coefficients of 1, x, x², …
 *
 * Powers of x are nearly parallel: from degree 5 or so on, subtract the mean from x first. Not to be carried beyond the points.
 *
 * @throws RangeError when the lengths differ, the degree is not a whole number from 0, or there are not more points than
 *   coefficients.
 */
export function polynomial(x: readonly number[], y: readonly number[], degree: number): Polynomial {
  if (!(Number.isInteger(degree) && degree >= 0))
    throw new RangeError(`a degree is a whole number from 0, got ${degree}`);
  requirePoints(x, y, degree + 2);
  const rows = x.map((value) => powers(value, degree));
  const fit = leastSquares(rows, y);
  const total = sumOfSquaredDeviations(y, mean(y));
  return {
    coefficients: fit.coefficients,
    errors: fit.errors,
    residualSd: fit.residualSd,
    dof: fit.dof,
    rSquared: 1 - fit.residualSquares / total,
  };
}

function powers(x: number, degree: number): number[] {
  const row = [1];
  for (let k = 1; k <= degree; k++) row.push(row[k - 1] * x);
  return row;
}

function requirePoints(x: readonly number[], y: readonly number[], least: number): void {
  if (x.length !== y.length) throw new RangeError(`${x.length} x but ${y.length} y`);
  if (x.length < least) throw new RangeError(`needs at least ${least} points, got ${x.length}`);
  for (let i = 0; i < x.length; i++)
    if (!Number.isFinite(x[i]) || !Number.isFinite(y[i]))
      throw new RangeError(`point ${i + 1} is not finite: ${x[i]}, ${y[i]}`);
}
