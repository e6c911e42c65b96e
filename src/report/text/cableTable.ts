import { type AssayPage, GAP, LEAST_NAME, shown } from './assayPage.ts';
import { displayWidth } from './displayWidth.ts';
import type { Glyphs } from './glyphs.ts';
import { type Cell, type TextColumn, tableHead, tableRow } from './textTable.ts';

/** A column with what stands in it. */
export interface Planned<Row> {
  column: TextColumn;
  cell: (row: Row) => Cell;
}

/** Names wider than this push the figures too far from them. */
const WIDEST_NAME = 24;

/** A column of figures under its head. */
export function figures<Row>(
  page: AssayPage,
  head: readonly string[],
  width: number,
  cell: (row: Row) => string,
): Planned<Row> {
  return {
    column: { head: head.map((line) => shown(line, page)), width, side: 'right' },
    cell: (row) => shown(cell(row), page),
  };
}

/** Room that columns take beside the name. */
export const roomOf = (columns: readonly { column: TextColumn }[]): number =>
  columns.reduce((sum, { column }) => sum + column.width + GAP, 0);

/** The lines of one row. */
export const plannedRow = <Row>(plan: readonly Planned<Row>[], row: Row, { ellipsis }: Glyphs): string[] =>
  tableRow(
    plan.map(({ column }) => column),
    plan.map(({ cell }) => cell(row)),
    ellipsis,
  );

/**
 * A table of cables by name with its head; columns that do not fit beside a readable name are left out from the right. No lines
 * without rows.
 *
 * @param widest most columns that the name takes
 */
export function cableTable<Row extends { name: string; cable?: string }>(
  page: AssayPage,
  rows: readonly Row[],
  columns: readonly Planned<Row>[],
  widest = WIDEST_NAME,
): string[] {
  if (rows.length === 0) return [];
  const kept = [...columns];
  while (kept.length > 1 && page.width - roomOf(kept) < LEAST_NAME) kept.pop();
  const nameOf = ({ name, cable = '' }: Row) => shown(name === '' ? cable : name, page);
  const longest = Math.max(LEAST_NAME, ...rows.map((row) => displayWidth(nameOf(row))));
  const width = Math.min(longest, widest, page.width - roomOf(kept));
  const plan: Planned<Row>[] = [{ column: { head: ['Cable'], width, side: 'left', cut: true }, cell: nameOf }, ...kept];
  const head = tableHead(
    plan.map(({ column }) => column),
    page.glyphs.rule,
  );
  return [...head, ...rows.flatMap((row) => plannedRow(plan, row, page.glyphs))];
}
