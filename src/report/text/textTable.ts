import { pad, truncate } from './displayWidth.ts';
import { wrap } from './wrap.ts';

export interface TextColumn {
  head: string[];
  width: number;
  side: 'left' | 'right';
  /** A cell too long for its column goes on below (the default), or is cut with an ellipsis. */
  cut?: boolean;
}

/** A cell is one or more texts, each beginning on a line of its own. */
export type Cell = string | string[];

const GAP = '  ';

/** Width of a table of these columns. */
export function tableWidth(columns: readonly TextColumn[]): number {
  return columns.reduce((sum, column) => sum + column.width, 0) + GAP.length * (columns.length - 1);
}

/** Heads standing on the rule, so that short ones begin lower. */
export function tableHead(columns: readonly TextColumn[], rule: string): string[] {
  const deepest = Math.max(...columns.map((column) => column.head.length));
  const heads = columns.map(({ head }) => [...Array<string>(deepest - head.length).fill(''), ...head]);
  return [...tableRow(columns, heads, ''), rule.repeat(tableWidth(columns))];
}

/** One row, as many lines as its deepest cell, none wider than the columns and the gaps between them. */
export function tableRow(columns: readonly TextColumn[], row: readonly Cell[], ellipsis: string): string[] {
  const cells = columns.map((column, i) => cellLines(column, row[i] ?? '', ellipsis));
  const height = Math.max(...cells.map((lines) => lines.length));
  return Array.from({ length: height }, (_, line) =>
    columns
      .map((column, i) => pad(cells[i]![line] ?? '', column.width, column.side, ellipsis))
      .join(GAP)
      .trimEnd(),
  );
}

function cellLines(column: TextColumn, cell: Cell, ellipsis: string): string[] {
  const texts = typeof cell === 'string' ? [cell] : cell;
  return texts.flatMap((text) =>
    column.cut === true ? [truncate(text, column.width, ellipsis)] : wrap(text, column.width),
  );
}
