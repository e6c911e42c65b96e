import { LN_LAY } from '../assay/prior.ts';
import { COPPER_DENSITY, COPPER_RESISTIVITY, COPPER_USUAL_CONDUCTIVITY } from '../metal/constants.ts';

/** Bare copper cable as the assay expects it in the middle: lay factor, kg/m³, Ω·m at 20 °C. */
export const EXPECTED_COPPER = {
  lay: Math.exp(LN_LAY.mean),
  density: COPPER_DENSITY,
  resistivity: COPPER_RESISTIVITY / COPPER_USUAL_CONDUCTIVITY,
};

/** Share of the bundle's disc that is metal in flexible cable, the rest air. Common practice, no source. */
const FILL = 0.6;
/** The standard for four wires asks this many circumferences between current and voltage contacts (ASTM B193, from memory). */
const CONTACT_INSET = 1.5;

/** Diameter of a flexible bundle of that metal area, m: `√(4A / (π · fill))`. A guess where the diameter was not read. */
export function bundleDiameter(area: number): number {
  return Math.sqrt((4 * area) / (Math.PI * FILL));
}

/** How far a voltage contact stands in from the current clamp, m: one and a half circumferences of the bundle. */
export function contactInset(area: number): number {
  return CONTACT_INSET * Math.PI * bundleDiameter(area);
}

/** Mass of copper per length of cable that a claimed area would have at the usual lay, kg/m: `A · k · ρ`. */
export function copperPerMetre(area: number): number {
  return area * EXPECTED_COPPER.lay * EXPECTED_COPPER.density;
}

/** Resistance of copper at 20 °C per length of cable that a claimed area would have, Ω/m: `ρ · k / A`. */
export function ohmsPerMetre(area: number): number {
  return (EXPECTED_COPPER.resistivity * EXPECTED_COPPER.lay) / area;
}
