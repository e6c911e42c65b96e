import { scaleLinear } from 'd3-scale';
import { pictureName } from '../nameLabel.ts';
import { element, group, label, line, round, svgDocument } from '../svg.ts';
import { fittedLines, textWidth } from '../textFit.ts';
import type { Theme } from '../theme.ts';
import { plotFrame, type Sides } from './plotFrame.ts';

/** One cable against the length of the run; NaN where nothing comes through. */
export interface LengthCurve {
  name: string;
  measured: boolean;
  points: readonly { length: number; value: number }[];
}

export interface LengthChart {
  /** What is drawn upright, for those who hear the page. */
  title: string;
  unit: string;
  curves: readonly LengthCurve[];
  /** Length of the run that is asked about, in the unit of the points. */
  length: number;
  lengthUnit: string;
  /** A level line, with its words; null for none. */
  limit: { value: number; text: string } | null;
  fromZero: boolean;
}

const SIDES: Sides = { left: 44, right: 92, top: 24, bottom: 38 };
/** Names at the right may take this share of the width. */
const MOST_NAMES = 0.32;
const NOTE = 13;
const LINE = 16;
/**
 * Curves may reach this many times as high as the limit before the field cuts them off, or so far above the highest measured one
 * where it is asked about, whichever is more.
 */
const REACH = 2.2;
const ABOVE_ASKED = 1.25;

/**
 * Drop or heat against the length of the run: a line for each measured cable and a thin dashed one for each nominal size, named at
 * its end; the limit level, the length that is asked about upright.
 */
export function lengthChart(
  chart: LengthChart,
  { width, height, theme }: { width: number; height: number; theme: Theme },
): string {
  const names = Math.max(0, ...chart.curves.map((c) => textWidth(c.name, NOTE))) + 18;
  const sides = { ...SIDES, right: Math.min(Math.max(names, 48), MOST_NAMES * width) };
  const { x, y, top } = scalesOf(chart, width, height, sides);
  const drawn = chart.curves.map((curve) => ({ curve, path: pathOf(curve, x, y, top) })).filter((d) => d.path !== null);
  return svgDocument(
    { width, height, description: describeLengths(chart) },
    plotFrame({ x, y, width, height, sides, unit: { x: `${chart.lengthUnit} one way`, y: chart.unit }, theme }),
    ...drawn.map(({ curve, path }) =>
      element('path', {
        d: path!.d,
        fill: 'none',
        stroke: curve.measured ? theme.copper : theme.edge,
        'stroke-width': curve.measured ? 2 : 1,
        'stroke-dasharray': curve.measured ? null : '5 4',
      }),
    ),
    asked(chart, x, y, theme),
    limitLine(chart, x, y, theme),
    ...endNames(
      drawn.map(({ curve, path }) => ({ name: curve.name, measured: curve.measured, ...path! })),
      width,
      height,
      sides,
      theme,
    ),
  );
}

type Scale = ReturnType<typeof scaleLinear<number, number>>;

function scalesOf(chart: LengthChart, width: number, height: number, sides: Sides) {
  const finite = chart.curves.flatMap((c) => c.points.map((p) => p.value)).filter(Number.isFinite);
  const longest = Math.max(1e-6, ...chart.curves.flatMap((c) => c.points.map((p) => p.length)));
  const limit = chart.limit?.value ?? Number.NEGATIVE_INFINITY;
  const least = chart.fromZero ? 0 : Math.min(...finite, ...(chart.limit ? [limit] : []), Number.POSITIVE_INFINITY);
  const low = Number.isFinite(least) ? least : 0;
  const asked = highestAsked(chart);
  const reach = chart.limit
    ? low + Math.max(REACH * (limit - low), ABOVE_ASKED * (asked - low))
    : Number.POSITIVE_INFINITY;
  const most = Math.min(Math.max(limit, ...finite), Math.max(reach, low + 1e-6));
  const top = Number.isFinite(most) && most > low ? most : low + 1;
  const x = scaleLinear()
    .domain([0, longest])
    .range([sides.left, width - sides.right]);
  const y = scaleLinear()
    .domain([low, top + 0.04 * (top - low)])
    .range([height - sides.bottom, sides.top]);
  return { x, y, top: y.domain()[1]! };
}

/** The highest of the measured curves at the length that is asked about; of all curves where none is measured. */
function highestAsked({ curves, length }: LengthChart): number {
  const measured = curves.filter((c) => c.measured);
  const at = (measured.length > 0 ? measured : curves).map(({ points }) => {
    const reached = points.filter((p) => Number.isFinite(p.value) && p.length <= length * (1 + 1e-9));
    return reached[reached.length - 1]?.value ?? Number.NEGATIVE_INFINITY;
  });
  return Math.max(Number.NEGATIVE_INFINITY, ...at);
}

