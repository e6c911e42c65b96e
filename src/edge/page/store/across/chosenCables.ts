import { computed, signal } from '@preact/signals';
import { type Across, acrossOf } from '../../../../findings/across/across.ts';
import { type Link, linksOn } from '../../../../findings/across/links.ts';
import { type LotOverTime, lotsOverTime } from '../../../../findings/across/lots.ts';
import { QUANTITIES, quantityOf } from '../../../../findings/across/quantities.ts';
import { shelfKey } from '../../../../findings/across/shelfCables.ts';
import type { ShelfCable } from '../../../../findings/shapes/shelf.ts';
import { sessionSignal } from '../sessionSignal.ts';
import { indexed } from './shelfLines.ts';

const LEVEL = 0.95;

const isKeys = (kept: unknown): kept is string[] => Array.isArray(kept) && kept.every((key) => typeof key === 'string');

/** Keys of the chosen cables, in the order in which they were chosen. */
export const chosenKeys = sessionSignal<string[]>('cupel.chosen', [], isKeys);

export function choose(key: string, chosen: boolean): void {
  const others = chosenKeys.peek().filter((each) => each !== key);
  chosenKeys.value = chosen ? [...others, key] : others;
}

export function chooseNone(): void {
  chosenKeys.value = [];
}

/** The figure by which they stand side by side; an id of QUANTITIES. */
export const quantityId = signal<string>(QUANTITIES[0]!.id);
/** Name of the piece that links the trials; null for that of most trials, empty for none. */
export const linkName = signal<string | null>(null);
export const shifted = signal(false);

const allLines = computed<ShelfCable[]>(() => indexed.value.map(({ line }) => line));

/** The chosen cables as far as they are on the shelf. */
export const chosen = computed<ShelfCable[]>(() => {
  const wanted = new Map(chosenKeys.value.map((key, place) => [key, place]));
  if (wanted.size === 0) return [];
  return allLines.value
    .filter((line) => wanted.has(shelfKey(line)))
    .sort((a, b) => wanted.get(shelfKey(a))! - wanted.get(shelfKey(b))!);
});

/** The pieces that two trials or more share. */
export const links = computed<Link[]>(() => linksOn(allLines.value).filter(({ trials }) => trials > 1));

export const link = computed<Link | null>(() => {
  const name = linkName.value;
  if (name === '') return null;
  return links.value.find((each) => each.name === name) ?? (name === null ? (links.value[0] ?? null) : null);
});

/** The chosen cables side by side; null while none is chosen. */
export const across = computed<Across | null>(() =>
  chosen.value.length === 0
    ? null
    : acrossOf(chosen.value, {
        quantity: quantityOf(quantityId.value),
        link: link.value,
        shift: shifted.value,
        level: LEVEL,
      }),
);

/** Every lot that was measured in several trials, those with a change first. */
export const lots = computed<LotOverTime[]>(() => {
  const all = lotsOverTime(allLines.value, { quantity: quantityOf(quantityId.value), link: link.value, level: LEVEL });
  const seen = ({ drift: { interval } }: LotOverTime) => interval[0] > 0 || interval[1] < 0;
  return all.sort((a, b) => Number(seen(b)) - Number(seen(a)));
});
