/** Diagrams of the ways in which a piece is bent. */
import { droopCurve } from '../../../../methods/flex/droopCurve.ts';
import { hatchedClamp } from '../../../bend/hatchedClamp.ts';
import { group, rectangle, round } from '../../../svg.ts';
import type { Pen } from './pen.ts';

/** A droop that is plain to see, w L³ / EI; the shape is computed as for a measured piece. */
const DROOP = 5;
const HANGS = 430;

/** A piece clamped at the edge of a table, its free length along the level, and how far its tip hangs. */
export function droopDiagram(pen: Pen): string {
  const { theme } = pen;
  const [x, y] = [214, 96];
  const points = droopCurve(DROOP).map(({ reach, drop }): [number, number] => [x + reach * HANGS, y + drop * HANGS]);
  const path = `M${x - 120} ${y} L${points.map(([px, py]) => `${round(px)} ${round(py)}`).join(' L')}`;
  const tip = points[points.length - 1]!;
  const end = points[points.length - 2]!;
  const beyond: [number, number] = [tip[0] + 2.2 * (tip[0] - end[0]), tip[1] + 2.2 * (tip[1] - end[1])];
  return group(
    {},
    rectangle(20, y + 30, 194, 22, { fill: theme.sunk, stroke: theme.ink, 'stroke-width': 3 }),
    pen.line([64, y + 52], [64, 430], { width: 10 }),
    pen.cable(path, `M${tip[0]} ${tip[1]} L${round(beyond[0])} ${round(beyond[1])}`),
    hatchedClamp({ x: 90, y, width: 124, thick: 33, theme }),
    pen.line([x, y], [x + HANGS + 60, y], { width: 2, stroke: theme.edge, dash: '10 8' }),
    pen.distance([tip[0] + 76, y], [tip[0] + 76, tip[1]]),
    pen.word(tip[0] + 94, (y + tip[1]) / 2 + 10, 'drop', { anchor: 'start', strong: true }),
    pen.distance([x, 36], [x + HANGS, 36]),
    pen.word(x + HANGS / 2, 24, 'free length', { quiet: true }),
  );
}

/** A piece across two supports that stand on a scale, pushed down in the middle. */
export function pushDiagram(pen: Pen): string {
  const [left, right, top] = [190, 610, 208];
  const support = (x: number) =>
    pen.path(`M${x} ${top + 18} L${x - 26} 292 L${x + 26} 292 Z`, { fill: pen.theme.sunk });
  return group(
    {},
    pen.scale(130, 292, 540, 'g'),
    support(left),
    support(right),
    pen.cable(`M110 ${top - 26} C250 ${top + 10} 330 ${top + 46} 400 ${top + 46} S550 ${top + 10} 690 ${top - 26}`),
    pen.arrow([400, 70], [400, top + 22], { width: 6 }),
    pen.word(400, 54, 'push', { strong: true }),
    pen.distance([470, top - 14], [470, top + 46]),
    pen.line([300, top - 14], [540, top - 14], { width: 2, stroke: pen.theme.edge, dash: '10 8' }),
    pen.word(488, 160, 'how far it gives', { quiet: true, anchor: 'start' }),
  );
}

/** A piece wound as tightly as it goes, and the width of the coil. */
export function coilDiagram(pen: Pen): string {
  const turns = 2.2;
  const [cx, cy] = [360, 228];
  const points = Array.from({ length: 111 }, (_, i) => {
    const angle = (i / 110) * turns * 2 * Math.PI - Math.PI / 2;
    const r = 160 - (i / 110) * turns * 34;
    return `${round(cx + r * Math.cos(angle))} ${round(cy + r * Math.sin(angle))}`;
  });
  return group(
    {},
    pen.cable(`M60 ${cy - 160} L${points.join(' L')}`, `M30 ${cy - 160} L70 ${cy - 160}`),
    pen.line([cx + 10, cy - 176], [620, cy - 176], { width: 2, stroke: pen.theme.edge, dash: '10 8' }),
    pen.line([cx + 10, cy + 160], [620, cy + 160], { width: 2, stroke: pen.theme.edge, dash: '10 8' }),
    pen.distance([596, cy - 176], [596, cy + 160]),
    pen.word(614, cy + 4, 'coil', { anchor: 'start', strong: true }),
  );
}

/** A piece bent by hand into a bow, its middle in a sleeve with a letter. */
function sleeved(pen: Pen, x: number, rise: number, letter: string): string {
  const ends = 330;
  /** Points of the bow, a parabola over `BOW` px. */
  const at = (share: number): [number, number] => [x + share * BOW, ends - 4 * rise * share * (1 - share)];
  const along = (from: number, to: number): string => {
    const [x1, y1] = at(from);
    const [x2, y2] = at(to);
    const slope = 4 * rise * (1 - 2 * from);
    const middle = [(x1 + x2) / 2, y1 - (slope * (to - from)) / 2];
    return `M${round(x1)} ${round(y1)} Q${round(middle[0]!)} ${round(middle[1]!)} ${round(x2)} ${round(y2)}`;
  };
  return group(
    {},
    pen.cable(along(0.04, 0.96), `${along(-0.02, 0.06)} ${along(0.94, 1.02)}`),
    pen.path(along(0.2, 0.8), { width: 64 }),
    pen.path(along(0.208, 0.792), { width: 58, stroke: pen.theme.sunk }),
    pen.letter(x + BOW / 2, ends - rise + 15, letter),
  );
}

const BOW = 310;

/** Two sleeves that hide which piece is in them; one is bent further with the same hands. */
export function pairsDiagram(pen: Pen): string {
  return group(
    {},
    sleeved(pen, 40, 190, 'A'),
    sleeved(pen, 450, 84, 'B'),
    pen.word(195, 412, 'easier', { strong: true }),
    pen.word(605, 412, 'or the same', { quiet: true }),
  );
}
