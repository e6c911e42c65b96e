import { mixtureCdf } from '../../numerics/mixture.ts';
import { COPPER_FAMILY } from '../metal/hypotheses.ts';
import { copperBelief, lnFigureIf } from './figures.ts';
import type { AnsweredCable } from './joint.ts';

/**
 * Probability that the cable holds at least so much copper: the metal must be copper, bare or tinned, *and* there must be
 * enough of it.
 *
 * `P = Σ over copper and tinned copper of w · P(A ≥ required)`
 *
 * The one claim that a kitchen scale alone can judge: lay and density bound the copper from above, so a piece that is too
 * light is short or not copper, and the label fails either way.
 *
 * @param required m²
 */
export function probabilityCopperHeld(assay: AnsweredCable, required: number): number {
  const copper = copperBelief(assay);
  if (copper <= 0) return 0;
  const lnArea = lnFigureIf(assay, 'area', COPPER_FAMILY);
  return copper * (1 - mixtureCdf(lnArea, Math.log(required)));
}
