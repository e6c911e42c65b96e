import { scaleLinear } from 'd3-scale';
import type { EnduranceCable } from '../../findings/shapes/jacket.ts';
import { element, group, label, line, round, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';
import { pieceDot } from './lastingStrip.ts';

export interface CurveOptions {
  width: number;
  height: number;
  theme: Theme;
  unit: string;
  /** End of the axis: one for all curves that stand together (see `curveReach`). */
  most: number;
}

const SIDE = { left: 40, right: 18, top: 12, bottom: 36 };
const NOTE = 13;
const HALF = 0.5;
const TICKS = 4;

/** The amount that holds every piece of a test. */
export const curveReach = (cables: readonly EnduranceCable[]): number =>
  Math.max(1e-9, ...cables.flatMap((c) => c.pieces.map((p) => p.amount)));

/**
 * The share of pieces still whole, as steps down at each failure, with its band, the failures as full dots and the survivors as open
 * ones where they were taken out. Beyond the last piece nothing is drawn, because nothing is known.
 */
export function enduranceCurve(cable: EnduranceCable, { width, height, theme, unit, most }: CurveOptions): string {
  const x = scaleLinear()
    .domain([0, most])
    .nice(TICKS)
    .range([SIDE.left, width - SIDE.right]);
  const y = scaleLinear()
    .domain([0, 1])
    .range([height - SIDE.bottom, SIDE.top]);
  const steps = stepsOf(cable);
  return svgDocument(
    { width, height, description: describeCurve(cable, unit) },
    element('path', { d: bandPath(steps, x, y), fill: theme.edge, 'fill-opacity': '0.24' }),
    axes(x, y, width, height, unit, theme),
    line(SIDE.left, y(HALF), width - SIDE.right, y(HALF), {
      stroke: theme.edge,
      'stroke-width': 1,
      'stroke-dasharray': '3 3',
    }),
    element('path', { d: stepPath(steps, x, y), fill: 'none', stroke: theme.ink, 'stroke-width': 2 }),
    ...dots(cable, steps, x, y, theme),
  );
}

interface Step {
  from: number;
  until: number;
  share: number;
  band: readonly [number, number] | null;
}

/** The curve as level stretches; until the first failure all are whole, and no band is known there. */
function stepsOf({ curve, pieces }: EnduranceCable): Step[] {
  const last = Math.max(0, ...pieces.map((p) => p.amount));
  const failures = curve.filter((s) => s.failed > 0);
  const starts = [{ amount: 0, survival: 1, interval: null as [number, number] | null }, ...failures];
  return starts.map(({ amount, survival, interval }, i) => ({
    from: amount,
    until: Math.max(amount, starts[i + 1]?.amount ?? last),
    share: survival,
    band: interval,
  }));
}

type Scale = (value: number) => number;

function bandPath(steps: readonly Step[], x: Scale, y: Scale): string {
  return steps
    .filter((s) => s.band !== null && s.until > s.from)
    .map(({ from, until, band }) => {
      const [low, high] = band!;
      return `M${round(x(from))} ${round(y(high))}H${round(x(until))}V${round(y(low))}H${round(x(from))}Z`;
    })
    .join('');
}

function stepPath(steps: readonly Step[], x: Scale, y: Scale): string {
  const [first, ...rest] = steps;
  const begin = `M${round(x(first!.from))} ${round(y(first!.share))}H${round(x(first!.until))}`;
  return begin + rest.map(({ until, share }) => `V${round(y(share))}H${round(x(until))}`).join('');
}

function dots({ pieces }: EnduranceCable, steps: readonly Step[], x: Scale, y: Scale, theme: Theme): string[] {
  const shareAt = (amount: number) => steps.filter((s) => s.from <= amount).at(-1)?.share ?? 1;
  const seen = new Map<string, number>();
  return pieces.map(({ amount, outcome }) => {
    const survived = outcome === 'survived';
    const key = `${amount} ${outcome}`;
    const times = seen.get(key) ?? 0;
    seen.set(key, times + 1);
    // Pieces with one amount stand one over the other.
    return pieceDot(x(amount), y(shareAt(amount)) - times * 9, survived, theme);
  });
}

function axes(
  x: ReturnType<typeof scaleLinear<number, number>>,
  y: Scale,
  width: number,
  height: number,
  unit: string,
  theme: Theme,
): string {
  const small = { 'font-size': NOTE, fill: theme.ink2 };
  const edge = { stroke: theme.edge, 'stroke-width': 1 };
  const foot = height - SIDE.bottom;
  return group(
    {},
    line(SIDE.left, foot, width - SIDE.right, foot, edge),
    ...[0, HALF, 1].map((share) =>
      label(SIDE.left - 8, y(share) + 4, `${100 * share}`, { ...small, 'text-anchor': 'end' }),
    ),
    label(0, y(1) + 4, '%', small),
    ...x
      .ticks(TICKS)
      .map(
        (tick) =>
          line(x(tick), foot, x(tick), foot + 5, edge) +
          label(x(tick), foot + 18, String(tick), { ...small, 'text-anchor': 'middle' }),
      ),
    label(width - SIDE.right, foot + 33, unit, { ...small, 'text-anchor': 'end' }),
  );
}

function describeCurve({ name, cable, curve, n, survived }: EnduranceCable, unit: string): string {
  const steps = curve
    .filter((s) => s.failed > 0)
    .map(({ amount, survival, interval }) => {
      const range = interval ? `, ${percent(interval[0])} to ${percent(interval[1])}` : '';
      return `${percent(survival)} whole after ${amount} ${unit}${range}`;
    });
  const lived = survived === 0 ? '' : `; ${survived} of ${n} survived`;
  return `${name || cable}: ${steps.length === 0 ? 'no piece failed' : steps.join('; ')}${lived}.`;
}

const percent = (share: number) => `${(100 * share).toFixed(0)} %`;
