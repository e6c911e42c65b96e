import { signal } from '@preact/signals';
import { type SheetStep, sheetStep, stepBack, stepNoted, stepOn } from '../../store/sheetSteps.ts';

/** The cables whose sheets are open. */
export const openCables = signal<ReadonlySet<string>>(new Set());

/** Opens the sheets that this step of the browser's history holds; where it holds none, the one that the address names. */
export function openAsNoted(cable: string | null): void {
  openCables.value = new Set(sheetStep()?.open ?? (cable === null ? [] : [cable]));
}

/**
 * Opens or closes a sheet. Opening is a step in the browser's history, so that back closes the sheet and forward opens it;
 * closing the sheet that was opened last takes that step back. The address names the last opened one, so that it can be sent.
 */
export function turnCable(cable: string): void {
  const next = new Set(openCables.value);
  const opens = !next.delete(cable);
  if (opens) next.add(cable);
  const wasOpenedLast = sheetStep()?.opened === cable;
  openCables.value = next;
  const step: SheetStep = { open: [...next], opened: opens ? cable : '' };
  if (opens) stepOn(step);
  else if (wasOpenedLast) stepBack();
  else stepNoted(step);
}
