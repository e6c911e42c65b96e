import { type DroopPoint, droopCurve, turnOfSet } from '../../methods/flex/droopCurve.ts';
import { jacketColour } from '../jacketColour.ts';
import { circle, element, group, label, line, round, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';
import type { DroopFace, DroopView } from './bendViews.ts';
import { droopLabels, type PlacedLabel } from './droopLabels.ts';
import { hatchedClamp } from './hatchedClamp.ts';

export interface DroopDrawingInput extends DroopView {
  name: string;
  /** mm; null draws a thin line. */
  outerDiameter: number | null;
  jacketColour: string;
}

export interface DroopDrawingOptions {
  width: number;
  theme: Theme;
  /** px per mm; left out, the drawing fills its width. One value for drawings that stand together. */
  scale?: number;
}

const MARGIN = 14;
const CLAMP = 46;
const NOTE = 13;
/** Width of a cable whose diameter is not known, px. */
const THIN = 3;
const SCALE_BARS = [200, 100, 50, 20, 10];
const FOOT = 56;

/** px per mm at which an overhang fills a drawing of that width. */
export function droopScale(overhang: number, width: number): number {
  return (width - CLAMP - 3 * MARGIN) / overhang;
}

/** Curve and measured tip of one face, mm from the clamp. */
interface Drawn {
  curve: DroopPoint[];
  tip: DroopPoint | null;
  face: DroopFace['face'];
}

function drawnFace(input: DroopDrawingInput, read: DroopFace): Drawn {
  const { lambda, overhang, set } = input;
  const turn = turnOfSet(set);
  const curve =
    lambda === null
      ? []
      : droopCurve(lambda, turn, read.face === 'down' ? -1 : 1).map(({ reach, drop }) => ({
          reach: reach * overhang,
          drop: drop * overhang,
        }));
  const end = curve[curve.length - 1];
  const tip =
    read.drop !== null
      ? { reach: end?.reach ?? straightReach(overhang, read.drop), drop: read.drop }
      : end && read.chordAngle !== null
        ? { reach: end.reach, drop: end.reach * Math.tan(read.chordAngle) }
        : null;
  return { curve, tip, face: read.face };
}

/** Where a tip would stand on a straight line of that length: only for a droop that has no curve. */
const straightReach = (overhang: number, drop: number) => Math.sqrt(Math.max(0, overhang ** 2 - drop ** 2));

/**
 * A droop to true scale: the clamp, the computed shape as thick as the cable is, once each way up, and the tips as read, as open
 * rings. Without a computed shape only clamp, level and tips.
 */
export function droopDrawing(input: DroopDrawingInput, { width, theme, scale }: DroopDrawingOptions): string {
  const perMm = scale ?? droopScale(input.overhang, width);
  const faces = input.faces.map((face) => drawnFace(input, face));
  const thick = Math.max(THIN, (input.outerDiameter ?? 0) * perMm);
  const origin = { x: MARGIN + CLAMP, y: MARGIN + thick / 2 + 6 };
  const depth = Math.max(20, ...faces.flatMap((f) => [...f.curve, ...(f.tip ? [f.tip] : [])].map((p) => p.drop)));
  const rise = Math.max(0, ...faces.flatMap((f) => f.curve.map((p) => -p.drop))) * perMm;
  const x = (p: DroopPoint) => origin.x + p.reach * perMm;
  const labels = droopLabels(
    faces.flatMap(({ face, curve, tip }) =>
      tip === null
        ? []
        : [
            {
              words: faceWords(face, tip, faces.length),
              tip: { x: x(tip), y: tip.drop * perMm },
              curve: curve.map((p) => ({ x: x(p), y: p.drop * perMm })),
            },
          ],
    ),
    { half: thick / 2, left: MARGIN, right: width - MARGIN / 2, size: NOTE },
  );
  const top = Math.max(origin.y + rise, ...labels.map(({ y }) => NOTE + 2 - y));
  const height = top + Math.max(depth * perMm + thick / 2 + 16, ...labels.map((each) => each.y)) + FOOT - 16;
  const y = (p: DroopPoint) => top + p.drop * perMm;
  const path = (curve: readonly DroopPoint[]) =>
    curve.map((p, i) => `${i === 0 ? 'M' : 'L'}${round(x(p))} ${round(y(p))}`).join('');
  const jacket = jacketColour(input.jacketColour, theme);
  const turned = faces.filter((f) => f.face === 'down' && f.curve.length > 0);
  const asLaid = faces.filter((f) => f.face === 'up' && f.curve.length > 0);
  const both = faces.length > 1;
  return svgDocument(
    { width, height, description: describe(input, faces) },
    line(origin.x, top, width - MARGIN / 2, top, {
      stroke: theme.edge,
      'stroke-width': 1,
      'stroke-dasharray': '16 4 3 4',
    }),
    ...turned.map((f) => outline(path(f.curve), thick, both ? null : jacket.fill, theme)),
    ...asLaid.map((f) => outline(path(f.curve), thick, jacket.fill, theme)),
    hatchedClamp({ x: MARGIN, y: top, width: CLAMP, thick, theme }),
    ...faces.map((f) => (f.tip === null ? '' : tipMark(x(f.tip), y(f.tip), theme))),
    ...labels.map((each) => placed(each, top, theme)),
    scaleBar(width - MARGIN, height - 12, perMm, theme),
    label(MARGIN, height - 8, `${Math.round(input.overhang)} mm free`, { 'font-size': NOTE, fill: theme.ink2 }),
  );
}

/** A stroke as thick as the cable with an outline; without a fill it is the other way up. */
function outline(d: string, thick: number, fill: string | null, theme: Theme): string {
  const stroke = { d, fill: 'none', 'stroke-linejoin': 'round' } as const;
  if (fill === null)
    return group(
      {},
      element('path', { ...stroke, stroke: theme.edge, 'stroke-width': thick }),
      element('path', { ...stroke, stroke: theme.sheet, 'stroke-width': Math.max(1, thick - 2) }),
    );
  return group(
    {},
    element('path', { ...stroke, stroke: theme.jacketEdge, 'stroke-width': thick }),
    element('path', { ...stroke, stroke: fill, 'stroke-width': Math.max(1.5, thick - 2) }),
  );
}

function tipMark(x: number, y: number, theme: Theme): string {
  return group(
    {},
    circle(x, y, 5, { fill: theme.sheet, stroke: theme.ink, 'stroke-width': 1.75 }),
    circle(x, y, 1.5, { fill: theme.ink }),
  );
}

/** Which way up, where there are two of them, and the drop as read. */
function faceWords(face: DroopFace['face'], tip: DroopPoint, faces: number): string {
  const drop = `${Math.round(tip.drop)} mm`.replace('-', '−');
  return faces > 1 ? `${face === 'up' ? 'as laid' : 'turned over'}, ${drop}` : drop;
}

function placed({ words, x, y }: PlacedLabel, top: number, theme: Theme): string {
  return label(x, top + y, words, {
    'font-size': NOTE,
    fill: theme.ink,
    'text-anchor': 'end',
    stroke: theme.sheet,
    'stroke-width': 4,
    'paint-order': 'stroke',
    'stroke-linejoin': 'round',
  });
}

function scaleBar(right: number, y: number, perMm: number, theme: Theme): string {
  const length = SCALE_BARS.find((mm) => mm * perMm <= 120) ?? 10;
  const left = right - length * perMm;
  const ink = { stroke: theme.ink, 'stroke-width': 1 };
  return group(
    {},
    line(left, y, right, y, ink),
    line(left, y - 4, left, y + 4, ink),
    line(right, y - 4, right, y + 4, ink),
    label(left - 8, y + 4, `${length} mm`, { 'font-size': NOTE, fill: theme.ink2, 'text-anchor': 'end' }),
  );
}

function describe(input: DroopDrawingInput, faces: readonly Drawn[]): string {
  const tips = faces.flatMap((f) =>
    f.tip ? [`${f.face === 'up' ? 'as laid' : 'turned over'} the tip hangs ${Math.round(f.tip.drop)} mm down`] : [],
  );
  const shape = input.lambda === null ? ' No shape is drawn, because the droop settles nothing.' : '';
  return `${input.name}, ${Math.round(input.overhang)} mm hanging free of a clamp: ${tips.join(', ')}.${shape}`;
}
