import { computed, signal } from '@preact/signals';
import {
  type Choices,
  choicesOn,
  type IndexedCable,
  orderShelf,
  type ShelfWish,
  searchShelf,
} from '../../../../findings/across/searchShelf.ts';
import { isTexts } from '../kept.ts';
import { sessionSignal } from '../sessionSignal.ts';
import { priceIn } from './priceAsked.ts';
import { indexed } from './shelfLines.ts';

/** What is asked for, as it stands in the fields. */
export type WishFields = Record<'words' | 'size' | 'metal' | 'least' | 'most' | 'currency', string>;

const NOTHING: WishFields = { words: '', size: '', metal: '', least: '', most: '', currency: '' };

const kept = sessionSignal<Record<string, string>>('cupel.find', NOTHING, isTexts);

export const wishFields = computed<WishFields>(() => ({ ...NOTHING, ...kept.value }));
export const nothingAsked = computed(() => Object.values(wishFields.value).every((text) => text.trim() === ''));

export function wishFor(field: keyof WishFields, text: string): void {
  kept.value = { ...wishFields.peek(), [field]: text };
}

export function askForAll(): void {
  kept.value = NOTHING;
}

/** What there is to choose from. */
export const choices = computed<Choices>(() => choicesOn(indexed.value));

/** Prices are asked in one currency: the one chosen, else the only one, else that which comes first. */
export const currencyAsked = computed(() => {
  const { currency, least, most } = wishFields.value;
  const { currencies } = choices.value;
  if (currency !== '') return currency;
  return least.trim() + most.trim() === '' ? '' : (currencies[0] ?? '');
});

/** A price that cannot be read asks for nothing; the field says so. */
const known = (price: number | null): number | null => (price === null || Number.isNaN(price) ? null : price);

const wish = computed<ShelfWish>(() => {
  const { words, size, metal, least, most } = wishFields.value;
  return {
    words,
    size,
    metal,
    least: known(priceIn(least)),
    most: known(priceIn(most)),
    currency: currencyAsked.value,
  };
});

export interface Order {
  by: string;
  falling: boolean;
}

/** The latest first, until somebody asks otherwise. */
export const order = signal<Order>({ by: 'day', falling: true });

/** Orders by a column; by the same one again the other way round. */
export function orderBy(by: string): void {
  const now = order.peek();
  order.value = { by, falling: now.by === by ? !now.falling : false };
}

/** The whole shelf in order: a key in the search field then only leaves some out. */
const ordered = computed<IndexedCable[]>(() => orderShelf(indexed.value, order.value.by, order.value.falling));

/** The cables that are looked for, in their order. */
export const found = computed<IndexedCable[]>(() => searchShelf(ordered.value, wish.value));

/** What is asked for and in which order, as one text. */
export const asked = computed(() => JSON.stringify([wishFields.value, order.value]));
