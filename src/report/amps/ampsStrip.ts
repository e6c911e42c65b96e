import { scaleLinear } from 'd3-scale';
import {
  arrow,
  BAR,
  figureRoom,
  headTicks,
  LEAST_BAR,
  NOTE,
  nameRoom,
  rowFigure,
  rowName,
  type StripColumns,
  TICK,
} from '../cableStrip.ts';
import { ruledRectangle } from '../hatch.ts';
import { isRuled, type MetalKind, metalFill } from '../metalKind.ts';
import { element, group, label, line, rectangle, svgDocument } from '../svg.ts';
import { textWidth } from '../textFit.ts';
import type { Theme } from '../theme.ts';

/** One measured cable on a strip: a figure with its ends, in the unit of the strip. */
export interface AmpsRow {
  name: string;
  metal: MetalKind;
  value: number;
  low: number;
  high: number;
  /** The figure in words, at the right. */
  text: string;
  /** The row's own limit, where rows differ; the strip's is drawn through all. */
  limit?: number;
}

export interface AmpsStrip {
  /** What the figures are, for those who hear the page. */
  title: string;
  rows: readonly AmpsRow[];
  /** A line through all rows, with its words. */
  limit: { value: number; text: string } | null;
  /** True where the axis begins at nothing. */
  fromZero?: boolean;
}

const HEAD = 44;
const ROW = 36;
const STACKED_ROW = 52;
const RULING = 4;
/** Below this width name and figure stand over the bar. px */
const ONE_LINE_FROM = 560;
const PX_PER_TICK = 70;
/** An interval may reach this many times as far as the figures and limits do before the axis cuts it off with an arrow. */
const REACH = 1.6;

function columnsFor(rows: readonly AmpsRow[], width: number): StripColumns {
  const text = figureRoom(rows) + 10;
  if (width < ONE_LINE_FROM)
    return { stacked: true, rowHeight: STACKED_ROW, left: 6, chart: width - 14, nameWidth: width - text - 8 };
  const nameWidth = nameRoom(rows, 0.28 * width);
  const left = nameWidth + 24;
  return { stacked: false, rowHeight: ROW, left, chart: width - left - text - 14, nameWidth };
}

type Axis = ReturnType<typeof scaleLinear<number, number>>;

/** The axis that holds every figure and limit, and the intervals as far as that leaves something to see. */
function axisOf({ rows, limit, fromZero }: AmpsStrip, width: number): Axis {
  const finite = (values: number[]) => values.filter(Number.isFinite);
  const firm = finite([
    ...rows.map((r) => r.value),
    ...rows.flatMap((r) => r.limit ?? []),
    ...(limit ? [limit.value] : []),
  ]);
  const ends = finite(rows.flatMap((r) => [r.low, r.high]));
  const all = firm.length > 0 ? firm : [0, 1];
  const [least, most] = [Math.min(...all, ...(fromZero ? [0] : [])), Math.max(...all)];
  const span = most - least || Math.abs(most) * 0.1 || 1;
  const within = ends.filter((x) => x >= least - REACH * span && x <= most + REACH * span);
  const [low, high] = [Math.min(least, ...within), Math.max(most, ...within)];
  const pad = 0.04 * (high - low || span);
  const from = fromZero ? Math.min(0, low) : low - pad;
  return scaleLinear()
    .domain([from, high + pad])
    .range([0, width])
    .clamp(true);
}

/**
 * One interval strip for each measured cable on one axis: bars in the colour of the metal found hold the figure with all its doubt,
 * a tick stands at the estimate, and a limit runs through the rows. An end that lies beyond the axis is an arrow.
 */
export function ampsStrip(strip: AmpsStrip, { width, theme }: { width: number; theme: Theme }): string {
  const columns = columnsFor(strip.rows, width);
  const axis = axisOf(strip, columns.chart);
  const height = HEAD + strip.rows.length * columns.rowHeight + 1;
  return svgDocument(
    { width, height, description: describeStrip(strip) },
    head(strip, axis, columns, width, theme),
    ...strip.rows.map((row, i) => drawnRow(row, i, columns, axis, width, theme)),
    ...limitLines(strip, axis, columns, height, theme),
    line(0, height - 1, width, height - 1, { stroke: theme.rule, 'stroke-width': 1 }),
  );
}

/** All that the strip shows, as one text. */
export function describeStrip({ title, rows, limit }: AmpsStrip): string {
  const said = rows.map(({ name, text }) => `${name} ${text}`).join('; ');
  return `${title}: ${said}${limit ? `; the limit is ${limit.text}` : ''}.`;
}

