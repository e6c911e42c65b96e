import { ZERO_CELSIUS } from '../../../../units/dimension.ts';
import { findUnit } from '../../../../units/unit.ts';
import { units } from '../../store/units.ts';

/** A temperature of the findings in the unit that was chosen, to a tenth, without the unit. */
export function degrees(celsius: number): string {
  const shown = findUnit(units.value.temperature)?.fromSI(celsius + ZERO_CELSIUS) ?? celsius;
  return shown.toFixed(1).replace('-', '−');
}

/** Temperatures nearer than this are shown as one, K. Ours. */
export const AS_ONE = 0.95;

/**
 * `at 20.1 °C`, in the unit that was chosen; says when it was not noted, and gives both ends where the readings lie apart, for
 * nobody measured their mean.
 */
export function takenAt(celsius: number | null, range: readonly [number, number] | null = null): string {
  if (range !== null && range[1] - range[0] >= AS_ONE)
    return `at ${degrees(range[0])} to ${degrees(range[1])}\u00a0°${units.value.temperature}`;
  if (celsius === null) return 'at a temperature that was not noted';
  return `at ${degrees(celsius)}\u00a0°${units.value.temperature}`;
}
