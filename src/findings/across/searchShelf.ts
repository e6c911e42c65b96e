/** Finding cables on the shelf: words, size, metal, price; and their order. */
import type { ShelfCable } from '../shapes/shelf.ts';
import { QUANTITIES } from './quantities.ts';
import { tradeWords } from './tradeWords.ts';

/** What is looked for; an empty field asks for nothing. */
export interface ShelfWish {
  /** Every word must begin a word of the line; what stands in quotation marks, and a number with its unit, is one word. */
  words: string;
  /** A size of `choicesOn`. */
  size: string;
  metal: string;
  /** Price per metre, both ends included. */
  least: number | null;
  most: number | null;
  currency: string;
}

/** A line with its words prepared for searching. */
export interface IndexedCable {
  line: ShelfCable;
  text: string;
  /** As it was typed: there signs are looked for. */
  signs: string;
  size: string;
}

/** What is said where the metal was not settled: to be chosen like a metal. */
export const METAL_NOT_SETTLED = 'not settled';

/** Small letters without accents, everything but letters, figures, `/` and `.` as spaces. */
export function plainWords(text: string): string {
  const plain = text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  return plain.replace(/[^\p{L}\p{N}/.]+/gu, ' ').trim();
}

const typedSize = ({ label }: ShelfCable): string => label.size.replace(/\s+/g, ' ').trim();

/** A size as people choose it: `2 AWG`, `35 mm²`; what cannot be read as it was typed. */
function sizeOf(line: ShelfCable): string {
  const area = line.label.area_mm2;
  return area === null ? typedSize(line) || 'no size' : `${Number(area.toPrecision(3))} mm²`;
}

const metalOf = (line: ShelfCable): string => line.metal_found ?? METAL_NOT_SETTLED;

/** Lines ready for searching: done once, when they come. */
export function indexedShelf(lines: readonly ShelfCable[]): IndexedCable[] {
  return lines.map((line) => {
    const words = [
      line.name,
      line.cable,
      line.title,
      line.trial,
      line.lot,
      line.shared_name,
      line.label.size,
      line.label.metal,
      metalOf(line),
      tradeWords(line.label.metal),
      tradeWords(line.metal_found ?? ''),
      line.role,
      line.state,
      line.outcome ?? '',
      line.supplied === true ? 'supplied free' : '',
      line.day ?? '',
    ];
    return { line, size: sizeOf(line), text: ` ${words.map(plainWords).join(' | ')}`, signs: words.join(' | ') };
  });
}

/** `2 awg nine` → ` 2 awg`, ` nine`: a number goes with the unit after it. */
function wantedWords(words: string): string[] {
  const quoted = [...words.matchAll(/"([^"]+)"/g)].map(([, text]) => plainWords(text!));
  const rest = plainWords(words.replace(/"[^"]*"/g, ' '));
  const parts = rest.match(/\d[\d./]*\s(?:awg|ga|gauge|mm2|kcmil|mcm)\b|\S+/g) ?? [];
  return [...quoted, ...parts].filter((word) => word !== '').map((word) => ` ${word}`);
}

/** Pictures and signs that say something by themselves, such as 🙂 or +; not the dashes and dots between words. */
const SPEAKING = /\p{S}|\p{Extended_Pictographic}/u;

/** What is typed without a letter or a figure in it: to be found as it stands. Dashes and dots count only where nothing else is asked. */
function wantedSigns(words: string, alone: boolean): string[] {
  const bare = words.split(/\s+/).filter((word) => word !== '' && !/[\p{L}\p{N}]/u.test(word) && word !== '"');
  return alone ? bare : bare.filter((word) => SPEAKING.test(word));
}

/** The lines that are looked for, in the order in which they came. */
export function searchShelf(shelf: readonly IndexedCable[], wish: ShelfWish): IndexedCable[] {
  const words = wantedWords(wish.words);
  const signs = wantedSigns(wish.words, words.length === 0);
  const priced = wish.least !== null || wish.most !== null;
  const least = wish.least ?? Number.NEGATIVE_INFINITY;
  const most = wish.most ?? Number.POSITIVE_INFINITY;
  return shelf.filter(({ line, text, signs: typed, size }) => {
    if (wish.size !== '' && size !== wish.size) return false;
    if (wish.metal !== '' && metalOf(line) !== wish.metal) return false;
    if (wish.currency !== '' && line.currency !== wish.currency) return false;
    if (priced && !(line.price_per_m !== null && line.price_per_m >= least && line.price_per_m <= most)) return false;
    return words.every((word) => text.includes(word)) && signs.every((sign) => typed.includes(sign));
  });
}

export interface Choices {
  sizes: { size: string; label: string }[];
  metals: string[];
  currencies: string[];
}

/** What there is to choose from: every size, metal and currency on the shelf, once. */
export function choicesOn(shelf: readonly IndexedCable[]): Choices {
  const sizes = new Map<string, { area: number; typed: Map<string, number> }>();
  for (const { line, size } of shelf) {
    const found = sizes.get(size) ?? { area: line.label.area_mm2 ?? Number.POSITIVE_INFINITY, typed: new Map() };
    const typed = typedSize(line);
    found.typed.set(typed, (found.typed.get(typed) ?? 0) + 1);
    sizes.set(size, found);
  }
  const usual = (typed: Map<string, number>) => [...typed].sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1))[0]![0];
  const among = (of: (line: ShelfCable) => string) => [...new Set(shelf.map(({ line }) => of(line)))].sort();
  return {
    sizes: [...sizes]
      .sort(([a, x], [b, y]) => x.area - y.area || (a < b ? -1 : 1))
      .map(([size, { area, typed }]) => {
        const word = usual(typed);
        return { size, label: Number.isFinite(area) && word !== size ? `${word} (${size})` : size };
      }),
    metals: among(metalOf),
    currencies: among(({ currency }) => currency).filter((currency) => currency !== ''),
  };
}

/** What a list of cables can be ordered by. */
export const SHELF_ORDERS = ['name', 'size', 'metal', 'day', 'price', ...QUANTITIES.map(({ id }) => id)] as const;

/** Orders lines; those without the figure stand last, whichever way. Equal ones keep their order. */
export function orderShelf(lines: readonly IndexedCable[], by: string, falling: boolean): IndexedCable[] {
  const key = orderKey(by);
  const keyed = lines.map((line) => ({ line, key: key(line) }));
  const way = falling ? -1 : 1;
  keyed.sort((a, b) => {
    if (a.key === null || b.key === null) return (a.key === null ? 1 : 0) - (b.key === null ? 1 : 0);
    return a.key === b.key ? 0 : way * (a.key < b.key ? -1 : 1);
  });
  return keyed.map(({ line }) => line);
}

function orderKey(by: string): (line: IndexedCable) => string | number | null {
  if (by === 'name') return ({ line }) => plainWords(line.name);
  if (by === 'size') return ({ line }) => line.label.area_mm2;
  if (by === 'metal') return ({ line }) => line.metal_found;
  if (by === 'day') return ({ line }) => line.day;
  if (by === 'price') return ({ line }) => line.price_per_m;
  const quantity = QUANTITIES.find(({ id }) => id === by) ?? QUANTITIES[0]!;
  return ({ line }) => quantity.of(line)?.value ?? null;
}
