import { crossedRing, ruledRing } from '../hatch.ts';
import { isRuled, type MetalKind, metalFill } from '../metalKind.ts';
import { circle, element, round } from '../svg.ts';
import type { Theme } from '../theme.ts';

/** Thickness of a tin skin as drawn, mm, and the least that can be seen, px. */
const TIN_SKIN_MM = 0.1;
const LEAST_SKIN = 1.75;
/** Distance between the lines of aluminium and of the unknown, px. */
export const RULING = 5;
export const CROSSING = 6;
/** Unknown metal is crossed closer than an unknown jacket, so that the two part where they meet. */
const METAL_CROSSING = 3.5;

export interface MetalDisc {
  cx: number;
  cy: number;
  /** px */
  r: number;
  metal: MetalKind;
  copperShare: number | null;
  scalePxPerMm: number;
  weight: number;
  theme: Theme;
}

/**
 * All the metal as one solid disc of its true area: copper plain, tinned with a tin rim, aluminium ruled, clad aluminium
 * ruled inside a copper rim that holds copper's true share (inner radius r · √(1 − share)), unknown metal crossed.
 */
export function metalDisc(disc: MetalDisc): string {
  const { cx, cy, r, metal, theme, weight } = disc;
  const fill = metalFill(metal, theme);
  if (fill === null) return unknownDisc(disc);
  if (metal === 'copper') return circle(cx, cy, r, { fill });
  if (metal === 'tinned copper') {
    const skin = Math.min(r, Math.max(LEAST_SKIN * weight, TIN_SKIN_MM * disc.scalePxPerMm));
    return circle(cx, cy, r, { fill: theme.tin }) + circle(cx, cy, r - skin, { fill });
  }
  const core = metal === 'aluminium' ? r : claddingInside(disc);
  const rim = core < r ? rimOf(cx, cy, r, core, theme.copper) : '';
  const lines = isRuled(metal)
    ? element('path', {
        d: ruledRing(cx, cy, core, 0, RULING * weight, 'rising'),
        stroke: theme.bed,
        'stroke-width': weight,
        fill: 'none',
      })
    : '';
  return circle(cx, cy, r, { fill }) + lines + rim;
}

/** Metal not told by the readings: crossed, no fill, dashed outline. */
function unknownDisc({ cx, cy, r, theme, weight }: MetalDisc): string {
  const outline = circle(cx, cy, r, {
    fill: theme.bed,
    stroke: theme.edge,
    'stroke-width': 1.25 * weight,
    'stroke-dasharray': dashes(weight),
  });
  return (
    outline +
    element('path', {
      d: crossedRing(cx, cy, r, 0, METAL_CROSSING * weight),
      stroke: theme.edge,
      'stroke-width': weight,
      fill: 'none',
    })
  );
}

/** Dashes of an outline that stands for something not known. */
export const dashes = (weight: number): string => `${round(3 * weight)} ${round(3 * weight)}`;

function claddingInside({ r, copperShare, weight }: MetalDisc): number {
  if (copperShare === null) return Math.max(0, r - LEAST_SKIN * weight);
  return r * Math.sqrt(1 - Math.min(1, Math.max(0, copperShare)));
}

/** A ring as one path with a hole, so that ruling beneath never shows through its edge. */
function rimOf(cx: number, cy: number, outer: number, inner: number, fill: string): string {
  const loop = (r: number): string =>
    `M${round(cx - r)} ${round(cy)}a${round(r)} ${round(r)} 0 1 0 ${round(2 * r)} 0a${round(r)} ${round(r)} 0 1 0 -${round(2 * r)} 0`;
  return element('path', { d: loop(outer) + loop(inner), fill, 'fill-rule': 'evenodd' });
}
