import { copperBelief } from '../../methods/assay/figures.ts';
import type { CableAssay } from '../../methods/assay/joint.ts';

/** Belief in copper from which "if copper" need not be said. */
const COPPER_SETTLED = 0.95;

/** How a cable's figures are conditioned: plainly, or "if copper" where the readings cannot name the metal. */
export function condition(assay: CableAssay): 'if copper' | undefined {
  const kinds = new Set(assay.cable.rows.map((r) => r.kind));
  const namesMetal = kinds.has('density') || [...kinds].filter((k) => k !== 'lay').length > 1;
  const copper = copperBelief(assay);
  return !namesMetal && copper < COPPER_SETTLED && copper > 0 ? 'if copper' : undefined;
}
