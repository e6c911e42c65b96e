import { type Component, mixtureInterval, mixtureMean } from '../../numerics/mixture.ts';
import type { Metal } from '../metal/hypotheses.ts';
import { type CableFrame, frame, systemUnder } from './hypothesis.ts';
import { type CableAssay, type JointAssay, normalisedWeights } from './joint.ts';
import { linearFigureOf } from './linearFigure.ts';
import { posterior } from './posterior.ts';
import type { AssayRow } from './row.ts';

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

/**
 * What a further row would read if the most believed supposition were true, the tools being off by as much as the readings
 * so far say they are: a reading that comes out so moves nothing.
 */
function foretoldY(assay: CableAssay, extended: CableFrame): number {
  const top = assay.components.reduce((a, b) => (b.weight > a.weight ? b : a));
  const last = extended.n - 1;
  const { temperature } = extended.cable.rows[last];
  const { G, S } = systemUnder(extended, { ...top.supposition, fault: null });
  const onShared = S.slice(last * extended.nb, (last + 1) * extended.nb);
  const { mean } = linearFigureOf(assay, top, [...G.slice(last * 4, last * 4 + 4)], onShared);
  return temperature ? mean + Math.log(1 + top.supposition.metal.alpha * temperature.above20) : mean;
}

/**
 * ln-area mixture as it would become after one more measurement that came out as now foretold: what that measurement would
 * buy. The other cables and the instruments' common errors are held as they are.
 */
export function lnAreaAfter(joint: JointAssay, assay: CableAssay, proposal: Proposal): Component[] {
  const { row, sight, shrink } = proposal;
  const withRow = (extra: readonly AssayRow[]) =>
    frame({ ...assay.cable, rows: [...assay.cable.rows, ...extra] }, joint.index);
  const f = row ? withRow([{ ...row, y: foretoldY(assay, withRow([{ ...row, y: 0 }])) }]) : withRow([]);
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
