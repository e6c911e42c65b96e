import type { ShelfWish } from '../../findings/across/searchShelf.ts';
import { EXIT, Failure } from './failure.ts';

/** What `cupel shelf` was asked for, as typed. */
export interface ShelfAsked {
  find: string;
  metal: string;
  least?: number;
  most?: number;
}

/** Reads the price of an option: a number, not less than nothing. */
export const priceOf = (option: string) => (text: string) => {
  const price = text.trim() === '' ? Number.NaN : Number(text);
  if (Number.isFinite(price) && price >= 0) return price;
  throw new Failure(`${option} was "${text}"; expected a price a metre, such as 12.50.`, EXIT.wrongUse);
};

/** The metal that is meant, by its name or by a short word of the trade for it; empty where none was asked for. */
async function metalOf(text: string): Promise<string> {
  const typed = text.trim().toLowerCase();
  if (typed === '') return '';
  const { METALS } = await import('../../methods/metal/hypotheses.ts');
  const { METAL_NOT_SETTLED } = await import('../../findings/across/searchShelf.ts');
  const { tradeWords } = await import('../../findings/across/tradeWords.ts');
  const known: readonly string[] = [...METALS, METAL_NOT_SETTLED];
  const meant =
    known.find((metal) => metal === typed) ?? known.find((metal) => tradeWords(metal).split(' ').includes(typed));
  if (meant !== undefined) return meant;
  throw new Failure(`--metal was "${text}"; expected one of ${known.join(', ')}.`, EXIT.wrongUse);
}

/**
 * The wish that the options make.
 *
 * @throws Failure for a metal that is none, and for prices of which the least is above the most.
 */
export async function shelfWish({ find, metal, least, most }: ShelfAsked): Promise<ShelfWish> {
  if (least !== undefined && most !== undefined && least > most)
    throw new Failure(`--least was ${least} and --most ${most}; expected the lower price first.`, EXIT.wrongUse);
  return { words: find, size: '', metal: await metalOf(metal), least: least ?? null, most: most ?? null, currency: '' };
}
