import { STEFAN_BOLTZMANN } from '../materials.ts';
import { convectedPerMetre } from './convection.ts';
import { type HeatedCable, type Surroundings, wallResistance } from './run.ts';

/**
 * A bundle of equal touching round cables has the girth of a string drawn tight round it: π D + n D, with n the cables on the
 * hull where they lie closest. Two and three: all of them; seven: six round one.
 */
function hullCount(bundle: number): number {
  if (bundle <= 1) return 0;
  if (bundle <= 5) return bundle;
  // Closest packing: about √(12 n − 3) − 3 spans of D on the hull, exact for the hexagonal numbers 7, 19, 37 …
  return Math.sqrt(12 * bundle - 3) - 3;
}

/** Diameter of the circle with the girth of a bundle, m. */
export function girthDiameter(outerDiameter: number, bundle: number): number {
  return outerDiameter * (1 + hullCount(bundle) / Math.PI);
}

/** Conductivity of still air near 50 °C, W/(m K), and of the radiation across gaps a quarter of a cable wide, W/(m² K). */
const GAP_AIR = 0.028;
const GAP_RADIATION = 6;

/**
 * Conductivity across a bundle taken as one body, W/(m K): a cable as a disc of perfectly conducting metal in its wall,
 * k (1 + f)/(1 − f) with f = (d/D)²; such discs among air, by the lower bound of Hashin and Shtrikman in two dimensions. The
 * lower bound leaves out what passes where jackets touch, so a bundle is told hotter rather than cooler.
 *
 * Source: Z. Hashin, S. Shtrikman, Journal of Applied Physics 33 (1962) 3125, in the form for fibres (Hashin 1970). From memory.
 */
export function bundleConductivity(cable: HeatedCable, bundle: number): number {
  const metal = (cable.bundleDiameter / cable.outerDiameter) ** 2;
  const disc = (cable.jacket.conductivity * (1 + metal)) / Math.max(1 - metal, 1e-3);
  const filled = (bundle * cable.outerDiameter ** 2) / girthDiameter(cable.outerDiameter, bundle) ** 2;
  const gap = GAP_AIR + (GAP_RADIATION * cable.outerDiameter) / 4;
  return (gap * ((1 + filled) * disc + (1 - filled) * gap)) / ((1 - filled) * disc + (1 + filled) * gap);
}

/** What stands between the hottest conductor and the air: resistances to heat and the surface. */
export interface HeatPath {
  /** Diameter of the surface in air, m. */
  surfaceDiameter: number;
  /** K m/W from the hottest conductor to the surface, per watt of the whole bundle. */
  resistance: number;
  emissivity: number;
}

/**
 * The way of the heat: through each cable's wall, ln(D/d)/(2 π k); in a bundle from its middle outwards, 1/(4 π k) for heat
 * made evenly across it; through a layer, ln(D_o/D_i)/(2 π k).
 */
export function heatPathOf(cable: HeatedCable, { bundle, layer }: Surroundings): HeatPath {
  const inner = girthDiameter(cable.outerDiameter, bundle);
  const across = bundle > 1 ? 1 / (4 * Math.PI * bundleConductivity(cable, bundle)) : 0;
  const surfaceDiameter = inner + 2 * (layer?.thickness ?? 0);
  const through = layer ? Math.log(surfaceDiameter / inner) / (2 * Math.PI * layer.conductivity) : 0;
  return {
    surfaceDiameter,
    resistance: wallResistance(cable) / bundle + across + through,
    emissivity: cable.jacket.emissivity,
  };
}

/** Heat that a metre of surface gives off, W/m, by convection and radiation, times the factor of a heating test. */
export function lossPerMetre(path: HeatPath, surface: number, { ambient, lossFactor }: Surroundings): number {
  const radiated = path.emissivity * STEFAN_BOLTZMANN * Math.PI * path.surfaceDiameter * (surface ** 4 - ambient ** 4);
  return lossFactor * (convectedPerMetre(path.surfaceDiameter, surface, ambient) + radiated);
}
