/** The open sheets of a trial as steps in the browser's history. */
import { route } from './route.ts';
import { addressOf } from './routeOf.ts';

/** What one step holds: the cables whose sheets are open, and the one that was opened by it (empty for none). */
export interface SheetStep {
  open: string[];
  opened: string;
}

/** The step that the browser stands at; null when it is none of ours. */
export function sheetStep(): SheetStep | null {
  const kept: unknown = history.state;
  if (typeof kept !== 'object' || kept === null) return null;
  const { open, opened } = kept as Partial<SheetStep>;
  const isStep = Array.isArray(open) && open.every((cable) => typeof cable === 'string') && typeof opened === 'string';
  return isStep ? { open, opened } : null;
}

/** Puts a further step into the history. */
export function stepOn(step: SheetStep): void {
  write(step, (state, address) => history.pushState(state, '', address));
}

/** Changes what the present step holds. */
export function stepNoted(step: SheetStep): void {
  write(step, (state, address) => history.replaceState(state, '', address));
}

/** Goes one step back, as the browser's own button does. */
export function stepBack(): void {
  if (route.value.place === 'inside') history.back();
}

/** Only where the address can name a sheet: looking back along a history has an address of its own. */
function write(step: SheetStep, put: (step: SheetStep, address: string) => void): void {
  const now = route.value;
  if (now.place !== 'inside') return;
  const next = { ...now, cable: step.open.at(-1) ?? null };
  put(step, addressOf(next));
  route.value = next;
}
