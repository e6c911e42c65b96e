import { BRACKET_ROOM, bandBrackets } from '../bandBrackets.ts';
import {
  BAR,
  bracketedColumns,
  headTicks,
  LEAST_BAR,
  NOTE,
  rowFigure,
  rowName,
  type StripColumns,
  TICK,
} from '../cableStrip.ts';
import { group, label, line, rectangle, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';
import type { BendMethod, StripRow } from './bendMethods.ts';
import { type StripAxis, stripAxis } from './stripAxis.ts';

const HEAD = 30;
const COLUMNS = { oneLineFrom: 470, mostNames: 0.32, gap: 16, rowHeight: { stacked: 54, level: 36 } };

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

/**
 * How one method orders the cables: a row for each, the easiest to bend on top, its interval as a bar with a tick at the estimate.
 * Cables that cannot be parted stand behind one bracket, and a line is drawn only where a band ends.
 */
export function methodStrip(method: BendMethod, { width, theme, as }: StripOptions): Strip {
  const { rows } = method;
  const columns = bracketedColumns(rows, width, COLUMNS);
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

function head(method: BendMethod, axis: StripAxis, { left, chart }: StripColumns, width: number, theme: Theme): string {
  const small = { 'font-size': NOTE, fill: theme.ink2 };
  const ends = method.numbers
    ? []
    : [
        label(left, HEAD - 11, 'easier', small),
        label(left + chart, HEAD - 11, 'stiffer', { ...small, 'text-anchor': 'end' }),
      ];
  const middle = (x: number, half: number) => (x + half > width ? null : x);
  const ticks = headTicks(axis.ticks, { left, foot: HEAD, theme, middle });
  return group({}, line(0, HEAD, width, HEAD, { stroke: theme.ink, 'stroke-width': 1 }), ...ticks, ...ends);
}

function drawnRow(row: StripRow, top: number, c: StripColumns, axis: StripAxis, width: number, theme: Theme): string {
  const textY = c.stacked ? top + 20 : top + c.rowHeight / 2 + 5;
  const barY = c.stacked ? top + 38 : top + c.rowHeight / 2;
  const step = row.figures.length > 1 ? BAR + 3 : 0;
  const first = barY - ((row.figures.length - 1) * step) / 2;
  return group(
    {},
    rowName(BRACKET_ROOM, textY, row.name, c.nameWidth, theme),
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
    rowFigure(width, textY, row.text, theme),
  );
}
