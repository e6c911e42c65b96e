import type { Dimension } from './dimension.ts';
import {
  CENTI,
  CIRCULAR_MIL,
  type ExactFactor,
  FOOT,
  INCH,
  KILO,
  MEGA,
  MICRO,
  MIL,
  MILLI,
  ONE,
  OUNCE,
  POUND,
  STANDARD_GRAVITY,
  timesFactor,
  YARD,
} from './exactFactors.ts';

/** A unit as the table knows it: SI = (x + offset) · times / over. */
export interface UnitRow {
  symbol: string;
  dimension: Dimension;
  factor: ExactFactor;
  /** Only temperatures have one. */
  offset: number;
  /** Spellings after `unitKey`: lower case, one space, `u` for micro, `ohm` for Ω, plain digits for superscripts. */
  spellings: readonly string[];
}

function row(dimension: Dimension, symbol: string, factor: ExactFactor, spellings: string, offset = 0): UnitRow {
  return { symbol, dimension, factor, offset, spellings: spellings.split('|') };
}

const squared = (f: ExactFactor): ExactFactor => timesFactor(f, f);

/**
 * Every simple unit that is understood. Per-length units and densities are composed of these in `unit.ts`.
 * `gr` is read as grams: bench scales and their users print it so, and nobody weighs cable in grains.
 * `oz` and `lb` are avoirdupois. `cm` is always the centimetre, never circular mils.
 */
export const UNIT_TABLE: readonly UnitRow[] = [
  row('length', 'm', ONE, 'm|meter|meters|metre|metres|mtr|mtrs'),
  row('length', 'cm', CENTI, 'cm|centimeter|centimeters|centimetre|centimetres'),
  row('length', 'mm', MILLI, 'mm|millimeter|millimeters|millimetre|millimetres'),
  row('length', 'µm', MICRO, 'um|micron|microns|micrometer|micrometers|micrometre|micrometres'),
  row('length', 'km', KILO, 'km|kilometer|kilometers|kilometre|kilometres'),
  row('length', 'in', INCH, 'in|inch|inches|"'),
  row('length', 'ft', FOOT, "ft|foot|feet|'"),
  row('length', 'yd', YARD, 'yd|yds|yard|yards'),
  row('length', 'mil', MIL, 'mil|mils|thou|thous'),
  row('length', '1000 ft', timesFactor(KILO, FOOT), 'kft|1000 ft|1000ft|1,000 ft|1,000ft'),
  row('mass', 'g', MILLI, 'g|gr|grs|gm|gms|gram|grams|gramme|grammes'),
  row('mass', 'kg', ONE, 'kg|kgs|kilo|kilos|kilogram|kilograms|kilogramme|kilogrammes'),
  row('mass', 'mg', MICRO, 'mg|milligram|milligrams|milligramme|milligrammes'),
  row('mass', 'oz', OUNCE, 'oz|ozs|ounce|ounces'),
  row('mass', 'lb', POUND, 'lb|lbs|pound|pounds'),
  row('resistance', 'Ω', ONE, 'ohm|ohms'),
  row('resistance', 'mΩ', MILLI, 'mohm|mohms|m ohm|m ohms|milliohm|milliohms|milli ohm|milli ohms'),
  row('resistance', 'µΩ', MICRO, 'uohm|uohms|microohm|microohms|microhm|microhms|micro ohm|micro ohms'),
  row('resistance', 'kΩ', KILO, 'kohm|kohms|kiloohm|kiloohms|kilohm|kilohms'),
  row('resistance', 'MΩ', MEGA, 'megohm|megohms|megaohm|megaohms'),
  row('area', 'mm²', squared(MILLI), 'mm2|mm^2|sq mm|sqmm|mm sq|square mm|square millimeters|square millimetres'),
  row('area', 'cm²', squared(CENTI), 'cm2|cm^2|sq cm|sqcm|square cm'),
  row('area', 'm²', ONE, 'm2|m^2|sq m|square m'),
  row('area', 'in²', squared(INCH), 'in2|in^2|sq in|sqin|square in|square inch|square inches'),
  row('area', 'cmil', [CIRCULAR_MIL, 1], 'cmil|cmils|circular mil|circular mils'),
  row('area', 'kcmil', [CIRCULAR_MIL * 1000, 1], 'kcmil|kcmils|mcm|kcm'),
  row('temperature', 'K', ONE, 'kelvin|kelvins'),
  row('temperature', '°C', ONE, '°c|° c|c|degc|deg c|celsius|degrees c|degrees celsius|centigrade', 273.15),
  row('temperature', '°F', [5, 9], '°f|° f|f|degf|deg f|fahrenheit|degrees f|degrees fahrenheit', 459.67),
  row('angle', '°', [Math.PI, 180], '°|deg|degs|degree|degrees'),
  row('angle', 'rad', ONE, 'rad|rads|radian|radians'),
  row('force', 'N', ONE, 'n|newton|newtons'),
  row('force', 'kN', KILO, 'kn|kilonewton|kilonewtons'),
  row('force', 'kgf', STANDARD_GRAVITY, 'kgf|kp'),
  row('force', 'gf', timesFactor(STANDARD_GRAVITY, MILLI), 'gf'),
  row('force', 'lbf', timesFactor(STANDARD_GRAVITY, POUND), 'lbf'),
  row('force', 'ozf', timesFactor(STANDARD_GRAVITY, OUNCE), 'ozf'),
  row('voltage', 'V', ONE, 'v|volt|volts'),
  row('voltage', 'mV', MILLI, 'mv|millivolt|millivolts'),
  row('voltage', 'µV', MICRO, 'uv|microvolt|microvolts'),
  row('current', 'A', ONE, 'a|amp|amps|ampere|amperes'),
  row('current', 'mA', MILLI, 'ma|milliamp|milliamps'),
  row('power', 'W', ONE, 'w|watt|watts'),
  row('power', 'kW', KILO, 'kw|kilowatt|kilowatts'),
  row('time', 's', ONE, 's|sec|secs|second|seconds'),
  row('time', 'min', [60, 1], 'min|mins|minute|minutes'),
  row('time', 'h', [3600, 1], 'h|hr|hrs|hour|hours'),
  row('time', 'd', [86_400, 1], 'd|day|days'),
  row('count', '1', ONE, '|1|count|counts|strand|strands|turn|turns|wire|wires|pc|pcs|piece|pieces|bundle|bundles'),
  row('count', '1', ONE, 'cycle|cycles|stroke|strokes|pass|passes|bend|bends|times|drops'),
  row('ratio', '%', CENTI, '%|percent|per cent|pct'),
];

/** Volumes occur only below the line of a density. */
export const VOLUMES: ReadonlyMap<string, { symbol: string; factor: ExactFactor }> = new Map([
  ['m3', { symbol: 'm³', factor: ONE }],
  ['m^3', { symbol: 'm³', factor: ONE }],
  ['cm3', { symbol: 'cm³', factor: MICRO }],
  ['cm^3', { symbol: 'cm³', factor: MICRO }],
  ['cc', { symbol: 'cm³', factor: MICRO }],
  ['ml', { symbol: 'cm³', factor: MICRO }],
  ['l', { symbol: 'l', factor: MILLI }],
  ['in3', { symbol: 'in³', factor: timesFactor(squared(INCH), INCH) }],
]);
