/** Writes dy/dx at (x, y) into `slope`. */
export type Slopes = (x: number, y: Float64Array, slope: Float64Array) => void;

export interface OdeOptions {
  /** Largest error that one step may add, as a share of 1 + |y|. */
  tolerance?: number;
  /** Steps after which it is given up. */
  maximumSteps?: number;
}

/**
 * Coefficients of the embedded Runge–Kutta pair of orders 5 and 4: nodes, stages and the difference of the two answers.
 * Source: J. R. Dormand, P. J. Prince, "A family of embedded Runge–Kutta formulae", Journal of Computational and Applied
 * Mathematics 6 (1980), table 2. From memory; held by the order conditions in the tests.
 */
const NODES = [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1];
const STAGES: readonly (readonly number[])[] = [
  [],
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
];
const DIFFERENCE = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40];
const LAST = STAGES.length - 1;
/** How much a step may grow or shrink at once, and how far below the tolerance it aims. */
const MOST_GROWTH = 5;
const MOST_SHRINKING = 0.2;
const CAUTION = 0.9;

/** One step of the pair, its arrays made once. */
class Stepper {
  readonly y: Float64Array;
  private readonly stages: Float64Array[];
  private readonly trial: Float64Array;
  private readonly slopes: Slopes;

  constructor(slopes: Slopes, y0: ArrayLike<number>) {
    this.slopes = slopes;
    this.y = Float64Array.from(y0);
    this.trial = new Float64Array(y0.length);
    this.stages = STAGES.map(() => new Float64Array(y0.length));
  }

  /** Slope at the present place, needed once: afterwards the last stage of a step is the first of the next. */
  begin(x: number): void {
    this.slopes(x, this.y, this.stages[0]);
  }

  /** Tries a step of h and gives its error as a multiple of the tolerance; the new values are in `arrived()`. */
  attempt(x: number, h: number, tolerance: number): number {
    const { y, trial, stages } = this;
    for (let s = 1; s <= LAST; s++) {
      const a = STAGES[s];
      for (let i = 0; i < y.length; i++) {
        let sum = 0;
        for (let k = 0; k < s; k++) sum += a[k] * stages[k][i];
        trial[i] = y[i] + h * sum;
      }
      this.slopes(x + NODES[s] * h, trial, stages[s]);
    }
    let worst = 0;
    for (let i = 0; i < y.length; i++) {
      let error = 0;
      for (let s = 0; s <= LAST; s++) error += DIFFERENCE[s] * stages[s][i];
      const scale = tolerance * (1 + Math.max(Math.abs(y[i]), Math.abs(trial[i])));
      worst = Math.max(worst, Math.abs(h * error) / scale);
    }
    return worst;
  }

  /** Where the last attempt arrived; overwritten by the next one. */
  arrived(): Float64Array {
    return this.trial;
  }

  accept(): void {
    this.y.set(this.trial);
    const first = this.stages[0];
    this.stages[0] = this.stages[LAST];
    this.stages[LAST] = first;
  }
}

const nextStep = (h: number, worst: number): number =>
  h * Math.min(MOST_GROWTH, Math.max(MOST_SHRINKING, CAUTION * Math.max(worst, 1e-10) ** -0.2));

/**
 * Values at `to` of a system of ordinary differential equations that starts at `from`, in steps that adapt themselves.
 *
 * Not for stiff systems, and not across a jump of the slopes.
 *
 * @param slopes writes the derivatives; it must not keep its arguments.
 * @throws RangeError when the values stop being numbers or the steps run out.
 * @example integrate((_x, y, d) => { d[0] = y[0]; }, [1], 0, 1)[0] // 2.718281828459
 */
export function integrate(
  slopes: Slopes,
  start: ArrayLike<number>,
  from: number,
  to: number,
  options: OdeOptions = {},
): Float64Array {
  return walk(slopes, start, from, to, null, options).y;
}

/** Where {@link integrateUntil} ended. */
export interface Crossing {
  x: number;
  y: Float64Array;
}

/**
 * Follows a system until `height` of its values has risen through zero, and gives the place and the values there.
 *
 * @param height falls below zero at the start and rises through zero once.
 * @param furthest x at which it is given up.
 * @throws RangeError when there is no crossing, or as {@link integrate}.
 */
export function integrateUntil(
  slopes: Slopes,
  start: ArrayLike<number>,
  from: number,
  furthest: number,
  height: (y: Float64Array) => number,
  options: OdeOptions = {},
): Crossing {
  const end = walk(slopes, start, from, furthest, height, options);
  if (end.x >= furthest) throw new RangeError(`no crossing before ${furthest}`);
  return end;
}

function walk(
  slopes: Slopes,
  start: ArrayLike<number>,
  from: number,
  to: number,
  height: ((y: Float64Array) => number) | null,
  { tolerance = 1e-12, maximumSteps = 100_000 }: OdeOptions,
): Crossing {
  const stepper = new Stepper(slopes, start);
  let x = from;
  let h = (to - from) / 64;
  stepper.begin(x);
  for (let n = 0; n < maximumSteps; n++) {
    const left = to - x;
    if (!(left > 0)) return { x, y: stepper.y };
    const last = h >= left;
    const step = last ? left : h;
    const worst = stepper.attempt(x, step, tolerance);
    if (Number.isNaN(worst)) throw new RangeError(`the values are no numbers at ${x}`);
    if (worst > 1) {
      h = nextStep(step, worst);
      continue;
    }
    if (height && height(stepper.arrived()) >= 0) return crossingWithin(stepper, x, step, height, tolerance);
    stepper.accept();
    x = last ? to : x + step;
    h = nextStep(step, worst);
  }
  throw new RangeError(`${maximumSteps} steps did not reach ${to}`);
}

/** The crossing inside a step that has passed it: the step is taken anew, shortened by secants held inside a bracket. */
function crossingWithin(
  stepper: Stepper,
  x: number,
  step: number,
  height: (y: Float64Array) => number,
  tolerance: number,
): Crossing {
  let low = 0;
  let fLow = height(stepper.y);
  let high = step;
  let fHigh = height(stepper.arrived());
  let at = step;
  for (let n = 0; n < 60; n++) {
    if (fHigh === 0 || high - low <= 4 * Number.EPSILON * (Math.abs(x) + step)) break;
    const secant = low - (fLow * (high - low)) / (fHigh - fLow);
    at = secant > low && secant < high ? secant : (low + high) / 2;
    stepper.attempt(x, at, tolerance);
    const f = height(stepper.arrived());
    // Each end that stays is halved in weight (the Illinois rule), so that both ends close in.
    if (f < 0) {
      low = at;
      fLow = f;
      fHigh /= 2;
    } else {
      high = at;
      fHigh = f;
      fLow /= 2;
    }
    if (Math.abs(f) < 1e-15) break;
  }
  return { x: x + at, y: Float64Array.from(stepper.arrived()) };
}
