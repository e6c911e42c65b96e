import {
  ALUMINIUM_MODULUS,
  COPPER_MODULUS,
  JACKET_MODULUS,
  jacketStiffness,
  placeBetween,
  placeWords,
  slipStiffness,
  stickStiffnessOfRound,
} from '../../methods/flex/bounds.ts';
import type { CableFindings, Measured } from '../schema.ts';
import type { FlexCable } from '../shapes/flex.ts';

const MM = 1e-3;
/** Metals whose modulus is that of aluminium, mixed with copper's by their share of the volume. */
const ALUMINIUM_METALS: ReadonlySet<string> = new Set(['copper-clad aluminium', 'aluminium']);

function modulusOf(found: CableFindings): number {
  if (!found.metal_found || !ALUMINIUM_METALS.has(found.metal_found)) return COPPER_MODULUS;
  const copper = found.metal_found === 'aluminium' ? 0 : (found.copper_share?.value ?? 0);
  return copper * COPPER_MODULUS + (1 - copper) * ALUMINIUM_MODULUS;
}

/**
 * The two ends of the cable's bending stiffness: strands sliding freely in the softest jacket, and strands stuck together in
 * the stiffest; null without strand count, strand diameter and bundle diameter.
 */
export function boundsOf(found: CableFindings, stiffness: Measured | null): FlexCable['bounds'] {
  const { strand_count: count, strand_diameter: strand, bundle_diameter: across, outer_diameter: outer } = found;
  if (!count || !strand || !across || strand.unit !== 'mm' || across.unit !== 'mm') return null;
  const bundle = { strands: count.value, strandDiameter: strand.value * MM, modulus: modulusOf(found) };
  const jacket = (modulus: number) => (outer ? jacketStiffness(outer.value * MM, across.value * MM, modulus) : 0);
  const slip = slipStiffness(bundle) + jacket(JACKET_MODULUS.least);
  const stick = stickStiffnessOfRound(bundle, across.value * MM) + jacket(JACKET_MODULUS.most);
  if (!(stick > slip)) return null;
  const place = stiffness ? placeBetween(stiffness.value, { slip, stick }) : null;
  const text = stiffness ? `Its stiffness is ${placeWords(stiffness.value, { slip, stick })}.` : '';
  return { slip, stick, unit: 'N m2', place, text };
}
