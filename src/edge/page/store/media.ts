import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { options } from 'preact';

/** True while the page is being laid out for paper. */
export const printing = signal(false);

/** Width of the text on A4 upright with our margins, CSS px: paper cannot be measured before it is laid out. */
export const PAPER_WIDTH = 688;

/** True where the table has no room and gives way to one block per cable, as on paper. */
export const narrow: ReadonlySignal<boolean> = computed(() => printing.value || tooNarrow.value);

const tooNarrow = watched('(max-width: 1279.98px)');

/** True on a phone or tablet, where fingers point and a keyboard would cover the page. */
export const touch: ReadonlySignal<boolean> = watched('(pointer: coarse)');

/** True where the page is as narrow as a phone. */
export const phone: ReadonlySignal<boolean> = watched('(max-width: 560px)');

/** True where the page's own keypad is wanted. */
export const handheld: ReadonlySignal<boolean> = computed(() => touch.value || phone.value);

/** Lays the page out anew for paper, at once, because the browser takes its picture as soon as the event has been heard. */
export function followPrinting(): void {
  const set = (now: boolean) => {
    const usual = options.debounceRendering;
    options.debounceRendering = (render) => render();
    printing.value = now;
    options.debounceRendering = usual;
  };
  addEventListener('beforeprint', () => set(true));
  addEventListener('afterprint', () => set(false));
}

/** A media query as a signal. */
function watched(query: string): ReadonlySignal<boolean> {
  const list = matchMedia(query);
  const matches = signal(list.matches);
  list.addEventListener('change', (event) => {
    matches.value = event.matches;
  });
  return matches;
}
