import { formatMeasured } from './digits.ts';
import { ZERO_CELSIUS } from './dimension.ts';
import { AWG_PER_LOG_AREA, effectiveAwg, effectiveGaugeText } from './gauge.ts';
import { findUnit } from './unit.ts';

/** The units that somebody likes to read. What was typed stays on record as typed. */
export interface DisplayUnits {
  area: 'mm2' | 'awg' | 'kcmil';
  length: 'mm' | 'in';
  mass: 'g' | 'oz';
  temperature: 'C' | 'F';
  perLength: 'm' | 'ft';
}

export const defaultDisplayUnits: DisplayUnits = {
  area: 'mm2',
  length: 'mm',
  mass: 'g',
  temperature: 'C',
  perLength: 'm',
};

/** A figure in the unit it is to be shown in; `u` is its standard uncertainty or half-width, whichever was handed in. */
export interface Shown {
  value: number;
  u: number;
  /** As printed: `mm²`, `mΩ/ft`, `AWG`. */
  unit: string;
}

function convert(value: number, u: number, unitText: string): Shown {
  const unit = findUnit(unitText);
  if (unit === null) throw new RangeError(`no unit is called ${unitText}`);
  return { value: unit.fromSI(value), u: u / unit.stepToSI(1), unit: unit.symbol };
}

/**
 * Area (m²) in mm², kcmil or gauge. As a gauge, u is carried by the slope dn/d ln A ≈ −4.3; the number may be zero or negative
 * above 1/0, so print `areaText`, not the number. Throws RangeError for a gauge of no area.
 */
export function showArea(area: number, u: number, units: DisplayUnits): Shown {
  if (units.area !== 'awg') return convert(area, u, units.area);
  return { value: effectiveAwg(area), u: Math.abs(AWG_PER_LOG_AREA) * (u / area), unit: 'AWG' };
}

/** Length or diameter (m) in mm or in. */
export function showLength(length: number, u: number, units: DisplayUnits): Shown {
  return convert(length, u, units.length);
}

/** Mass (kg) in g or oz avoirdupois. */
export function showMass(mass: number, u: number, units: DisplayUnits): Shown {
  return convert(mass, u, units.mass);
}

/** Temperature (K) in °C or °F. */
export function showTemperature(temperature: number, u: number, units: DisplayUnits): Shown {
  return convert(temperature, u, units.temperature);
}

/** A difference of temperatures (K), such as a rise or a tolerance, in °C or °F, without their offset. */
export function showTemperatureDifference(difference: number, u: number, units: DisplayUnits): Shown {
  const offsetFree = units.temperature === 'F' ? 9 / 5 : 1;
  return { value: difference * offsetFree, u: u * offsetFree, unit: `°${units.temperature}` };
}

/** Resistance per length (Ω/m) in mΩ/m or mΩ/ft. mΩ/m is the same number as Ω/km. */
export function showResistancePerLength(resistance: number, u: number, units: DisplayUnits): Shown {
  return convert(resistance, u, `mohm/${units.perLength}`);
}

/** Mass per length (kg/m) in g/m or g/ft; oz/ft where masses are shown in ounces and lengths in feet. */
export function showMassPerLength(massPerLength: number, u: number, units: DisplayUnits): Shown {
  const mass = units.perLength === 'ft' ? units.mass : 'g';
  return convert(massPerLength, u, `${mass}/${units.perLength}`);
}

/** `33.1 ± 0.4 mm²`, with no-break spaces; `expandedFactor` turns a standard uncertainty into the half-width to show. */
export function shownText({ value, u, unit }: Shown, expandedFactor = 1): string {
  const text = formatMeasured(value, u, { expandedFactor });
  return `${text.value}\u00a0±\u00a0${text.plusMinus}\u00a0${unit}`;
}

/**
 * Area (m²) as text in the units chosen. As a gauge: `2.31 ± 0.05 AWG` where both ends of ± are thinner than size 1, otherwise
 * words without ± (`between 1/0 and 2/0, 40 % of the way`), since gauge numbers below 1 are not written.
 */
export function areaText(area: number, u: number, units: DisplayUnits, expandedFactor = 1): string {
  const shown = showArea(area, u, units);
  const isWords = units.area === 'awg' && shown.value - shown.u * expandedFactor < 1;
  return isWords ? effectiveGaugeText(area) : shownText(shown, expandedFactor);
}

/** 293.15 K → 20: for sentences that say `at 20 °C` whatever the units chosen. */
export function toCelsius(kelvin: number): number {
  return kelvin - ZERO_CELSIUS;
}
