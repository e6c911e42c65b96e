import { copperPerMetre } from '../../methods/decide/conductorSize.ts';
import { guessedBendingLength } from '../../methods/decide/pieceLengths.ts';
import { BEST_OVERHANG_IN_BENDING_LENGTHS, bestOverhang, roughLambda } from '../../methods/flex/droop.ts';
import { mean } from '../../numerics/describe.ts';
import type { Trial } from '../../trial/trial.ts';
import { readLabel } from '../claims/label.ts';
import { AREA_WHEN_UNSAID, strandingOf } from '../plan/cablePieces.ts';

/** How much of a piece to let hang free, and what that rests on. */
export interface OverhangAdvice {
  /** m: never more than the piece leaves. */
  overhang: number;
  /** m: what would be read best if the piece were long enough. */
  best: number;
  /** m; what the piece leaves after the clamp, null when its length is not known. */
  most: number | null;
  from: 'its own droop' | 'size and weight on the label' | 'size on the label' | 'no size on the label';
}

/** A clamp holds at least so much, m. Common practice, no source. */
const LEAST_IN_CLAMP = 0.06;
/** A cable weighs about so many times its copper: jacket and air are light. Common practice, no source. */
const CABLE_OVER_COPPER = 1.3;
const STEP = 0.005;
/** What is tried next where a droop was too small or too deep to foretell anything, times the overhang. Ours. */
const LONGER = 2;

const rounded = (length: number) => Math.round(length / STEP) * STEP;

/** The overhang that the piece's own droops say is best; null while none was read. */
function fromDroop(trial: Pick<Trial, 'readings'>, specimen: string, most: number | null): number | null {
  const own = trial.readings.filter((r) => r.standing === 'counted' && r.specimen === specimen);
  const last = own.filter((r) => r.quantity === 'tip_drop').pop();
  if (!last) return null;
  const of = (quantity: string) => own.filter((r) => r.quantity === quantity && r.set === last.set).map((r) => r.value);
  const overhangs = of('overhang');
  if (overhangs.length === 0) return null;
  const overhang = mean(overhangs);
  const drop = mean(of('tip_drop'));
  // Readings that cannot be of this piece foretell nothing.
  if ((most !== null && overhang > most) || Math.abs(drop) > overhang) return null;
  const lambda = roughLambda('drop', drop / overhang);
  // A tip that did not drop at all foretells nothing but a longer overhang; one that hung plumb, a shorter one.
  if (!(lambda > 0)) return LONGER * overhang;
  return Number.isFinite(lambda) ? bestOverhang(overhang, lambda) : overhang / LONGER;
}

/**
 * How much of a piece to let hang free for its droop to be read best: about λ = 6, that is 1.82 bending lengths (EI/w)^(1/3). From
 * the piece's own droop once there is one; until then a guess from the claimed size, stranding and mass per metre.
 *
 * @returns null when the piece is not on record
 */
export function overhangAdvice(trial: Trial, specimen: string): OverhangAdvice | null {
  const piece = trial.specimens.find((s) => s.specimen === specimen);
  const cable = trial.cables.find((c) => c.cable === piece?.cable);
  if (!piece || !cable) return null;
  const most = piece.cutLength === null ? null : rounded(Math.max(piece.cutLength - LEAST_IN_CLAMP, 0));
  const found = fromDroop(trial, specimen, piece.cutLength);
  const within = (best: number) => ({ overhang: rounded(Math.min(best, most ?? best)), best: rounded(best), most });
  if (found !== null) return { ...within(found), from: 'its own droop' };
  const area = readLabel(cable.label).area;
  const c = guessedBendingLength(area ?? AREA_WHEN_UNSAID, strandingOf(cable, area ?? AREA_WHEN_UNSAID));
  const mass = cable.label.massPerMetre;
  // The guess is for a cable of usual weight; a heavier one droops further at the same stiffness, by the cube root.
  const lighter = area !== null && mass ? Math.cbrt((CABLE_OVER_COPPER * copperPerMetre(area)) / mass) : 1;
  const from = area === null ? 'no size on the label' : mass ? 'size and weight on the label' : 'size on the label';
  return { ...within(BEST_OVERHANG_IN_BENDING_LENGTHS * c * lighter), from };
}
