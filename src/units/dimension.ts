/**
 * What kind of thing a number measures. Every unit belongs to exactly one dimension, and a reading in the wrong
 * dimension is refused at the door.
 *
 * Inside the program every value is in the SI unit named here; conversion happens only where something is read or shown.
 */
export type Dimension =
  | 'length' // m
  | 'mass' // kg
  | 'resistance' // Ω
  | 'resistance per length' // Ω/m
  | 'mass per length' // kg/m
  | 'area' // m²
  | 'temperature' // K
  | 'angle' // rad
  | 'force' // N
  | 'voltage' // V
  | 'current' // A
  | 'power' // W
  | 'time' // s
  | 'density' // kg/m³
  | 'count' // 1
  | 'ratio'; // 1

/** 0 °C in kelvin. BIPM, The International System of Units, 9th ed. (2019), §2.3.1: exact. */
export const ZERO_CELSIUS = 273.15;
/** 20 °C in kelvin: the reference temperature of conductor standards (IEC 60028, ASTM B193). */
export const TWENTY_CELSIUS = 293.15;
