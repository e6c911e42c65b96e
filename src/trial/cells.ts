import { cellQuantity, plainCellValue } from '../journal/cellQuantity.ts';
import { leastProblem, outOfReach } from '../journal/impossible.ts';
import { quantityNamed } from '../journal/quantities.ts';
import type { Column, TableShape } from '../journal/tableShape.ts';
import { capital } from '../units/capital.ts';
import { columnWords } from './columnWords.ts';
import type { Remark } from './trial.ts';

export type Row = Readonly<Record<string, string>>;

/** Whether a character is visible ASCII: never a blank of any kind. */
const isPlain = (code: number): boolean => code > 32 && code < 127;

/** Text without blanks around; nearly always there are none, and looking is cheaper than cutting. */
export function trimmed(text: string | undefined): string {
  if (!text) return '';
  return isPlain(text.charCodeAt(0)) && isPlain(text.charCodeAt(text.length - 1)) ? text : text.trim();
}

/** A cell without blanks around; empty when the row has no such column. */
export const cell = (row: Row, name: string): string => trimmed(row[name]);

/** A cell that names something, or null when it is blank. */
export const nameOrNull = (row: Row, name: string): string | null => cell(row, name) || null;

/** What a row is of, as a person calls it: `Mass of the conductor of q1`, `Cable Fen Mark 2`; else its table and name. */
function rowCalled(table: TableShape, key: string, row: Row): string {
  if (table.kind === 'reading') {
    const name = quantityNamed(cell(row, 'quantity').toLowerCase())?.name ?? 'a reading';
    return `${capital(name)} of ${cell(row, 'specimen') || 'no piece'}`;
  }
  const maker = [cell(row, 'maker'), cell(row, 'model')].filter((part) => part !== '').join(' ');
  if (table.kind === 'cable') return `Cable ${maker || key}`;
  return `${table.file}, ${key || 'a row without a name'}`;
}

/** Says that a cell cannot be read: the number is left out and nothing else is lost. */
export function unreadable(table: TableShape, row: Row, column: string, found: string, expected: string): Remark {
  const key = (table.key ?? []).map((part) => cell(row, part)).join(' ');
  const text = `${rowCalled(table, key, row)}: ${columnWords(column)} is ${found}; expected ${expected}. It is left out.`;
  return { code: 'cannot-be-read', cable: null, readings: table.kind === 'reading' ? [key] : [], text };
}

/** The doors refuse impossible values; a journal that came past them must not bring them into a computation. */
function impossibleIn({ dimension, least, label }: Column, typed: string, value: number) {
  const usual = dimension === 'temperature' ? 'any' : 'positive';
  return leastProblem(typed, value, least ?? usual, dimension!) ?? outOfReach(typed, value, dimension!, label ?? false);
}

/** Reads optional quantities out of the rows of one table, remarking on those that cannot be read. */
export class CellReader {
  readonly #table: TableShape;
  readonly #columns: ReadonlyMap<string, Column>;
  readonly #remarks: Remark[];

  constructor(table: TableShape, remarks: Remark[]) {
    this.#table = table;
    this.#columns = new Map(table.columns.map((column) => [column.name, column]));
    this.#remarks = remarks;
  }

  /** Value and step in SI, or null when the cell is blank or cannot be read. */
  quantity(row: Row, name: string): { value: number; step: number } | null {
    const typed = trimmed(row[name]);
    if (typed === '') return null;
    const column = this.#columns.get(name)!;
    const outcome = cellQuantity(typed, column.dimension!, cell(row, column.unitColumn!), column.defaultUnit);
    const problem = outcome.ok ? impossibleIn(column, typed, outcome.value.value) : outcome;
    if (outcome.ok && problem === null) return outcome.value;
    this.remark(row, name, problem!.found, problem!.expected);
    return null;
  }

  /** The value alone. */
  value(row: Row, name: string): number | null {
    const typed = trimmed(row[name]);
    if (typed === '') return null;
    const column = this.#columns.get(name)!;
    const plain = plainCellValue(typed, column.dimension!, row[column.unitColumn!] ?? '', column.defaultUnit);
    if (!Number.isNaN(plain) && impossibleIn(column, typed, plain) === null) return plain;
    return this.quantity(row, name)?.value ?? null;
  }

  remark(row: Row, column: string, found: string, expected: string): void {
    this.#remarks.push(unreadable(this.#table, row, column, found, expected));
  }
}
