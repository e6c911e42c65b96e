import { type Component, mixtureInterval, mixtureMean } from '../../numerics/mixture.ts';
import type { Metal } from '../metal/hypotheses.ts';
import { frame, systemUnder } from './hypothesis.ts';
import { type CableAssay, type JointAssay, normalisedWeights } from './joint.ts';
import { posterior } from './posterior.ts';
import { type AssayRow, COEFFICIENTS, type RowKind } from './row.ts';

/** A measurement that was not made: what it would add, or which instrument it would check. */
export interface Proposal {
  /** A further row, its y left to be foretold. */
  row: Omit<AssayRow, 'y'> | null;
  /** A look at the strands that would come out as the metal now most believed would show it: ln likelihood per metal. */
  sight: Readonly<Record<string, number>> | null;
  /** Shared inputs made smaller by checking the instrument: factor on their standard deviation. */
  shrink: Readonly<Record<string, number>>;
}

/** Suppositions believed less than this would not come back through one more ordinary reading. */
const WORTH_KEEPING = 1e-6;

/** What a further row would read if the most believed supposition were true. */
function foretoldY(assay: CableAssay, kind: RowKind, above20: number | null): number {
  const top = assay.components.reduce((a, b) => (b.weight > a.weight ? b : a));
  const g = COEFFICIENTS[kind];
  let y = 0;
  for (let k = 0; k < 4; k++) y += g[k] * top.answer.x[k];
  return above20 === null ? y : y + Math.log(1 + top.supposition.metal.alpha * above20);
}

/**
 * ln-area mixture as it would become after one more measurement that came out as now foretold: what that measurement would
 * buy. The other cables and the instruments' common errors are held as they are.
 */
export function lnAreaAfter(joint: JointAssay, assay: CableAssay, proposal: Proposal): Component[] {
  const { row, sight, shrink } = proposal;
  const extra: AssayRow[] = row
    ? [{ ...row, y: foretoldY(assay, row.kind, row.temperature ? row.temperature.above20 : null) }]
    : [];
  const f = frame({ ...assay.cable, rows: [...assay.cable.rows, ...extra] }, joint.index);
  const nb = joint.inputs.length;
  const kept = assay.components.filter((c) => c.weight > WORTH_KEEPING);
  const answers = kept.map((c) => {
    const system = systemUnder(f, c.supposition);
    const S = Float64Array.from(system.S);
    joint.inputs.forEach((input, k) => {
      const factor = shrink[input.input];
      if (factor !== undefined) for (let i = 0; i < f.n; i++) S[i * nb + k] *= factor;
    });
    return posterior({ ...system, S }, assay.others);
  });
  const weights = normalisedWeights(
    kept.map((c, i) => {
      const metal: Metal = c.supposition.metal.metal;
      return c.supposition.lnPrior + answers[i].lnEvidence + (sight?.[metal] ?? 0);
    }),
  );
  return answers.map((a, i) => ({
    weight: weights[i],
    mean: a.x[0],
    sd: Math.sqrt(Math.max(a.cov[0], 0)),
    dof: Infinity,
  }));
}

/** The ± of the area as it is shown, m²: the larger distance from the estimate to an end of its interval. */
export function halfWidth(lnArea: readonly Component[], level: number): number {
  const value = Math.exp(mixtureMean(lnArea));
  const [low, high] = mixtureInterval(lnArea, level);
  return Math.max(Math.exp(high) - value, value - Math.exp(low));
}
