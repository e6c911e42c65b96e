import { choleskyInPlace, inverseSymmetric } from '../../../numerics/dense.ts';
import { levenbergMarquardt } from '../../../numerics/levenbergMarquardt.ts';
import { type Whitening, whiten } from './noise.ts';

/** Time constants may lie between these shares of the log's length. */
const LEAST_TAU = 0.01;
const MOST_TAU = 8;
/** Standard deviation of ln τ beforehand, and its middle as a share of the log: weak, so that a log speaks for itself. */
const PRIOR_SD = 1.5;
const PRIOR_MIDDLE = { one: [1 / 3], two: [1 / 15, 1 / 3] };
/** Points of ln τ at which a fit looks for its start. */
const GRID = 36;

/** One fit of A₁(1 − e^(−t/τ₁)) + A₂(1 − e^(−t/τ₂)) under one supposition about noise. */
export interface ExponentialFit {
  /** Steady rise ΣA, its scale and degrees of freedom: Student t. */
  steady: number;
  steadySd: number;
  /** ln τ of the slowest, s, with its scale. */
  lnSlowest: number;
  lnSlowestSd: number;
  amplitudes: number[];
  taus: number[];
  parameters: number;
  dof: number;
  /** ln of the weight within a model (REML), and ln of the profile likelihood, for comparing models. */
  lnWeight: number;
  lnLikelihood: number;
}

/** The whitened log with whitened curves 1 − e^(−t/τ) over a grid of τ. */
export class WhitenedLog {
  readonly time: Float64Array;
  readonly whitening: Whitening;
  readonly y: Float64Array;
  readonly lnTaus: number[];
  private readonly grid: Float64Array[];

  constructor(time: Float64Array, value: Float64Array, whitening: Whitening) {
    this.time = time;
    this.whitening = whitening;
    this.y = whiten(whitening, Float64Array.from(value));
    const end = time[time.length - 1];
    this.lnTaus = Array.from(
      { length: GRID },
      (_, i) => Math.log(LEAST_TAU * end) + (i / (GRID - 1)) * Math.log(MOST_TAU / LEAST_TAU),
    );
    this.grid = this.lnTaus.map((ln) => this.curve(ln));
  }

  curve(lnTau: number): Float64Array {
    const tau = Math.exp(lnTau);
    return whiten(
      this.whitening,
      this.time.map((t) => -Math.expm1(-t / tau)),
    );
  }

  /** ∂/∂ln τ of that curve: −(t/τ) e^(−t/τ). */
  private slope(lnTau: number): Float64Array {
    const tau = Math.exp(lnTau);
    return whiten(
      this.whitening,
      this.time.map((t) => (-t / tau) * Math.exp(-t / tau)),
    );
  }

  /** The best fit with one or two time constants. */
  fit(count: 1 | 2): ExponentialFit {
    const end = this.time[this.time.length - 1];
    const middles = PRIOR_MIDDLE[count === 1 ? 'one' : 'two'].map((share) => Math.log(share * end));
    const start = count === 1 ? this.bestOfGrid(middles[0]) : this.bestPairOfGrid(middles);
    const m = this.y.length;
    const p = 2 * count;
    const projected = (lns: readonly number[]) => {
      const curves = lns.map((ln) => this.curve(ln));
      const amplitudes = amplitudesOf(curves, this.y);
      return { amplitudes, residual: residualOf(curves, amplitudes, this.y) };
    };
    const s = Math.sqrt(Math.max(dot(projected(start).residual), Number.MIN_VALUE) / (m - p));
    const bounded = (ln: number) => Math.min(Math.log(MOST_TAU * end), Math.max(Math.log(LEAST_TAU * end), ln));
    const lns = refined(
      start,
      (tried) => [
        ...Array.from(projected(tried.map(bounded)).residual, (r) => r / s),
        ...tried.map((ln, k) => (ln - middles[k]) / PRIOR_SD),
      ],
      bounded,
    );
    const { amplitudes, residual } = projected(lns);
    return this.told(lns, amplitudes, residual, middles);
  }

