import { CABLE_TABLE } from '../../journal/kinds/cable.ts';
import { readMetalText } from '../../units/metalText.ts';
import { readMoney } from '../../units/moneyText.ts';
import { readSizeText } from '../../units/sizeText.ts';
import { readStrandsText } from '../../units/strandsText.ts';
import { readTypedQuantity } from '../../units/typedQuantity.ts';

/** Words that people put over a column, beside the column's own name; all lower case, blanks for what parts words. */
const HEADINGS: Readonly<Record<string, string>> = {
  name: 'cable',
  id: 'cable',
  brand: 'maker',
  make: 'maker',
  manufacturer: 'maker',
  product: 'model',
  type: 'model',
  size: 'claimed_size',
  gauge: 'claimed_size',
  awg: 'claimed_size',
  label: 'claimed_size',
  metal: 'claimed_metal',
  material: 'claimed_metal',
  conductor: 'claimed_metal',
  strands: 'claimed_strands',
  'strand count': 'claimed_strands',
  'strand diameter': 'claimed_strand_diameter',
  length: 'bought_length',
  bought: 'bought_length',
  seller: 'bought_from',
  shop: 'bought_from',
  from: 'bought_from',
  date: 'bought_on',
  cost: 'price',
  paid: 'price',
  per: 'price_per',
  colour: 'jacket_colour',
  color: 'jacket_colour',
  jacket: 'jacket_colour',
  print: 'printed_on_jacket',
  'outer diameter': 'claimed_outer_diameter',
  od: 'claimed_outer_diameter',
  rating: 'claimed_temperature',
  notes: 'note',
  remark: 'note',
};

const COLUMN_NAMES: ReadonlySet<string> = new Set(CABLE_TABLE.columns.map((c) => c.name));

/** The column of cables.csv that a heading means; null for one that is not known. */
export function columnOfHeading(heading: string): string | null {
  const plain = heading.trim().toLowerCase().replace(/[.:*]/g, '');
  const joined = plain.replace(/[\s-]+/g, '_');
  if (COLUMN_NAMES.has(joined)) return joined;
  return HEADINGS[plain.replace(/[\s_-]+/g, ' ')] ?? null;
}

/** Whether a row is a heading: it names the size, or two columns, and holds no size itself. */
export function isHeading(cells: readonly string[]): boolean {
  const named = cells.map(columnOfHeading).filter((name) => name !== null);
  const holdsSize = cells.some((cell) => columnOfHeading(cell) === null && readSizeText(cell).ok);
  return !holdsSize && (named.includes('claimed_size') || named.length >= 2);
}

const isPrice = (cell: string) => {
  const read = readMoney(cell);
  return read.ok && read.value.currency !== '';
};
const isStrands = (cell: string) => readStrandsText(cell) !== null;
const isLength = (cell: string) => /[a-z'"′″]/i.test(cell) && readTypedQuantity(cell, 'length').ok;
const isMetal = (cell: string) => !['unsaid', 'unreadable'].includes(readMetalText(cell).metal);

/** Which column each place of a table without headings holds, judged by what most of its cells look like. */
export function guessedColumns(rows: readonly (readonly string[])[]): (string | null)[] {
  const places = Math.max(0, ...rows.map((cells) => cells.length));
  const columns: (string | null)[] = Array.from({ length: places }, () => null);
  const looks = (place: number, like: (cell: string) => boolean): number => {
    const filled = rows.map((cells) => cells[place] ?? '').filter((cell) => cell !== '' && !isDitto(cell));
    return filled.length > 0 ? filled.filter(like).length / filled.length : 0;
  };
  const claim = (column: string, like: (cell: string) => boolean) => {
    const free = columns.flatMap((taken, place) => (taken === null ? [{ place, share: looks(place, like) }] : []));
    const best = free.reduce((a, b) => (b.share > a.share ? b : a), { place: -1, share: 0.5 });
    if (best.place >= 0) columns[best.place] = column;
  };
  claim('price', isPrice);
  claim('claimed_strands', isStrands);
  claim('claimed_size', (cell) => readSizeText(cell).ok && !isLength(cell));
  claim('bought_length', isLength);
  claim('claimed_metal', isMetal);
  const words = ['maker', 'model'];
  columns.forEach((taken, place) => {
    if (taken === null && looks(place, (cell) => /\p{L}/u.test(cell)) > 0.5) columns[place] = words.shift() ?? null;
  });
  return columns;
}

/** Marks with which people write "as above". */
export function isDitto(cell: string): boolean {
  return /^(?:["″”“〃]|''|,,|do\.?|ditto|same)$/i.test(cell.trim());
}
