import { multiply } from '../../numerics/dense.ts';
import { COPPER_FAMILY } from '../metal/hypotheses.ts';
import type { AssayComponent, CableAssay, JointAssay } from './joint.ts';
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

/** One supposition about one cable, laid out for drawing. */
export interface ComponentPlan {
  /** 4: means and standard deviations of (ln A, ln k, ln ρm, ln ρe) */
  mu: Float64Array;
  sd: Float64Array;
  /** n: how far ln A moves with each reading */
  gain: Float64Array;
  y: Float64Array;
  /** n × nb */
  S: Float64Array;
  /** nb: how far ln A moves with what the other cables tell of the shared inputs: gain · S · othersCov */
  told: Float64Array;
  /** Exact curves where the closed form has S. */
  curves: CurvePlan[];
  /** Inputs that enter by a straight line: whatever is Gaussian, such as the constants common to all cables. */
  straight: number[];
  fault: OwnPlan | null;
  copper: boolean;
}

export interface CablePlan {
  n: number;
  G: Float64Array;
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

function faultPlan(assay: CableAssay, component: AssayComponent): OwnPlan | null {
  const { fault } = component.supposition;
  if (!fault) return null;
  const slopes = Float64Array.from(assay.cable.rows, (row) => (faultOf(row.kind) === fault ? 1 : 0));
  return { sd: FAULT_SIZE[fault].sd, dof: Infinity, slopes };
}

function componentPlan(assay: CableAssay, component: AssayComponent, straight: number[]): ComponentPlan {
  const { metal } = component.supposition;
  const { system, answer } = component;
  const gain = answer.gain.slice(0, system.n);
  const nb = assay.others.mean.length;
  return {
    mu: system.mu,
    sd: system.P.map(Math.sqrt),
    gain,
    y: system.y,
    S: system.S,
    told: multiply(multiply(gain, system.S, 1, system.n, nb), assay.others.cov, 1, nb, nb),
    curves: curvePlans(assay, metal.alpha).filter((curve) => !straight.includes(curve.input)),
    straight,
    fault: faultPlan(assay, component),
    copper: COPPER_FAMILY.includes(metal.metal),
  };
}

/** Lays the closed form's pieces out so that a draw is a few multiplications. */
export function drawPlan(joint: JointAssay): DrawPlan {
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
        G: assay.frame.G,
        own: ownPlans(assay),
        upTo: Float64Array.from(drawn, (c) => {
          sum += c.weight / total;
          return sum;
        }),
        components: drawn.map((c) => componentPlan(assay, c, straight)),
        pull: assay.collapsed.pull,
      };
    }),
  };
}
