import type { Entry } from '../journal/entry.ts';
import { CABLE_TABLE } from '../journal/kinds/cable.ts';
import { checkRow } from '../journal/rowCheck.ts';
import { readMoney } from '../units/moneyText.ts';
import { readStrandsText, strandsWords } from '../units/strandsText.ts';
import { columnOfHeading, guessedColumns, isDitto, isHeading } from './pasted/pastedColumns.ts';
import { splitRows } from './pasted/splitRows.ts';
import type { Saying } from './starter.ts';

/** One row that cannot become a cable, or one cell of it that is wrong. */
export interface PastedRefusal {
  /** Of the pasted text, from 1. */
  line: number;
  /** Column of cables.csv, or empty for the whole row. */
  column: string;
  found: string;
  expected: string;
  advice?: string;
}

export interface PastedCables {
  /** One cable each; rows with anything wrong are left out whole. */
  entries: Entry[];
  refused: PastedRefusal[];
  /** How each place of the rows was understood; null: passed over. */
  columns: (string | null)[];
  /** Cells that were taken apart, in words. */
  said: string[];
}

export interface PasteOptions extends Saying {
  /** Milliseconds since 1970: later dates are refused. */
  now: number;
  /** Names of the trial's cables: a pasted cable without a name takes none of them. */
  cables: readonly string[];
}

type Row = Record<string, string>;

/** A currency in the price belongs to its own column. */
function withCurrency(row: Row): Row {
  const read = readMoney(row.price ?? '');
  if (!read.ok || read.value.currency === '') return row;
  const price = /(?:\d|[.,](?=\d))[\d.,\s]*/u.exec(row.price!)![0].trim();
  return { ...row, price, currency: row.currency || read.value.currency };
}

/** `665 x 0.25`, as labels print it, is a count and a diameter. */
function withStrands(row: Row): { row: Row; said: string } {
  const strands = readStrandsText(row.claimed_strands ?? '');
  if (strands === null) return { row, said: '' };
  const diameter: Row = row.claimed_strand_diameter
    ? {}
    : { claimed_strand_diameter: strands.diameter, claimed_strand_unit: strands.unit };
  return {
    row: { ...row, claimed_strands: strands.count, ...diameter },
    said: `“${row.claimed_strands}” is read as ${strandsWords(strands)}.`,
  };
}

/** A short name out of maker and model: lower case, hyphens between the words. */
function shortName(row: Row, taken: ReadonlySet<string>): string {
  const plain = `${row.maker ?? ''} ${row.model ?? ''}`
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40);
  const start = plain || 'cable';
  let name = start;
  for (let n = 2; taken.has(name); n++) name = `${start}-${n}`;
  return name;
}

interface Filled {
  row: Row;
  refused: Omit<PastedRefusal, 'line'>[];
}

/** Cells under their columns; a ditto mark takes what stands above it. */
function fill(cells: readonly string[], columns: readonly (string | null)[], above: Row | null): Filled {
  const row: Row = {};
  const refused: Filled['refused'] = [];
  cells.forEach((cell, place) => {
    const column = columns[place] ?? null;
    if (column === null || cell === '') return;
    if (!isDitto(cell)) row[column] = cell;
    else if (above?.[column]) row[column] = above[column]!;
    else
      refused.push({ column, found: `"${cell}", with nothing above it`, expected: 'a value, or a mark below a value' });
  });
  return { row, refused };
}

/**
 * Cables out of rows pasted from a spreadsheet: parted by tabs, commas or semicolons, with headings or without. Headings may
 * be our column names or the usual words; without any, columns are told by what they hold. A ditto mark (″, " or "ditto")
 * stands for the cell above it.
 *
 * Nothing is guessed inside a cell: a row with anything impossible is refused with its line, and the others are kept.
 */
export function cablesFromPasted(pasted: string, o: PasteOptions): PastedCables {
  const split = splitRows(pasted);
  const first = split[0];
  if (!first)
    return {
      entries: [],
      columns: [],
      said: [],
      refused: [{ line: 1, column: '', found: 'nothing', expected: 'rows of cables' }],
    };
  const headed = isHeading(first.cells);
  const body = headed ? split.slice(1) : split;
  const columns = headed ? first.cells.map(columnOfHeading) : guessedColumns(body.map((row) => row.cells));
  if (!columns.includes('claimed_size'))
    return {
      entries: [],
      columns,
      said: [],
      refused: [
        {
          line: first.line,
          column: 'claimed_size',
          found: 'no column of sizes',
          expected: 'a column headed size, or one that holds sizes such as 1/0 AWG',
        },
      ],
    };
  const taken = new Set(o.cables);
  const entries: Entry[] = [];
  const refused: PastedRefusal[] = [];
  const said: string[] = [];
  let above: Row | null = null;
  for (const { line, cells } of body) {
    const filled = fill(cells, columns, above);
    above = filled.row;
    const { row, said: how } = withStrands(withCurrency(filled.row));
    if (how !== '' && !said.includes(how)) said.push(how);
    row.cable ||= shortName(row, taken);
    const problems = [...filled.refused, ...checkRow(CABLE_TABLE, row, { now: o.now }), ...twice(row.cable, taken)];
    if (problems.length > 0) {
      refused.push(...problems.map((problem) => ({ line, ...problem })));
      continue;
    }
    taken.add(row.cable);
    entries.push({
      id: o.newId(),
      trial: o.trial,
      kind: 'cable',
      at: o.at,
      by: o.by ?? '',
      device: o.device ?? '',
      body: row,
    });
  }
  return { entries, refused, columns, said };
}

/** A second cable of one name would correct the first, which nobody means by pasting. */
function twice(cable: string, taken: ReadonlySet<string>): Omit<PastedRefusal, 'line'>[] {
  if (!taken.has(cable)) return [];
  return [{ column: 'cable', found: `"${cable}", which is there already`, expected: 'a name of its own' }];
}
