import { scaleLinear } from 'd3-scale';
import type { PushPoint } from '../../methods/flex/push.ts';
import { circle, element, group, label, line, round, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';
import type { PushView } from './bendViews.ts';

export interface PushLoopOptions {
  width: number;
  height: number;
  theme: Theme;
  /** Ends of the axes, mm and N: one pair for loops that stand together (see `pushReach`). */
  reach?: { deflection: number; force: number };
}

const SIDE = { left: 44, right: 12, top: 26, bottom: 40 };
const NOTE = 13;
const DOT = 4.5;
const TICKS = 4;

/** The axes that hold every point of several pushes. */
export function pushReach(views: readonly PushView[]): { deflection: number; force: number } {
  const points = views.flatMap((view) => [...view.loading, ...view.unloading]);
  return {
    deflection: Math.max(1, ...points.map((p) => p.deflection)),
    force: Math.max(0.1, ...points.map((p) => p.force)),
  };
}

/**
 * Force against deflection: loading as filled dots, unloading as open ones, what is between them shaded, and the line through
 * the first points, whose slope is the stiffness, drawn over the points that lie on it and dashed beyond.
 */
export function pushLoop(view: PushView, options: PushLoopOptions): string {
  const { width, height, theme } = options;
  const reach = options.reach ?? pushReach([view]);
  const x = scaleLinear()
    .domain([0, reach.deflection])
    .nice(TICKS)
    .range([SIDE.left, width - SIDE.right]);
  const y = scaleLinear()
    .domain([0, reach.force])
    .nice(TICKS)
    .range([height - SIDE.bottom, SIDE.top]);
  const at = (p: PushPoint) => `${round(x(p.deflection))} ${round(y(p.force))}`;
  const way = (points: readonly PushPoint[]) => points.map((p, i) => `${i === 0 ? 'M' : 'L'}${at(p)}`).join('');
  const back = [...view.unloading].sort((a, b) => b.deflection - a.deflection);
  const loop = back.length > 1 && view.loading.length > 1 ? `${way(view.loading)}${way(back).replace('M', 'L')}Z` : '';
  const thin = { fill: 'none', stroke: theme.edge, 'stroke-width': 1 };
  return svgDocument(
    { width, height, description: describe(view) },
    axes(x, y, width, height, theme),
    loop === '' ? '' : element('path', { d: loop, fill: theme.sunk }),
    element('path', { d: way(view.loading), ...thin }),
    back.length > 1 ? element('path', { d: way(back), ...thin, 'stroke-dasharray': '3 3' }) : '',
    fitted(view, x, y, theme),
    ...back.map((p) =>
      circle(x(p.deflection), y(p.force), DOT, { fill: theme.sheet, stroke: theme.ink, 'stroke-width': 1.5 }),
    ),
    ...view.loading.map((p) => circle(x(p.deflection), y(p.force), DOT, { fill: theme.ink })),
  );
}

type Scale = ReturnType<typeof scaleLinear<number, number>>;

function fitted({ line: fit }: PushView, x: Scale, y: Scale, theme: Theme): string {
  if (fit === null) return '';
  const force = (deflection: number) => fit.intercept + fit.slope * deflection;
  const last = Math.min(x.domain()[1]!, (y.domain()[1]! - fit.intercept) / fit.slope);
  const first = Math.max(0, -fit.intercept / fit.slope);
  const ink = { stroke: theme.ink, 'stroke-width': 1.5 };
  const until = Math.min(fit.until, last);
  return (
    line(x(first), y(force(first)), x(until), y(force(until)), ink) +
    (last > until
      ? line(x(until), y(force(until)), x(last), y(force(last)), { ...ink, 'stroke-dasharray': '5 4' })
      : '')
  );
}

function axes(x: Scale, y: Scale, width: number, height: number, theme: Theme): string {
  const small = { 'font-size': NOTE, fill: theme.ink2 };
  const edge = { stroke: theme.edge, 'stroke-width': 1 };
  const foot = height - SIDE.bottom;
  return group(
    {},
    line(SIDE.left, foot, width - SIDE.right, foot, edge),
    line(SIDE.left, SIDE.top, SIDE.left, foot, edge),
    ...x
      .ticks(TICKS)
      .map(
        (tick) =>
          line(x(tick), foot, x(tick), foot + 5, edge) +
          label(x(tick), foot + 18, String(tick), { ...small, 'text-anchor': 'middle' }),
      ),
    ...y
      .ticks(TICKS)
      .map(
        (tick) =>
          line(SIDE.left - 5, y(tick), SIDE.left, y(tick), edge) +
          label(SIDE.left - 8, y(tick) + 4, String(tick), { ...small, 'text-anchor': 'end' }),
      ),
    label(0, 13, 'force, N', small),
    label(width - SIDE.right, foot + 34, 'deflection, mm', { ...small, 'text-anchor': 'end' }),
  );
}

function describe({ loading, unloading, line: fit, state }: PushView): string {
  const last = loading[loading.length - 1];
  const pushed = last ? `pushed to ${last.deflection.toFixed(1)} mm with ${last.force.toFixed(2)} N` : 'not pushed';
  const slope = fit ? `, ${fit.slope.toFixed(3)} N more for each mm at first` : '';
  const back = unloading.length > 0 ? `, and let back in ${unloading.length} readings` : '';
  return `${state === '' ? 'A push' : state}: ${pushed} in ${loading.length} readings${slope}${back}.`;
}
