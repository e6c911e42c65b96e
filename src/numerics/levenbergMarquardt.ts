import { leastSquares } from './leastSquares.ts';

/** Residuals of a model at the given parameters; always the same number of them. */
export type Residuals = (parameters: readonly number[]) => readonly number[];

export interface MarquardtOptions {
  /** Derivatives of the residuals, one row for each residual; central differences when left out. */
  jacobian?: (parameters: readonly number[]) => number[][];
  /** It ends when no parameter moves by more than this share of itself. */
  tolerance?: number;
  maximumSteps?: number;
}

/** What a nonlinear fit found. */
export interface MarquardtFit {
  parameters: number[];
  /** Standard errors from the linearised model at the end: s² (JᵀJ)⁻¹. */
  errors: number[];
  covariance: number[][];
  residualSquares: number;
  dof: number;
  residualSd: number;
  steps: number;
}

/** Step of a central difference as a share of the parameter: about the cube root of the rounding error. */
const DIFFERENCE = 6e-6;
const FIRST_DAMPING = 1e-3;
const MOST_DAMPING = 1e16;
/** Longest step, as a multiple of the parameters' own length, both scaled. */
const LONGEST_STEP = 10;

/**
 * Nonlinear least squares by Levenberg and Marquardt: steps that solve (J; √λ D) h = (−r; 0) by QR, D the longest that each
 * column of J has been, λ falling while steps help and growing while they do not.
 *
 * Not for models whose parameters must stay within bounds (fit their logarithms), nor far from a start of the right order.
 *
 * Sources: D. W. Marquardt, J. SIAM 11 (1963) 431; scaling after J. J. Moré, in Numerical Analysis, Lecture Notes in
 * Mathematics 630 (1978) 105; growth of λ after H. B. Nielsen, report IMM-REP-1999-05. From memory.
 *
 * @param residuals model minus observation, in any one unit.
 * @throws RangeError when there are not more residuals than parameters, they are no numbers at the start, or the steps run out.
 */
export function levenbergMarquardt(
  residuals: Residuals,
  start: readonly number[],
  options: MarquardtOptions = {},
): MarquardtFit {
  const { jacobian = differences(residuals), tolerance = 1e-10, maximumSteps = 1000 } = options;
  let parameters = [...start];
  let r = residuals(parameters);
  let cost = squares(r);
  const dof = r.length - parameters.length;
  if (dof <= 0) throw new RangeError(`${r.length} residuals cannot determine ${parameters.length} parameters`);
  if (!Number.isFinite(cost)) throw new RangeError('the residuals are no numbers at the start');
  const scale = new Array<number>(parameters.length).fill(0);
  let damping = FIRST_DAMPING;
  let growth = 2;
  let j = jacobian(parameters);
  let steps = 0;
  for (; steps < maximumSteps && cost > 0; steps++) {
    lengthen(scale, j);
    const h = dampedStep(j, r, scale, damping);
    const tried = parameters.map((p, k) => p + h[k]);
    const there = residuals(tried);
    const costThere = squares(there);
    const foretold = gainForetold(j, r, h);
    if (costThere < cost && !tooFar(parameters, h, scale)) {
      const ratio = (cost - costThere) / foretold;
      const still = h.every((step, k) => Math.abs(step) <= tolerance * (Math.abs(parameters[k]) + tolerance));
      parameters = tried;
      r = there;
      cost = costThere;
      j = jacobian(parameters);
      damping *= Math.max(1 / 3, 1 - (2 * ratio - 1) ** 3);
      growth = 2;
      if (still) break;
    } else {
      if (foretold <= 4 * Number.EPSILON * cost || h.every((s, k) => Math.abs(s) <= 1e-15 * Math.abs(parameters[k])))
        break;
      damping *= growth;
      growth *= 2;
      if (damping > MOST_DAMPING) break;
    }
  }
  if (steps >= maximumSteps) throw new RangeError(`${maximumSteps} steps did not reach the least squares`);
  return { parameters, ...errorsAt(j, r), residualSquares: cost, dof, residualSd: Math.sqrt(cost / dof), steps };
}

/** A step many times as long as the parameters themselves: the linearised model says nothing of what is there. */
function tooFar(parameters: readonly number[], h: readonly number[], scale: readonly number[]): boolean {
  const length = (v: readonly number[]) => Math.hypot(...v.map((x, k) => x * scale[k]));
  const at = length(parameters);
  return at > 0 && length(h) > LONGEST_STEP * at;
}

const squares = (r: readonly number[]): number => r.reduce((sum, v) => sum + v * v, 0);

function differences(residuals: Residuals): (p: readonly number[]) => number[][] {
  return (p) => {
    const columns = p.map((value, k) => {
      const step = DIFFERENCE * Math.max(Math.abs(value), 1e-8);
      const at = (x: number) => residuals(p.map((v, i) => (i === k ? x : v)));
      const [high, low] = [at(value + step), at(value - step)];
      return high.map((v, i) => (v - low[i]) / (value + step - (value - step)));
    });
    return columns[0].map((_, i) => columns.map((column) => column[i]));
  };
}

function lengthen(scale: number[], j: readonly (readonly number[])[]): void {
  for (let k = 0; k < scale.length; k++) {
    const length = Math.sqrt(j.reduce((sum, row) => sum + row[k] * row[k], 0));
    scale[k] = Math.max(scale[k], length, Number.MIN_VALUE);
  }
}

function dampedStep(j: number[][], r: readonly number[], scale: readonly number[], damping: number): number[] {
  const root = Math.sqrt(damping);
  const below = scale.map((s, k) => scale.map((_, i) => (i === k ? root * s : 0)));
  return leastSquares([...j, ...below], [...r.map((v) => -v), ...scale.map(() => 0)]).coefficients;
}

/** By how much the linearised model says that the step lowers the sum of squares. */
function gainForetold(j: readonly (readonly number[])[], r: readonly number[], h: readonly number[]): number {
  let gain = 0;
  for (let i = 0; i < r.length; i++) {
    const move = j[i].reduce((sum, v, k) => sum + v * h[k], 0);
    gain -= move * (2 * r[i] + move);
  }
  return gain;
}

function errorsAt(j: number[][], r: readonly number[]): { errors: number[]; covariance: number[][] } {
  // The observations of this fit are the residuals themselves; at the least squares its coefficients vanish.
  const { errors, covariance } = leastSquares(j, [...r]);
  return { errors, covariance };
}
