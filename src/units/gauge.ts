import { CIRCULAR_MIL } from './exactFactors.ts';

/**
 * American wire gauge, ASTM B258: diameters in geometric progression from No. 36 (0.0050 in) to 4/0 (0.4600 in), 39 steps.
 * Sizes are numbers here: 4/0 is −3, 3/0 −2, 2/0 −1, 1/0 is 0. People never see those: `awgName` and `effectiveGaugeText`.
 */
const INCH_IN_METRES = 0.0254;
const DIAMETER_OF_36 = 0.005 * INCH_IN_METRES;
/** 0.4600 in over 0.0050 in. */
const WHOLE_RATIO = 92;
const STEPS = 39;
export const THICKEST_AWG = -3;
export const THINNEST_AWG = 40;

/** Printed diameters are rounded to a tenth of a mil (ASTM B258, table of nominal diameters). */
const TENTH_OF_A_MIL = INCH_IN_METRES * 1e-4;

function areaOfCircle(diameter: number): number {
  return (Math.PI / 4) * diameter * diameter;
}

function requireSize(n: number): void {
  if (!Number.isFinite(n) || n < THICKEST_AWG || n > THINNEST_AWG) {
    throw new RangeError(`AWG sizes run from 4/0 (-3) to ${THINNEST_AWG}, not ${n}`);
  }
}

/**
 * Diameter of a solid wire of gauge n, m: d = 0.005 in · 92^((36 − n)/39). Source: ASTM B258, explanatory note.
 *
 * Throws RangeError outside 4/0 (−3) to 40. Not the diameter of a stranded conductor, which holds air.
 *
 * @example awgDiameter(36) // 0.000127
 */
export function awgDiameter(n: number): number {
  requireSize(n);
  return DIAMETER_OF_36 * WHOLE_RATIO ** ((36 - n) / STEPS);
}

/** Nominal metal area of gauge n, m², from the unrounded diameter. 2 AWG is 33.63 mm². Throws like `awgDiameter`. */
export function awgArea(n: number): number {
  return areaOfCircle(awgDiameter(n));
}

/**
 * Area of gauge n from the diameter rounded to 0.1 mil, m²: what ASTM and NEC tables print (1/0: 105 560 cmil, not 105 535).
 * Use it only to compare with such a table. Throws like `awgDiameter`.
 */
export function awgAreaFromRoundedDiameter(n: number): number {
  return areaOfCircle(Math.round(awgDiameter(n) / TENTH_OF_A_MIL) * TENTH_OF_A_MIL);
}

/**
 * The gauge whose nominal area this is, as a real number: 36 − 39 · log₉₂(d / 0.005 in), d = √(4A/π). Area in m².
 *
 * Zero and below means thicker than 1/0: fit for computing, not for people (`effectiveGaugeText`). Throws RangeError unless
 * the area is a positive finite number.
 *
 * @example effectiveAwg(awgArea(2)) // 2
 */
export function effectiveAwg(area: number): number {
  if (!(area > 0) || !Number.isFinite(area)) throw new RangeError(`an area above zero is needed, not ${area}`);
  const diameter = Math.sqrt((4 * area) / Math.PI);
  return 36 - (STEPS * Math.log(diameter / DIAMETER_OF_36)) / Math.log(WHOLE_RATIO);
}

/** How fast the gauge falls as the area grows: dn / d ln A = −39 / (2 ln 92) ≈ −4.3, so 1 % of area is 0.043 of a gauge. */
export const AWG_PER_LOG_AREA = -STEPS / (2 * Math.log(WHOLE_RATIO));

/** `4/0` … `1/0`, `1`, `2` …: a whole gauge as the trade writes it. Throws RangeError for anything else. */
export function awgName(n: number): string {
  requireSize(n);
  if (!Number.isInteger(n)) throw new RangeError(`only whole gauges have names, not ${n}`);
  return n <= 0 ? `${1 - n}/0` : String(n);
}

/**
 * The whole gauge that a bare size text names: `2`, `0`, `00`, `1/0`, `4/0`. Null when it is none. No unit words, no labels:
 * those are read by `readSizeText`.
 */
export function parseAwgName(text: string): number | null {
  const name = text.trim();
  const aughts = /^([1-4]) ?\/ ?[0oO]$/.exec(name);
  if (aughts) return 1 - Number(aughts[1]);
  if (/^0{1,4}$/.test(name)) return 1 - name.length;
  if (!/^[1-9]\d?$/.test(name)) return null;
  const n = Number(name);
  return n <= THINNEST_AWG ? n : null;
}

/**
 * The gauge of an area (m²) in words that the trade reads: `2.3 AWG`; above size 1 `between 1/0 and 2/0, 40 % of the way`
 * (of the way in gauge, so that one step is one size); above 4/0 its kcmil. Never zero or a negative gauge.
 * Throws like `effectiveAwg`.
 */
export function effectiveGaugeText(area: number): string {
  const n = effectiveAwg(area);
  const rounded = Math.round(n * 10) / 10;
  if (rounded > THINNEST_AWG) return `thinner than ${THINNEST_AWG} AWG`;
  if (rounded >= 1) return `${rounded.toFixed(1)} AWG`;
  const thinner = Math.ceil(n);
  const percent = Math.round((thinner - n) * 100);
  if (percent === 0 && thinner >= THICKEST_AWG) return `${awgName(thinner)} AWG`;
  if (percent === 100 && thinner > THICKEST_AWG) return `${awgName(thinner - 1)} AWG`;
  if (n < THICKEST_AWG) return `above 4/0, ${Number((area / CIRCULAR_MIL / 1000).toPrecision(3))} kcmil`;
  return `between ${awgName(thinner)} and ${awgName(thinner - 1)}, ${percent} % of the way`;
}

/** Sizes that cable is sold in: the aughts, 1, 2, 3, 4 and the even sizes (common practice, no source). */
export const STANDARD_AWG_SIZES: readonly number[] = [
  -3, -2, -1, 0, 1, 2, 3, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32, 34, 36,
];

/**
 * The largest standard size whose nominal area, less the allowance, this area (m²) does reach: A ≥ A_n · (1 − tolerance).
 * Null when it does not even reach 36 AWG. The usual allowance for flexible cable is 2 % (ASTM B172, B173: from memory).
 */
export function nearestAwgMet(area: number, tolerance = 0.02): number | null {
  return STANDARD_AWG_SIZES.find((n) => awgArea(n) * (1 - tolerance) <= area) ?? null;
}
