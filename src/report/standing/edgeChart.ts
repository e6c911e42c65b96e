import { max, min, tickStep } from 'd3-array';
import { circle, element, group, label, line, svgDocument } from '../svg.ts';
import { fittedLines, textWidth } from '../textFit.ts';
import type { Theme } from '../theme.ts';

/** A cable between two figures that pull against each other. */
export interface EdgePoint {
  name: string;
  x: number;
  y: number;
  /** Intervals; null where a figure is exact or no interval is told. */
  xInterval: readonly [number, number] | null;
  yInterval: readonly [number, number] | null;
  /** None of the others is as good in both and better in one. */
  onEdge: boolean;
  /** Chance of that. */
  probability: number;
}

export interface EdgeAxes {
  x: { name: string; unit: string; better: 'more' | 'less' };
  y: { name: string; unit: string; better: 'more' | 'less' };
}

interface EdgeOptions {
  width: number;
  height?: number;
  theme: Theme;
}

const HEIGHT = 340;
const ROOM = { left: 52, right: 16, top: 30, foot: 46 };
const NAME = 14;
const DOT = 5.5;
const SANS_SIZE = 13;
const WIDEST_NAME = 170;

interface Scale {
  at: (value: number) => number;
  ticks: { value: number; text: string }[];
}

function scaleOf(values: readonly number[], from: number, to: number, wanted: number): Scale {
  const [low = 0, high = 1] = [min(values), max(values)];
  const half = high > low ? 0.06 * (high - low) : Math.abs(high) * 0.05 || 1;
  const step = tickStep(low - half, high + half, wanted);
  const first = Math.floor((low - half) / step);
  const last = Math.ceil((high + half) / step);
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  return {
    at: (value) => from + ((value / step - first) / (last - first)) * (to - from),
    ticks: Array.from({ length: last - first + 1 }, (_, i) => {
      const value = (first + i) * step;
      return {
        value,
        text: value
          .toFixed(decimals)
          .replace(/^-(?=0(\.0*)?$)/, '')
          .replace('-', '−'),
      };
    }),
  };
}

/**
 * Cables between two figures that pull against each other: solid discs for those that no other beats in both, joined as the edge;
 * open rings for those that another beats. Bars through a disc hold the true value 95 times in 100.
 */
export function edgeChart(
  points: readonly EdgePoint[],
  axes: EdgeAxes,
  { width, height = HEIGHT, theme }: EdgeOptions,
): string {
  const right = width - ROOM.right;
  const foot = height - ROOM.foot;
  const x = scaleOf(
    points.flatMap((p) => [p.x, ...(p.xInterval ?? [])]),
    ROOM.left,
    right,
    width < 460 ? 4 : 7,
  );
  const y = scaleOf(
    points.flatMap((p) => [p.y, ...(p.yInterval ?? [])]),
    foot,
    ROOM.top,
    5,
  );
  return svgDocument(
    { width, height, description: edgeSaid(points, axes) },
    ...frame(x, y, axes, { left: ROOM.left, right, foot, theme }),
    edgeLine(points, axes, x, y, theme),
    ...names(points, x, y, { width, theme }),
    ...points.map((p) => mark(p, x, y, theme)),
  );
}

/** The picture in words. */
export function edgeSaid(points: readonly EdgePoint[], { x, y }: EdgeAxes): string {
  const on = points.filter((p) => p.onEdge).map((p) => p.name);
  const figures = points.map((p) => `${p.name}: ${p.x.toPrecision(3)} ${x.unit}, ${p.y.toPrecision(3)} ${y.unit}`);
  return `${y.name} against ${x.name.toLowerCase()}. No other cable is as good in both and better in one than ${on.join(', ')}. ${figures.join('; ')}.`;
}

function frame(
  x: Scale,
  y: Scale,
  axes: EdgeAxes,
  { left, right, foot, theme }: { left: number; right: number; foot: number; theme: Theme },
): string[] {
  const words = { 'font-size': SANS_SIZE, fill: theme.ink2 };
  const axis = { stroke: theme.edge, 'stroke-width': 1 };
  const head = (of: EdgeAxes['x']) => `${of.name}, ${of.unit}`;
  return [
    line(left, foot, right, foot, axis),
    line(left, ROOM.top, left, foot, axis),
    ...x.ticks.map(({ value, text }) =>
      group(
        {},
        line(x.at(value), foot, x.at(value), foot + 5, axis),
        label(x.at(value), foot + 19, text, { ...words, 'text-anchor': 'middle' }),
      ),
    ),
    ...y.ticks.map(({ value, text }) =>
      group(
        {},
        line(left - 5, y.at(value), left, y.at(value), axis),
        label(left - 9, y.at(value) + 4, text, { ...words, 'text-anchor': 'end' }),
      ),
    ),
    label(right, foot + 38, `${head(axes.x)}${axes.x.better === 'less' ? ' (← better)' : ' (better →)'}`, {
      ...words,
      'text-anchor': 'end',
    }),
    label(0, 16, `${head(axes.y)}${axes.y.better === 'less' ? ' (↓ better)' : ' (↑ better)'}`, words),
  ];
}

