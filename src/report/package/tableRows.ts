import { nearestWord } from '../../journal/nearestWord.ts';
import { quantityNamed } from '../../journal/quantities.ts';
import type { Column, TableShape } from '../../journal/tableShape.ts';
import { type CsvRow, type CsvTable, csvTable, type Delimiter } from './csvTable.ts';
import { type Refusal, refusal } from './refusal.ts';

export type Row = Record<string, string>;

/** A row of a table with its place: the line as an editor counts, and the row number from 0. */
export interface PlacedRow {
  line: number;
  place: number;
  row: Row;
}

export interface TableRows {
  rows: PlacedRow[];
  refusals: Refusal[];
  notes: string[];
}

/** A name that would change how objects behave; no honest table has such a column. */
const FORBIDDEN = new Set(['__proto__', 'constructor', 'prototype']);

const plainName = (name: string): string => name.toLowerCase().replace(/[\s-]+/g, '_');

/** Headers as the table spells them (`Claimed size` → `claimed_size`); unknown ones as typed. */
function columnNames(shape: TableShape, header: CsvRow): string[] {
  const known = new Map(shape.columns.map((column) => [plainName(column.name), column.name]));
  return header.cells.map((cell) => known.get(plainName(cell)) ?? cell);
}

function headerRefusals(shape: TableShape, header: CsvRow, names: readonly string[]): Refusal[] {
  const refused = (column: string | null, found: string, expected: string, advice = '') =>
    refusal(shape.file, header.line, column, { found, expected, advice });
  if (header.refused) return [refusal(shape.file, header.line, null, header.refused)];
  const twice = names.filter((name, i) => name !== '' && names.indexOf(name) < i);
  const unknown = names.filter((name) => !shape.columns.some((column) => column.name === name));
  const missing = shape.columns.filter((column) => column.required && !names.includes(column.name));
  return [
    ...[...new Set(twice)].map((name) => refused(name, `two columns called ${name}`, 'each column once')),
    ...missing.map(({ name }) => {
      const near = nearestWord(name, unknown);
      return refused(name, `no column ${name}`, needs(shape), near ? `Is ${near} meant to be ${name}?` : '');
    }),
    ...names
      .filter((name) => FORBIDDEN.has(name))
      .map((name) => refused(name, `a column called ${name}`, 'another name')),
  ];
}

const needs = (shape: TableShape): string =>
  `the columns ${shape.columns.flatMap(({ name, required }) => (required ? [name] : [])).join(', ')}`;

const AMBIGUOUS = /^[+\-\u2212]?\d{1,3},\d{3}(?!\d)/;

/** Whether a cell holds a number that may have decimals. */
function hasDecimals(column: Column, table: TableShape, row: Row): boolean {
  if (table.kind === 'reading' && column.name === 'value')
    return quantityNamed((row.quantity ?? '').toLowerCase())?.dimension !== 'count';
  return (
    column.number === true ||
    column.inUnitColumn === true ||
    (column.dimension !== undefined && column.dimension !== 'count')
  );
}

/**
 * In a table separated by semicolons the comma is the decimal mark, because that is why it is separated so: `1,064` is
 * 1.064 there, and would be refused as ambiguous elsewhere. Changes the row and says whether it did.
 */
function settleDecimalCommas(shape: TableShape, row: Row): boolean {
  let settled = false;
  for (const column of shape.columns) {
    const typed = row[column.name];
    if (!typed || !AMBIGUOUS.test(typed) || !hasDecimals(column, shape, row)) continue;
    row[column.name] = typed.replace(',', '.');
    settled = true;
  }
  return settled;
}

function widthRefusal(shape: TableShape, { line, cells }: CsvRow, width: number, delimiter: Delimiter): Refusal | null {
  if (!cells.slice(width).some((cell) => cell !== '')) return null;
  const advice =
    delimiter === ','
      ? 'A cell that holds a comma, such as 12,5, must stand in quotation marks.'
      : 'A cell that holds the separator must stand in quotation marks.';
  return refusal(shape.file, line, null, {
    found: `${cells.length} cells`,
    expected: `${width}, as in the header`,
    advice,
  });
}

function headerNotes(shape: TableShape, names: readonly string[], table: CsvTable): string[] {
  const notes: string[] = [];
  const unknown = names.filter((name) => name !== '' && !shape.columns.some((column) => column.name === name));
  if (unknown.length > 0) {
    const words = unknown.length === 1 ? 'column is kept but not used' : 'columns are kept but not used';
    notes.push(`${shape.file}: the ${words}: ${unknown.join(', ')}.`);
  }
  const nameless = names.some((name, i) => name === '' && table.rows.some(({ cells }) => (cells[i] ?? '') !== ''));
  if (nameless) notes.push(`${shape.file}: cells under a blank header were left out.`);
  return notes;
}

/**
 * The rows of one table out of its text, by column name. Wrong headers refuse the file; a row with too many cells or broken
 * quotation marks is refused alone.
 */
export function tableRows(shape: TableShape, text: string): TableRows {
  const table = csvTable(text);
  const { header, delimiter } = table;
  if (header === null) {
    const empty = refusal(shape.file, null, null, { found: 'an empty file', expected: needs(shape) });
    return { rows: [], refusals: [empty], notes: [] };
  }
  const names = columnNames(shape, header);
  const wrong = headerRefusals(shape, header, names);
  if (wrong.length > 0) return { rows: [], refusals: wrong, notes: [] };
  const notes = headerNotes(shape, names, table);
  const refusals: Refusal[] = [];
  const rows: PlacedRow[] = [];
  let settled = false;
  table.rows.forEach((csvRow, place) => {
    const wide = widthRefusal(shape, csvRow, names.length, delimiter);
    if (csvRow.refused) refusals.push(refusal(shape.file, csvRow.line, null, csvRow.refused));
    else if (wide) refusals.push(wide);
    else {
      const row = rowOf(names, csvRow.cells);
      if (delimiter === ';') settled = settleDecimalCommas(shape, row) || settled;
      rows.push({ line: csvRow.line, place, row });
    }
  });
  if (settled)
    notes.push(`${shape.file}: separated by semicolons, so 1,234 was read as 1.234 where a number may have decimals.`);
  return { rows, refusals, notes };
}

/** Blank cells say nothing and are left out of the row. */
function rowOf(names: readonly string[], cells: readonly string[]): Row {
  const row: Row = {};
  names.forEach((name, i) => {
    const cell = cells[i] ?? '';
    if (name !== '' && cell !== '') row[name] = cell;
  });
  return row;
}
