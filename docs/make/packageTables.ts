/** The tables of docs/file-format.md: files, columns, quantities and units, out of the shapes that check every row. */
import type { EntryKind } from '../../src/journal/entry.ts';
import { QUANTITIES, QUANTITY_NAMES, type Quantity } from '../../src/journal/quantities.ts';
import type { Column, Least, TableShape } from '../../src/journal/tableShape.ts';
import { TABLES, tableOfKind } from '../../src/journal/tables.ts';
import type { Dimension } from '../../src/units/dimension.ts';
import { dimensionUnits } from '../../src/units/dimensionWords.ts';
import { UNIT_TABLE } from '../../src/units/unitTable.ts';
import { code, markdownTable } from './markdownTable.ts';

const ONE_ROW_IS: Readonly<Record<EntryKind, string>> = {
  trial: 'the trial; one row',
  cable: 'a cable and what its label claims',
  fitting: 'a lug, ferrule or gland, and one cable tried in it',
  instrument: 'a tool and its limit of error',
  check: 'a tool held against something known',
  specimen: 'a piece cut from a cable',
  evidence: 'something seen: a scraped strand, a magnet, the print on the jacket',
  reading: 'one number read off a tool, or one count',
  strike: 'a reading that no longer counts, and why',
  retag: 'a mix-up of two pieces put right, and how it is known',
  judgement: 'two pieces bent by hand, and which bends more easily',
  endurance: 'one piece abused until it failed or the test ended',
  current: 'one moment of a piece under current',
  withdrawal: 'something entered by mistake put aside, or taken up again, and why',
  note: 'words or a photo about the trial, a cable, a piece or a reading; no finding rests on them',
  setting: 'one setting of the plan',
  blinding: 'from when on only codes were shown, to whom names were shown, or names again',
  seal: 'a part that was sealed: what it holds and what came out',
  reply: 'a maker asked for a word on one cable, and what came back',
};

export function filesTable(): string {
  const rows = TABLES.map((table) => [
    code(table.file),
    ONE_ROW_IS[table.kind],
    table.key === null ? 'none: every row stands for itself' : table.key.map(code).join(' + '),
  ]);
  return markdownTable(['file', 'one row is', 'named by'], rows);
}

const LEAST_WORDS: Readonly<Record<Least, string>> = {
  positive: 'above zero',
  'not negative': 'zero or more',
  any: '',
};

function unitWords({ dimension, unitColumn, defaultUnit }: Column): string {
  if (dimension === 'count') return 'count';
  const where = unitColumn ? `unit in ${code(unitColumn)} or in the cell` : 'unit in the cell';
  return `${dimension}; ${where}${defaultUnit ? `, ${code(defaultUnit)} when none` : ''}`;
}

function holds(column: Column): string {
  if (column.values && column.values === QUANTITY_NAMES) return 'a name from the list below';
  if (column.values) return column.values.map(code).join(', ');
  if (column.refersTo) {
    const target = tableOfKind(column.refersTo)!;
    return `${code(target.key![0]!)} of ${code(target.file)}`;
  }
  if (column.moment) return 'date, or date and time';
  if (column.dimension) return unitWords(column);
  if (column.limit) return 'limit of error';
  if (column.inUnitColumn) return 'number in `unit`';
  if (column.timecode) return 'place in a recording';
  if (column.number) return ['number', LEAST_WORDS[column.least ?? 'any']].filter((word) => word !== '').join(', ');
  if (column.name === 'value') return 'number; its unit depends on `quantity`';
  return column.name === 'unit' || column.name.endsWith('_unit') ? 'unit' : 'words';
}

function columnsOf(table: TableShape): string {
  const rows = table.columns.map((column) => [
    column.required ? `**${code(column.name)}**` : code(column.name),
    holds(column),
    column.meaning,
  ]);
  return `### ${table.file}\n\n${markdownTable(['column', 'holds', 'meaning'], rows)}`;
}

export function columnTables(): string {
  return TABLES.map(columnsOf).join('\n\n');
}

function valueWords({ dimension, whole, least }: Quantity): string {
  const sort = dimension === null ? 'number on a scale of its own' : whole ? 'whole number' : dimension;
  const span = least === 'any' ? 'may be negative' : LEAST_WORDS[least];
  return `${sort}, ${span}`;
}

export function quantityTable(): string {
  const rows = QUANTITY_NAMES.map((name) => {
    const quantity: Quantity = QUANTITIES[name];
    return [code(name), quantity.name, valueWords(quantity), quantity.pieces.map(code).join(', ') || 'any'];
  });
  return markdownTable(['`quantity`', 'what is measured', 'value', 'usual kind of piece'], rows);
}

const spellingsOf = (symbol: string, dimension: Dimension): string =>
  UNIT_TABLE.filter((row) => row.symbol === symbol && row.dimension === dimension)
    .flatMap((row) => row.spellings)
    .filter((spelling) => spelling !== '')
    .map(code)
    .join(' ');

export function unitTable(): string {
  const simple = [...new Map(UNIT_TABLE.map((row) => [`${row.dimension} ${row.symbol}`, row])).values()];
  const rows = simple.map(({ symbol, dimension }) => [
    dimension,
    dimension === 'count' ? 'none' : symbol,
    spellingsOf(symbol, dimension),
  ]);
  const composed: readonly Dimension[] = ['resistance per length', 'mass per length', 'density'];
  for (const dimension of composed)
    rows.push([dimension, dimensionUnits(dimension), 'any of its parts, with `/` or `per`']);
  return markdownTable(['measures', 'unit', 'understood as'], rows);
}
