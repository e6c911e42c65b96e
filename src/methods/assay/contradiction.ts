import type { Consistency } from './consistency.ts';

/** Readings so far apart that no metal and no ordinary slip explains them. */
export interface Contradiction {
  /** Reading of the odd group over what the others foretell: 1000 for milliohms typed as ohms. */
  factor: number;
  /** The slip whose factor it comes near, in words; null when none does. */
  slip: string | null;
}

/** Further apart than this, up or down, is no short strand count and no poor clamp. */
const GROSS_FACTOR = 1.9;
/** Chance of so much disagreement among sound readings below which it is gross. */
const GROSS_CHANCE = 1e-6;
/** How near a factor must come to a known slip: a tin skin, a lay and a short cable move it by some per cent. */
const NEAR = 0.4;

/** Slips of the pen and the unit, by the factor that they make. Exact by the definitions of the units. */
const SLIPS: readonly [number, string][] = [
  [
    1000,
    'it is about a thousand times too large, as milliohms entered as ohms, grams as kilograms or millimetres as metres are',
  ],
  [
    1 / 1000,
    'it is about a thousand times too small, as ohms entered as milliohms, kilograms as grams or metres as millimetres are',
  ],
  [453.6, 'it is about 450 times too large, as grams entered as pounds are'],
  [1 / 453.6, 'it is about 450 times too small, as pounds entered as grams are'],
  [28.35, 'it is about 28 times too large, as grams entered as ounces are'],
  [1 / 28.35, 'it is about 28 times too small, as ounces entered as grams are'],
  [25.4, 'it is about 25 times too large, as millimetres entered as inches, or inches as millimetres, are'],
  [1 / 25.4, 'it is about 25 times too small, as inches entered as millimetres, or millimetres as inches, are'],
  [10, 'it is about ten times too large, as a slipped decimal is'],
  [1 / 10, 'it is about ten times too small, as a slipped decimal is'],
  [3.281, 'it is about three times too large, as metres entered as feet, or feet as metres, are'],
  [1 / 3.281, 'it is about three times too small, as feet entered as metres, or metres as feet, are'],
];

/**
 * Whether a cable's readings contradict one another so grossly that nothing may be judged until one is taken again. The
 * ordinary gross errors (a bundle left out, a poor clamp, a weighing 10 % off) are weighed by the assay itself and are not
 * meant here: holding back those would lose true findings and save none.
 */
export function contradiction(c: Consistency | null): Contradiction | null {
  if (!c?.recheck || c.off === null || c.p > GROSS_CHANCE) return null;
  const factor = 1 + c.off;
  if (factor < GROSS_FACTOR && factor > 1 / GROSS_FACTOR) return null;
  const distance = (known: number) => Math.abs(Math.log(factor / known));
  const [nearest] = [...SLIPS].sort((a, b) => distance(a[0]) - distance(b[0]));
  return { factor, slip: distance(nearest[0]) < NEAR ? nearest[1] : null };
}
