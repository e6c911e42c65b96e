import { element, group, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';
import type { BendMethod } from './bendMethods.ts';
import { describe, methodStrip, type Strip } from './methodStrip.ts';

/** Room between the two for the lines that join them, px. */
const BETWEEN = 96;
const MARGIN = 6;

/**
 * Two orders of the same cables side by side, such as the measured and the judged one, with a line from each cable's row in the
 * one to its row in the other: level lines where both agree, crossing ones where they do not.
 */
export function orderBesideOrder(left: BendMethod, right: BendMethod, options: { width: number; theme: Theme }): Strip {
  const { width, theme } = options;
  const each = (width - BETWEEN) / 2;
  const a = methodStrip(left, { width: each, theme, as: 'group' });
  const b = methodStrip(right, { width: each, theme, as: 'group' });
  const joins = [...a.middles].flatMap(([cable, y]) => {
    const other = b.middles.get(cable);
    if (other === undefined) return [];
    const [from, to] = [each + MARGIN, each + BETWEEN - MARGIN];
    const bend = (to - from) / 2.4;
    return element('path', {
      d: `M${from} ${y}C${(from + bend).toFixed(2)} ${y} ${(to - bend).toFixed(2)} ${other} ${to} ${other}`,
      fill: 'none',
      stroke: theme.edge,
      'stroke-width': 1.5,
    });
  });
  const height = Math.max(a.height, b.height);
  const svg = svgDocument(
    { width, height, description: `${describe(left)} ${describe(right)}` },
    a.svg,
    ...joins,
    group({ transform: `translate(${each + BETWEEN} 0)` }, b.svg),
  );
  return { svg, width, height, middles: a.middles };
}
