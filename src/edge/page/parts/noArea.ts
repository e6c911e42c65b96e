import type { CableFindings } from '../../../findings/schema.ts';
import { quantityWords } from '../../../trial/plainWords.ts';

/** True when there are readings, but they contradict each other so grossly that no area is given. */
export function contradicts(cable: CableFindings): boolean {
  return cable.conductor_area === null && cable.consistency?.recheck != null;
}

/** Why a cable has no area yet, and what to do about it: `Not told: take the mass again`. */
export function noAreaWords(cable: CableFindings): string {
  if (!contradicts(cable)) return 'No area yet: weigh it';
  return `No area: take again ${quantityWords(cable.consistency!.recheck!)}`;
}
