import { effect, type Signal, signal } from '@preact/signals';

/** What was being typed, kept for this tab until it closes: it outlives a reload, and going away and coming back. */
export function sessionSignal<T>(key: string, usual: T, fits: (kept: unknown) => kept is T): Signal<T> {
  const now = signal<T>(read(key, usual, fits));
  effect(() => {
    try {
      sessionStorage.setItem(key, JSON.stringify(now.value));
    } catch {
      // Nothing is kept in this window; what was typed holds until it is loaded anew.
    }
  });
  return now;
}

function read<T>(key: string, usual: T, fits: (kept: unknown) => kept is T): T {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(key) ?? 'null');
    return fits(kept) ? kept : usual;
  } catch {
    return usual;
  }
}
