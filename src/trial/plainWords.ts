/** What things are called in sentences that people read: a tag's code and words of the trade, not names of rows and columns. */

import { quantityNamed } from '../journal/quantities.ts';
import { capital } from '../units/capital.ts';
import { typedText } from '../units/typedText.ts';
import { cell, type Row } from './cells.ts';
import type { Reading, Specimen, Trial } from './trial.ts';

/** A quantity in words, as within a sentence: `conductor_mass` → `mass of the conductor`. */
export const quantityWords = (quantity: string): string =>
  quantityNamed(quantity)?.name ?? quantity.replaceAll('_', ' ');

/** The same at the beginning of a sentence. */
export const quantityHead = (quantity: string): string => capital(quantityWords(quantity));

/** A piece as its tag has it: by its code, else by its name. */
export function pieceSign({ specimens }: { specimens: readonly Specimen[] }, specimen: string): string {
  return specimens.find((piece) => piece.specimen === specimen)?.code || specimen;
}

/** Signs of all pieces at once, for whoever asks for many. */
export const pieceSigns = (specimens: readonly Specimen[]): ReadonlyMap<string, string> =>
  new Map(specimens.map(({ specimen, code }) => [specimen, code || specimen]));

/** `mass of the conductor of KR`; on the piece of a reading that was moved. */
export const whatWasRead = (trial: Pick<Trial, 'specimens'>, specimen: string, quantity: string): string =>
  `${quantityWords(quantity)} of ${pieceSign(trial, specimen)}`;

/** A reading by its row: `93.1 g, mass of the conductor of KR`. */
export function readingWords(trial: Pick<Trial, 'specimens'>, row: Row, now?: Reading): string {
  const typed = typedText(cell(row, 'value'), cell(row, 'unit'));
  return `${typed}, ${whatWasRead(trial, now?.specimen ?? cell(row, 'specimen'), cell(row, 'quantity'))}`;
}
