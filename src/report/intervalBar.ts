import type { Measured } from '../findings/schema.ts';
import { crossedRectangle, ruledRectangle } from './hatch.ts';
import { type IntervalAxis, limitText, positionOn } from './intervalAxis.ts';
import { isRuled, type MetalKind, metalFill } from './metalKind.ts';
import { element, group, label, line, rectangle, svgDocument } from './svg.ts';
import { textWidth } from './textFit.ts';
import type { Theme } from './theme.ts';

const BAR_HEIGHT = 8;
const TICK_WIDTH = 2;
const TICK_HEIGHT = 16;
/** Below this width the interval is narrower than the tick beside it would show, px. */
const LEAST_BAR = 4;
/** Ruling inside a bar is closer than in a disc, so that a short bar still shows it. px */
const BAR_RULING = 4;
const HEAD_HEIGHT = 42;
const NOTE = 13;

export interface RowOptions {
  width: number;
  height: number;
  theme: Theme;
  as?: 'group' | 'picture';
}

/**
 * One row of the chart: base line, the interval as a bar in the colour of the metal found, the estimate as a tick that
 * reaches past it, and the column's limit and nominal lines over the full height, so that stacked rows show them unbroken.
 * An unknown figure leaves the row with its lines only.
 */
export function intervalRow(
  figure: Measured | null,
  metal: MetalKind,
  axis: IntervalAxis,
  options: RowOptions,
): string {
  const { width, height, theme } = options;
  const x = positionOn(axis, width);
  const marks = group(
    {},
    line(0, height / 2, width, height / 2, { stroke: theme.rule, 'stroke-width': 1 }),
    metalBar(figure, metal, x, height / 2, theme),
    claimLines(axis, x, 0, height, theme),
    figure === null ? '' : tick(x(figure.value), height / 2, theme),
  );
  if (options.as === 'group') return marks;
  return svgDocument({ width, height, description: '' }, marks);
}

/** The axis over a column of rows: ticks inside, the limit's value right of nothing and left of its line, the label's after its own. */
export function intervalHead(axis: IntervalAxis, options: Omit<RowOptions, 'height'>): string {
  const { width, theme } = options;
  const x = positionOn(axis, width);
  const lines = [axis.limit, axis.nominal].filter((value) => value !== null).map((value) => x(value));
  const ticks = axis.ticks.map(({ value, text }) => {
    const at = x(value);
    const mark = line(at, HEAD_HEIGHT - 6, at, HEAD_HEIGHT, { stroke: theme.edge, 'stroke-width': 1 });
    const half = textWidth(text, NOTE) / 2;
    const hidden = lines.some((other) => Math.abs(other - at) < half + 3) || at - half < -8 || at + half > width + 8;
    return hidden ? mark : mark + note(at, HEAD_HEIGHT - 11, text, theme.ink2, 'middle');
  });
  const marks = group(
    {},
    line(0, HEAD_HEIGHT, width, HEAD_HEIGHT, { stroke: theme.ink, 'stroke-width': 1 }),
    ...ticks,
    claimLines(axis, x, 14, HEAD_HEIGHT, theme),
    ...claimTexts(axis, x, width, theme),
    axis.caption === undefined ? '' : note(0, 11, axis.caption, theme.ink2, 'start'),
  );
  if (options.as === 'group') return marks;
  return svgDocument({ width, height: HEAD_HEIGHT, description: '', overflow: true }, marks);
}

export const intervalHeadHeight = HEAD_HEIGHT;

export interface ColumnRow {
  figure: Measured | null;
  metal: MetalKind;
}

/** Room beside the chart for what stands out over its ends: half a tick's value left, the label's value right. px */
const BESIDE = { left: 12, right: 28 };

