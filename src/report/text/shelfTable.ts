import type { Measured } from '../../findings/schema.ts';
import type { ShelfCable } from '../../findings/shapes/shelf.ts';
import { figureColumn } from '../figureColumn.ts';
import { type FigureUnits, UNKNOWN } from '../figures.ts';
import { blockText, tableWidthFor } from './assayPage.ts';
import { type Planned, plannedRow, roomOf } from './cableTable.ts';
import { displayWidth, printable } from './displayWidth.ts';
import { ASCII, LINE_DRAWING } from './glyphs.ts';
import { type Cell, tableHead } from './textTable.ts';

export interface ShelfTableOptions {
  units?: FigureUnits;
  width?: number;
  ascii?: boolean;
}

type ShelfColumn = Planned<ShelfCable>;

const LEAST_NAME = 14;
const WIDEST_NAME = 34;

const words = (head: string[], width: number, cell: ShelfColumn['cell']): ShelfColumn => ({
  column: { head, width, side: 'left' },
  cell,
});
const figures = (head: string[], width: number, cell: ShelfColumn['cell']): ShelfColumn => ({
  column: { head, width, side: 'right' },
  cell,
});

/** A column of findings, rounded as one like every table's, and as wide as its longest figure: a unit that breaks is no unit. */
function found(
  head: string[],
  lines: readonly ShelfCable[],
  of: (line: ShelfCable) => Measured | null,
  units: FigureUnits,
  write: (text: string) => string,
): ShelfColumn {
  const texts = figureColumn(lines.map(of), units).map(({ value, plusMinus, unit, condition }) =>
    [plusMinus === '' ? value : `${value} ± ${plusMinus}`, unit, condition].filter((part) => part !== '').join(' '),
  );
  const textOf = new Map(lines.map((line, at) => [line, texts[at]!]));
  // Without the condition, which may go on below.
  const figure = (text: string) => displayWidth(write(text.replace(/ if .*$/, '')));
  const width = Math.max(...[...head, ...texts].map(figure));
  return figures(head, width, (line) => textOf.get(line) ?? UNKNOWN);
}

/** In the order of their weight: what does not fit beside a readable name is left out from the end. */
const columnsIn = (
  lines: readonly ShelfCable[],
  units: FigureUnits,
  write: (text: string) => string,
): ShelfColumn[] => [
  words(['Label'], 10, ({ label }) => [label.size || UNKNOWN, label.metal]),
  found(['Metal area'], lines, (line) => line.conductor_area, units, write),
  words(['Metal', 'found'], 12, (line) => line.metal_found ?? 'not settled'),
  found(['Ohms', 'at 20 °C'], lines, (line) => line.resistance_20C, units, write),
  figures(['Price', 'a metre'], 11, ({ price_per_m: price, currency }) =>
    price === null ? UNKNOWN : `${price.toFixed(2)} ${currency}`.trim(),
  ),
  words(['Last read'], 10, (line) => line.day ?? UNKNOWN),
  found(['Stiffness'], lines, (line) => line.bending_stiffness, units, write),
];

/** Cables of the shelf for a terminal: name and trial, label, what was found, price and day. Ends with a line break. */
export function shelfTable(lines: readonly ShelfCable[], options: ShelfTableOptions = {}): string {
  const { units = {}, ascii = false } = options;
  const width = tableWidthFor(options.width);
  const glyphs = ascii ? ASCII : LINE_DRAWING;
  const shown = (text: string) => glyphs.write(printable(text)).trim();
  const kept = columnsIn(lines, units, shown);
  const room = () => width - roomOf(kept);
  while (kept.length > 3 && room() < LEAST_NAME) kept.pop();
  const longest = Math.max(
    LEAST_NAME,
    ...lines.map(({ name, title }) => Math.max(displayWidth(name), displayWidth(title))),
  );
  const name: ShelfColumn = {
    column: { head: ['Cable', 'Trial'], width: Math.min(longest, WIDEST_NAME, room()), side: 'left', cut: true },
    cell: (line) => [line.name || line.cable, `  ${line.title}`],
  };
  const cellOf = (cell: Cell) =>
    typeof cell === 'string' ? shown(cell) : cell.map((text) => glyphs.write(printable(text)).trimEnd());
  const plan: ShelfColumn[] = [name, ...kept].map(({ column, cell }) => ({
    column: { ...column, head: column.head.map(shown) },
    cell: (line) => cellOf(cell(line)),
  }));
  const head = tableHead(
    plan.map(({ column }) => column),
    glyphs.rule,
  );
  return blockText([[...head, ...lines.flatMap((line) => plannedRow(plan, line, glyphs))]]);
}
