import type { Across, AcrossGroup, AcrossRow } from '../../findings/across/across.ts';
import { figureRoom, headTicks, nameRoom, rowFigure, rowName, TICK } from '../cableStrip.ts';
import { converted, type FigureUnits, inPercent, measuredText, percentText } from '../figures.ts';
import { type IntervalAxis, intervalAxis, positionOn } from '../intervalAxis.ts';
import { metalBar } from '../intervalBar.ts';
import { metalKind } from '../metalKind.ts';
import { label, line, rectangle, svgDocument } from '../svg.ts';
import { fittedLines } from '../textFit.ts';
import type { Theme } from '../theme.ts';
import { warmthText } from './warmthText.ts';

export interface AcrossChartOptions {
  width: number;
  theme: Theme;
  units: AcrossUnits;
}

/** The units in which a reader wants figures, and temperatures. */
export type AcrossUnits = FigureUnits & { temperature?: 'C' | 'F' };

/** Heights, px: of the axis, of a trial's line, and of a cable's row beside or under its name. */
const HEAD = 34;
const TRIAL = 34;
const ROW = { level: 34, stacked: 52 };
/** Below this width name and figure stand over the bar, px. */
const ONE_LINE_FROM = 620;
const MOST_NAMES = 0.34;
const GAP = 16;
const EDGE = 12;
const TRIAL_SIZE = 14;
/** Half of the cross lines at the ends of what the error between trials adds, px. */
const END = 5;

interface Columns {
  stacked: boolean;
  left: number;
  chart: number;
  names: number;
}

/** The value of one row as people read it. */
export const acrossText = (across: Across, row: AcrossRow, units: FigureUnits): string =>
  across.quantity.percent ? percentText(row.shown) : measuredText(row.shown, units);

/** A figure in the units of the axis. */
const placed = (across: Across, figure: AcrossRow['shown'], units: FigureUnits): AcrossRow['shown'] =>
  across.quantity.percent ? inPercent(figure) : { ...figure, ...converted(figure, { ...units, area: 'mm2' }) };

/** What is said of a trial over its cables: title, day, temperature. */
export function trialLine({ title, trial, day, temperature }: AcrossGroup, unit?: 'C' | 'F'): string {
  const warm = temperature === null ? 'temperature not noted' : warmthText(temperature, unit);
  return [title || trial, day ?? 'day not noted', warm].join(' · ');
}

/**
 * Chosen cables on one axis, trial by trial. The bar is what the cable's own trial found; a thin line with ends past it is what the
 * error between trials adds. A shifted figure has a bar only.
 */
export function acrossChart(across: Across, { width, theme, units }: AcrossChartOptions): string {
  const rows = across.groups.flatMap((group) => group.rows);
  if (rows.length === 0) return '';
  const figures = rows.flatMap(({ found, shown, way }) => [
    placed(across, shown, units),
    ...(way === 'widened' ? [placed(across, found, units)] : []),
  ]);
  const texts = rows.map((row) => ({ name: row.line.name || row.line.cable, text: acrossText(across, row, units) }));
  const columns = columnsFor(texts, width);
  const axis = intervalAxis(
    figures.map(withRoom),
    null,
    null,
    Math.max(2, Math.min(8, Math.round(columns.chart / 70))),
  );
  if (axis === null) return '';
  const rowHeight = columns.stacked ? ROW.stacked : ROW.level;
  const height = HEAD + across.groups.reduce((sum, group) => sum + TRIAL + group.rows.length * rowHeight, 0) + EDGE;
  const marks: string[] = [axisHead(axis, columns, width, theme)];
  let y = HEAD;
  for (const group of across.groups) {
    marks.push(trialHead(group, y, width, { theme, units }));
    y += TRIAL;
    for (const row of group.rows) {
      marks.push(drawnRow(across, row, y, { columns, axis, width, theme, units }));
      y += rowHeight;
    }
  }
  return svgDocument({ width, height, description: describe(across, units), overflow: true }, ...marks);
}

/** An end that falls on the end of the axis would look cut off: the axis is made for a little more. */
const ROOM = 0.03;

function withRoom(figure: AcrossRow['shown']): AcrossRow['shown'] {
  const [low, high] = figure.interval;
  const room = ROOM * (high - low);
  return { ...figure, interval: [low - room, high + room] };
}

function columnsFor(texts: readonly { name: string; text: string }[], width: number): Columns {
  if (width < ONE_LINE_FROM)
    return { stacked: true, left: EDGE, chart: width - 2 * EDGE, names: width - figureRoom(texts) - EDGE };
  const names = nameRoom(texts, MOST_NAMES * width);
  const left = names + GAP;
  return { stacked: false, left, chart: width - left - figureRoom(texts) - 2 * GAP, names };
}

function axisHead(axis: IntervalAxis, { left, chart }: Columns, width: number, theme: Theme): string {
  const x = positionOn(axis, chart);
  const ticks = axis.ticks.map(({ value, text }) => ({ at: x(value), text }));
  const middle = (at: number, half: number) => Math.min(Math.max(at, half), width - half);
  return [
    line(left, HEAD, left + chart, HEAD, { stroke: theme.ink, 'stroke-width': 1 }),
    ...headTicks(ticks, { left, foot: HEAD, theme, middle }),
  ].join('');
}

function trialHead(
  group: AcrossGroup,
  top: number,
  width: number,
  { theme, units }: Pick<RowPlace, 'theme' | 'units'>,
): string {
  const [text = ''] = fittedLines(trialLine(group, units.temperature), width, TRIAL_SIZE, 1);
  return [
    top > HEAD ? line(0, top + 6, width, top + 6, { stroke: theme.rule, 'stroke-width': 1 }) : '',
    label(0, top + 26, text, { 'font-size': TRIAL_SIZE, fill: theme.ink2 }),
  ].join('');
}

interface RowPlace {
  columns: Columns;
  axis: IntervalAxis;
  width: number;
  theme: Theme;
  units: AcrossUnits;
}

function drawnRow(across: Across, row: AcrossRow, top: number, place: RowPlace): string {
  const { columns, axis, width, theme, units } = place;
  const x = (value: number) => columns.left + positionOn(axis, columns.chart)(value);
  const y = columns.stacked ? top + 36 : top + ROW.level / 2;
  const words = columns.stacked ? top + 18 : y + 5;
  const shown = placed(across, row.shown, units);
  const bar = row.way === 'widened' ? placed(across, row.found, units) : shown;
  const ink = { stroke: theme.ink, 'stroke-width': 1.5 };
  const ends = shown.interval.map((end) => x(end));
  return [
    rowName(0, words, row.line.name || row.line.cable, columns.names, theme),
    line(columns.left, y, columns.left + columns.chart, y, { stroke: theme.rule, 'stroke-width': 1 }),
    row.way === 'widened'
      ? line(ends[0]!, y, ends[1]!, y, ink) + ends.map((at) => line(at, y - END, at, y + END, ink)).join('')
      : '',
    metalBar(bar, metalKind(row.line.metal_found), x, y, theme),
    rectangle(x(shown.value) - 1, y - TICK / 2, 2, TICK, { fill: theme.ink }),
    rowFigure(width, words, acrossText(across, row, units), theme),
  ].join('');
}

/** All that the chart shows, as one text. */
function describe(across: Across, units: AcrossUnits): string {
  const said = across.groups.map((group) => {
    const rows = group.rows.map((row) => `${row.line.name} ${acrossText(across, row, units)}, ${row.way}`);
    return `${trialLine(group, units.temperature)}: ${rows.join('; ')}`;
  });
  return `${across.quantity.name}, trial by trial. ${said.join('. ')}.`;
}
