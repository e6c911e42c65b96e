/** Elastic moduli in tension, Pa. All from memory; handbooks give annealed copper 110 to 128 GPa. */
export const COPPER_MODULUS = 115e9;
export const ALUMINIUM_MODULUS = 69e9;
/** What a soft jacket may have, Pa: silicone from 1 MPa, PVC up to 30 MPa. From memory. */
export const JACKET_MODULUS = { least: 1e6, most: 30e6 };

/** A bundle of equal round strands, SI. */
export interface Bundle {
  strands: number;
  /** m */
  strandDiameter: number;
  /** Pa */
  modulus: number;
}

/** The two ends between which a bundle's bending stiffness lies, N m². */
export interface StiffnessBounds {
  slip: number;
  stick: number;
}

/**
 * Every strand sliding freely on its fellows: EI = n E π d⁴ / 64. Halving the strands' diameter at equal copper quarters it.
 *
 * @throws RangeError when anything is not positive.
 */
export function slipStiffness({ strands, strandDiameter, modulus }: Bundle): number {
  if (!(strands > 0 && strandDiameter > 0 && modulus > 0))
    throw new RangeError(
      `a bundle needs strands, a diameter and a modulus, got ${strands}, ${strandDiameter}, ${modulus}`,
    );
  return (strands * modulus * Math.PI * strandDiameter ** 4) / 64;
}

/**
 * Strands stuck together, by the distances of their middles from the axis about which the bundle bends:
 * slip · (1 + 16 Σy² / (n d²)).
 */
export function stickStiffness(bundle: Bundle, offsets: readonly number[]): number {
  const squares = offsets.reduce((sum, y) => sum + y * y, 0);
  return slipStiffness(bundle) * (1 + (16 * squares) / (bundle.strands * bundle.strandDiameter ** 2));
}

/**
 * Strands stuck together and spread evenly over a bundle of diameter D: Σy² = n (D − d)² / 16, so slip · (1 + ((D − d)/d)²).
 * Right for hundreds of strands, not for seven.
 */
export function stickStiffnessOfRound(bundle: Bundle, bundleDiameter: number): number {
  const room = Math.max(bundleDiameter - bundle.strandDiameter, 0) / bundle.strandDiameter;
  return slipStiffness(bundle) * (1 + room * room);
}

/** Bending stiffness of a jacket by itself: E π (D⁴ − d⁴) / 64. */
export function jacketStiffness(outerDiameter: number, bundleDiameter: number, modulus: number): number {
  return (modulus * Math.PI * (outerDiameter ** 4 - bundleDiameter ** 4)) / 64;
}

/** Middles of the strands of a hexagonal packing of touching strands: 1, 7, 19, 37 … strands for 0, 1, 2, 3 … rings; m. */
export function hexagonalOffsets(rings: number, strandDiameter: number): number[] {
  const offsets: number[] = [];
  for (let a = -rings; a <= rings; a++)
    for (let b = Math.max(-rings, -a - rings); b <= Math.min(rings, -a + rings); b++)
      offsets.push(strandDiameter * b * (Math.sqrt(3) / 2));
  return offsets;
}

/** Where a stiffness lies between slip (0) and stick (1), on a scale of ratios; below 0 or above 1 is outside. */
export function placeBetween(stiffness: number, { slip, stick }: StiffnessBounds): number {
  return Math.log(stiffness / slip) / Math.log(stick / slip);
}

/** Up to this ratio a stiffness is little more than that of sliding strands. Ours. */
const LITTLE_MORE = 1.5;
/** Places, by ratio, below which a stiffness is nearer to sliding, and from which it is not far from stuck. Ours. */
const MIDDLE = 0.45;
const NOT_FAR = 0.7;
const BEYOND = 'more than that of its strands stuck together: the jacket carries it, or a reading is off';
const BELOW = 'less than that of its strands alone: look at the count, the diameter or the droop again';

const timesText = (ratio: number) => `${ratio < 10 ? ratio.toFixed(1) : Math.round(ratio)} times`;

/** The place of a stiffness between its ends in words that follow "Its stiffness is", told by its ratio to the one of sliding strands. */
export function placeWords(stiffness: number, bounds: StiffnessBounds): string {
  const place = placeBetween(stiffness, bounds);
  if (place < 0) return BELOW;
  if (place > 1) return BEYOND;
  const ratio = stiffness / bounds.slip;
  if (ratio < LITTLE_MORE) return 'little more than that of its strands sliding freely';
  if (place >= NOT_FAR)
    return `not far from that of strands stuck together, ${timesText(ratio)} that of strands sliding freely`;
  const nearer = place < MIDDLE ? 'nearer to that than to strands' : 'nearer to strands';
  return `${timesText(ratio)} that of its strands sliding freely, ${nearer} stuck together`;
}
