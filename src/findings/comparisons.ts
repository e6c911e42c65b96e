import { lnFigure, lnFigureIf, sharedCovarianceOfAreas } from '../methods/assay/figures.ts';
import type { CableAssay, JointAssay } from '../methods/assay/joint.ts';
import { COPPER_FAMILY } from '../methods/metal/hypotheses.ts';
import { normalCdf } from '../numerics/distributions.ts';
import { mixtureInterval, mixtureMean } from '../numerics/mixture.ts';
import { condition } from './cable/condition.ts';
import { measuredFromU } from './measured.ts';
import type { Comparison } from './schema.ts';

/** Every pair of more cables than this is a table nobody reads; ask for one pair then. */
export const MOST_COMPARED = 24;

interface Known {
  assay: CableAssay;
  area: number;
  u: number;
  condition: 'if copper' | undefined;
}

/** Probability within one standard deviation of a Gaussian. */
const ONE_SIGMA = 0.6826894921370859;

/**
 * Area and the u that its interval stands for. The interval, not the standard deviation of the mixture, which the rare gross
 * errors blow up: they are no reason to say that two cables cannot be told apart.
 */
function known(assay: CableAssay): Known {
  const ifCopper = condition(assay);
  const ln = ifCopper ? lnFigureIf(assay, 'area', COPPER_FAMILY) : lnFigure(assay, 'area');
  const [low, high] = mixtureInterval(ln, ONE_SIGMA);
  return {
    assay,
    area: Math.exp(mixtureMean(ln)),
    u: (Math.exp(high) - Math.exp(low)) / 2,
    condition: ifCopper,
  };
}

/**
 * Difference of two cables' areas. What both owe to the same scale, rule and meter cancels, so the difference is known
 * better than the single figures: `u² = u_a² + u_b² − 2 A_a A_b cov(ln A_a, ln A_b)`.
 */
function compare(joint: JointAssay, a: Known, b: Known, level: number): Comparison {
  const shared = a.area * b.area * sharedCovarianceOfAreas(joint, a.assay, b.assay);
  const independent = a.u ** 2 + b.u ** 2;
  const u = Math.sqrt(Math.max(independent - 2 * shared, 1e-4 * independent));
  const difference = a.area - b.area;
  return {
    a: a.assay.cable.cable,
    b: b.assay.cable.cable,
    difference: measuredFromU(difference, u, {
      scale: 1e6,
      unit: 'mm2',
      level,
      from: ['conductor_area'],
      condition: a.condition ?? b.condition,
    }),
    probability_a_larger: normalCdf(difference / u),
    u_if_independent: Math.sqrt(independent) * 1e6,
  };
}

/** All pairs of a trial's cables, control pieces aside. */
export function comparisonsOf(joint: JointAssay, level: number): Comparison[] {
  const cables = joint.cables.filter((c) => !c.cable.control).map(known);
  if (cables.length > MOST_COMPARED) return [];
  return cables.flatMap((a, i) => cables.slice(i + 1).map((b) => compare(joint, a, b, level)));
}
