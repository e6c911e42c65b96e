/** The text of a cell as people type it, value and unit in one, and its way back into the row's two cells. */
import type { EntryKind } from '../../../../journal/entry.ts';
import type { Column } from '../../../../journal/tableShape.ts';
import { tableOfKind } from '../../../../journal/tables.ts';
import { readStrandsText, strandsWords } from '../../../../units/strandsText.ts';
import type { Row } from './correct.ts';

export function columnOf(kind: EntryKind, name: string): Column | null {
  return tableOfKind(kind)?.columns.find((column) => column.name === name) ?? null;
}

/** What stands in a cell, with its unit behind it where that has a cell of its own. */
export function cellText(kind: EntryKind, row: Row, name: string): string {
  if (isLimit(kind, name)) return limitText(row);
  const typed = row[name] ?? '';
  const unit = unitCell(kind, name);
  const own = unit === null ? '' : (row[unit] ?? '').trim();
  return typed.trim() === '' || own === '' ? typed : `${typed} ${own}`;
}

/** A unit after a number: letters, signs and what they are over. */
const UNIT_BEHIND = /[\d½⅓⅔¼¾⅕-⅞]\s*([\p{L}°µ%′″'"][^\d]*)$/u;

/**
 * The cells that a typed text changes. A number without a unit keeps the unit that stood there before, so that correcting
 * `10 ft` to `12` does not make metres of feet; a text with a unit brings its own.
 */
export function cellChanges(kind: EntryKind, row: Row, name: string, typed: string): Row {
  // One field holds the whole limit, so what is typed in it takes the place of all its parts.
  if (isLimit(kind, name)) return { max_error: typed, max_error_percent: '', max_error_counts: '' };
  const strands = strandsIn(kind, name, typed);
  if (strands !== null)
    return {
      claimed_strands: strands.count,
      claimed_strand_diameter: strands.diameter,
      claimed_strand_unit: strands.unit,
    };
  const unit = unitCell(kind, name);
  if (unit === null) return { [name]: typed };
  if (typed.trim() === '' || UNIT_BEHIND.test(typed)) return { [name]: typed, [unit]: '' };
  const kept = (row[unit] ?? '').trim() || (UNIT_BEHIND.exec(row[name] ?? '')?.[1] ?? '').trim();
  return { [name]: typed, [unit]: kept };
}

/** `665 x 0.25`, as labels print it, typed as the number of strands. */
const strandsIn = (kind: EntryKind, name: string, typed: string) =>
  kind === 'cable' && name === 'claimed_strands' ? readStrandsText(typed) : null;

/** What to say of a text that went into several cells; empty where it went into its own. */
export function takenApart(kind: EntryKind, name: string, typed: string): string {
  const strands = strandsIn(kind, name, typed);
  return strands === null ? '' : `Read as ${strandsWords(strands)}: the diameter is under “More of the label”.`;
}

const isLimit = (kind: EntryKind, name: string): boolean => kind === 'instrument' && name === 'max_error';

/** A limit of error as the box prints it, whether it was given in one cell or in parts. */
function limitText(row: Row): string {
  const part = (name: string) => (row[name] ?? '').trim();
  const percent = part('max_error_percent').replace(/\s*%$/, '');
  const counts = part('max_error_counts');
  return [part('max_error'), percent && `${percent} %`, counts && `${counts} ${counts === '1' ? 'count' : 'counts'}`]
    .filter((text) => text !== '')
    .join(' + ');
}

function unitCell(kind: EntryKind, name: string): string | null {
  const unit = columnOf(kind, name)?.unitColumn ?? '';
  return unit === '' ? null : unit;
}
