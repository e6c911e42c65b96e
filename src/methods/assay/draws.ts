import type { SeededDraws } from '../../numerics/random.ts';
import type { CablePlan, ComponentPlan, DrawPlan, OwnPlan } from './drawPlan.ts';

const ROOT_THREE = Math.sqrt(3);

/** What one block of draws gives: for each cable its ln areas, and whether the drawn metal was copper. */
export interface DrawnBlock {
  lnArea: Float64Array[];
  copper: Uint8Array[];
  /** Copper's share of the drawn metal, by cable. */
  copperShare: Float64Array[];
  /** By further figure of the plan, then by cable: its logarithm. */
  further: Float64Array[][];
}

/** Room for one draw, made once. */
interface Scratch {
  b: Float64Array;
  /** Σ over cables of pull · surprise */
  told: Float64Array;
  surprise: Float64Array[];
  chosen: ComponentPlan[];
  lnAreaDrawn: Float64Array;
  toldBy: Float64Array[];
  z: Float64Array;
  /** By cable: further figures as drawn, before the readings move them. */
  furtherDrawn: Float64Array[];
}

const furtherCount = (plan: DrawPlan): number => plan.cables[0]?.components[0]?.further.length ?? 0;

function scratchFor(plan: DrawPlan): Scratch {
  return {
    b: new Float64Array(plan.nb),
    told: new Float64Array(plan.nb),
    surprise: plan.cables.map((c) => new Float64Array(c.n)),
    chosen: plan.cables.map((c) => c.components[0]),
    lnAreaDrawn: new Float64Array(plan.cables.length),
    toldBy: plan.cables.map(() => new Float64Array(plan.nb)),
    z: new Float64Array(1 + Math.max(0, ...plan.cables.map((c) => c.n)) + furtherCount(plan)),
    furtherDrawn: plan.cables.map(() => new Float64Array(furtherCount(plan))),
  };
}

function choose(cable: CablePlan, u: number): ComponentPlan {
  let i = 0;
  while (i < cable.upTo.length - 1 && u > cable.upTo[i]) i++;
  return cable.components[i];
}

function subtractOwn(own: OwnPlan, into: Float64Array, random: SeededDraws): void {
  const e = own.sd * (own.dof === Infinity ? random.normal() : random.studentT(own.dof));
  for (let i = 0; i < into.length; i++) if (own.slopes[i] !== 0) into[i] -= own.slopes[i] * e;
}

/** Nine terms of the series leave 1e-17 of x here. */
const SERIES_REACHES = 0.02;

/** ln(1 + x) by its series where nine terms give all digits: errors of tools are small, and this is the draws' inner loop. */
function ln1p(x: number): number {
  if (x > -SERIES_REACHES && x < SERIES_REACHES)
    return (
      x * (1 - x * (1 / 2 - x * (1 / 3 - x * (1 / 4 - x * (1 / 5 - x * (1 / 6 - x * (1 / 7 - x * (1 / 8 - x / 9))))))))
    );
  // A slip larger than the reading itself cannot be: the curve is cut where the logarithm would leave it.
  return Math.log1p(Math.max(x, -0.95));
}

/** A further figure as drawn: its own unknowns and the constants common to all cables. */
function furtherDrawn(
  c: ComponentPlan,
  f: number,
  m: number,
  n: number,
  nb: number,
  b: Float64Array,
  z: Float64Array,
): number {
  const { ln, onShared } = c.further[f];
  const at = (n + 1 + f) * m;
  let drawn = ln;
  for (let j = 0; j <= n + 1 + f; j++) drawn += c.root[at + j] * z[j];
  for (let k = 0; k < nb; k++) drawn += onShared[k] * b[k];
  return drawn;
}

/** Real readings less the readings that this draw would have given; returns the ln A that was drawn. */
function surpriseOf(
  cable: CablePlan,
  c: ComponentPlan,
  nb: number,
  b: Float64Array,
  into: Float64Array,
  z: Float64Array,
  further: Float64Array,
  random: SeededDraws,
): number {
  const n = cable.n;
  const m = n + 1 + further.length;
  const { centre, root, straight, S, curveRow, curveInput, curveSlope, curvePower } = c;
  for (let i = 0; i < m; i++) z[i] = random.normal();
  for (let i = 0; i < n; i++) {
    let r = centre[i];
    const at = (i + 1) * m;
    for (let j = 0; j <= i + 1; j++) r -= root[at + j] * z[j];
    for (let q = 0; q < straight.length; q++) r -= S[i * nb + straight[q]] * b[straight[q]];
    into[i] = r;
  }
  for (let q = 0; q < curveRow.length; q++) into[curveRow[q]] -= curvePower[q] * ln1p(curveSlope[q] * b[curveInput[q]]);
  const own = cable.own;
  for (let q = 0; q < own.length; q++) subtractOwn(own[q], into, random);
  for (let f = 0; f < further.length; f++) further[f] = furtherDrawn(c, f, m, n, nb, b, z);
  return c.lnArea + root[0] * z[0];
}