/** A whole chart column: the axis and every row under it at one scale, the limit unbroken through all. */
export function intervalColumn(
  rows: readonly ColumnRow[],
  axis: IntervalAxis,
  options: { width: number; rowHeight: number; theme: Theme; description: string },
): { svg: string; width: number; height: number } {
  const { width, rowHeight, theme } = options;
  const height = HEAD_HEIGHT + rows.length * rowHeight;
  const chart = width - BESIDE.left - BESIDE.right;
  const drawn = rows.map(({ figure, metal }, i) =>
    group(
      { transform: `translate(0 ${HEAD_HEIGHT + i * rowHeight})` },
      intervalRow(figure, metal, axis, { width: chart, height: rowHeight, theme, as: 'group' }),
    ),
  );
  const head = intervalHead(axis, { width: chart, theme, as: 'group' });
  const svg = svgDocument(
    { width, height, description: options.description },
    group({ transform: `translate(${BESIDE.left} 0)` }, head, ...drawn),
  );
  return { svg, width, height };
}

/** An interval as a bar in the look of the metal found; nothing for an unknown figure. `x` places its values, `y` is its middle. */
export function metalBar(
  figure: Pick<Measured, 'interval'> | null,
  metal: MetalKind,
  x: (v: number) => number,
  y: number,
  theme: Theme,
): string {
  if (figure === null) return '';
  const [from, to] = [x(figure.interval[0]), x(figure.interval[1])];
  const width = Math.max(LEAST_BAR, to - from);
  const left = (from + to - width) / 2;
  const top = y - BAR_HEIGHT / 2;
  const fill = metalFill(metal, theme);
  if (fill === null) {
    return (
      rectangle(left, top, width, BAR_HEIGHT, { fill: theme.bed, stroke: theme.edge, 'stroke-width': 1 }) +
      element('path', {
        d: crossedRectangle(left, top, width, BAR_HEIGHT, BAR_RULING),
        stroke: theme.edge,
        'stroke-width': 0.75,
        fill: 'none',
      })
    );
  }
  const solid = rectangle(left, top, width, BAR_HEIGHT, { fill });
  if (!isRuled(metal)) return solid;
  return (
    solid +
    element('path', {
      d: ruledRectangle(left, top, width, BAR_HEIGHT, BAR_RULING, 'rising'),
      stroke: theme.bed,
      'stroke-width': 1,
      fill: 'none',
    })
  );
}

const tick = (x: number, y: number, theme: Theme): string =>
  rectangle(x - TICK_WIDTH / 2, y - TICK_HEIGHT / 2, TICK_WIDTH, TICK_HEIGHT, { fill: theme.ink });

function claimLines(axis: IntervalAxis, x: (v: number) => number, top: number, bottom: number, theme: Theme): string {
  const nominal =
    axis.nominal === null
      ? ''
      : line(x(axis.nominal), top, x(axis.nominal), bottom, {
          stroke: theme.edge,
          'stroke-width': 1,
          'stroke-dasharray': '3 3',
        });
  const limit =
    axis.limit === null
      ? ''
      : line(x(axis.limit), top, x(axis.limit), bottom, { stroke: theme.ink, 'stroke-width': 1.5 });
  return nominal + limit;
}

/** 'limit 32.96' ends at its line and 'label 33.63' begins after its own; each changes sides where there is no room, or is left out. */
function claimTexts(axis: IntervalAxis, x: (v: number) => number, width: number, theme: Theme): string[] {
  const texts: string[] = [];
  const long = (text: string): number => textWidth(text, NOTE) + 6;
  let leftTaken = false;
  if (axis.limit !== null) {
    const text = `limit ${(axis.write ?? limitText)(axis.limit)}`;
    leftTaken = x(axis.limit) >= long(text);
    texts.push(note(x(axis.limit) + (leftTaken ? -4 : 4), 11, text, theme.ink, leftTaken ? 'end' : 'start', '600'));
  }
  if (axis.nominal !== null && axis.nominal !== axis.limit) {
    const text = `label ${(axis.write ?? limitText)(axis.nominal)}`;
    const roomRight = width + 24 - x(axis.nominal) >= long(text);
    if ((axis.limit === null || leftTaken) && roomRight)
      texts.push(note(x(axis.nominal) + 4, 11, text, theme.ink2, 'start'));
  }
  return texts;
}

function note(
  x: number,
  y: number,
  text: string,
  fill: string,
  anchor: 'start' | 'middle' | 'end',
  weight = '400',
): string {
  return label(x, y, text, { 'font-size': NOTE, fill, 'text-anchor': anchor, 'font-weight': weight });
}
