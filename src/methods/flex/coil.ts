/** A figure with its standard uncertainty. */
export interface Uncertain {
  value: number;
  u: number;
}

/**
 * Mean radius of a coil from its turns in a length: r = L / (2π n). SI, m.
 *
 * @throws RangeError when the length or the turns are not positive.
 */
export function radiusFromTurns(length: Uncertain, turns: Uncertain): Uncertain {
  if (!(length.value > 0 && turns.value > 0))
    throw new RangeError(`a coil needs a length and turns, got ${length.value} and ${turns.value}`);
  const value = length.value / (2 * Math.PI * turns.value);
  return { value, u: value * Math.hypot(length.u / length.value, turns.u / turns.value) };
}

/** Where the diameter of a coil was taken: between the inner faces, over the outer ones, or from middle to middle of the cable. */
export type CoilEdge = 'inside' | 'outside' | 'middle';

/** Mean radius of a coil from its diameter and, unless it was taken from middle to middle, that of the cable. SI, m. */
export function radiusFromDiameter(coil: Uncertain, edge: CoilEdge, outerDiameter: number): number {
  const shift = edge === 'inside' ? outerDiameter : edge === 'outside' ? -outerDiameter : 0;
  return (coil.value + shift) / 2;
}

/**
 * Tightest coil as a multiple of the cable: mean radius / outer diameter. Trade rules for fixed runs speak of 4 to 6 times the
 * diameter: from memory.
 *
 * @throws RangeError when either is not positive.
 */
export function coilRatio(radius: Uncertain, outerDiameter: Uncertain): Uncertain {
  if (!(radius.value > 0 && outerDiameter.value > 0))
    throw new RangeError(`a coil needs a radius and a diameter, got ${radius.value} and ${outerDiameter.value}`);
  const value = radius.value / outerDiameter.value;
  return { value, u: value * Math.hypot(radius.u / radius.value, outerDiameter.u / outerDiameter.value) };
}
