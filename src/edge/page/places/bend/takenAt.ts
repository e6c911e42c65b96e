import { ZERO_CELSIUS } from '../../../../units/dimension.ts';
import { findUnit } from '../../../../units/unit.ts';
import { units } from '../../store/units.ts';

/** A temperature of the findings in the unit that was chosen, to a tenth, without the unit. */
export function degrees(celsius: number): string {
  const shown = findUnit(units.value.temperature)?.fromSI(celsius + ZERO_CELSIUS) ?? celsius;
  return shown.toFixed(1).replace('-', '−');
}

/** `at 20.1 °C`, in the unit that was chosen; says when it was not noted. */
export function takenAt(celsius: number | null): string {
  if (celsius === null) return 'at a temperature that was not noted';
  return `at ${degrees(celsius)}\u00a0°${units.value.temperature}`;
}
