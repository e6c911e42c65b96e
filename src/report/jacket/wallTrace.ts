import { group as grouped } from 'd3-array';
import type { JacketCable } from '../../findings/shapes/jacket.ts';
import { circle, element, group, label, line, round, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';

export interface TraceOptions {
  /** Width and height, px. */
  size: number;
  theme: Theme;
  /** Thickness at the rim, mm: one for traces that stand together (see `traceReach`). */
  most: number;
}

const NOTE = 13;
/** Room for the hours outside the rim, px. */
const MARGIN = 26;
const DOT = 3.5;
const HOURS = 12;
const DEGREES_PER_HOUR = 30;

/** A rim that holds every wall with a little room; what is held back does not set the scale of the others. */
export const traceReach = (cables: readonly JacketCable[]): number =>
  Math.max(0.5, ...cables.filter(isSound).flatMap((c) => c.round.map((r) => 1.04 * r.thickness_mm)));

const isSound = ({ wall_doubt }: JacketCable) => wall_doubt === '';

/**
 * The wall round the clock: how far each dot stands from the middle is how thick the wall is at that hour, from nothing in the middle.
 * A dashed ring is the mean; the least reading has a ring of its own and its figure. An even wall is a circle about the middle.
 *
 * Readings without a place on the clock are not drawn. Empty where none has one, and for a wall that is held back.
 */
export function wallTrace(cable: JacketCable, { size, theme, most }: TraceOptions): string {
  const placed = cable.round.flatMap((r) =>
    r.angle_degrees === null ? [] : [{ angle: r.angle_degrees, wall: r.thickness_mm }],
  );
  if (placed.length === 0 || !isSound(cable)) return '';
  const c = size / 2;
  const radius = c - MARGIN;
  const at = (angle: number, wall: number) => {
    const turn = (angle * Math.PI) / 180;
    const r = (wall / most) * radius;
    return { x: c + r * Math.sin(turn), y: c - r * Math.cos(turn) };
  };
  const around = [...grouped(placed, (p) => p.angle)]
    .map(([angle, of]) => ({ angle, wall: of.reduce((sum, p) => sum + p.wall, 0) / of.length }))
    .sort((a, b) => a.angle - b.angle);
  const outline = around
    .map(({ angle, wall }, i) => {
      const { x, y } = at(angle, wall);
      return `${i === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`;
    })
    .join('');
  const mean = cable.wall?.mean.value ?? null;
  const least = placed.reduce((low, p) => (p.wall < low.wall ? p : low));
  return svgDocument(
    { width: size, height: size, description: describe(cable, least) },
    face(c, radius, most, theme),
    around.length > 2
      ? element('path', { d: `${outline}Z`, fill: theme.sunk, stroke: theme.ink, 'stroke-width': 2 })
      : '',
    mean === null
      ? ''
      : circle(c, c, (mean / most) * radius, {
          fill: 'none',
          stroke: theme.ink2,
          'stroke-width': 1.25,
          'stroke-dasharray': '4 3',
        }),
    ...placed.map((p) => {
      const { x, y } = at(p.angle, p.wall);
      return circle(x, y, DOT, { fill: theme.ink });
    }),
    leastMark(at(least.angle, least.wall), least, c, theme),
  );
}

/** Rings at whole millimetres and the hours about the rim. */
function face(c: number, radius: number, most: number, theme: Theme): string {
  const small = { 'font-size': NOTE, fill: theme.ink2, 'text-anchor': 'middle' };
  const rings = Array.from({ length: Math.floor(most) }, (_, i) => i + 1);
  const hours = Array.from({ length: HOURS }, (_, i) => i * DEGREES_PER_HOUR);
  return group(
    {},
    ...rings.map((mm) => circle(c, c, (mm / most) * radius, { fill: 'none', stroke: theme.rule, 'stroke-width': 1 })),
    circle(c, c, radius, { fill: 'none', stroke: theme.edge, 'stroke-width': 1 }),
    ...hours.map((angle) => {
      const turn = (angle * Math.PI) / 180;
      const [sin, cos] = [Math.sin(turn), -Math.cos(turn)];
      const long = angle % (3 * DEGREES_PER_HOUR) === 0;
      const mark = line(c + radius * sin, c + radius * cos, c + (radius + 5) * sin, c + (radius + 5) * cos, {
        stroke: theme.edge,
        'stroke-width': 1,
      });
      const hour = angle === 0 ? HOURS : angle / DEGREES_PER_HOUR;
      const away = radius + 15;
      return mark + (long ? label(c + away * sin, c + away * cos + 4.5, String(hour), small) : '');
    }),
  );
}

function leastMark({ x, y }: { x: number; y: number }, least: { wall: number }, c: number, theme: Theme): string {
  const length = Math.hypot(x - c, y - c) || 1;
  // Inside the trace, where nothing else is written.
  const inward = 24;
  return (
    circle(x, y, DOT + 4, { fill: 'none', stroke: theme.ink, 'stroke-width': 1.5 }) +
    label(x - ((x - c) / length) * inward, y - ((y - c) / length) * inward + 5, least.wall.toFixed(2), {
      'font-size': 14,
      'font-weight': '600',
      fill: theme.ink,
      'text-anchor': 'middle',
    })
  );
}

function describe({ name, cable, wall, round: read }: JacketCable, least: { angle: number; wall: number }): string {
  const said = read.map((r) => `${r.thickness_mm.toFixed(2)} mm at ${r.position || 'no noted place'}`).join(', ');
  const mean = wall ? `, ${wall.mean.value.toFixed(2)} mm on average` : '';
  return `Wall of ${name || cable} round the clock${mean}, least ${least.wall.toFixed(2)} mm at ${hourText(least.angle)}: ${said}.`;
}

/** `6 o’clock`: the nearest hour to so many degrees. */
export function hourText(angle: number): string {
  return `${Math.round(angle / DEGREES_PER_HOUR) % HOURS || HOURS} o’clock`;
}
