import { scaleLinear } from 'd3-scale';
import type { LotOverTime } from '../../findings/across/lots.ts';
import { label, line, rectangle, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';

const HEIGHT = 96;
const TOP = 8;
const FOOT = 72;
const SIDE = 44;
const NOTE = 13;
const BAR = 6;
const TICK = 12;

/**
 * One lot over time: each measurement's interval upright at its day, and the straight line through them, dashed where no change was
 * seen. Days below; the sentence beside it says the figures.
 */
export function driftStrip(lot: LotOverTime, { width, theme }: { width: number; theme: Theme }): string {
  const { points, drift } = lot;
  const times = points.map(({ day }) => Date.parse(day));
  const x = scaleLinear()
    .domain([Math.min(...times), Math.max(...times)])
    .range([SIDE, width - SIDE]);
  const ends = points.flatMap(({ figure }) => [...figure.interval]);
  const y = scaleLinear()
    .domain([Math.min(...ends), Math.max(...ends)])
    .range([FOOT - 8, TOP]);
  const seen = drift.interval[0] > 0 || drift.interval[1] < 0;
  const middle = points.reduce((sum, { figure }) => sum + figure.value, 0) / points.length;
  const half = (middle * drift.change) / 2;
  const marks = points.map(({ figure }, i) => {
    const at = x(times[i]!);
    const [low, high] = [y(figure.interval[0]), y(figure.interval[1])];
    return (
      rectangle(at - BAR / 2, high, BAR, Math.max(2, low - high), { fill: theme.edge }) +
      rectangle(at - TICK / 2, y(figure.value) - 1, TICK, 2, { fill: theme.ink })
    );
  });
  const day = (which: number, at: number) =>
    label(at, HEIGHT - 6, points.at(which)!.day, { 'font-size': NOTE, fill: theme.ink2, 'text-anchor': 'middle' });
  return svgDocument(
    { width, height: HEIGHT, description: lot.sentence },
    line(0, FOOT, width, FOOT, { stroke: theme.ink, 'stroke-width': 1 }),
    line(x.range()[0]!, y(middle - half), x.range()[1]!, y(middle + half), {
      stroke: theme.ink,
      'stroke-width': 1.5,
      'stroke-dasharray': seen ? null : '4 4',
    }),
    ...marks,
    day(0, x.range()[0]!),
    day(-1, x.range()[1]!),
  );
}
