import { GRAVITY } from '../../../units/exactFactors.ts';
import { type Air, airAt, emptyAir } from './air.ts';

/** Largest Rayleigh number of the correlation. */
const MOST_RAYLEIGH = 1e12;

/**
 * Mean Nusselt number of a horizontal cylinder in still air or liquid:
 *
 *     Nu = {0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27)}²,  Ra up to 10¹²
 *
 * Source: S. W. Churchill, H. H. S. Chu, International Journal of Heat and Mass Transfer 18 (1975) 1049. From memory; other
 * correlations for the same case differ by about 10 %, which is the spread of the measurements behind them.
 *
 * @throws RangeError for a negative or too large Rayleigh number.
 */
export function nusseltOfHorizontalCylinder(rayleigh: number, prandtl: number): number {
  if (!(rayleigh >= 0 && rayleigh <= MOST_RAYLEIGH))
    throw new RangeError(`a Rayleigh number lies between 0 and 1e12, got ${rayleigh}`);
  const shape = (1 + (0.559 / prandtl) ** 0.5625) ** (8 / 27);
  const root = 0.6 + (0.387 * rayleigh ** (1 / 6)) / shape;
  return root * root;
}

const scratch: Air = emptyAir();

/**
 * Heat that a metre of horizontal cylinder gives to still air, W/m: h π D (T_surface − T_air), h = Nu k/D with the air's
 * properties at the mean of the two temperatures. Negative when the air is the warmer.
 *
 * @param diameter m; @param surface and @param ambient K.
 */
export function convectedPerMetre(diameter: number, surface: number, ambient: number): number {
  const rise = surface - ambient;
  if (rise === 0) return 0;
  const film = 0.5 * (surface + ambient);
  const air = airAt(film, scratch);
  const rayleigh = (GRAVITY * Math.abs(rise) * diameter ** 3) / (film * air.viscosity * air.diffusivity);
  const nusselt = nusseltOfHorizontalCylinder(Math.min(rayleigh, MOST_RAYLEIGH), air.prandtl);
  return Math.PI * nusselt * air.conductivity * rise;
}
