/**
 * Exact factors between customary units and SI, written as whole-number ratios `[times, over]`, so that a factor brings in
 * no rounding of its own: 312 g is 0.312 kg to the last bit, which 312 · 0.001 is not sure to be.
 *
 * Source: 1959 international yard and pound agreement, as printed in NIST Special Publication 811 (2008), Appendix B.8;
 * SI prefixes: BIPM, The International System of Units, 9th ed. (2019), Table 7. All are exact by definition.
 */
export type ExactFactor = readonly [times: number, over: number];

export const ONE: ExactFactor = [1, 1];
export const KILO: ExactFactor = [1000, 1];
export const MILLI: ExactFactor = [1, 1000];
export const MICRO: ExactFactor = [1, 1_000_000];
export const CENTI: ExactFactor = [1, 100];
export const MEGA: ExactFactor = [1_000_000, 1];

/** 1 in = 25.4 mm. */
export const INCH: ExactFactor = [254, 10_000];
/** 1 ft = 12 in. */
export const FOOT: ExactFactor = [3048, 10_000];
/** 1 yd = 3 ft = 0.9144 m. */
export const YARD: ExactFactor = [9144, 10_000];
/** 1 mil = 0.001 in. */
export const MIL: ExactFactor = [254, 10_000_000];
/** 1 lb avoirdupois = 0.453 592 37 kg. */
export const POUND: ExactFactor = [45_359_237, 100_000_000];
/** 1 oz avoirdupois = 1/16 lb. */
export const OUNCE: ExactFactor = [45_359_237, 1_600_000_000];
/** Standard acceleration of free fall, 9.806 65 m/s² (3rd CGPM, 1901): makes a kilogram-force of a kilogram. */
export const STANDARD_GRAVITY: ExactFactor = [980_665, 100_000];
/** The same as a number, m/s². */
export const GRAVITY = STANDARD_GRAVITY[0] / STANDARD_GRAVITY[1];

/** Circular mil, the area of a circle one mil across: π/4 · (0.001 in)², m². */
export const CIRCULAR_MIL = (Math.PI / 4) * (INCH[0] / INCH[1] / 1000) ** 2;

/** The product of two exact factors. */
export function timesFactor(a: ExactFactor, b: ExactFactor): ExactFactor {
  return [a[0] * b[0], a[1] * b[1]];
}
