import { max, min, tickStep, ticks } from 'd3-array';
import { format } from 'd3-format';
import { scaleLinear } from 'd3-scale';
import type { Measured } from '../findings/schema.ts';

/** One axis for a whole column of intervals. */
export interface IntervalAxis {
  /** In the unit of the figures; both ends are whole ticks. */
  domain: readonly [number, number];
  ticks: readonly { value: number; text: string }[];
  limit: number | null;
  nominal: number | null;
  /** What the lines in the rows are, where each row has its own and the head has none to write a value at. */
  caption?: string;
  /** How limit and nominal are written, where the axis is marked in another unit than the figures; `limitText` when left out. */
  write?: (value: number) => string;
}

/** About how many ticks an axis carries. */
const TICKS = 6;

/**
 * The axis that holds all intervals, the limit of the claim and the label's nominal value, padded to whole ticks and never
 * cut for one row. Null when there is nothing to show.
 */
export function intervalAxis(
  figures: readonly (Measured | null)[],
  limit: number | null,
  nominal: number | null = null,
  wanted = TICKS,
): IntervalAxis | null {
  const values = figures.flatMap((figure) => (figure === null ? [] : [...figure.interval, figure.value]));
  if (limit !== null) values.push(limit);
  if (nominal !== null) values.push(nominal);
  const finite = values.filter(Number.isFinite);
  const [low, high] = [min(finite), max(finite)];
  if (low === undefined || high === undefined) return null;
  // All values equal: a span of a twentieth about them.
  const half = high > low ? 0 : Math.abs(high) * 0.05 || 1;
  const step = tickStep(low - half, high + half, wanted);
  const from = Math.floor((low - half) / step) * step;
  const to = Math.ceil((high + half) / step) * step;
  // By the step that was taken, not by the one wished for, or two ticks may read alike.
  const count = Math.round((to - from) / step);
  const write = scaleLinear().domain([from, to]).tickFormat(count);
  const list = ticks(from, to, count);
  return {
    domain: [from, to],
    ticks: list.map((value) => ({ value, text: write(value).replace('-', '−') })),
    limit,
    nominal,
  };
}

/** Position on the axis, as a function of the value, over `width` px (or columns). */
export function positionOn(axis: IntervalAxis, width: number): (value: number) => number {
  return scaleLinear()
    .domain([...axis.domain])
    .range([0, width]);
}

/** A limit as it is written at its line: four significant digits at most, no zeros that say nothing. */
export function limitText(value: number): string {
  return format('.4~r')(value).replace('-', '−');
}
