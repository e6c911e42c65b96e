import { BRACKET_ROOM, bandBrackets } from '../bandBrackets.ts';
import {
  arrow,
  BAR,
  bracketedColumns,
  headTicks,
  LEAST_BAR,
  rowFigure,
  rowName,
  type StripColumns,
  TICK,
} from '../cableStrip.ts';
import { circle, element, group, line, rectangle, round, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';
import { type LastingAxis, lastingAxis } from './lastingAxis.ts';
import type { LastingChart, LastingRow } from './lastingChart.ts';

const HEAD = 30;
const DOT = 3.5;
/** How far dots of one amount stand apart, px. */
const STACKED = 8;
const COLUMNS = { oneLineFrom: 560, mostNames: 0.28, gap: 20 };
/** With the pieces below the bar, and without. px */
const LEVEL_ROW = { dotted: 52, plain: 36 };

/**
 * What the pieces of each cable lasted in one test: the amount that half of such pieces last as a tick in its interval, the pieces
 * themselves as dots below it, survivors open and with an arrow because they would have gone on. An end that the pieces do not set
 * runs off the chart with an arrow. Cables that are not parted stand behind one bracket.
 */
export function lastingStrip(chart: LastingChart, { width, theme }: { width: number; theme: Theme }): string {
  const { rows, banded } = chart;
  const level = rows.some((row) => row.pieces.length > 0) ? LEVEL_ROW.dotted : LEVEL_ROW.plain;
  const columns = bracketedColumns(rows, width, { ...COLUMNS, rowHeight: { stacked: 74, level } });
  const axis = lastingAxis(chart, columns.chart);
  const height = HEAD + rows.length * columns.rowHeight + 1;
  const bands = rows.map(({ band }, i) => (banded ? band : -i));
  const lines = banded ? { top: HEAD, rowHeight: columns.rowHeight, width, theme } : null;
  return svgDocument(
    { width, height, description: describe(chart) },
    head(axis, columns, width, theme),
    ...rows.map((row, i) => drawnRow(row, HEAD + i * columns.rowHeight, columns, axis, width, theme)),
    ...(lines
      ? bandBrackets(bands, lines)
      : [line(0, height - 1, width, height - 1, { stroke: theme.rule, 'stroke-width': 1 })]),
  );
}

/** All that the strip shows, as one text. */
export function describe({ test, unit, scale, rows, banded }: LastingChart): string {
  const what = scale === 'share' ? 'share that came through' : `what half of such pieces last, ${unit}`;
  const said = rows.map(({ name, text, band, pieces }) => {
    const of = banded && band !== null && rows.length > 1 ? `, band ${band}` : '';
    const survivors = pieces.filter((p) => p.survived).length;
    const lived = survivors === 0 ? '' : `, ${survivors} of ${pieces.length} survived`;
    return `${name} ${text}${lived}${of}`;
  });
  return `${test}, ${what}, the longest lasting first: ${said.join('; ')}.`;
}

function head(axis: LastingAxis, { left, chart }: StripColumns, width: number, theme: Theme): string {
  // The outermost ticks keep their words within the picture.
  const middle = (x: number, half: number) => Math.min(x, width - half);
  return group(
    {},
    line(0, HEAD, width, HEAD, { stroke: theme.ink, 'stroke-width': 1 }),
    ...headTicks(axis.ticks, { left, foot: HEAD, theme, middle }),
    line(left, HEAD, left + chart, HEAD, { stroke: theme.ink, 'stroke-width': 1 }),
  );
}

function drawnRow(
  row: LastingRow,
  top: number,
  c: StripColumns,
  axis: LastingAxis,
  width: number,
  theme: Theme,
): string {
  const dotted = row.pieces.length > 0;
  const textY = c.stacked ? top + 20 : top + c.rowHeight / 2 + 5;
  const barY = c.stacked ? top + 38 : top + c.rowHeight / 2 - (dotted ? 9 : 0);
  return group(
    {},
    rowName(BRACKET_ROOM, textY, row.name, c.nameWidth, theme),
    line(c.left, barY, c.left + c.chart, barY, { stroke: theme.rule, 'stroke-width': 1 }),
    interval(row, barY, c, axis, theme),
    ...dots(row, barY + (c.stacked ? 18 : 17), c, axis, theme),
    rowFigure(width, textY, row.text, theme),
  );
}

/** The pieces; those of one amount stand one over the other. */
function dots({ pieces }: LastingRow, y: number, c: StripColumns, axis: LastingAxis, theme: Theme): string[] {
  return pieces.map(({ amount, survived }, i) => {
    const alike = pieces.filter((p) => p.amount === amount);
    const place = pieces.slice(0, i).filter((p) => p.amount === amount).length;
    const down = (place - (alike.length - 1) / 2) * Math.min(STACKED, (2 * STACKED) / alike.length);
    return pieceDot(c.left + axis.at(amount), y + down, survived, theme);
  });
}

/** The bar between two ends; one that is not set, or lies beyond the axis, is an arrow at the edge of the chart. */
function interval(
  { value, low, high }: LastingRow,
  y: number,
  c: StripColumns,
  axis: LastingAxis,
  theme: Theme,
): string {
  const marks: string[] = [];
  if (low !== null || high !== null) {
    const from = low === null ? 0 : axis.at(low);
    const to = high === null ? c.chart : axis.at(high);
    const wide = Math.max(LEAST_BAR, to - from);
    const x = Math.min(c.left + (from + to - wide) / 2, c.left + c.chart - wide);
    marks.push(rectangle(x, y - BAR / 2, wide, BAR, { fill: theme.edge }));
    if (low === null || (low > 0 && from <= 0)) marks.push(arrow(c.left, y, -1, theme));
    if (high === null || (to >= c.chart - 0.5 && high !== 1)) marks.push(arrow(c.left + c.chart, y, 1, theme));
  }
  if (value !== null) marks.push(rectangle(c.left + axis.at(value) - 1, y - TICK / 2, 2, TICK, { fill: theme.ink }));
  return marks.join('');
}

/** A failure as a full dot; a survivor as an open one that points on. */
export function pieceDot(x: number, y: number, survived: boolean, theme: Theme): string {
  if (!survived) return circle(x, y, DOT, { fill: theme.ink });
  const d = `M${round(x + DOT)} ${round(y)}h6m-3 -3l3 3l-3 3`;
  return (
    circle(x, y, DOT, { fill: theme.ground, stroke: theme.ink, 'stroke-width': 1.5 }) +
    element('path', { d, fill: 'none', stroke: theme.ink, 'stroke-width': 1.5 })
  );
}
