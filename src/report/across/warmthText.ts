/** Degrees Fahrenheit at 0 °C, and in one degree Celsius: exact by definition. */
const FAHRENHEIT_AT_ZERO = 32;
const FAHRENHEIT_PER_CELSIUS = 1.8;

/** `20 °C`, `19 to 21 °C`, `66 to 70 °F`: a span of temperatures given in °C, in whole degrees. */
export function warmthText([low, high]: readonly [number, number], unit: 'C' | 'F' = 'C'): string {
  const shown = (celsius: number) =>
    Math.round(unit === 'F' ? FAHRENHEIT_AT_ZERO + FAHRENHEIT_PER_CELSIUS * celsius : celsius);
  const text = (degrees: number) => String(degrees).replace('-', '−');
  const [from, to] = [shown(low), shown(high)];
  return `${from === to ? text(from) : `${text(from)} to ${text(to)}`}\u00a0°${unit}`;
}