/** ln A of one cable: what was drawn, moved by its readings and by what the other cables tell of the instruments. */
function settle(cable: CablePlan, c: ComponentPlan, s: Scratch, at: number): number {
  const surprise = s.surprise[at];
  const own = s.toldBy[at];
  let lnArea = s.lnAreaDrawn[at];
  for (let i = 0; i < cable.n; i++) lnArea += c.gain[i] * surprise[i];
  for (let k = 0; k < own.length; k++) lnArea -= c.told[k] * (s.told[k] - own[k]);
  return lnArea;
}

/** A further figure moved by the readings, as `settle` moves ln A. */
function settleFurther(cable: CablePlan, c: ComponentPlan, s: Scratch, at: number, f: number): number {
  const surprise = s.surprise[at];
  const own = s.toldBy[at];
  const { gain, told } = c.further[f];
  let ln = s.furtherDrawn[at][f];
  for (let i = 0; i < cable.n; i++) ln += gain[i] * surprise[i];
  for (let k = 0; k < own.length; k++) ln -= told[k] * (s.told[k] - own[k]);
  return ln;
}

function drawOnce(plan: DrawPlan, s: Scratch, random: SeededDraws): void {
  const { nb } = plan;
  for (let k = 0; k < nb; k++) s.b[k] = plan.uniform[k] ? ROOT_THREE * (2 * random.uniform() - 1) : random.normal();
  s.told.fill(0);
  const total = s.told;
  for (let at = 0; at < plan.cables.length; at++) {
    const cable = plan.cables[at];
    const c = choose(cable, random.uniform());
    s.chosen[at] = c;
    const surprise = s.surprise[at];
    s.lnAreaDrawn[at] = surpriseOf(cable, c, nb, s.b, surprise, s.z, s.furtherDrawn[at], random);
    const told = s.toldBy[at];
    const n = cable.n;
    const pull = cable.pull;
    for (let k = 0, p = 0; k < nb; k++) {
      let sum = 0;
      for (let i = 0; i < n; i++, p++) sum += pull[p] * surprise[i];
      told[k] = sum;
      total[k] += sum;
    }
  }
}

/**
 * The assay by Monte Carlo (JCGM 101:2008), beside the closed form: the same model with the true shapes of the limits of
 * error (uniform, not Gaussian) and exact curves instead of slopes.
 *
 * One draw: a supposition for each cable by its weight; the metal's constants, the instruments' errors (common to all
 * cables) and the scatter from their own distributions; the readings that these would have given; and ln A moved by what
 * the closed form makes of their difference to the real readings. With Gaussian shapes and straight lines this gives the
 * closed form's distribution exactly (conditioning by kriging, Matheron's rule: from memory), so a difference shows what the
 * closed form leaves out.
 *
 * @returns a function that draws the next block of the given size.
 */
export function areaDraws(plan: DrawPlan, random: SeededDraws): (size: number) => DrawnBlock {
  const scratch = scratchFor(plan);
  return (size) => {
    const block: DrawnBlock = {
      lnArea: plan.cables.map(() => new Float64Array(size)),
      copper: plan.cables.map(() => new Uint8Array(size)),
      copperShare: plan.cables.map(() => new Float64Array(size)),
      further: Array.from({ length: furtherCount(plan) }, () => plan.cables.map(() => new Float64Array(size))),
    };
    for (let j = 0; j < size; j++) {
      drawOnce(plan, scratch, random);
      for (let at = 0; at < plan.cables.length; at++) {
        const c = scratch.chosen[at];
        block.lnArea[at][j] = settle(plan.cables[at], c, scratch, at);
        block.copper[at][j] = c.copper ? 1 : 0;
        block.copperShare[at][j] = c.copperShare;
        for (let f = 0; f < block.further.length; f++)
          block.further[f][at][j] = settleFurther(plan.cables[at], c, scratch, at, f);
      }
    }
    return block;
  };
}
