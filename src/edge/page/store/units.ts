import { effect, signal } from '@preact/signals';
import { type DisplayUnits, defaultDisplayUnits } from '../../../units/display.ts';

const SHELF = 'cupel.units';

/** The closed lists that a stored choice is held against. */
const KNOWN: Record<keyof DisplayUnits, readonly string[]> = {
  area: ['mm2', 'awg', 'kcmil'],
  length: ['mm', 'in'],
  mass: ['g', 'oz'],
  temperature: ['C', 'F'],
  perLength: ['m', 'ft'],
};

/** The units that figures are shown in, kept in this browser. What was typed stays as it was typed. */
export const units = signal<DisplayUnits>({ ...defaultDisplayUnits, ...stored() });

effect(() => {
  try {
    localStorage.setItem(SHELF, JSON.stringify(units.value));
  } catch {
    // A browser that keeps nothing still shows the units chosen now.
  }
});

/** Changes one of the units. */
export function chooseUnit<K extends keyof DisplayUnits>(kind: K, unit: DisplayUnits[K]): void {
  units.value = { ...units.value, [kind]: unit };
}

/** What this browser kept; anything that is not one of our units is passed over. */
function stored(): Partial<DisplayUnits> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(SHELF) ?? '{}');
    if (typeof kept !== 'object' || kept === null) return {};
    const known = Object.entries(kept).filter(([kind, unit]) =>
      KNOWN[kind as keyof DisplayUnits]?.includes(String(unit)),
    );
    return Object.fromEntries(known) as Partial<DisplayUnits>;
  } catch {
    return {};
  }
}