/** The curve as far as the field reaches, and where it ends. */
function pathOf({ points }: LengthCurve, x: Scale, y: Scale, top: number) {
  let d = '';
  let end: { x: number; y: number; cut: boolean } | null = null;
  let before: LengthCurve['points'][number] | null = null;
  for (const p of points) {
    if (!Number.isFinite(p.value)) break;
    if (p.value > top) {
      if (before === null) break;
      const share = (top - before.value) / (p.value - before.value);
      end = { x: x(before.length + share * (p.length - before.length)), y: y(top), cut: true };
      d += `L${round(end.x)} ${round(end.y)}`;
      break;
    }
    end = { x: x(p.length), y: y(p.value), cut: false };
    d += `${d === '' ? 'M' : 'L'}${round(end.x)} ${round(end.y)}`;
    before = p;
  }
  return end === null || before === null ? null : { d, end };
}

function asked({ length, lengthUnit }: LengthChart, x: Scale, y: Scale, theme: Theme): string {
  const at = x(length);
  const [foot, top] = y.range() as [number, number];
  return group(
    {},
    line(at, top - 6, at, foot, { stroke: theme.ink, 'stroke-width': 1 }),
    label(at + 5, top - 8, `${Number(length.toPrecision(3))} ${lengthUnit}`, {
      'font-size': NOTE,
      'font-weight': '600',
      fill: theme.ink,
    }),
  );
}

function limitLine({ limit }: LengthChart, x: Scale, y: Scale, theme: Theme): string {
  if (limit === null) return '';
  const [from, to] = x.range() as [number, number];
  const at = y(limit.value);
  const size = { 'font-size': NOTE, 'font-weight': '600', fill: theme.ink };
  // On the ground, so that curves do not run through the words.
  const casing = { ...size, stroke: theme.ground, 'stroke-width': 5, 'stroke-linejoin': 'round', fill: theme.ground };
  return group(
    {},
    line(from, at, to, at, { stroke: theme.ink, 'stroke-width': 1.5 }),
    label(from + 6, at - 6, limit.text, casing),
    label(from + 6, at - 6, limit.text, size),
  );
}

interface End {
  name: string;
  measured: boolean;
  end: { x: number; y: number; cut: boolean };
}

/**
 * Names at the right in the order in which the lines end there, each beside its end and none over another. Every measured cable has
 * its name; a nominal size whose place is taken goes without: the table has it.
 */
function endNames(ends: readonly End[], width: number, height: number, sides: Sides, theme: Theme): string[] {
  const room = sides.right - 12;
  // Lines that the field cuts off end at its top: the steepest, which ends first, stands highest.
  const order = [...ends].sort((a, b) => a.end.y - b.end.y || a.end.x - b.end.x);
  const placed = spread(
    order.filter((end) => end.measured),
    sides.top,
    height - sides.bottom,
  );
  for (const from of order.filter((end) => !end.measured)) {
    const at = order.indexOf(from);
    const above = placed.filter((t) => order.indexOf(t.from) < at).map((t) => t.y);
    const below = placed.filter((t) => order.indexOf(t.from) > at).map((t) => t.y);
    const y = Math.max(sides.top, from.end.y, Math.max(...above, Number.NEGATIVE_INFINITY) + LINE);
    const free = Math.min(y, Math.min(...below, Number.POSITIVE_INFINITY) - LINE);
    const fits = free >= sides.top && above.every((t) => free - t >= LINE) && Math.abs(free - from.end.y) <= LINE;
    if (fits) placed.push({ y: free, from });
  }
  return placed.map(({ y, from: { name, end, measured } }) => {
    const [text = ''] = fittedLines(pictureName(name), room, NOTE, 1);
    const at = width - sides.right + 10;
    const lead =
      Math.abs(end.y - y) > 2 || end.cut
        ? line(end.x + 2, end.y, at - 3, y, { stroke: theme.rule, 'stroke-width': 1 })
        : '';
    return (
      lead +
      label(at, y + 4, text, {
        'font-size': NOTE,
        'font-weight': measured ? '600' : '400',
        fill: measured ? theme.ink : theme.ink2,
      })
    );
  });
}

/** Each as near its end as the one above leaves room, and pushed up again where the foot is reached. */
function spread(order: readonly End[], top: number, foot: number): { y: number; from: End }[] {
  const placed: { y: number; from: End }[] = [];
  for (const from of order) {
    const before = placed[placed.length - 1];
    placed.push({ y: Math.max(top, from.end.y, before ? before.y + LINE : top), from });
  }
  let most = foot;
  for (let i = placed.length - 1; i >= 0; i--) {
    placed[i]!.y = Math.min(placed[i]!.y, most);
    most = placed[i]!.y - LINE;
  }
  return placed;
}

/** What each curve stands at where it is asked about, as one text. */
export function describeLengths({ title, unit, curves, length, lengthUnit, limit }: LengthChart): string {
  const said = curves.map(({ name, points }) => {
    const near = points.reduce((best, p) => (Math.abs(p.length - length) < Math.abs(best.length - length) ? p : best));
    return `${name} ${Number.isFinite(near.value) ? `${near.value.toFixed(1)} ${unit}` : 'does not come through'}`;
  });
  return `${title} against the length of the run; at ${Number(length.toPrecision(3))} ${lengthUnit}: ${said.join('; ')}${limit ? `; limit ${limit.text}` : ''}.`;
}
