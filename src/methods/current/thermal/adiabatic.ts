import { ZERO_CELSIUS } from '../../../units/dimension.ts';
import type { ConductorMetal } from '../materials.ts';

const SQUARE_MILLIMETRE = 1e-6;

/**
 * Heat that a short circuit may put into a conductor before it reaches a temperature, none of it given off, as I² t in A² s:
 *
 *     I² t = K² S² ln((θ_f + β) / (θ_i + β)),  θ in °C, S in mm²
 *
 * For some 5 s at most: a cable that is hot for longer gives off so much that the limit is far too low.
 *
 * Source: IEC 60949:1988, clause 3. K and β from memory.
 *
 * @param area m² of metal; @param from and @param to K.
 * @throws RangeError when the end is not hotter than the start, or above the melting point.
 */
export function adiabaticLimit(metal: ConductorMetal, area: number, from: number, to: number): number {
  if (!(to > from))
    throw new RangeError(`a short circuit warms: the end, ${to} K, must lie above the start, ${from} K`);
  if (!(to <= metal.meltingPoint))
    throw new RangeError(`${metal.name} melts at ${metal.meltingPoint} K, below ${to} K`);
  const { k, beta } = metal.adiabatic;
  const offset = beta - ZERO_CELSIUS;
  return (k * (area / SQUARE_MILLIMETRE)) ** 2 * Math.log((to + offset) / (from + offset));
}

/** The k of protective-conductor tables, I √t / S in A s^½/mm²: √ of {@link adiabaticLimit} per mm². */
export function adiabaticFactor(metal: ConductorMetal, from: number, to: number): number {
  return Math.sqrt(adiabaticLimit(metal, SQUARE_MILLIMETRE, from, to));
}

/** How hot insulation may become for a few seconds, K, by its rating: thermoplastic 160 °C, cross-linked 250 °C. IEC 60724. From memory. */
export function shortCircuitLimit(rating: number): number {
  const THERMOPLASTIC_UP_TO = ZERO_CELSIUS + 85;
  return ZERO_CELSIUS + (rating <= THERMOPLASTIC_UP_TO ? 160 : 250);
}
