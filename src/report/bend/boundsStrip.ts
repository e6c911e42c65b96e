import { scaleLog } from 'd3-scale';
import type { FlexCable } from '../../findings/shapes/flex.ts';
import type { Measured } from '../../findings/shapes/measured.ts';
import { formatPlain } from '../../units/digits.ts';
import { label, line, rectangle, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';

const HEIGHT = 62;
const LINE_AT = 30;
const NOTE = 13;

/**
 * Where a cable's stiffness lies between its two ends, by ratio: every strand sliding freely, and all strands stuck together.
 * A figure outside stands at the end that it passed, as an open tick.
 */
export function boundsStrip(
  bounds: NonNullable<FlexCable['bounds']>,
  stiffness: Measured | null,
  { width, theme }: { width: number; theme: Theme },
): string {
  const at = scaleLog()
    .domain([bounds.slip, bounds.stick])
    .range([1, width - 1])
    .clamp(true);
  const small = { 'font-size': NOTE, fill: theme.ink2 };
  const ink = { stroke: theme.ink, 'stroke-width': 1.5 };
  const outside = stiffness !== null && (stiffness.value < bounds.slip || stiffness.value > bounds.stick);
  const [from, to] = stiffness === null ? [0, 0] : [at(stiffness.interval[0]), at(stiffness.interval[1])];
  const mark =
    stiffness === null
      ? ''
      : rectangle(Math.min((from + to) / 2 - 2, from), LINE_AT - 4, Math.max(4, to - from), 8, {
          fill: outside ? theme.sheet : theme.edge,
          stroke: theme.edge,
          'stroke-width': 1,
        }) + rectangle(at(stiffness.value) - 1, LINE_AT - 8, 2, 16, { fill: theme.ink });
  const end = (value: number) => formatPlain(value, 2);
  return svgDocument(
    { width, height: HEIGHT, description: bounds.text },
    line(0, LINE_AT, width, LINE_AT, { stroke: theme.edge, 'stroke-width': 1 }),
    line(1, LINE_AT - 9, 1, LINE_AT + 9, ink),
    line(width - 1, LINE_AT - 9, width - 1, LINE_AT + 9, ink),
    mark,
    label(0, 13, 'strands slide', small),
    label(width, 13, 'strands stuck', { ...small, 'text-anchor': 'end' }),
    label(0, LINE_AT + 26, end(bounds.slip), small),
    label(width, LINE_AT + 26, `${end(bounds.stick)} N·m²`, { ...small, 'text-anchor': 'end' }),
  );
}
