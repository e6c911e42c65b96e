import { element, group, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';
import type { BendMethod } from './bendMethods.ts';
import { describe, methodStrip, type Strip } from './methodStrip.ts';

/** Room between the two for the lines that join them, px. */
const BETWEEN = 96;
const MARGIN = 6;

/**
 * Both orders with the cables of each band in the order of the other: within a band no order is known, so that lines cross only
 * where the two really put two cables the other way round.
 */
export function alongside(left: BendMethod, right: BendMethod): [BendMethod, BendMethod] {
  const bandIn = (method: BendMethod, cable: string) =>
    method.rows.find((row) => row.cable === cable)?.band ?? Number.POSITIVE_INFINITY;
  const byBand = (a: number, b: number) => (a === b ? 0 : a - b);
  const leftRows = [...left.rows].sort(
    (a, b) => byBand(a.band, b.band) || byBand(bandIn(right, a.cable), bandIn(right, b.cable)),
  );
  const place = (cable: string) => {
    const at = leftRows.findIndex((row) => row.cable === cable);
    return at < 0 ? leftRows.length : at;
  };
  const rightRows = [...right.rows].sort((a, b) => byBand(a.band, b.band) || place(a.cable) - place(b.cable));
  return [
    { ...left, rows: leftRows },
    { ...right, rows: rightRows },
  ];
}

/**
 * Two orders of the same cables side by side, such as the measured and the judged one, with a line from each cable's row in the
 * one to its row in the other: level lines where both agree, crossing ones where they do not.
 */
export function orderBesideOrder(one: BendMethod, other: BendMethod, options: { width: number; theme: Theme }): Strip {
  const { width, theme } = options;
  const [left, right] = alongside(one, other);
  const each = (width - BETWEEN) / 2;
  const a = methodStrip(left, { width: each, theme, as: 'group' });
  const b = methodStrip(right, { width: each, theme, as: 'group' });
  const joins = [...a.middles].flatMap(([cable, y]) => {
    const across = b.middles.get(cable);
    if (across === undefined) return [];
    const [from, to] = [each + MARGIN, each + BETWEEN - MARGIN];
    const bend = (to - from) / 2.4;
    return element('path', {
      d: `M${from} ${y}C${(from + bend).toFixed(2)} ${y} ${(to - bend).toFixed(2)} ${across} ${to} ${across}`,
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
