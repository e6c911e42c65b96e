import { computed, type ReadonlySignal, signal } from '@preact/signals';

/** Which set of colours the pictures take: by the system's setting, and paper while the page is printed. */
export type Scheme = 'light' | 'dark' | 'paper';

const dark = watched('(prefers-color-scheme: dark)');
const printing = watched('print');
const tooNarrow = watched('(max-width: 1279.98px)');

export const scheme: ReadonlySignal<Scheme> = computed(() =>
  printing.value ? 'paper' : dark.value ? 'dark' : 'light',
);

/** True where the table has no room and gives way to one block per cable. On paper the table always fits. */
export const narrow: ReadonlySignal<boolean> = computed(() => !printing.value && tooNarrow.value);

/** A media query as a signal. */
function watched(query: string): ReadonlySignal<boolean> {
  const list = matchMedia(query);
  const matches = signal(list.matches);
  list.addEventListener('change', (event) => {
    matches.value = event.matches;
  });
  return matches;
}