function head({ limit }: AmpsStrip, axis: Axis, { left, chart }: StripColumns, width: number, theme: Theme): string {
  const count = Math.max(2, Math.round(chart / PX_PER_TICK));
  const write = axis.tickFormat(count);
  const at = limit === null ? null : axis(limit.value);
  const ticks = axis.ticks(count).map((value) => ({ at: axis(value), text: write(value).replace('-', '−') }));
  // A figure that the limit's line would run through is left out.
  const middle = (x: number, half: number) =>
    at !== null && Math.abs(left + at - x) < half + 3 ? null : Math.min(x, width - half);
  return group(
    {},
    line(0, HEAD, width, HEAD, { stroke: theme.ink, 'stroke-width': 1 }),
    ...headTicks(ticks, { left, foot: HEAD, theme, middle }),
    at === null ? '' : limitText(limit!.text, left + at, left, chart, theme),
  );
}

/** The limit's words above the ticks, before its line where there is room and else behind it. */
function limitText(text: string, x: number, left: number, chart: number, theme: Theme): string {
  const long = textWidth(text, NOTE) + 6;
  const before = x - left >= long || x + long > left + chart;
  return label(Math.max(x, before ? long : 0) + (before ? -5 : 5), 12, text, {
    'font-size': NOTE,
    'font-weight': '600',
    fill: theme.ink,
    'text-anchor': before ? 'end' : 'start',
  });
}

/** The limit through all rows; where figures stand over their bars, through the bars alone, so that it crosses no words. */
function limitLines({ limit, rows }: AmpsStrip, axis: Axis, c: StripColumns, height: number, theme: Theme): string[] {
  if (limit === null) return [];
  const x = c.left + axis(limit.value);
  const stroke = { stroke: theme.ink, 'stroke-width': 1.5 };
  if (!c.stacked) return [line(x, 2, x, height - 1, stroke)];
  const head = line(x, 2, x, HEAD, stroke);
  return [head, ...rows.map((_, i) => line(x, barOf(i, c) - TICK * 0.7, x, barOf(i, c) + TICK * 0.7, stroke))];
}

/** Where the bar of a row lies, px from the top. */
const barOf = (row: number, { stacked, rowHeight }: StripColumns): number =>
  HEAD + row * rowHeight + (stacked ? 38 : rowHeight / 2);

function drawnRow(row: AmpsRow, i: number, c: StripColumns, axis: Axis, width: number, theme: Theme): string {
  const top = HEAD + i * c.rowHeight;
  const textY = c.stacked ? top + 20 : top + c.rowHeight / 2 + 5;
  const barY = barOf(i, c);
  return group(
    {},
    rowName(0, textY, row.name, c.nameWidth, theme),
    line(c.left, barY, c.left + c.chart, barY, { stroke: theme.rule, 'stroke-width': 1 }),
    interval(row, c, barY, axis, theme),
    rowFigure(width, textY, row.text, theme),
  );
}

function interval(
  { value, low, high, metal, limit }: AmpsRow,
  c: StripColumns,
  y: number,
  axis: Axis,
  theme: Theme,
): string {
  const marks: string[] = [];
  if (Number.isFinite(low) || Number.isFinite(high)) {
    const [from, to] = [Number.isFinite(low) ? axis(low) : 0, Number.isFinite(high) ? axis(high) : c.chart];
    const wide = Math.max(LEAST_BAR, to - from);
    const x = c.left + Math.min(Math.max(0, (from + to - wide) / 2), c.chart - wide);
    marks.push(bar(x, y, wide, metal, theme));
    const [first, last] = axis.domain() as [number, number];
    if (!Number.isFinite(high) || high > last) marks.push(arrow(c.left + c.chart, y, 1, theme));
    if (!Number.isFinite(low) || low < first) marks.push(arrow(c.left, y, -1, theme));
  }
  if (limit !== undefined) {
    const x = c.left + axis(limit);
    marks.push(line(x, y - TICK, x, y + TICK, { stroke: theme.ink, 'stroke-width': 1.5 }));
  }
  if (Number.isFinite(value))
    marks.push(rectangle(c.left + axis(value) - 1, y - TICK / 2, 2, TICK, { fill: theme.ink }));
  return marks.join('');
}

function bar(x: number, y: number, width: number, metal: MetalKind, theme: Theme): string {
  const fill = metalFill(metal, theme) ?? theme.edge;
  const solid = rectangle(x, y - BAR / 2, width, BAR, { fill });
  if (!isRuled(metal)) return solid;
  const d = ruledRectangle(x, y - BAR / 2, width, BAR, RULING, 'rising');
  return solid + element('path', { d, stroke: theme.bed, 'stroke-width': 1, fill: 'none' });
}
