import { copperBelief, lnFigure, lnFigureIf, metalBelief } from '../../methods/assay/figures.ts';
import type { CableAssay } from '../../methods/assay/joint.ts';
import { COPPER_FAMILY } from '../../methods/metal/hypotheses.ts';
import type { Component } from '../../numerics/mixture.ts';
import { asksForCopper, type ReadLabel } from '../claims/label.ts';
import { measuredFromLn } from '../measured.ts';
import type { CableFindings, Measured } from '../schema.ts';

type Options = { level: number; from: string[]; condition?: string };

/** Belief in a clad or mixed metal from which its copper is told apart from its metal. */
const CLAD_FROM = 0.5;
/** Within one class of cladding the true share strays by about this, relative standard deviation. Common practice, no source. */
const SHARE_SPREAD = 0.06;

/** ln of copper's share of the metal, over the metals that hold some. */
function lnCopperShare(assay: CableAssay): Component[] {
  return assay.components
    .filter((c) => c.supposition.metal.copperShare > 0)
    .map((c) => ({
      weight: c.weight,
      mean: Math.log(c.supposition.metal.copperShare),
      sd: c.supposition.metal.copperShare < 1 ? SHARE_SPREAD : 0,
      dof: Infinity,
    }));
}

/** ln of the copper area: metal area times copper's share, over the metals that hold some. */
function lnCopperArea(assay: CableAssay): Component[] {
  const holding = assay.components.flatMap((c, i) => (c.supposition.metal.copperShare > 0 ? [i] : []));
  const area = lnFigure(assay, 'area');
  return holding.map((i) => {
    const share = assay.components[i].supposition.metal.copperShare;
    const sd = share < 1 ? Math.hypot(area[i].sd, SHARE_SPREAD) : area[i].sd;
    return { weight: area[i].weight, mean: area[i].mean + Math.log(share), sd, dof: area[i].dof };
  });
}

const NO_COPPER = (o: Options): Measured => ({
  value: 0,
  unit: '1',
  u: 0,
  interval: [0, 0],
  level: o.level,
  from: o.from,
});

/**
 * The headline: copper found over the copper that the label claims, and metal over claimed metal beside it. For a label that
 * claims clad metal or aluminium only the second has a meaning.
 */
export function copperOf(
  assay: CableAssay,
  label: ReadLabel,
  o: Options,
): Pick<CableFindings, 'copper_share' | 'metal_of_claim' | 'copper_of_claim'> {
  const copper = copperBelief(assay);
  const aluminium = metalBelief(assay).get('aluminium') ?? 0;
  const noCopper = aluminium > CLAD_FROM;
  const clad = 1 - copper > CLAD_FROM && !noCopper && o.condition === undefined;
  const shares = lnCopperShare(assay);
  const copper_share = clad && shares.length ? measuredFromLn(shares, { ...o, scale: 1, unit: '1' }) : null;
  if (label.area === null) return { copper_share, metal_of_claim: null, copper_of_claim: null };
  const ofClaim = { ...o, scale: 1 / label.area, unit: '1' };
  const metal = o.condition ? lnFigureIf(assay, 'area', COPPER_FAMILY) : lnFigure(assay, 'area');
  const metal_of_claim = measuredFromLn(metal, ofClaim);
  if (!asksForCopper(label.metal)) return { copper_share, metal_of_claim, copper_of_claim: null };
  if (noCopper && o.condition === undefined) return { copper_share, metal_of_claim, copper_of_claim: NO_COPPER(o) };
  // Where copper is all but settled, the remnant of belief in other metals belongs to the outcome, not to the figure.
  const lnCopper = clad ? lnCopperArea(assay) : lnFigureIf(assay, 'area', COPPER_FAMILY);
  const copper_of_claim = lnCopper.length ? measuredFromLn(lnCopper, ofClaim) : metal_of_claim;
  return { copper_share, metal_of_claim, copper_of_claim };
}
