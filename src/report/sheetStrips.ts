/** The two small drawings of a cable's sheet: how far a reading stands from the fit, and a share of a whole. */
import { scaleLinear } from 'd3-scale';
import { circle, group, line, rectangle, svgDocument } from './svg.ts';
import type { Theme } from './theme.ts';

/** Marks stand at this many standard uncertainties: a reading in agreement lies within, 95 times in 100. */
const MARKS_AT = 2;
/** The strip shows this many on either side, unless a residual of the same column needs more. */
const USUAL_SPAN = 3;
const DOT = 4.5;

export interface StripOptions {
  width: number;
  height: number;
  theme: Theme;
  /** Standard uncertainties shown on each side; the same for all strips of a column (see `residualSpan`). */
  span?: number;
  as?: 'group' | 'picture';
}

/** The span that holds every residual of a column. */
export function residualSpan(residuals: readonly (number | null)[]): number {
  const far = residuals.map((r) => (r === null || !Number.isFinite(r) ? 0 : Math.abs(r)));
  return Math.max(USUAL_SPAN, Math.ceil(Math.max(0, ...far) + 0.25));
}

/** A reading's distance from the fit as a dot on a line with marks at ±2; no dot when there is nothing to compare with. */
export function residualStrip(residual: number | null, options: StripOptions): string {
  const { width, height, theme, span = USUAL_SPAN } = options;
  const y = height / 2;
  const x = scaleLinear()
    .domain([-span, span])
    .range([DOT + 1, width - DOT - 1])
    .clamp(true);
  const mark = (at: number): string => line(x(at), y - 5, x(at), y + 5, { stroke: theme.edge, 'stroke-width': 1 });
  return wrapped(
    options,
    line(0, y, width, y, { stroke: theme.rule, 'stroke-width': 1 }),
    mark(-MARKS_AT),
    mark(MARKS_AT),
    line(x(0), 0, x(0), height, { stroke: theme.ink, 'stroke-width': 1 }),
    residual === null || !Number.isFinite(residual) ? '' : dot(x(residual), y, Math.abs(residual) > MARKS_AT, theme),
  );
}

/** A share of a whole as an ink bar in its empty track. Throws RangeError outside 0 … 1. */
export function shareBar(
  share: number,
  options: { width: number; height: number; theme: Theme; as?: 'group' | 'picture' },
): string {
  if (!(share >= 0 && share <= 1)) throw new RangeError(`A share lies between 0 and 1, and got ${share}.`);
  const { width, height, theme } = options;
  return wrapped(
    options,
    rectangle(0, 0, width, height, { fill: theme.sunk }),
    share === 0 ? '' : rectangle(0, 0, Math.max(1, share * width), height, { fill: theme.ink }),
  );
}

/** Copper within the marks; an open ring beyond them, as for a reading that stands far from its fellows. */
function dot(x: number, y: number, far: boolean, theme: Theme): string {
  return far
    ? circle(x, y, DOT, { fill: theme.ground, stroke: theme.ink, 'stroke-width': 1.75 })
    : circle(x, y, DOT, { fill: theme.copper, stroke: theme.ink, 'stroke-width': 1 });
}

function wrapped(options: { width: number; height: number; as?: 'group' | 'picture' }, ...marks: string[]): string {
  if (options.as === 'group') return group({}, ...marks);
  return svgDocument({ width: options.width, height: options.height, description: '' }, ...marks);
}
