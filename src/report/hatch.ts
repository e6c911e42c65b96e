/**
 * Ruling worked out as plain lines, without patterns or clip paths: the same in a page, in a file and on paper, and two
 * pictures in one page can never share a name by accident. One-way ruling means aluminium, crossed ruling means unknown.
 */
import { round } from './svg.ts';

/** Lines of slope +1 ('rising' on the page) or −1 ('falling'). */
export type Slant = 'rising' | 'falling';

/** Path data of 45° lines, `spacing` apart, across a disc, or across a ring when `inner` is given. */
export function ruledRing(cx: number, cy: number, outer: number, inner: number, spacing: number, slant: Slant): string {
  const parts: string[] = [];
  for (const offset of offsets(outer, spacing)) {
    const far = Math.sqrt(outer * outer - offset * offset);
    const near = Math.abs(offset) < inner ? Math.sqrt(inner * inner - offset * offset) : 0;
    const stretches =
      near === 0
        ? [[-far, far]]
        : [
            [-far, -near],
            [near, far],
          ];
    for (const [from, to] of stretches) parts.push(slantedLine(cx, cy, offset, from!, to!, slant));
  }
  return parts.join('');
}

/** Path data of 45° lines, `spacing` apart, across a rectangle. */
export function ruledRectangle(
  x: number,
  y: number,
  width: number,
  height: number,
  spacing: number,
  slant: Slant,
): string {
  const step = spacing * Math.SQRT2;
  const parts: string[] = [];
  // Each rising line is x + y = const from the rectangle's corner; clipped against its four sides.
  for (let sum = step / 2; sum < width + height; sum += step) {
    const x1 = Math.max(0, sum - height);
    const x2 = Math.min(width, sum);
    const [y1, y2] = [sum - x1, sum - x2];
    parts.push(
      slant === 'rising'
        ? `M${round(x + x1)} ${round(y + y1)}L${round(x + x2)} ${round(y + y2)}`
        : `M${round(x + x1)} ${round(y + height - y1)}L${round(x + x2)} ${round(y + height - y2)}`,
    );
  }
  return parts.join('');
}

/** Both ways: the sign for what is not known. */
export const crossedRing = (cx: number, cy: number, outer: number, inner: number, spacing: number): string =>
  ruledRing(cx, cy, outer, inner, spacing, 'rising') + ruledRing(cx, cy, outer, inner, spacing, 'falling');

/** Both ways over a rectangle. */
export const crossedRectangle = (x: number, y: number, width: number, height: number, spacing: number): string =>
  ruledRectangle(x, y, width, height, spacing, 'rising') + ruledRectangle(x, y, width, height, spacing, 'falling');

/** Distances from the centre at which lines are drawn, the same on both sides of it. */
function offsets(radius: number, spacing: number): number[] {
  if (!(radius > 0) || !(spacing > 0)) return [];
  const first = spacing / 2;
  const list: number[] = [];
  for (let offset = first; offset < radius; offset += spacing) list.push(-offset, offset);
  return list.sort((a, b) => a - b);
}

function slantedLine(cx: number, cy: number, offset: number, from: number, to: number, slant: Slant): string {
  const turn = slant === 'rising' ? -1 : 1;
  const at = (along: number): string => {
    const x = cx + (along + offset * -turn) * Math.SQRT1_2;
    const y = cy + (along * turn + offset) * Math.SQRT1_2;
    return `${round(x)} ${round(y)}`;
  };
  return `M${at(from)}L${at(to)}`;
}
