import { choleskyInPlace, multiply } from '../../numerics/dense.ts';
import { COPPER_FAMILY } from '../metal/hypotheses.ts';
import { DIRECTIONS, type Direction } from './figures.ts';
import type { AssayComponent, CableAssay, JointAssay } from './joint.ts';
import { cableFigure, commonPart } from './linearFigure.ts';
import { FAULT_SIZE } from './prior.ts';
import { faultOf } from './row.ts';

/** An unknown that is a cable's own: how it moves each row. */
export interface OwnPlan {
  sd: number;
  dof: number;
  /** n */
  slopes: Float64Array;
}

/** A shared input's exact effect on one row: power · ln(1 + slope · sd · b). */
export interface CurvePlan {
  row: number;
  input: number;
  slope: number;
  power: number;
}

/** The logarithm of a further figure of the cable, drawn in the same draw as ln A. */
export interface FurtherPlan {
  /** Prior mean. */
  ln: number;
  /** n: how far it moves with each reading */
  gain: Float64Array;
  /** nb: how it follows the constants that cables have in common */
  onShared: Float64Array;
  /** nb: how far it moves with what the other cables tell of the shared inputs */
  told: Float64Array;
}

/** One supposition about one cable, laid out for drawing. */
export interface ComponentPlan {
  /** Prior mean of ln A. */
  lnArea: number;
  /** n: how far ln A moves with each reading */
  gain: Float64Array;
  /** n × nb */
  S: Float64Array;
  /** nb: how far ln A moves with what the other cables tell of the shared inputs: gain · S · othersCov */
  told: Float64Array;
  /** Exact curves where the closed form has S, one element of each array a curve. */
  curveRow: Int32Array;
  curveInput: Int32Array;
  curveSlope: Float64Array;
  curvePower: Float64Array;
  /** n: readings less what the means foretell */
  centre: Float64Array;
  /** (n + 1 + further figures)²: Cholesky factor of the covariance of ln A, of what the own unknowns do to each reading, and of the further figures */
  root: Float64Array;
  /** Figures drawn besides ln A. */
  further: FurtherPlan[];
  copperShare: number;
  /** Inputs that enter by a straight line: whatever is Gaussian, such as the constants common to all cables. */
  straight: number[];
  copper: boolean;
}

export interface CablePlan {
  n: number;
  own: OwnPlan[];
  /** Running sum of the components' weights. */
  upTo: Float64Array;
  components: ComponentPlan[];
  /** nb × n */
  pull: Float64Array;
}

export interface DrawPlan {
  nb: number;
  /** True for a uniform limit of error, false for a Gaussian constant. */
  uniform: boolean[];
  cables: CablePlan[];
}

/** Suppositions believed less than this cannot show in any printed digit and are not drawn. */
const NOT_DRAWN = 1e-7;

function ownPlans(assay: CableAssay): OwnPlan[] {
  const n = assay.frame.n;
  const plans = new Map<string, OwnPlan>();
  assay.cable.rows.forEach((row, i) => {
    for (const own of row.own) {
      let plan = plans.get(own.input);
      if (!plan) {
        plan = { sd: Math.sqrt(own.variance), dof: own.dof, slopes: new Float64Array(n) };
        plans.set(own.input, plan);
      }
      plan.slopes[i] += own.slope;
    }
  });
  return [...plans.values()];
}

/** The exact curve of every shared input on every row: in standard deviations of the input. */
export function curvePlans(assay: CableAssay, alpha: number): CurvePlan[] {
  const { index } = assay.frame;
  const place = (input: string) => index.get(input) ?? { at: -1, sd: 0 };
  return assay.cable.rows.flatMap((row, i) => {
    const curves = row.shared.map((e) => {
      const { at, sd } = place(e.input);
      return { row: i, input: at, slope: e.slope * sd, power: e.power };
    });
    if (row.temperature) {
      const { at, sd } = place(row.temperature.input);
      const slope = (alpha / (1 + alpha * row.temperature.above20)) * sd;
      if (at >= 0) curves.push({ row: i, input: at, slope, power: 1 });
    }
    return curves;
  });
}

/** Variance of a logarithm that shows in no digit. */
const NEGLIGIBLE_VARIANCE = 1e-14;

