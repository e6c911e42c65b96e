/** Dry air at one atmosphere, at its film temperature. */
export interface Air {
  /** W/(m K) */
  conductivity: number;
  /** Kinematic viscosity and thermal diffusivity, m²/s. */
  viscosity: number;
  diffusivity: number;
  prandtl: number;
}

/** Pa, one standard atmosphere, over the gas constant of dry air, J/(kg K). U.S. Standard Atmosphere 1976. */
const PRESSURE = 101325;
const GAS_CONSTANT = 287.053;
/** Sutherland's law and the conductivity of air, U.S. Standard Atmosphere 1976, equations 51 and 53. From memory. */
const SUTHERLAND = { beta: 1.458e-6, s: 110.4 };
const CONDUCTIVITY = { c: 2.64638e-3, s: 245.4, exponent: -12 * Math.LN10 };
/** Heat capacity of air, J/(kg K), at 300 K with its slope; within 0.3 % from 250 to 450 K. Fitted to tables, from memory. */
const HEAT_CAPACITY = { at300: 1005.5, perKelvin: 0.06 };

/**
 * Properties of still air at a film temperature, K; writes them into `into` and gives it back, so that a solver makes no
 * objects.
 *
 * Not above about 500 K, nor at altitude: convection weakens with the square root of pressure.
 */
export function airAt(film: number, into: Air): Air {
  const threeHalves = film * Math.sqrt(film);
  const viscosity = (SUTHERLAND.beta * threeHalves) / (film + SUTHERLAND.s);
  const density = PRESSURE / (GAS_CONSTANT * film);
  const heat = HEAT_CAPACITY.at300 + HEAT_CAPACITY.perKelvin * (film - 300);
  into.conductivity = (CONDUCTIVITY.c * threeHalves) / (film + CONDUCTIVITY.s * Math.exp(CONDUCTIVITY.exponent / film));
  into.viscosity = viscosity / density;
  into.diffusivity = into.conductivity / (density * heat);
  into.prandtl = into.viscosity / into.diffusivity;
  return into;
}

export const emptyAir = (): Air => ({ conductivity: 0, viscosity: 0, diffusivity: 0, prandtl: 0 });
