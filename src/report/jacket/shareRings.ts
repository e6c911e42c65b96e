import type { JacketCable } from '../../findings/shapes/jacket.ts';
import { crossedRing } from '../hatch.ts';
import { jacketColour } from '../jacketColour.ts';
import type { MetalKind } from '../metalKind.ts';
import { metalDisc } from '../section/metalDisc.ts';
import { circle, element, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';

export interface RingsOptions {
  /** One scale for all that stand together. */
  scalePxPerMm: number;
  /** Width and height, px. */
  size: number;
  theme: Theme;
}

export interface Ringed {
  shares: JacketCable['shares'];
  name: string;
  /** mm */
  outerDiameter: number;
  jacketColour: string;
  metal: MetalKind;
  copperShare: number | null;
}

const CROSSING = 6;

/**
 * Where the cut face goes: a disc of all the metal, a ring of all the air between strands as bare ground, and the jacket around them,
 * each of its true area at a true scale. Shares that are not known leave the face crossed.
 */
export function shareRings(cable: Ringed, { scalePxPerMm, size, theme }: RingsOptions): string {
  const c = size / 2;
  const outer = (cable.outerDiameter / 2) * scalePxPerMm;
  const colour = jacketColour(cable.jacketColour, theme);
  const edge = { stroke: colour.outline, 'stroke-width': colour.outlineWidth };
  const { shares } = cable;
  if (shares === null)
    return svgDocument(
      { width: size, height: size, description: `${cable.name}: the shares of its cut face are not known.` },
      circle(c, c, outer, { fill: theme.bed, ...edge, 'stroke-dasharray': '3 3' }),
      element('path', {
        d: crossedRing(c, c, outer, 0, CROSSING),
        stroke: theme.edge,
        'stroke-width': 1,
        fill: 'none',
      }),
    );
  const within = (share: number) => outer * Math.sqrt(Math.min(1, Math.max(0, share)));
  return svgDocument(
    { width: size, height: size, description: describe(cable) },
    circle(c, c, outer, { fill: colour.fill, ...edge }),
    circle(c, c, within(1 - shares.jacket.value), { fill: theme.bed }),
    metalDisc({
      cx: c,
      cy: c,
      r: within(shares.metal.value),
      metal: cable.metal,
      copperShare: cable.copperShare,
      scalePxPerMm,
      weight: 1,
      theme,
    }),
  );
}

function describe({ name, shares, outerDiameter }: Ringed): string {
  const part = (of: { value: number }) => `${(100 * of.value).toFixed(0)} %`;
  return `Cut face of ${name}, ${outerDiameter.toFixed(1)} mm across: metal ${part(shares!.metal)}, air between strands ${part(shares!.air)}, jacket ${part(shares!.jacket)}.`;
}
