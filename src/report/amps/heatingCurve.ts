import { scaleLinear } from 'd3-scale';
import { type DrawnHeating, riseAt } from '../../findings/current/drawn.ts';
import { circle, element, group, label, line, rectangle, round, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';
import { plotFrame, type Sides } from './plotFrame.ts';

export interface HeatingPicture {
  heating: DrawnHeating;
  name: string;
  /** K: where the curve ends and the interval of that; null when nothing is said about it. */
  steady: { value: number; low: number; high: number } | null;
}

export interface HeatingOptions {
  width: number;
  height: number;
  theme: Theme;
}

const SIDES: Sides = { left: 40, right: 74, top: 24, bottom: 38 };
const MINUTE = 60;
const NOTE = 13;
const DOT = 2.5;
const MOST_DOTS = 70;
const CURVE_POINTS = 80;

/**
 * A heating test: readings as dots, the fitted curve through them as a line, and at the right where it ends with the interval of that.
 * Where the test was refused the curve is dashed and no end is drawn.
 */
export function heatingCurve(
  { heating, name, steady }: HeatingPicture,
  { width, height, theme }: HeatingOptions,
): string {
  const { points, fit } = heating;
  const longest = Math.max(MINUTE, ...points.map((p) => p.seconds));
  const most = Math.max(1, ...points.map((p) => p.rise), steady?.high ?? 0);
  const least = Math.min(0, ...points.map((p) => p.rise));
  const x = scaleLinear()
    .domain([0, longest / MINUTE])
    .range([SIDES.left, width - SIDES.right]);
  const y = scaleLinear()
    .domain([least, most * 1.04])
    .range([height - SIDES.bottom, SIDES.top]);
  return svgDocument(
    { width, height, description: describeHeating({ heating, name, steady }) },
    plotFrame({ x, y, width, height, sides: SIDES, unit: { x: 'min', y: 'K above the surroundings' }, theme }),
    ...thinned(points).map((p) => circle(x(p.seconds / MINUTE), y(p.rise), DOT, { fill: theme.edge })),
    fit === null ? '' : curve(fit, longest, x, y, steady === null, theme),
    steady === null ? '' : end(steady, width - SIDES.right, y, theme),
  );
}

/** At most so many points, evenly taken. */
function thinned<T>(points: readonly T[]): T[] {
  const every = Math.max(1, Math.ceil(points.length / MOST_DOTS));
  return points.filter((_, i) => i % every === 0);
}

type Scale = (value: number) => number;

function curve(
  fit: NonNullable<DrawnHeating['fit']>,
  longest: number,
  x: Scale,
  y: Scale,
  refused: boolean,
  theme: Theme,
): string {
  const d = Array.from({ length: CURVE_POINTS + 1 }, (_, i) => {
    const seconds = (longest * i) / CURVE_POINTS;
    return `${i === 0 ? 'M' : 'L'}${round(x(seconds / MINUTE))} ${round(y(riseAt(fit, seconds)))}`;
  }).join('');
  return element('path', {
    d,
    fill: 'none',
    stroke: refused ? theme.ink2 : theme.copper,
    'stroke-width': 2.5,
    'stroke-dasharray': refused ? '6 4' : null,
  });
}

function end({ value, low, high }: NonNullable<HeatingPicture['steady']>, x: number, y: Scale, theme: Theme): string {
  const [top, foot] = [y(high), y(low)];
  const middle = (top + foot) / 2;
  const tall = Math.max(4, foot - top);
  return group(
    {},
    rectangle(x + 8, middle - tall / 2, 8, tall, { fill: theme.copper }),
    rectangle(x + 4, y(value) - 1, 16, 2, { fill: theme.ink }),
    line(SIDES.left, y(value), x, y(value), { stroke: theme.edge, 'stroke-width': 1, 'stroke-dasharray': '3 3' }),
    label(x + 24, y(value) + 5, `${value.toFixed(0)} K`, {
      'font-size': NOTE + 1,
      'font-weight': '600',
      fill: theme.ink,
    }),
  );
}

/** All that the picture shows, as one text. */
export function describeHeating({ heating, name, steady }: HeatingPicture): string {
  const last = heating.points.at(-1);
  const until = last ? `, ${last.rise.toFixed(0)} K after ${(last.seconds / MINUTE).toFixed(0)} minutes` : '';
  const ends = steady
    ? `; it ends at ${steady.value.toFixed(1)} K, ${steady.low.toFixed(1)} to ${steady.high.toFixed(1)}`
    : '; where it ends is not known';
  return `${name} heated by ${heating.current.toFixed(0)} A${until}${ends}.`;
}
