import { effect, type Signal, signal } from '@preact/signals';

/** A choice that this browser remembers. One that keeps nothing still holds the choice while the page is open. */
export function keptSignal<T>(key: string, usual: T, fits: (kept: unknown) => kept is T): Signal<T> {
  const now = signal<T>(read(key, usual, fits));
  effect(() => {
    try {
      localStorage.setItem(key, JSON.stringify(now.value));
    } catch {
      // Nothing is kept in this window; the choice holds until it closes.
    }
  });
  return now;
}

function read<T>(key: string, usual: T, fits: (kept: unknown) => kept is T): T {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? 'null');
    return fits(kept) ? kept : usual;
  } catch {
    return usual;
  }
}

export const isBoolean = (kept: unknown): kept is boolean => typeof kept === 'boolean';

export const isTexts = (kept: unknown): kept is Record<string, string> =>
  typeof kept === 'object' &&
  kept !== null &&
  !Array.isArray(kept) &&
  Object.values(kept).every((each) => typeof each === 'string');
