/**
 * What one table of the data package looks like: the one description from which rows are checked at every door, read by
 * the fold, written on export and documented. One file per entry kind, in `kinds/`.
 */
import type { Dimension } from '../units/dimension.ts';
import type { EntryKind } from './entry.ts';

/** How small a number may be before it is impossible rather than unlikely. */
export type Least = 'positive' | 'not negative' | 'any';

export interface Column {
  name: string;
  /** The column must be there and its cell filled. */
  required: boolean;
  /** What it holds, in plain words: published with the data. */
  meaning: string;
  /** The cell holds a quantity of this dimension, whose unit stands in `unitColumn`, in the cell itself, or is `defaultUnit`. */
  dimension?: Dimension;
  unitColumn?: string;
  /** Taken when neither the cell nor `unitColumn` names a unit. */
  defaultUnit?: string;
  /** The cell holds a bare number; its unit, if any, is not ours to judge. */
  number?: boolean;
  /** The cell holds a number in the row's `unit` column, whatever that measures; the rule of its kind judges it. */
  inUnitColumn?: boolean;
  /** The cell holds a place in a recording. */
  timecode?: boolean;
  /** The cell holds a limit of error, in the unit of the row's `unit` column or as the box prints it. */
  limit?: boolean;
  /** Smallest possible value of `dimension` or `number`. Default: positive for a quantity, any for temperatures. */
  least?: Least;
  /** What a label claims rather than a bench reading: a wider span of temperatures is possible. */
  label?: boolean;
  /** The cell holds a date or a date and time. */
  moment?: boolean;
  /** The only words allowed, in lower case; a blank is allowed when the column is not required. */
  values?: readonly string[];
  /** The cell is the key of a row of that kind. */
  refersTo?: EntryKind;
  /** With `refersTo`: when nothing of that kind is described at all, the name may stand alone. */
  mayBeUndescribed?: boolean;
  /** The column must be there, its cell may be blank (a count has no unit). */
  mayBeBlank?: boolean;
}

export interface TableShape {
  kind: EntryKind;
  /** File of the data package. */
  file: string;
  /** Columns that together name a row: a later row with the same key corrects the earlier. null: every row stands for itself. */
  key: readonly string[] | null;
  columns: readonly Column[];
}

/** A column that holds words. */
export const text = (name: string, meaning: string, more: Partial<Column> = {}): Column => ({
  name,
  required: false,
  meaning,
  ...more,
});

/** A column that must be filled. */
export const needed = (name: string, meaning: string, more: Partial<Column> = {}): Column => ({
  name,
  required: true,
  meaning,
  ...more,
});

/** A column that holds a quantity, with the column of its unit. */
export const quantity = (
  name: string,
  meaning: string,
  dimension: Dimension,
  unitColumn: string,
  more: Partial<Column> = {},
): Column => ({ name, required: false, meaning, dimension, unitColumn, ...more });

/** The key of a row as one text, or null when the table has no key. Blank parts count as empty. */
export function rowKey(shape: TableShape, row: Readonly<Record<string, string>>): string | null {
  if (shape.key === null) return null;
  if (shape.key.length === 1) return (row[shape.key[0]!] ?? '').trim();
  return shape.key.map((name) => (row[name] ?? '').trim()).join('\u001f');
}
