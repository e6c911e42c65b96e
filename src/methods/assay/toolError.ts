import type { CableAssay, JointAssay } from './joint.ts';

/** How far off one instrument would have to be for the best estimate of the area to reach a requirement. */
export interface NeededError {
  input: string;
  label: string;
  /** SI unit of the input; the sign says which way the instrument would have to be wrong (+: reads too high). */
  needed: number;
  limit: number;
  unit: string;
}

/** An error many times the reading itself is no answer. */
const BEYOND_REASON = 0.9;

/**
 * "How wrong would we have to be?": for every instrument, the error that would carry the estimate to the requirement while
 * all other readings stay as they are.
 *
 * To first order `Δ ln A = Σ rows gain · slope · error`, gain of the most believed supposition.
 *
 * @param required m²
 * @returns instruments that could do it at all, the least unlikely (needed ÷ limit) first.
 */
export function errorsThatReach(joint: JointAssay, assay: CableAssay, required: number): NeededError[] {
  const top = assay.components.reduce((a, b) => (b.weight > a.weight ? b : a));
  const distance = Math.log(required) - top.answer.x[0];
  const { n, S } = top.system;
  const nb = joint.inputs.length;
  const needed: NeededError[] = [];
  joint.inputs.forEach((input, k) => {
    if (input.unit === '1' && input.shape === 'normal') return;
    let moves = 0;
    let largestSlope = 0;
    for (let i = 0; i < n; i++) {
      moves += top.answer.gain[i] * S[i * nb + k];
      largestSlope = Math.max(largestSlope, Math.abs(S[i * nb + k]));
    }
    // Taking the error e out of the readings moves the estimate by −moves·e, in standard deviations of the input.
    if (Math.abs(moves) < 1e-9) return;
    const inSd = -distance / moves;
    if (Math.abs(inSd) * largestSlope > BEYOND_REASON) return;
    needed.push({
      input: input.input,
      label: input.label,
      needed: inSd * input.sd,
      limit: input.limit,
      unit: input.unit,
    });
  });
  return needed.sort((a, b) => Math.abs(a.needed) / a.limit - Math.abs(b.needed) / b.limit);
}

/**
 * For a metal that is not copper: the error of each instrument that would lift mass per length times ohms per length to the
 * least that copper can show. Needs a mass and a resistance; the lay and the area drop out of the question.
 *
 * @param product Ω·kg/m²
 */
export function errorsThatMakeCopper(joint: JointAssay, assay: CableAssay, product: number): NeededError[] {
  const top = assay.components.reduce((a, b) => (b.weight > a.weight ? b : a));
  const { S } = top.system;
  const nb = joint.inputs.length;
  const { rows } = assay.cable;
  const kinds = ['mass', 'resistance'] as const;
  const found = kinds.map((kind) => rows.flatMap((row, i) => (row.kind === kind ? [i] : [])));
  if (found.some((list) => list.length === 0)) return [];
  const average = (list: number[], f: (i: number) => number) => list.reduce((s, i) => s + f(i), 0) / list.length;
  const distance = Math.log(product) - found.reduce((sum, list) => sum + average(list, (i) => top.system.y[i]), 0);
  const needed: NeededError[] = [];
  joint.inputs.forEach((input, k) => {
    if (input.unit === '1' && input.shape === 'normal') return;
    const slope = found.reduce((sum, list) => sum + average(list, (i) => S[i * nb + k]), 0);
    if (Math.abs(slope) < 1e-9) return;
    const inSd = -distance / slope;
    if (Math.abs(inSd * slope) > BEYOND_REASON) return;
    needed.push({
      input: input.input,
      label: input.label,
      needed: inSd * input.sd,
      limit: input.limit,
      unit: input.unit,
    });
  });
  return needed.sort((a, b) => Math.abs(a.needed) / a.limit - Math.abs(b.needed) / b.limit);
}
