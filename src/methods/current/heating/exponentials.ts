import { choleskyInPlace, inverseSymmetric } from '../../../numerics/dense.ts';
import { levenbergMarquardt } from '../../../numerics/levenbergMarquardt.ts';
import { amplitudesOf, dot, pairOfAmplitudes } from './amplitudes.ts';
import { type Whitening, whiten } from './noise.ts';

/** Time constants may lie between these shares of the log's length. */
const LEAST_TAU = 0.01;
const MOST_TAU = 8;
/** Standard deviation of ln τ beforehand, and its middle as a share of the log: weak, so that a log speaks for itself. */
const PRIOR_SD = 1.5;
const PRIOR_MIDDLE = { one: [1 / 3], two: [1 / 15, 1 / 3] };
/** Keeps the information of an amplitude of zero from being none. */
const LEAST_INFORMATION = 1e-12;
/** No curve leaves less than this share of a log: keeps its logarithm finite. */
const LEAST_LEFT = 1e-12;
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
    const projected = (lns: readonly number[]) =>
      amplitudesOf(
        lns.map((ln) => this.curve(ln)),
        this.y,
      );
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
    const information = this.informationOf(lns, amplitudes, variance);
    const covariance = inverseSymmetric(information, p);
    let steadyVariance = 0;
    for (let i = 0; i < count; i++) for (let j = 0; j < count; j++) steadyVariance += covariance[i * p + j];
    const k = slowestOf(lns, amplitudes);
    const lnPrior = lns.reduce((sum, ln, i) => sum - farFrom(middles[i], ln), 0);
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

  /** Information on amplitudes, then on ln τ, row by row: JᵀJ/s² and what was believed of τ beforehand. */
  private informationOf(lns: readonly number[], amplitudes: readonly number[], variance: number): Float64Array {
    const count = lns.length;
    const p = 2 * count;
    const columns = [
      ...lns.map((ln) => this.curve(ln)),
      ...lns.map((ln, k) => this.slope(ln).map((v) => amplitudes[k] * v)),
    ];
    const information = new Float64Array(p * p);
    for (let i = 0; i < p; i++)
      for (let j = 0; j < p; j++) {
        information[i * p + j] = dot(columns[i], columns[j]) / variance;
        if (i === j) information[i * p + j] += i >= count ? 1 / PRIOR_SD ** 2 : LEAST_INFORMATION / variance;
      }
    return information;
  }

  private bestOfGrid(middle: number): number[] {
    const m = this.y.length;
    const yy = dot(this.y);
    let best = { at: 0, cost: Number.POSITIVE_INFINITY };
    this.lnTaus.forEach((ln, i) => {
      const c = this.grid[i];
      const cy = Math.max(0, dot(c, this.y));
      const left = Math.max(yy - (cy * cy) / dot(c), LEAST_LEFT * yy);
      const cost = 0.5 * (m - 2) * Math.log(left) + farFrom(middle, ln);
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
        const [ofA, ofB] = pairOfAmplitudes(cy[a], cy[b], cc[a], cc[b], dot(this.grid[a], this.grid[b]));
        const left = Math.max(yy - ofA * cy[a] - ofB * cy[b], LEAST_LEFT * yy);
        const far = farFrom(middles[0], this.lnTaus[a]) + farFrom(middles[1], this.lnTaus[b]);
        const cost = 0.5 * (m - 4) * Math.log(left) + far;
        if (cost < best.cost) best = { a, b, cost };
      }
    return [this.lnTaus[best.a], this.lnTaus[best.b]];
  }
}

/** −ln of what was believed of a time constant beforehand, but for a constant. */
const farFrom = (middle: number, lnTau: number): number => 0.5 * ((lnTau - middle) / PRIOR_SD) ** 2;

/** Place of the slowest time constant that has an amplitude. */
function slowestOf(lns: readonly number[], amplitudes: readonly number[]): number {
  const slowest = lns.reduce((best, ln, k) => (amplitudes[k] > 0 && (best < 0 || ln > lns[best]) ? k : best), -1);
  return Math.max(slowest, 0);
}

/** Refined from a start by least squares, the faster first; the start itself where that fails. */
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
