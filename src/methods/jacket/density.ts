import { WATER_DENSITY } from '../metal/constants.ts';
import type { Known } from './shares.ts';

/** What a jacket may be made of, with the usual span of its density, kg/m³. */
export interface JacketMaterial {
  name: string;
  low: number;
  high: number;
}

/** Handbook spans of compounds as used on flexible cable, all from memory: they overlap, so a density is a hint and no more. */
export const JACKET_MATERIALS: readonly JacketMaterial[] = [
  { name: 'soft PVC', low: 1200, high: 1500 },
  { name: 'silicone rubber', low: 1100, high: 1350 },
  { name: 'thermoplastic elastomer (styrene or vulcanisate)', low: 880, high: 1200 },
  { name: 'polyurethane elastomer', low: 1100, high: 1250 },
  { name: 'ethylene-propylene rubber compound', low: 1100, high: 1400 },
  { name: 'chlorinated rubber compound', low: 1300, high: 1550 },
  { name: 'cross-linked polyethylene with filler', low: 1200, high: 1500 },
  { name: 'polyethylene without filler', low: 910, high: 930 },
];

/** Materials whose span the interval of a density touches, most of it first. */
export function materialsOfDensity(low: number, high: number): JacketMaterial[] {
  const shared = (m: JacketMaterial) => Math.min(high, m.high) - Math.max(low, m.low);
  return JACKET_MATERIALS.filter((m) => shared(m) >= 0).sort((a, b) => shared(b) - shared(a));
}

/** Density from mass per length over the jacket's own area, kg/m³: m′ / (π w (D − w)). SI in. */
export function densityByDiameters(massPerMetre: Known, outer: Known, wall: Known): Known {
  const area = Math.PI * wall.value * (outer.value - wall.value);
  const value = massPerMetre.value / area;
  const byOuter = (Math.PI * wall.value) / area;
  const byWall = (Math.PI * (outer.value - 2 * wall.value)) / area;
  const relative = Math.hypot(massPerMetre.u / massPerMetre.value, byOuter * outer.u, byWall * wall.u);
  return { value, u: value * relative };
}

/**
 * Density weighed in air and under water, kg/m³: m ρ(water) / (m − m′). A jacket lighter than water needs a sinker, whose own mass
 * under water was taken off before.
 *
 * @throws RangeError when it weighs as much under water as in air.
 */
export function densityUnderWater(inAir: Known, underWater: Known): Known {
  const lost = inAir.value - underWater.value;
  if (!(lost > 0)) throw new RangeError('a jacket weighs less under water than in air');
  const value = (inAir.value * WATER_DENSITY) / lost;
  const relative = Math.hypot((1 / inAir.value - 1 / lost) * inAir.u, underWater.u / lost);
  return { value, u: value * relative };
}
