/** Signs of units that follow a number in our sentences, longest first, so that `mΩ/m` is not taken for `m`. */
const UNITS =
  'Ω·g/m²|mΩ/ft|mΩ/m|Ω/km|Ω/m|g/cm³|kg/m³|lb/1000 ft|kg/km|g/ft|g/m|N m²|kcmil|AWG|mm²|cm²|min|mm|cm|km|mΩ|µΩ|kg|mg|oz|lb|ft|in|mil|°C|°F|mV|µV|kN|Ω|%|m|g|V|A|N|K|h|s|u';

const BEFORE_UNIT = new RegExp(`(?<=[\\d)]) (?=(?:${UNITS})(?![\\p{L}\\d]))`, 'gu');
const ROUND_PLUS_MINUS = / ± (?=[\d(])/g;
const AFTER_SIGN = /(?<=[≥≤<>±]) (?=\d)/g;

/**
 * A sentence in which no number parts from its unit, its ± or its sign at the end of a line: the plain spaces between them
 * become no-break spaces. For text that people read; data keeps its plain spaces.
 *
 * @example noBreak('85 ± 2 % of 33.6 mm²') // '85\u00a0±\u00a02\u00a0% of 33.6\u00a0mm²'
 */
export function noBreak(text: string): string {
  return text.replace(BEFORE_UNIT, '\u00a0').replace(ROUND_PLUS_MINUS, '\u00a0±\u00a0').replace(AFTER_SIGN, '\u00a0');
}