/** Covariance of (ln A, G x + Gaussian own effects, further figures), factored: one draw of as many normals gives them all. */
function rootOf(assay: CableAssay, component: AssayComponent, further: readonly (readonly number[])[]): Float64Array {
  const { n, G, P } = component.system;
  const { rows } = assay.cable;
  const { fault } = component.supposition;
  const m = n + 1 + further.length;
  const root = new Float64Array(m * m);
  root[0] = P[0];
  for (let i = 0; i < n; i++) {
    root[(i + 1) * m] = P[0] * G[i * 4];
    for (let j = 0; j <= i; j++) {
      let v = 0;
      for (let k = 0; k < 4; k++) v += G[i * 4 + k] * P[k] * G[j * 4 + k];
      for (const a of rows[i].own)
        for (const b of rows[j].own) if (a.input === b.input && a.dof === Infinity) v += a.slope * b.slope * a.variance;
      if (fault && faultOf(rows[i].kind) === fault && faultOf(rows[j].kind) === fault) v += FAULT_SIZE[fault].sd ** 2;
      root[(i + 1) * m + j + 1] = v;
    }
    // A row whose own doubt is all Student t has no Gaussian spread of its own; this much keeps the factor from failing.
    root[(i + 1) * m + i + 1] += NEGLIGIBLE_VARIANCE;
  }
  further.forEach((a, f) => {
    const at = (n + 1 + f) * m;
    root[at] = a[0] * P[0];
    for (let i = 0; i < n; i++) for (let k = 0; k < 4; k++) root[at + i + 1] += a[k] * P[k] * G[i * 4 + k];
    for (let g = 0; g <= f; g++) for (let k = 0; k < 4; k++) root[at + n + 1 + g] += a[k] * P[k] * further[g][k];
    root[at + n + 1 + f] += NEGLIGIBLE_VARIANCE;
  });
  choleskyInPlace(root, m);
  return root;
}

function furtherPlan(assay: CableAssay, component: AssayComponent, a: readonly number[]): FurtherPlan {
  const { system } = component;
  const nb = assay.others.mean.length;
  const { cov } = assay.others;
  const onShared = commonPart(assay, component, a);
  const { moves } = cableFigure(assay, component, a);
  const told = multiply(multiply(moves, system.S, 1, system.n, nb), cov, 1, nb, nb);
  const itself = multiply(onShared, cov, 1, nb, nb);
  for (let k = 0; k < nb; k++) told[k] -= itself[k];
  return { ln: a.reduce((sum, share, k) => sum + share * system.mu[k], 0), gain: moves, onShared, told };
}

function componentPlan(
  assay: CableAssay,
  component: AssayComponent,
  straight: number[],
  further: readonly (readonly number[])[],
): ComponentPlan {
  const { metal } = component.supposition;
  const { system, answer } = component;
  const gain = answer.gain.slice(0, system.n);
  const nb = assay.others.mean.length;
  const curves = curvePlans(assay, metal.alpha).filter((curve) => !straight.includes(curve.input));
  const centre = Float64Array.from(system.y);
  for (let i = 0; i < system.n; i++) for (let k = 0; k < 4; k++) centre[i] -= system.G[i * 4 + k] * system.mu[k];
  return {
    centre,
    root: rootOf(assay, component, further),
    further: further.map((a) => furtherPlan(assay, component, a)),
    copperShare: metal.copperShare,
    lnArea: system.mu[0],
    gain,
    S: system.S,
    told: multiply(multiply(gain, system.S, 1, system.n, nb), assay.others.cov, 1, nb, nb),
    curveRow: Int32Array.from(curves, (c) => c.row),
    curveInput: Int32Array.from(curves, (c) => c.input),
    curveSlope: Float64Array.from(curves, (c) => c.slope),
    curvePower: Float64Array.from(curves, (c) => c.power),
    straight,
    copper: COPPER_FAMILY.includes(metal.metal),
  };
}

/**
 * Lays the closed form's pieces out so that a draw is a few multiplications.
 *
 * @param also figures to draw besides the area; the draws of the area are the same without them only in distribution.
 */
export function drawPlan(joint: JointAssay, also: readonly Direction[] = []): DrawPlan {
  const further = also.map((direction) => DIRECTIONS[direction]);
  const straight = joint.inputs.flatMap((input, k) => (input.shape === 'normal' ? [k] : []));
  return {
    nb: joint.inputs.length,
    uniform: joint.inputs.map((input) => input.shape === 'uniform'),
    cables: joint.cables.map((assay) => {
      const drawn = assay.components.filter((c) => c.weight > NOT_DRAWN);
      const total = drawn.reduce((sum, c) => sum + c.weight, 0);
      let sum = 0;
      return {
        n: assay.frame.n,
        own: ownPlans(assay).filter((o) => Number.isFinite(o.dof)),
        upTo: Float64Array.from(drawn, (c) => {
          sum += c.weight / total;
          return sum;
        }),
        components: drawn.map((c) => componentPlan(assay, c, straight, further)),
        pull: assay.collapsed.pull,
      };
    }),
  };
}
