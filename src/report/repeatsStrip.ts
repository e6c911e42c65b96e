/** The repeats of one quantity on one piece: dots on a line of fixed span, the mean as a tick, far-off readings as open rings. */
import { scaleLinear } from 'd3-scale';
import { circle, line, svgDocument } from './svg.ts';
import type { Theme } from './theme.ts';

const DOT = 4.5;
const TICK = { width: 2, height: 18 };
/** A line that must reach further than its span leaves this much beside the furthest reading. */
const ROOM_BESIDE = 1.1;

export interface RepeatsStripOptions {
  width: number;
  height: number;
  theme: Theme;
  /** Span of the line, in the terms of the values: the same for all strips of a column. */
  span: number;
}

export interface Repeats {
  /** Readings that count, finite. */
  values: readonly number[];
  /** Places in `values` of those that stand far from the rest. */
  farOff: readonly number[];
}

/** Empty line when there is no reading. Throws RangeError for values that are not finite. */
export function repeatsStrip({ values, farOff }: Repeats, options: RepeatsStripOptions): string {
  const { width, height, theme, span } = options;
  const y = height / 2;
  const base = line(0, y, width, y, { stroke: theme.rule, 'stroke-width': 2 });
  if (values.length === 0) return svgDocument({ width, height, description: '' }, base);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const furthest = Math.max(...values.map((value) => Math.abs(value - mean))) * ROOM_BESIDE;
  const half = Math.max(span / 2, furthest) || 1;
  const x = scaleLinear()
    .domain([mean - half, mean + half])
    .range([DOT + 1, width - DOT - 1]);
  const tick = line(x(mean), y - TICK.height / 2, x(mean), y + TICK.height / 2, {
    stroke: theme.ink,
    'stroke-width': TICK.width,
  });
  const dots = values.map((value, place) =>
    farOff.includes(place)
      ? circle(x(value), y, DOT, { fill: theme.ground, stroke: theme.ink, 'stroke-width': 2 })
      : circle(x(value), y, DOT, { fill: theme.copper }),
  );
  return svgDocument({ width, height, description: '' }, base, tick, ...dots);
}

/** Spans that a line may have: 1, 2 or 5 times a power of ten, as a rule has marks. */
const MARKS = [1, 2, 5, 10];
/** A line shows at least this many steps of the display, so that rounding does not look like spread. */
const LEAST_STEPS = 20;

/**
 * The span for strips that stand together: twice the middle range of their repeats, at least twenty steps of the display,
 * rounded up to 1, 2 or 5 times a power of ten.
 */
export function repeatsSpan(rows: readonly (readonly number[])[], step: number): number {
  const ranges = rows
    .filter((row) => row.length > 1)
    .map((row) => Math.max(...row) - Math.min(...row))
    .sort((a, b) => a - b);
  const middle = ranges[Math.floor((ranges.length - 1) / 2)] ?? 0;
  const wanted = Math.max(2 * middle, LEAST_STEPS * step);
  if (!(wanted > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(wanted));
  const mark = MARKS.find((each) => each * power >= wanted * (1 - 1e-9)) ?? 10;
  return mark * power;
}
