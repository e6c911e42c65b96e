import { crossedRing } from '../hatch.ts';
import { jacketColour } from '../jacketColour.ts';
import { strandColour } from '../metalKind.ts';
import { circle, element, group, label, line, round, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';
import { CROSSING, dashes, metalDisc } from './metalDisc.ts';
import type { SectionInput } from './sectionInput.ts';
import { reach, type SectionRadii, sectionRadii } from './sectionRadii.ts';
import { strandBed } from './strandBed.ts';

/** A cut face narrower than this shows nothing that can be read: its name stands alone. px */
export const LEAST_WIDTH = 40;
/** Below this scale a screen cannot part the strands, and the bed is tinted. px per mm */
const STRANDS_FROM = 9;
/** Ring that stands for a jacket or bundle whose size is not known: a sign, not a size. px */
const UNSIZED = 9;
/** Centre-line ticks begin and end this far outside the jacket. px */
const TICK_FROM = 3;
const TICK_TO = 10;

export interface SectionOptions {
  scalePxPerMm: number;
  theme: Theme;
  /** Width and height of the picture, px; taken from the cable when left out. */
  size?: number;
  /** Centre-line ticks on all four sides, above and below only, or none (the default). */
  showTicks?: boolean | 'upright';
  /** Multiplies line widths, for cards and film; 1 when left out. */
  weight?: number;
  /** `group`: a <g> to be placed by the caller; `picture` (default): a whole <svg> with its text alternative. */
  as?: 'group' | 'picture';
}

export interface Drawing {
  /** Empty when the cut face would be narrower than 40 px. */
  svg: string;
  width: number;
  height: number;
  description: string;
}

interface Pen {
  c: number;
  /** Radii in px. */
  radii: SectionRadii;
  cable: SectionInput;
  theme: Theme;
  scale: number;
  weight: number;
}

/**
 * A cable's cut face at a true scale: jacket, bundle, the metal as one disc of its true area, and the area that the label
 * claims as a dashed ring. A bare gap between disc and ring is the metal that is not there, and nothing is drawn in it.
 */
export function sectionDrawing(cable: SectionInput, options: SectionOptions): Drawing {
  const { scalePxPerMm: scale, theme, weight = 1 } = options;
  const inMm = sectionRadii(cable);
  const radius = drawnRadius(inMm, scale);
  const size = options.size ?? Math.ceil(2 * (radius + TICK_TO * weight + 2));
  const empty = { svg: '', width: 0, height: 0, description: cable.description };
  if (2 * radius < LEAST_WIDTH) return empty;
  const pen: Pen = { c: size / 2, radii: inPixels(inMm, scale), cable, theme, scale, weight };
  const marks = [
    ticks(pen, radius, options.showTicks ?? false),
    jacket(pen),
    bed(pen),
    metal(pen),
    claimedRing(pen),
    notes(pen),
  ];
  const svg =
    options.as === 'group'
      ? group({}, ...marks)
      : svgDocument({ width: size, height: size, description: cable.description }, ...marks);
  return { svg, width: size, height: size, description: cable.description };
}

/** Radius of everything that is drawn, px; a face of which nothing is known gets the least that can be read. */
export function drawnRadius(radii: SectionRadii, scale: number): number {
  const known = reach(radii);
  if (known === null) return LEAST_WIDTH / 2 + 6;
  return radii.outer === null ? known * scale + UNSIZED : known * scale;
}

function inPixels(radii: SectionRadii, scale: number): SectionRadii {
  const px = (r: number | null): number | null => (r === null ? null : r * scale);
  return {
    metal: px(radii.metal),
    claim: px(radii.claim),
    bundle: px(radii.bundle),
    outer: px(radii.outer),
    jacketInside: px(radii.jacketInside),
  };
}

function ticks({ c, theme, weight }: Pen, radius: number, show: boolean | 'upright'): string {
  if (show === false) return '';
  const style = { stroke: theme.edge, 'stroke-width': 0.75 * weight };
  const [from, to] = [radius + TICK_FROM * weight, radius + TICK_TO * weight];
  const upright = line(c, c - to, c, c - from, style) + line(c, c + from, c, c + to, style);
  return show === 'upright'
    ? upright
    : upright + line(c - to, c, c - from, c, style) + line(c + from, c, c + to, c, style);
}

function jacket(pen: Pen): string {
  const { c, radii, theme, weight, cable } = pen;
  const inside = largest(radii.bundle, radii.metal, radii.claim);
  if (radii.outer === null) {
    return inside === null ? '' : unknownRing(pen, inside + UNSIZED, inside);
  }
  if (radii.jacketInside === null) return unknownRing(pen, radii.outer, inside ?? 0);
  const colour = jacketColour(cable.jacketColour, theme);
  return circle(c, c, radii.outer, {
    fill: colour.fill,
    stroke: colour.outline,
    'stroke-width': colour.outlineWidth * weight,
  });
}

/** The bundle: bare ground, then strands outside both the metal and the claim, or a crossed bed when they were not measured. */
function bed(pen: Pen): string {
  const { c, radii, theme, cable, scale } = pen;
  const edge = radii.bundle ?? radii.jacketInside;
  const inner = largest(radii.metal, radii.claim) ?? 0;
  const ground = edge ?? inner;
  const bare = ground === 0 ? '' : circle(c, c, ground, { fill: theme.bed });
  if (edge === null || edge <= inner) return bare;
  if (cable.strandDiameter === null) return bare + unknownRing(pen, edge, inner);
  const colour = strandColour(cable.metal, theme);
  const strands = strandBed(c, c, inner, edge, cable.strandDiameter * scale);
  if (strands === null || (theme.medium === 'screen' && scale < STRANDS_FROM)) {
    const middle = (edge + inner) / 2;
    return (
      bare +
      circle(c, c, middle, { fill: 'none', stroke: colour, 'stroke-width': edge - inner, 'stroke-opacity': '0.35' })
    );
  }
  return (
    bare +
    element('path', {
      d: strands.path,
      stroke: colour,
      'stroke-width': strands.lineWidth,
      fill: colour,
      'fill-opacity': '0.38',
    })
  );
}

function metal({ c, radii, cable, scale, weight, theme }: Pen): string {
  if (radii.metal === null) return '';
  return metalDisc({
    cx: c,
    cy: c,
    r: radii.metal,
    metal: cable.metal,
    copperShare: cable.copperShare,
    scalePxPerMm: scale,
    weight,
    theme,
  });
}

function claimedRing({ c, radii, theme, weight }: Pen): string {
  if (radii.claim === null) return '';
  const heavy = weight > 1;
  const width = heavy ? 3.2 * weight * 0.5 : 1.5;
  const [on, off] = heavy ? [7.5 * weight, 5.25 * weight] : [5, 3.5];
  const ring = circle(c, c, radii.claim, {
    fill: 'none',
    stroke: theme.claim,
    'stroke-width': width,
    'stroke-dasharray': `${round(on)} ${round(off)}`,
  });
  // Where the claim is larger than the bundle, the ring lies on the jacket and needs a light casing to be seen there.
  const onJacket = radii.bundle !== null && radii.claim > radii.bundle;
  return onJacket
    ? circle(c, c, radii.claim, { fill: 'none', stroke: theme.bed, 'stroke-width': width + 3 * weight }) + ring
    : ring;
}

/** Words that stand in the drawing for what is not known. */
function notes({ c, radii, cable, theme, weight }: Pen): string {
  if (radii.metal !== null) return '';
  const ring = radii.claim ?? (radii.bundle === null ? (LEAST_WIDTH / 2 + 4) * weight : radii.bundle * 0.75);
  const open = circle(c, c, radii.claim === null ? ring : ring * 0.86, {
    fill: theme.bed,
    stroke: theme.edge,
    'stroke-width': weight,
    'stroke-dasharray': dashes(weight),
  });
  const words = label(c, c + 4 * weight, cable.areaWords ?? 'weigh it', {
    'font-size': Math.min(13 * weight, ring * 0.5),
    fill: theme.ink2,
    'text-anchor': 'middle',
  });
  return open + words;
}

/** A ring of which the size or the stuff is not known: crossed, no fill, dashed outline. */
function unknownRing({ c, theme, weight }: Pen, outer: number, inner: number): string {
  const outline = circle(c, c, outer, {
    fill: 'none',
    stroke: theme.edge,
    'stroke-width': weight,
    'stroke-dasharray': dashes(weight),
  });
  const crossing = crossedRing(c, c, outer, inner, CROSSING * weight);
  return element('path', { d: crossing, stroke: theme.edge, 'stroke-width': weight * 0.75, fill: 'none' }) + outline;
}

function largest(...radii: (number | null)[]): number | null {
  const known = radii.filter((r) => r !== null);
  return known.length === 0 ? null : Math.max(...known);
}
