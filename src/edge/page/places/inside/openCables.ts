import { signal } from '@preact/signals';
import { noteOpenCable } from '../../store/route.ts';

/** The cables whose sheets are open. */
export const openCables = signal<ReadonlySet<string>>(new Set());

/** Opens the one sheet that the address names, or none. */
export function openOnly(cable: string | null): void {
  openCables.value = new Set(cable === null ? [] : [cable]);
}

/** Opens or closes a sheet, and notes the last opened one in the address so that it can be sent. */
export function turnCable(cable: string): void {
  const next = new Set(openCables.value);
  if (next.has(cable)) next.delete(cable);
  else next.add(cable);
  openCables.value = next;
  noteOpenCable([...next].at(-1) ?? null);
}
