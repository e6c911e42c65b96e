/** How far the work is, as a rule: one tick for each reading, copper over what is done, a marker where it stands. */
import { line, rectangle, svgDocument } from './svg.ts';
import type { Theme } from './theme.ts';

const DONE = 7;
const MARKER = { width: 3, height: 34 };
const TICKS = { one: 6, five: 10, ten: 22 };
/** Ticks nearer to each other than this run together, px. */
const LEAST_APART = 4;

export interface ProgressRuleOptions {
  width: number;
  theme: Theme;
}

export const PROGRESS_HEIGHT = MARKER.height + 2;

/** Readings per tick, so that ticks stay apart: 1, 5, 10, 50 … */
function readingsPerTick(wanted: number, width: number): number {
  for (let each = 1; ; each *= each === 1 || String(each).startsWith('1') ? 5 : 2)
    if ((width * each) / wanted >= LEAST_APART) return each;
}

/** Throws RangeError when more is done than wanted, or nothing is wanted. */
export function progressRule(done: number, wanted: number, { width, theme }: ProgressRuleOptions): string {
  if (!(wanted > 0 && done >= 0 && done <= wanted))
    throw new RangeError(`A rule of ${wanted} readings cannot show ${done} of them done.`);
  const x = (reading: number) => 1 + ((width - 2) * reading) / wanted;
  const each = readingsPerTick(wanted, width);
  const ticks = Array.from({ length: Math.floor(wanted / each) + 1 }, (_, tick) => {
    const long = tick % 10 === 0 ? TICKS.ten : tick % 5 === 0 ? TICKS.five : TICKS.one;
    return line(x(tick * each), 0, x(tick * each), long, { stroke: theme.edge, 'stroke-width': 1 });
  });
  return svgDocument(
    { width, height: PROGRESS_HEIGHT, description: '' },
    ...ticks,
    line(0, 1, width, 1, { stroke: theme.ink, 'stroke-width': 2 }),
    done === 0 ? '' : rectangle(0, 0, x(done), DONE, { fill: theme.copper }),
    line(x(done), 0, x(done), MARKER.height, { stroke: theme.ink, 'stroke-width': MARKER.width }),
  );
}
