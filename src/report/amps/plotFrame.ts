import type { ScaleLinear } from 'd3-scale';
import { group, label, line } from '../svg.ts';
import type { Theme } from '../theme.ts';

/** Room round the field of a picture with two axes, px. */
export interface Sides {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

export interface PlotFrame {
  x: ScaleLinear<number, number>;
  y: ScaleLinear<number, number>;
  width: number;
  height: number;
  sides: Sides;
  /** Unit under the end of the level axis, and over the upright one. */
  unit: { x: string; y: string };
  theme: Theme;
  /** How many ticks, about. */
  ticks?: { x: number; y: number };
}

const NOTE = 13;

/** Axes of a picture: level rules with their figures at the left, ticks with theirs below, the units at their ends. */
export function plotFrame({ x, y, width, height, sides, unit, theme, ticks }: PlotFrame): string {
  const small = { 'font-size': NOTE, fill: theme.ink2 };
  const edge = { stroke: theme.edge, 'stroke-width': 1 };
  const foot = height - sides.bottom;
  const [nx, ny] = [ticks?.x ?? Math.max(2, Math.round(width / 90)), ticks?.y ?? 4];
  const writeX = x.tickFormat(nx);
  const writeY = y.tickFormat(ny);
  return group(
    {},
    ...y
      .ticks(ny)
      .map(
        (tick) =>
          line(sides.left, y(tick), width - sides.right, y(tick), { stroke: theme.rule, 'stroke-width': 1 }) +
          label(sides.left - 8, y(tick) + 4, writeY(tick).replace('-', '−'), { ...small, 'text-anchor': 'end' }),
      ),
    line(sides.left, foot, width - sides.right, foot, edge),
    ...x
      .ticks(nx)
      .map(
        (tick) =>
          line(x(tick), foot, x(tick), foot + 5, edge) +
          label(x(tick), foot + 18, writeX(tick).replace('-', '−'), { ...small, 'text-anchor': 'middle' }),
      ),
    label(0, 12, unit.y, small),
    label(width - sides.right, foot + 33, unit.x, { ...small, 'text-anchor': 'end' }),
  );
}
