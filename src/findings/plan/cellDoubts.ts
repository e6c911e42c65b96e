import { currencyOf, isDollar, readMoney } from '../../units/moneyText.ts';
import { readSizeText } from '../../units/sizeText.ts';

type Row = Readonly<Record<string, string>>;

const cellOf = (row: Row, name: string) => (row[name] ?? '').trim();

function doubtOfSize(typed: string): string {
  if (typed === '') return '';
  const read = readSizeText(typed);
  if (read.ok) return '';
  const why = read.advice ?? 'Such as 2 AWG, 35 mm².';
  return `No size can be read from it, so nothing is judged by it. ${why}`;
}

function doubtOfPrice(row: Row): string {
  const typed = cellOf(row, 'price');
  if (typed === '') return '';
  const read = readMoney(typed);
  if (!read.ok) return 'No price can be read from it, so no total has it. Such as 4.29, $4.29, 3,75 USD.';
  const { currency } = read.value;
  const stated = currencyOf(cellOf(row, 'currency'));
  if (currency === '' || stated === '' || currency === stated) return '';
  if ((currency === '$' && isDollar(stated)) || (stated === '$' && isDollar(currency))) return '';
  return `The price says ${currency}, the column of currencies ${stated}: the column counts.`;
}

/**
 * What to say at a cell of a cable that is kept as it was typed, because a label and a receipt say what they say, though
 * nothing can be made of it. Empty where there is nothing to say.
 */
export function cellDoubt(row: Row, column: string): string {
  if (column === 'claimed_size') return doubtOfSize(cellOf(row, column));
  return column === 'price' || column === 'currency' ? doubtOfPrice(row) : '';
}