  private told(lns: number[], amplitudes: number[], residual: Float64Array, middles: number[]): ExponentialFit {
    const m = this.y.length;
    const count = lns.length;
    const p = 2 * count;
    const squares = Math.max(dot(residual), Number.MIN_VALUE);
    const variance = squares / (m - p);
    const columns = [
      ...lns.map((ln) => this.curve(ln)),
      ...lns.map((ln, k) => this.slope(ln).map((v) => amplitudes[k] * v)),
    ];
    const information = new Float64Array(p * p);
    for (let i = 0; i < p; i++)
      for (let j = 0; j < p; j++) {
        information[i * p + j] = dot(columns[i], columns[j]) / variance;
        if (i === j) information[i * p + j] += i >= count ? 1 / PRIOR_SD ** 2 : 1e-12 / variance;
      }
    const covariance = inverseSymmetric(information, p);
    let steadyVariance = 0;
    for (let i = 0; i < count; i++) for (let j = 0; j < count; j++) steadyVariance += covariance[i * p + j];
    const slowest = lns.reduce((best, ln, k) => (amplitudes[k] > 0 && (best < 0 || ln > lns[best]) ? k : best), -1);
    const k = Math.max(slowest, 0);
    const lnPrior = lns.reduce((sum, ln, i) => sum - 0.5 * ((ln - middles[i]) / PRIOR_SD) ** 2, 0);
    const lnInformation = choleskyInPlace(Float64Array.from(information), p) + p * Math.log(variance);
    const half = -0.5 * this.whitening.lnDeterminant;
    return {
      steady: amplitudes.reduce((a, b) => a + b, 0),
      steadySd: Math.sqrt(steadyVariance),
      lnSlowest: lns[k],
      lnSlowestSd: Math.sqrt(covariance[(count + k) * p + count + k]),
      amplitudes,
      taus: lns.map(Math.exp),
      parameters: p,
      dof: m - p,
      lnWeight: half - 0.5 * lnInformation - 0.5 * (m - p) * Math.log(squares) + lnPrior,
      lnLikelihood: half - 0.5 * m * Math.log(squares),
    };
  }

  private bestOfGrid(middle: number): number[] {
    const m = this.y.length;
    const yy = dot(this.y);
    let best = { at: 0, cost: Number.POSITIVE_INFINITY };
    this.lnTaus.forEach((ln, i) => {
      const c = this.grid[i];
      const cy = Math.max(0, dot(c, this.y));
      const left = Math.max(yy - (cy * cy) / dot(c), 1e-12 * yy);
      const cost = 0.5 * (m - 2) * Math.log(left) + 0.5 * ((ln - middle) / PRIOR_SD) ** 2;
      if (cost < best.cost) best = { at: i, cost };
    });
    return [this.lnTaus[best.at]];
  }

  private bestPairOfGrid(middles: readonly number[]): number[] {
    const m = this.y.length;
    const yy = dot(this.y);
    const cy = this.grid.map((c) => dot(c, this.y));
    const cc = this.grid.map((c) => dot(c));
    let best = { a: 0, b: 1, cost: Number.POSITIVE_INFINITY };
    for (let a = 0; a < GRID; a++)
      for (let b = a + 1; b < GRID; b++) {
        const ab = dot(this.grid[a], this.grid[b]);
        const left = Math.max(yy - explained(cy[a], cy[b], cc[a], cc[b], ab), 1e-12 * yy);
        const far = (ln: number, k: number) => 0.5 * ((ln - middles[k]) / PRIOR_SD) ** 2;
        const cost = 0.5 * (m - 4) * Math.log(left) + far(this.lnTaus[a], 0) + far(this.lnTaus[b], 1);
        if (cost < best.cost) best = { a, b, cost };
      }
    return [this.lnTaus[best.a], this.lnTaus[best.b]];
  }
}

function refined(start: number[], residuals: (lns: readonly number[]) => number[], bounded: (ln: number) => number) {
  try {
    const fit = levenbergMarquardt(residuals, start, { tolerance: 1e-6, maximumSteps: 60 });
    const lns = fit.parameters.map(bounded);
    return lns.length === 2 && lns[0] > lns[1] ? [lns[1], lns[0]] : lns;
  } catch (error) {
    if (error instanceof RangeError) return start;
    throw error;
  }
}

/** Sum of squares that two curves explain, their amplitudes not negative. */
function explained(ay: number, by: number, aa: number, bb: number, ab: number): number {
  const determinant = aa * bb - ab * ab;
  const alone = Math.max(ay > 0 ? (ay * ay) / aa : 0, by > 0 ? (by * by) / bb : 0);
  if (!(determinant > 1e-12 * aa * bb)) return alone;
  const a = (ay * bb - by * ab) / determinant;
  const b = (by * aa - ay * ab) / determinant;
  return a >= 0 && b >= 0 ? a * ay + b * by : alone;
}

function amplitudesOf(curves: readonly Float64Array[], y: Float64Array): number[] {
  const [c, d] = curves;
  const cy = dot(c, y);
  const cc = dot(c);
  if (!d) return [Math.max(0, cy / cc)];
  const [dy, dd, cd] = [dot(d, y), dot(d), dot(c, d)];
  const determinant = cc * dd - cd * cd;
  if (determinant > 1e-12 * cc * dd) {
    const a = (cy * dd - dy * cd) / determinant;
    const b = (dy * cc - cy * cd) / determinant;
    if (a >= 0 && b >= 0) return [a, b];
  }
  return (cy > 0 ? cy ** 2 / cc : 0) > (dy > 0 ? dy ** 2 / dd : 0)
    ? [Math.max(0, cy / cc), 0]
    : [0, Math.max(0, dy / dd)];
}

function residualOf(curves: readonly Float64Array[], amplitudes: readonly number[], y: Float64Array): Float64Array {
  return y.map((v, i) => v - curves.reduce((sum, c, k) => sum + amplitudes[k] * c[i], 0));
}

function dot(a: Float64Array, b: Float64Array = a): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}