function edgeLine(points: readonly EdgePoint[], axes: EdgeAxes, x: Scale, y: Scale, theme: Theme): string {
  const on = points.filter((p) => p.onEdge).sort((a, b) => a.x - b.x);
  if (on.length < 2) return '';
  // Between two cables of the edge nothing was measured: a step, through what is beaten by both, claims no cable there.
  const less = axes.x.better === 'less';
  const d = on
    .map((p, i) => {
      if (i === 0) return `M${x.at(p.x).toFixed(1)} ${y.at(p.y).toFixed(1)}`;
      const corner = less
        ? `H${x.at(p.x).toFixed(1)}V${y.at(p.y).toFixed(1)}`
        : `V${y.at(p.y).toFixed(1)}H${x.at(p.x).toFixed(1)}`;
      return corner;
    })
    .join('');
  return element('path', { d, fill: 'none', stroke: theme.edge, 'stroke-width': 1, 'stroke-dasharray': '3 3' });
}

function mark(p: EdgePoint, x: Scale, y: Scale, theme: Theme): string {
  const [cx, cy] = [x.at(p.x), y.at(p.y)];
  const bar = { stroke: theme.copperLine, 'stroke-width': 2 };
  return group(
    {},
    p.xInterval ? line(x.at(p.xInterval[0]), cy, x.at(p.xInterval[1]), cy, bar) : '',
    p.yInterval ? line(cx, y.at(p.yInterval[0]), cx, y.at(p.yInterval[1]), bar) : '',
    circle(cx, cy, DOT, { fill: p.onEdge ? theme.copper : theme.ground, stroke: theme.ink, 'stroke-width': 1.5 }),
  );
}

interface Box {
  x: number;
  y: number;
  w: number;
  h: number;
}

const overlap = (a: Box, b: Box) => a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;

/** Names beside their marks: the first of a few places where a name covers neither a mark nor another name. */
function names(
  points: readonly EdgePoint[],
  x: Scale,
  y: Scale,
  { width, theme }: { width: number; theme: Theme },
): string[] {
  const taken: Box[] = points.map((p) => ({ x: x.at(p.x) - DOT, y: y.at(p.y) - DOT, w: 2 * DOT, h: 2 * DOT }));
  return points.map((p) => {
    const [text = ''] = fittedLines(p.name, Math.min(WIDEST_NAME, width / 2), NAME, 1);
    const w = textWidth(text, NAME);
    const [cx, cy] = [x.at(p.x), y.at(p.y)];
    const h = NAME + 2;
    const right = cx + DOT + 5;
    const left = cx - DOT - 5 - w;
    // Beside the mark first, then further and further above and below it.
    const places = [0, 1, 2, 3, 4].flatMap((away): Box[] =>
      [right, left, cx - w / 2].flatMap((at) => [
        { x: at, y: cy - (away + 1) * h - 2 - (at === right || at === left ? 0 : DOT), w, h },
        { x: at, y: cy + away * h + 3 + (at === right || at === left ? 0 : DOT), w, h },
      ]),
    );
    const inside = (b: Box) => b.x >= ROOM.left && b.x + b.w <= width && b.y >= ROOM.top - 12;
    const place =
      places.find((b) => inside(b) && !taken.some((t) => overlap(b, t))) ?? places.find(inside) ?? places[0]!;
    taken.push(place);
    const middle = place.y + h / 2;
    const far = Math.abs(middle - cy) > 1.5 * h;
    const end = Math.min(Math.max(cx, place.x), place.x + w);
    const leader = far
      ? line(cx, cy, end, place.y < cy ? place.y + h : place.y, { stroke: theme.edge, 'stroke-width': 1 })
      : '';
    return (
      leader +
      label(place.x, place.y + NAME - 2, text, {
        stroke: theme.ground,
        'stroke-width': 4,
        'stroke-linejoin': 'round',
        'paint-order': 'stroke',
        'font-size': NAME,
        'font-weight': p.onEdge ? '600' : '400',
        fill: p.onEdge ? theme.ink : theme.ink2,
      })
    );
  });
}
