import { BRACKET_ROOM, bandBrackets } from '../bandBrackets.ts';
import { DISPLAY, group, label, line, rectangle, svgDocument } from '../svg.ts';
import { fittedLines, textWidth } from '../textFit.ts';
import type { Theme } from '../theme.ts';
import type { BendMethod, StripRow } from './bendMethods.ts';
import { type StripAxis, stripAxis } from './stripAxis.ts';

const HEAD = 30;
const NOTE = 13;
const NAME = 15;
/** Besley is broader than the sans that widths are reckoned by. */
const DISPLAY_BREADTH = 1.2;
const FIGURE = 14;
const BAR = 8;
const TICK = 16;
const LEAST_BAR = 4;
/** Below this width name and figure stand over the bar. px */
const ONE_LINE_FROM = 470;

export interface StripOptions {
  width: number;
  theme: Theme;
  as?: 'group' | 'picture';
}

export interface Strip {
  svg: string;
  width: number;
  height: number;
  /** Middle of each cable's row, px from the top. */
  middles: ReadonlyMap<string, number>;
}

interface Columns {
  stacked: boolean;
  rowHeight: number;
  /** Left end and width of the chart. */
  left: number;
  chart: number;
  nameWidth: number;
}

function columnsFor(rows: readonly StripRow[], width: number): Columns {
  const stacked = width < ONE_LINE_FROM;
  const text = Math.max(...rows.map((row) => textWidth(row.text, FIGURE)), 40) + 8;
  const left = BRACKET_ROOM;
  if (stacked) return { stacked, rowHeight: 54, left, chart: width - left - 8, nameWidth: width - left - text - 12 };
  const names = Math.max(...rows.map((row) => textWidth(row.name, NAME) * DISPLAY_BREADTH), 60);
  const nameWidth = Math.min(names, 0.32 * width);
  const start = left + nameWidth + 16;
  return { stacked, rowHeight: 36, left: start, chart: width - start - text - 16, nameWidth };
}

/**
 * How one method orders the cables: a row for each, the easiest to bend on top, its interval as a bar with a tick at the estimate.
 * Cables that cannot be parted stand behind one bracket, and a line is drawn only where a band ends.
 */
export function methodStrip(method: BendMethod, { width, theme, as }: StripOptions): Strip {
  const { rows } = method;
  const columns = columnsFor(rows, width);
  const axis = stripAxis(method, columns.chart);
  const height = HEAD + rows.length * columns.rowHeight + 1;
  const middles = new Map(rows.map((row, i) => [row.cable, HEAD + (i + 0.5) * columns.rowHeight]));
  const marks = group(
    {},
    head(method, axis, columns, width, theme),
    ...rows.map((row, i) => drawnRow(row, HEAD + i * columns.rowHeight, columns, axis, width, theme)),
    ...bandBrackets(
      rows.map((row) => row.band),
      { top: HEAD, rowHeight: columns.rowHeight, width, theme },
    ),
  );
  const svg = as === 'group' ? marks : svgDocument({ width, height, description: describe(method) }, marks);
  return { svg, width, height, middles };
}

/** All that the strip shows, as one text. */
export function describe({ head: title, note, unit, rows }: BendMethod): string {
  const said = rows.map((row) => {
    const tied = rows.filter((other) => other.band === row.band).length > 1 ? ', not parted from its band' : '';
    return `${row.name} ${row.text}, band ${row.band}${tied}`;
  });
  return `${title}, ${unit}, ${note}, the easiest first: ${said.join('; ')}.`;
}

function head(method: BendMethod, axis: StripAxis, { left, chart }: Columns, width: number, theme: Theme): string {
  const small = { 'font-size': NOTE, fill: theme.ink2 };
  const ends = method.numbers
    ? []
    : [
        label(left, HEAD - 11, 'easier', small),
        label(left + chart, HEAD - 11, 'stiffer', { ...small, 'text-anchor': 'end' }),
      ];
  let taken = Number.NEGATIVE_INFINITY;
  const ticks = axis.ticks.map(({ at, text }) => {
    const x = left + at;
    const half = textWidth(text, NOTE) / 2;
    const mark = line(x, HEAD - 6, x, HEAD, { stroke: theme.edge, 'stroke-width': 1 });
    if (x - half < taken + 6 || x + half > width) return mark;
    taken = x + half;
    return mark + label(x, HEAD - 11, text, { ...small, 'text-anchor': 'middle' });
  });
  return group({}, line(0, HEAD, width, HEAD, { stroke: theme.ink, 'stroke-width': 1 }), ...ticks, ...ends);
}

function drawnRow(row: StripRow, top: number, c: Columns, axis: StripAxis, width: number, theme: Theme): string {
  const textY = c.stacked ? top + 20 : top + c.rowHeight / 2 + 5;
  const barY = c.stacked ? top + 38 : top + c.rowHeight / 2;
  const [name = ''] = fittedLines(row.name === '' ? 'no name' : row.name, c.nameWidth / DISPLAY_BREADTH, NAME, 1);
  const step = row.figures.length > 1 ? BAR + 3 : 0;
  const first = barY - ((row.figures.length - 1) * step) / 2;
  return group(
    {},
    label(BRACKET_ROOM, textY, name, {
      'font-family': DISPLAY,
      'font-size': NAME,
      'font-weight': '600',
      fill: theme.ink,
    }),
    line(c.left, barY, c.left + c.chart, barY, { stroke: theme.rule, 'stroke-width': 1 }),
    ...row.figures.map((figure, i) => {
      const y = first + i * step;
      const ends = [axis.at(figure.interval[0]), axis.at(figure.interval[1])].sort((a, b) => a - b);
      const wide = Math.max(LEAST_BAR, ends[1]! - ends[0]!);
      const x = c.left + (ends[0]! + ends[1]! - wide) / 2;
      const tall = step === 0 ? TICK : BAR + 3;
      const fill = figure.open ? { fill: theme.ground, stroke: theme.edge, 'stroke-width': 1.5 } : { fill: theme.edge };
      return (
        rectangle(x, y - BAR / 2, wide, BAR, fill) +
        rectangle(c.left + axis.at(figure.value) - 1, y - tall / 2, 2, tall, { fill: theme.ink })
      );
    }),
    label(width, textY, row.text, {
      'font-size': FIGURE,
      'font-weight': '600',
      'text-anchor': 'end',
      fill: theme.ink,
    }),
  );
}
