import { max, min, tickStep } from 'd3-array';
import { circle, element, group, label, line, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';
import { placeNames, type Stretch } from './edgeNames.ts';

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

interface Spot {
  x: number;
  y: number;
}

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
  const steps = edgeSteps(points, axes, x, y);
  const bars = points.flatMap((p) => barsOf(p, x, y));
  return svgDocument(
    { width, height, description: edgeSaid(points, axes) },
    ...frame(x, y, axes, { left: ROOM.left, right, foot, theme }),
    edgeLine(steps, theme),
    ...bars.map(({ x1, y1, x2, y2 }) => line(x1, y1, x2, y2, { stroke: theme.copperLine, 'stroke-width': 2 })),
    ...names(points, x, y, { width, foot, lines: [...steps, ...bars], theme }),
    ...[...points].sort((a, b) => Number(b.onEdge) - Number(a.onEdge)).map((p) => mark(p, x, y, theme)),
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

/** The step that joins the cables of the edge. Between two of them nothing was measured: it goes through what is beaten by both. */
function edgeSteps(points: readonly EdgePoint[], axes: EdgeAxes, x: Scale, y: Scale): Stretch[] {
  const on = points.filter((p) => p.onEdge).sort((a, b) => a.x - b.x);
  return on.slice(1).flatMap((p, i) => {
    const [from, to] = [on[i]!, p].map((q) => ({ x: x.at(q.x), y: y.at(q.y) })) as [Spot, Spot];
    const corner = axes.x.better === 'less' ? { x: to.x, y: from.y } : { x: from.x, y: to.y };
    return [
      { x1: from.x, y1: from.y, x2: corner.x, y2: corner.y },
      { x1: corner.x, y1: corner.y, x2: to.x, y2: to.y },
    ];
  });
}

function edgeLine(steps: readonly Stretch[], theme: Theme): string {
  const [first] = steps;
  if (first === undefined) return '';
  const d = steps.map(({ x2, y2 }) => `L${x2.toFixed(1)} ${y2.toFixed(1)}`).join('');
  return element('path', {
    d: `M${first.x1.toFixed(1)} ${first.y1.toFixed(1)}${d}`,
    fill: 'none',
    stroke: theme.edge,
    'stroke-width': 1,
    'stroke-dasharray': '3 3',
  });
}

/** The bars of a cable: across and up. */
function barsOf(p: EdgePoint, x: Scale, y: Scale): Stretch[] {
  const [cx, cy] = [x.at(p.x), y.at(p.y)];
  return [
    ...(p.xInterval ? [{ x1: x.at(p.xInterval[0]), y1: cy, x2: x.at(p.xInterval[1]), y2: cy }] : []),
    ...(p.yInterval ? [{ x1: cx, y1: y.at(p.yInterval[0]), x2: cx, y2: y.at(p.yInterval[1]) }] : []),
  ];
}

/** Solid discs first and open rings over them with nothing inside, so that each outline is seen where marks lie close. */
function mark(p: EdgePoint, x: Scale, y: Scale, theme: Theme): string {
  return circle(x.at(p.x), y.at(p.y), DOT, {
    fill: p.onEdge ? theme.copper : 'none',
    stroke: theme.ink,
    'stroke-width': 1.5,
  });
}

/** Each name beside its mark, with a line to it where two marks could be meant. */
function names(
  points: readonly EdgePoint[],
  x: Scale,
  y: Scale,
  { width, foot, lines, theme }: { width: number; foot: number; lines: readonly Stretch[]; theme: Theme },
): string[] {
  const marks = points.map((p) => ({ name: p.name, x: x.at(p.x), y: y.at(p.y), strong: p.onEdge }));
  const room = { left: ROOM.left + 3, right: width, top: ROOM.top - 12, foot: foot - 3, dot: DOT, size: NAME };
  return placeNames(marks, room, lines).map(({ text, box, leader }, i) => {
    const { onEdge } = points[i]!;
    return (
      (leader === null
        ? ''
        : line(leader.x1, leader.y1, leader.x2, leader.y2, { stroke: theme.ink2, 'stroke-width': 1 })) +
      label(box.x, box.y + NAME - 2, text, {
        stroke: theme.ground,
        'stroke-width': 4,
        'stroke-linejoin': 'round',
        'paint-order': 'stroke',
        'font-size': NAME,
        'font-weight': onEdge ? '600' : '400',
        fill: onEdge ? theme.ink : theme.ink2,
      })
    );
  });
}
