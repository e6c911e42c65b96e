/** What the heat of a cable depends on: constants of its metal and of what lies round it, SI units, each with its source. */
import { TWENTY_CELSIUS } from '../../units/dimension.ts';
import { ALUMINIUM_ALPHA, CLAD_STEEL_ALPHA, COPPER_ALPHA } from '../metal/constants.ts';

/** Stefan–Boltzmann constant, W/(m² K⁴). CODATA 2018; exact since the SI of 2019. */
export const STEFAN_BOLTZMANN = 5.670374419e-8;

/** What heat does to a conductor. */
export interface ConductorMetal {
  name: string;
  /** Temperature coefficient of resistance referred to 20 °C, 1/K. */
  alpha: number;
  /** Heat to warm a volume of metal, J/(m³ K). */
  heatCapacity: number;
  /** K. */
  meltingPoint: number;
  /** K of IEC 60949, A s^½/mm², and β, K: the adiabatic limit. */
  adiabatic: { k: number; beta: number };
}

/** IEC 60949:1988, table of conductor constants: K 226, β 234.5, heat capacity 3.45 MJ/(m³ K). From memory. Melts at 1084.6 °C (ITS-90). */
const COPPER: ConductorMetal = {
  name: 'copper',
  alpha: COPPER_ALPHA,
  heatCapacity: 3.45e6,
  meltingPoint: 1357.77,
  adiabatic: { k: 226, beta: 234.5 },
};

/** IEC 60949:1988, table of conductor constants: K 148, β 228, heat capacity 2.5 MJ/(m³ K). From memory. Melts at 660.3 °C (ITS-90). */
const ALUMINIUM: ConductorMetal = {
  name: 'aluminium',
  alpha: ALUMINIUM_ALPHA,
  heatCapacity: 2.5e6,
  meltingPoint: 933.473,
  adiabatic: { k: 148, beta: 228 },
};

/** Clad aluminium melts where its core does; its figures are aluminium's, which is the careful side. */
const CLAD_ALUMINIUM: ConductorMetal = { ...ALUMINIUM, name: 'copper-clad aluminium' };

/** Iron's heat capacity, 3.5 MJ/(m³ K) rounded, from memory; its skin of copper melts first. K scaled by √conductivity of 40 % IACS. */
const CLAD_STEEL: ConductorMetal = {
  ...COPPER,
  name: 'copper-clad steel',
  alpha: CLAD_STEEL_ALPHA,
  heatCapacity: 3.5e6,
  adiabatic: { k: 143, beta: 234.5 },
};

/** The metal by the name that the assay gives it; copper where nothing is settled. */
export function conductorMetal(found: string | null): ConductorMetal {
  if (found === null) return COPPER;
  if (/steel/.test(found)) return CLAD_STEEL;
  if (/clad/.test(found)) return CLAD_ALUMINIUM;
  return found === 'aluminium' ? ALUMINIUM : { ...COPPER, name: found };
}

/** What lies round the conductor. */
export interface Jacket {
  /** W/(m K) */
  conductivity: number;
  /** J/(m³ K) */
  heatCapacity: number;
  emissivity: number;
}

/**
 * Jacket of unknown material: thermal resistivity of PVC up to 3 kV, 5.0 K m/W (IEC 60287-2-1, Table 1), volumetric heat
 * capacity 1.7 MJ/(m³ K) (IEC 60853-2), both from memory. Cross-linked polyethylene conducts a little better. Emissivity of
 * dull plastic: common practice; tables for radiation thermometers give plastics 0.8 to 0.95, and 0.1 less makes a carrying current
 * about 2 % less.
 */
export const USUAL_JACKET: Jacket = { conductivity: 0.2, heatCapacity: 1.7e6, emissivity: 0.9 };

/** Carpet, felt and foam conduct about so much, W/(m K): common practice, no source; editable. */
export const USUAL_LAYER_CONDUCTIVITY = 0.05;
/** Heat capacity of such a layer, J/(m³ K): common practice, no source. It matters to the time, not to where it ends. */
export const USUAL_LAYER_HEAT_CAPACITY = 2e5;

/** Resistance at a temperature over that at 20 °C: 1 + α (T − 20 °C). K → 1. */
export function resistanceFactor(alpha: number, kelvin: number): number {
  return 1 + alpha * (kelvin - TWENTY_CELSIUS);
}
