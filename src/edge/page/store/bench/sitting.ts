/** What was done on this device since the bench was opened, the last act last: what can be undone, and what is told of it. */
import { computed, signal } from '@preact/signals';

/** A reading that was just kept on this device. */
export interface JustKept {
  reading: string;
  specimen: string;
  quantity: string;
  /** `39.27 g` */
  shown: string;
  /** When Enter was pressed, ms of the page's clock: what the speed of the page is measured from. */
  pressed: number;
}

export type Act =
  | { what: 'kept'; kept: JustKept; words: string; replaced: string }
  | { what: 'struck'; kept: Omit<JustKept, 'pressed'>; words: string }
  | { what: 'looked'; looks: readonly string[]; words: string }
  | { what: 'swapped'; specimen: string; becomes: string; from: string; until: string; words: string };

/** Acts of this sitting that can be undone. */
export const acts = signal<readonly Act[]>([]);
/** What is shown of what was done last; empty for nothing. */
export const told = signal('');

export const lastAct = computed(() => acts.value.at(-1) ?? null);

/** The last reading recorded here, until it is undone. */
export const lastKept = computed<JustKept | null>(
  () => acts.value.findLast((act) => act.what === 'kept')?.kept ?? null,
);

/** Notes what was done and shows it. */
export function done(act: Act): void {
  acts.value = [...acts.value, act];
  told.value = act.words;
}

/** Takes the last act off, once it is undone. */
export function undone(words: string): void {
  acts.value = acts.value.slice(0, -1);
  told.value = words;
}

/** A reading goes by another name from now on: what is undone is always what stands there now. */
export function renamed(reading: string, becomes: string): void {
  acts.value = acts.value.map((act) =>
    'kept' in act && act.kept.reading === reading ? ({ ...act, kept: { ...act.kept, reading: becomes } } as Act) : act,
  );
}

export function beginSitting(): void {
  acts.value = [];
  told.value = '';
}
