import { failures, hasFailed, type Lifetime } from './lifetime.ts';

/**
 * Weibull lifetimes of several groups with one shape for all, by maximum likelihood, with survivors and lifetimes known between two
 * looks. P(T > t) = exp(−(t/scale)^shape) = exp(−e^z), z = shape · ln t + a, a = −shape · ln scale.
 *
 * The logarithm of the likelihood is concave in (shape, a₁ … a_K), so Newton's steps, halved while they lead down, find the one
 * maximum. The Hessian is an arrow (groups meet only through the shape), so each step costs as much as one look at the data.
 *
 * Source of the model: J. F. Lawless, Statistical Models and Methods for Lifetime Data (2nd edition 2003), chapters 5 and 6.
 */
export interface ShapeGroup {
  lives: readonly Lifetime[];
  /** Divides every lifetime of the group before the fit, as a logarithm; 0 when left out. */
  shift?: number;
  /** Holds `a` of the group at this value instead of fitting it. */
  heldAt?: number;
}

export interface CommonShape {
  shape: number;
  /** a of each group; −Infinity for one in which nothing failed. */
  a: number[];
  /** ln likelihood, on the scale of ln t (see `lnLikelihoodOfAmounts`). */
  ln: number;
}

const MOST_STEPS = 100;
const SETTLED = 1e-12;
/** The shape falls at most to this share of itself in one step. */
const STEEPEST_FALL = 0.2;

interface Prepared {
  low: Float64Array;
  high: Float64Array;
  kind: Uint8Array;
  held: number | null;
  a: number;
}
const EXACT = 0;
const SURVIVED = 1;
const BETWEEN = 2;
const BEFORE = 3;

/**
 * Whether the data hold the shape down: in some group something lasted longer than another that had failed. Else all failures
 * of each group coincide and any steep shape does.
 */
export function shapeIsHeld(groups: readonly (readonly Lifetime[])[]): boolean {
  return groups.some((lives) => {
    const first = Math.min(...lives.map(({ until }) => until));
    return Number.isFinite(first) && Math.max(...lives.map(({ from }) => from)) > first;
  });
}

/** The fit; null where the data do not hold the shape down (see `shapeIsHeld`) or the steps do not settle. */
export function fitCommonShape(groups: readonly ShapeGroup[], start?: { shape: number }): CommonShape | null {
  const fitted = groups.filter((g) => g.heldAt !== undefined || failures(g.lives) > 0);
  if (!fitted.some((g) => failures(g.lives) > 0)) return null;
  if (!fitted.some((g) => g.heldAt !== undefined) && !shapeIsHeld(fitted.map((g) => g.lives))) return null;
  const prepared = fitted.map(prepare);
  const found = climb(prepared, start?.shape ?? firstShape(prepared));
  if (!found) return null;
  let next = 0;
  const a = groups.map((g) => (fitted.includes(g) ? prepared[next++].a : Number.NEGATIVE_INFINITY));
  return { shape: found.shape, a, ln: found.ln };
}

/** ln likelihood of the amounts themselves, as textbooks and R give it: ln t of every exact failure comes off. */
export function lnLikelihoodOfAmounts(fit: CommonShape, groups: readonly (readonly Lifetime[])[]): number {
  return fit.ln - groups.flat().reduce((sum, l) => (l.from === l.until ? sum + Math.log(l.from) : sum), 0);
}

function prepare({ lives, shift = 0, heldAt }: ShapeGroup): Prepared {
  const n = lives.length;
  const p: Prepared = {
    low: new Float64Array(n),
    high: new Float64Array(n),
    kind: new Uint8Array(n),
    held: heldAt ?? null,
    a: heldAt ?? 0,
  };
  lives.forEach((life, i) => {
    const exact = life.from === life.until;
    p.kind[i] = exact ? EXACT : !hasFailed(life) ? SURVIVED : life.from > 0 ? BETWEEN : BEFORE;
    p.low[i] = life.from > 0 ? Math.log(life.from) - shift : 0;
    p.high[i] = hasFailed(life) ? Math.log(life.until) - shift : 0;
  });
  return p;
}

/** A start from the spread of the logarithms within groups: their standard deviation is 1.28/shape. */
function firstShape(groups: readonly Prepared[]): number {
  let squares = 0;
  let dof = 0;
  for (const { low, high, kind } of groups) {
    const at = Array.from(kind, (k, i) => (k === SURVIVED ? low[i] : high[i]));
    const middle = at.reduce((sum, x) => sum + x, 0) / at.length;
    squares += at.reduce((sum, x) => sum + (x - middle) ** 2, 0);
    dof += at.length - 1;
  }
  const sd = Math.sqrt(squares / Math.max(1, dof));
  return Math.min(20, Math.max(0.3, 1.28 / Math.max(sd, 1e-3)));
}

