import type { Fault } from './row.ts';

/**
 * What is supposed before a reading is taken, as tried by simulation on many lots of invented cables.
 */

/** Log metal area in m²: so wide that it says nothing between 0.5 and 1700 mm². */
export const LN_AREA = { mean: Math.log(30e-6), sd: 2 };

/**
 * Log lay factor. Flexible cable is 2 to 7 % longer in the strand than in the cable (ASTM B172, B173, B174 allowances, from
 * memory); 0.018 lets bunched and rope-laid constructions through alike.
 */
export const LN_LAY = { mean: 0.034, sd: 0.018 };

/** A solid wire has no lay; the spread is the length lost to not lying quite straight. */
export const LN_LAY_SOLID = { mean: 0, sd: 0.0005 };

/**
 * The part of each constant's doubt that is common to all cables of a trial, relative standard deviations. Without it a
 * trial of hundreds of cables would blame the copper's constants, or the usual lay, on the scale and the meter.
 */
export const COMMON = { 'copper density': 0.0015, 'copper resistivity': 0.003, 'usual lay': 0.006 } as const;
export type CommonConstant = keyof typeof COMMON;

/** Odds that a group of readings holds a gross error, and that none does. */
export const FAULT_ODDS: Readonly<Record<Fault | 'none', number>> = {
  none: 0.925,
  mass: 0.015,
  resistance: 0.03,
  strands: 0.03,
};

/**
 * How large a gross error would be, in logs, common to all rows of its group. A poor contact only ever adds resistance;
 * mass and count go wrong either way.
 */
export const FAULT_SIZE: Readonly<Record<Fault, { mean: number; sd: number }>> = {
  mass: { mean: 0, sd: 0.25 },
  resistance: { mean: 0.2, sd: 0.3 },
  strands: { mean: 0, sd: 0.25 },
};
