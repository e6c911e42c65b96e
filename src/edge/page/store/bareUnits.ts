import { computed, type ReadonlySignal } from '@preact/signals';
import type { BareUnits } from '../../../findings/quick.ts';
import type { DisplayUnits } from '../../../units/display.ts';
import { units } from './units.ts';

/** The units that a number without one is taken in: those that the page shows. */
export const bareUnits: ReadonlySignal<BareUnits> = computed(() => bareUnitsFor(units.value));

export function bareUnitsFor({ mass, length, temperature }: DisplayUnits): BareUnits {
  return { mass, length, temperature };
}