/** a that suits a shape: Σ e^z = failures. */
function startA({ low, high, kind }: Prepared, shape: number): number {
  let sum = 0;
  let failed = 0;
  let top = Number.NEGATIVE_INFINITY;
  const at = (i: number) => shape * (kind[i] === SURVIVED ? low[i] : high[i]);
  for (let i = 0; i < kind.length; i++) top = Math.max(top, at(i));
  for (let i = 0; i < kind.length; i++) {
    sum += Math.exp(at(i) - top);
    if (kind[i] !== SURVIVED) failed++;
  }
  return Math.log(failed / sum) - top;
}

interface Sums {
  ln: number;
  gA: number;
  gB: number;
  hAA: number;
  hAB: number;
  hBB: number;
}

function sumsOf({ low, high, kind, a }: Prepared, shape: number, into: Sums): Sums {
  let ln = 0;
  let gA = 0;
  let gB = 0;
  let hAA = 0;
  let hAB = 0;
  let hBB = 0;
  for (let i = 0; i < kind.length; i++) {
    if (kind[i] === EXACT || kind[i] === SURVIVED) {
      const x = low[i];
      const z = shape * x + a;
      const h = Math.exp(z);
      const event = kind[i] === EXACT ? 1 : 0;
      ln += event * (Math.log(shape) + z) - h;
      gA += event - h;
      gB += event * (x + 1 / shape) - h * x;
      hAA -= h;
      hAB -= h * x;
      hBB -= h * x * x + event / (shape * shape);
      continue;
    }
    const x1 = low[i];
    const x2 = high[i];
    const h1 = kind[i] === BEFORE ? 0 : Math.exp(shape * x1 + a);
    const h2 = Math.exp(shape * x2 + a);
    const d = h2 - h1;
    const dx = h2 * x2 - h1 * x1;
    const r = 1 / Math.expm1(d);
    const c = r * (1 + r);
    ln += -h1 + Math.log(-Math.expm1(-d));
    gA += -h1 + r * d;
    gB += -h1 * x1 + r * dx;
    hAA += -h1 + r * d - c * d * d;
    hAB += -h1 * x1 + r * dx - c * d * dx;
    hBB += -h1 * x1 * x1 + r * (h2 * x2 * x2 - h1 * x1 * x1) - c * dx * dx;
  }
  into.ln = ln;
  into.gA = gA;
  into.gB = gB;
  into.hAA = hAA;
  into.hAB = hAB;
  into.hBB = hBB;
  return into;
}

const noSums = (): Sums => ({ ln: 0, gA: 0, gB: 0, hAA: 0, hAB: 0, hBB: 0 });

function climb(groups: readonly Prepared[], start: number): { shape: number; ln: number } | null {
  let shape = start;
  for (const g of groups) if (g.held === null) g.a = startA(g, shape);
  const sums = groups.map(noSums);
  const trial = noSums();
  const before = new Float64Array(groups.length);
  const stepA = new Float64Array(groups.length);
  let ln = 0;
  groups.forEach((g, i) => {
    ln += sumsOf(g, shape, sums[i]).ln;
  });
  for (let step = 0; step < MOST_STEPS; step++) {
    let g = 0;
    let h = 0;
    groups.forEach(({ held }, i) => {
      const s = sums[i];
      g += s.gB - (held === null ? (s.hAB * s.gA) / s.hAA : 0);
      h += s.hBB - (held === null ? (s.hAB * s.hAB) / s.hAA : 0);
    });
    const stepB = -g / h;
    let gain = g * stepB;
    groups.forEach(({ held, a }, i) => {
      const s = sums[i];
      before[i] = a;
      stepA[i] = held === null ? -(s.gA + s.hAB * stepB) / s.hAA : 0;
      if (held === null) gain += (s.gA * s.gA) / -s.hAA;
    });
    if (!Number.isFinite(gain)) return null;
    if (gain < SETTLED * Math.max(1, Math.abs(ln))) {
      // So near, the step itself doubles the digits; no need to look again.
      groups.forEach((group, i) => {
        group.a += stepA[i];
      });
      return { shape: shape + stepB, ln: ln + gain / 2 };
    }
    const from = shape;
    const longest = stepB < 0 ? Math.min(1, ((1 - STEEPEST_FALL) * from) / -stepB) : 1;
    let reached = Number.NEGATIVE_INFINITY;
    for (let share = longest; share > 1e-10; share /= 2) {
      shape = from + share * stepB;
      reached = 0;
      for (let i = 0; i < groups.length; i++) {
        groups[i].a = before[i] + share * stepA[i];
        reached += sumsOf(groups[i], shape, trial).ln;
      }
      if (reached >= ln - SETTLED * Math.abs(ln)) break;
      reached = Number.NEGATIVE_INFINITY;
    }
    if (!Number.isFinite(reached)) return null;
    ln = 0;
    groups.forEach((group, i) => {
      ln += sumsOf(group, shape, sums[i]).ln;
    });
  }
  return null;
}
