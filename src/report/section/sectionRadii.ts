import type { SectionInput } from './sectionInput.ts';

/** Radii of a cut face in mm; null where neither a reading nor two others give it. */
export interface SectionRadii {
  /** All the metal as one solid disc: √(A/π). */
  metal: number | null;
  /** The claimed area as one disc. */
  claim: number | null;
  /** Edge of the bundle of strands. */
  bundle: number | null;
  /** Outside of the jacket. */
  outer: number | null;
  /** Inside of the jacket, when its ring is known. */
  jacketInside: number | null;
}

/**
 * The radii that a drawing needs. Of outer diameter, wall and bundle diameter any two give the third
 * (outer = bundle + 2 · wall); the jacket's ring is known when two of them are.
 */
export function sectionRadii(cable: SectionInput): SectionRadii {
  const { outerDiameter, bundleDiameter, wall } = cable;
  const outer = outerDiameter ?? (bundleDiameter !== null && wall !== null ? bundleDiameter + 2 * wall : null);
  const inside = outer !== null && wall !== null && 2 * wall < outer ? outer - 2 * wall : null;
  const bundle = bundleDiameter ?? inside;
  const jacketInside = inside ?? (outer !== null && bundle !== null && bundle < outer ? bundle : null);
  return {
    metal: radiusOfArea(cable.metalArea),
    claim: radiusOfArea(cable.claimedArea),
    bundle: half(bundle),
    outer: half(outer),
    jacketInside: half(jacketInside),
  };
}

/** The largest radius that anything of the cut face reaches, in mm; null when nothing at all is known. */
export function reach(radii: SectionRadii): number | null {
  const known = [radii.metal, radii.claim, radii.bundle, radii.outer].filter((r) => r !== null);
  return known.length === 0 ? null : Math.max(...known);
}

const half = (diameter: number | null): number | null => (diameter === null ? null : diameter / 2);

function radiusOfArea(area: number | null): number | null {
  return area === null || !(area > 0) ? null : Math.sqrt(area / Math.PI);
}
