import { brentRoot } from '../../numerics/roots.ts';
import { type CurvePlan, curvePlans } from './drawPlan.ts';
import type { AssayComponent, CableAssay, JointAssay } from './joint.ts';

/** How far off one instrument would have to be for a finding to change. */
export interface NeededError {
  input: string;
  label: string;
  /** SI unit of the input; the sign says which way the instrument would have to be wrong (+: reads too high). */
  needed: number;
  limit: number;
  unit: string;
}

/** The farthest an instrument may be thought to be off, as a share of its reading, below and above. */
const LEAST_FACTOR = 0.05;
const MOST_FACTOR = 4;

function mostBelieved(assay: CableAssay): AssayComponent {
  return assay.components.reduce((a, b) => (b.weight > a.weight ? b : a));
}

/** The error of one input, in standard deviations, that moves Σ weight · ln(reading) by `wanted`; null when none can. */
function errorThatMoves(curves: readonly CurvePlan[], weights: readonly number[], wanted: number): number | null {
  const steepest = Math.max(0, ...curves.map((c) => Math.abs(c.slope)));
  if (steepest === 0) return null;
  const moved = (b: number) =>
    curves.reduce((sum, c) => sum + weights[c.row] * c.power * Math.log1p(c.slope * b), 0) - wanted;
  // Inside this span every reading stays above a twentieth of itself, whichever way its slope points.
  const reach = (1 - LEAST_FACTOR) / steepest;
  const oneWay = curves.every((c) => c.slope > 0) ? (MOST_FACTOR - 1) / steepest : reach;
  const otherWay = curves.every((c) => c.slope < 0) ? (MOST_FACTOR - 1) / steepest : reach;
  if (moved(-otherWay) * moved(oneWay) > 0) return null;
  return brentRoot(moved, -otherWay, oneWay, { tolerance: 1e-9 });
}

/** For every instrument, the error that would move Σ weight · ln(reading) by −wanted when taken out; least unlikely first. */
function neededErrors(joint: JointAssay, assay: CableAssay, weights: readonly number[], wanted: number): NeededError[] {
  const { alpha } = mostBelieved(assay).supposition.metal;
  const curves = curvePlans(assay, alpha);
  const needed = joint.inputs.flatMap((input, k) => {
    if (input.shape === 'normal') return [];
    const b = errorThatMoves(
      curves.filter((c) => c.input === k),
      weights,
      -wanted,
    );
    if (b === null) return [];
    return [{ input: input.input, label: input.label, needed: b * input.sd, limit: input.limit, unit: input.unit }];
  });
  return needed.sort((a, b) => Math.abs(a.needed) / a.limit - Math.abs(b.needed) / b.limit);
}

/**
 * "How wrong would we have to be?": for every instrument, the error that would carry the best estimate of the area to the
 * requirement while all other readings stay as they are.
 *
 * Solves `Σ rows gain · power · ln(1 + slope · e) = ln A − ln required`, gains of the most believed supposition.
 *
 * @param required m²
 * @returns instruments that could do it at all, the least unlikely (needed ÷ limit) first.
 */
export function errorsThatReach(joint: JointAssay, assay: CableAssay, required: number): NeededError[] {
  const top = mostBelieved(assay);
  const weights = [...top.answer.gain.slice(0, top.system.n)];
  return neededErrors(joint, assay, weights, Math.log(required) - top.answer.x[0]);
}

/**
 * For a metal that is not copper: the error of each instrument that would lift mass per length times ohms per length to the
 * least that copper can show. Needs a mass and a resistance; the area drops out of the question.
 *
 * @param product Ω·kg/m²
 */
export function errorsThatMakeCopper(joint: JointAssay, assay: CableAssay, product: number): NeededError[] {
  const top = mostBelieved(assay);
  const { rows } = assay.cable;
  const count = (kind: string) => rows.filter((r) => r.kind === kind).length;
  if (count('mass') === 0 || count('resistance') === 0) return [];
  const weights = rows.map((r) => (r.kind === 'mass' || r.kind === 'resistance' ? 1 / count(r.kind) : 0));
  const now = rows.reduce((sum, _, i) => sum + weights[i] * top.system.y[i], 0);
  return neededErrors(joint, assay, weights, Math.log(product) - now);
}
