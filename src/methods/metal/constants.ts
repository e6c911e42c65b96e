/**
 * Constants of the conductor metals, SI units, at 20 °C, each with its source. "From memory" marks a figure that was
 * recalled and agrees with independent computation but was not read in the named document.
 */

/** Density of annealed copper, kg/m³. IEC 60028 (1925); ASTM B496-04 gives 0.32117 lb/in³. */
export const COPPER_DENSITY = 8890;

/** Volume resistivity of annealed copper at 100 % IACS, Ω·m. IEC 60028 (1925): 1/58 Ω·mm²/m; NBS Handbook 100 §1.1. From memory. */
export const COPPER_RESISTIVITY = 1.7241e-8;

/** Temperature coefficient of resistance of 100 % IACS copper referred to 20 °C, 1/K. IEC 60028, NBS Handbook 100. From memory. */
export const COPPER_ALPHA = 0.00393;

/**
 * Mean conductivity of today's copper wire relative to IACS. Electrolytic wire rod runs 100 to 101.5 % IACS: common
 * practice, no source. The spread is in the hypothesis, not here.
 */
export const COPPER_USUAL_CONDUCTIVITY = 1.004;

/** Density of electrical aluminium, kg/m³. IEC 60889. From memory. */
export const ALUMINIUM_DENSITY = 2703;

/** Resistivity of electrical aluminium at 61 % IACS, Ω·m. IEC 60889, ASTM B233. From memory. */
export const ALUMINIUM_RESISTIVITY = 2.8264e-8;

/** Temperature coefficient of electrical aluminium referred to 20 °C, 1/K. IEC 60287-1-1 Table 1. From memory. */
export const ALUMINIUM_ALPHA = 0.00403;

/** Temperature coefficient of copper-clad steel referred to 20 °C, 1/K. From memory. */
export const CLAD_STEEL_ALPHA = 0.00378;

/** Density of water at 20 °C, kg/m³. CRC Handbook of Chemistry and Physics, water properties. From memory. */
export const WATER_DENSITY = 998.2;

/** Mass resistivity of annealed copper, Ω·kg/m²: 0.15328 Ω·g/m². ASTM B193, NBS Handbook 100. From memory. */
export const MASS_RESISTIVITY_OF_COPPER = 0.15328e-3;
