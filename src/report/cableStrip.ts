/** What strips with a row for each cable have in common: sizes, columns, ticks over the rows, name and figure of a row, arrows. */
import { BRACKET_ROOM } from './bandBrackets.ts';
import { nameLabel } from './nameLabel.ts';
import { element, label, line, round } from './svg.ts';
import { textWidth } from './textFit.ts';
import type { Theme } from './theme.ts';

/** Size of the words over the rows, px. */
export const NOTE = 13;
/** Height of an interval's bar, and of the tick at its estimate; an interval narrower than the least could not be seen. px */
export const BAR = 8;
export const TICK = 16;
export const LEAST_BAR = 4;
const NAME = 15;
const FIGURE = 14;
/** The display face is this much broader than the text face that widths are reckoned by. */
const NAME_BREADTH = 1.2;
const LEAST_NAMES = 60;
const LEAST_FIGURES = 40;
const ARROW = { half: 6, long: 8 };
/** Words of ticks stand so far apart at least, px. */
const BETWEEN_TICKS = 6;

export interface StripColumns {
  /** Name and figure stand over the bar. */
  stacked: boolean;
  rowHeight: number;
  /** Left end and width of the chart. */
  left: number;
  chart: number;
  nameWidth: number;
}

type Words = readonly { name: string; text: string }[];

/** Room that the longest figure takes, px. */
export const figureRoom = (rows: Words): number =>
  Math.max(LEAST_FIGURES, ...rows.map(({ text }) => textWidth(text, FIGURE)));

/** Room that the longest name takes, `most` at most, px. */
export const nameRoom = (rows: Words, most: number): number =>
  Math.min(most, Math.max(LEAST_NAMES, ...rows.map(({ name }) => textWidth(name, NAME * NAME_BREADTH))));

export interface BracketedColumns {
  /** Below this width name and figure stand over the bar, px. */
  oneLineFrom: number;
  /** Share of the width that names may take. */
  mostNames: number;
  /** Room between chart and figures, px. */
  gap: number;
  rowHeight: { stacked: number; level: number };
}

/** Columns of a strip with brackets before its names. */
export function bracketedColumns(
  rows: Words,
  width: number,
  { oneLineFrom, mostNames, gap, rowHeight }: BracketedColumns,
): StripColumns {
  const figures = figureRoom(rows) + 8;
  if (width < oneLineFrom) {
    const left = BRACKET_ROOM;
    const nameWidth = width - left - figures - 12;
    return { stacked: true, rowHeight: rowHeight.stacked, left, chart: width - left - 8, nameWidth };
  }
  const nameWidth = nameRoom(rows, mostNames * width);
  const left = BRACKET_ROOM + nameWidth + 16;
  return { stacked: false, rowHeight: rowHeight.level, left, chart: width - left - figures - gap, nameWidth };
}

/** The name of a row, `y` its baseline. */
export const rowName = (x: number, y: number, name: string, width: number, theme: Theme): string =>
  nameLabel(x, y, name, { size: NAME, width, theme, breadth: NAME_BREADTH });

/** The figure of a row, ending at `x`. */
export const rowFigure = (x: number, y: number, text: string, theme: Theme): string =>
  label(x, y, text, { 'font-size': FIGURE, 'font-weight': '600', 'text-anchor': 'end', fill: theme.ink });

export interface TickLine {
  /** px from the left: of the chart, and of the line that the ticks stand on from the top. */
  left: number;
  foot: number;
  theme: Theme;
  /** Where the middle of words that reach `half` to each side goes; null leaves them out. */
  middle: (x: number, half: number) => number | null;
}

/** Ticks over the rows; words that would touch the ones before are left out. */
export function headTicks(
  ticks: readonly { at: number; text: string }[],
  { left, foot, theme, middle }: TickLine,
): string[] {
  let taken = Number.NEGATIVE_INFINITY;
  return ticks.map(({ at, text }) => {
    const x = left + at;
    const half = textWidth(text, NOTE) / 2;
    const mark = line(x, foot - 6, x, foot, { stroke: theme.edge, 'stroke-width': 1 });
    const words = middle(x, half);
    if (words === null || words - half < taken + BETWEEN_TICKS) return mark;
    taken = words + half;
    return mark + label(words, foot - 11, text, { 'font-size': NOTE, fill: theme.ink2, 'text-anchor': 'middle' });
  });
}

/** An end that lies beyond the chart, pointing on to the right (1) or the left (-1). */
export function arrow(x: number, y: number, way: 1 | -1, theme: Theme): string {
  const { half, long } = ARROW;
  const d = `M${round(x)} ${round(y - half)}L${round(x + way * long)} ${round(y)}L${round(x)} ${round(y + half)}Z`;
  return element('path', { d, fill: theme.edge });
}
