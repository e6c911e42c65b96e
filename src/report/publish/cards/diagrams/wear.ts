/** Diagrams of the jacket: its wall round the clock, and the edge that wears through it. */
import { jacketColour } from '../../../jacketColour.ts';
import { group } from '../../../svg.ts';
import type { Pen, Point } from './pen.ts';

const CENTRE = [300, 220] as const;
const OUTER = 180;
const INNER = 122;
/** How far the bundle sits off the middle, so that there is a thinnest place. */
const OFF = 26;
const PLACES = 6;

/** A cut face whose bundle sits off the middle; the wall is read at six places, the thinnest one named. */
export function wallDiagram(pen: Pen): string {
  const { theme } = pen;
  const [cx, cy] = CENTRE;
  const jacket = jacketColour('black', theme);
  const places = Array.from({ length: PLACES }, (_, i) => (i * 2 * Math.PI) / PLACES);
  const marks = places.map((angle) => {
    const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
    // From the bundle's edge to the jacket's along one ray from the middle of the jacket.
    const within = OFF * dx + Math.sqrt(INNER ** 2 - (OFF * dy) ** 2);
    const at = (r: number): Point => [cx + r * dx, cy + r * dy];
    return group(
      {},
      pen.line(at(within), at(OUTER), { width: 7, stroke: theme.ground }),
      pen.line(at(OUTER + 6), at(OUTER + 22), { width: 3 }),
    );
  });
  const thin = cx + OUTER;
  return group(
    {},
    pen.circle(cx, cy, OUTER, { fill: jacket.fill, stroke: theme.jacketEdge }),
    pen.circle(cx + OFF, cy, INNER, { fill: theme.bed, stroke: theme.jacketEdge, width: 2 }),
    pen.circle(cx + OFF, cy, INNER - 16, { fill: theme.copper, stroke: 'none', width: 0 }),
    ...marks,
    pen.line([thin + 28, cy], [thin + 76, cy]),
    pen.word(thin + 88, cy + 11, 'thinnest', { anchor: 'start', strong: true }),
    pen.word(thin + 88, cy + 49, 'place', { anchor: 'start', strong: true }),
  );
}

/** A weighted edge drawn to and fro across a jacket, its strokes counted until copper shows. */
export function wearDiagram(pen: Pen): string {
  const { theme } = pen;
  const y = 340;
  return group(
    {},
    pen.rectangle(60, y + 20, 680, 22),
    pen.cable(`M90 ${y} L710 ${y}`, `M60 ${y} L100 ${y} M700 ${y} L740 ${y}`, 40),
    pen.path(`M330 ${y - 22} Q400 ${y - 2} 470 ${y - 22} Z`, { fill: theme.ground, width: 2 }),
    pen.path(`M372 ${y - 15} Q400 ${y - 8} 428 ${y - 15} Z`, {
      fill: theme.copper,
      stroke: theme.copperLine,
      width: 2,
    }),
    pen.path(`M352 ${y - 96} L448 ${y - 96} L400 ${y - 12} Z`, { fill: theme.sunk }),
    pen.rectangle(320, y - 232, 160, 136),
    pen.word(400, y - 152, 'weight', { strong: true }),
    pen.arrow([180, y - 66], [330, y - 66], { both: true, width: 4 }),
    pen.word(254, y - 86, 'stroke', { quiet: true }),
    pen.window(560, 90, 190, '001'),
    pen.word(655, 190, 'until copper shows', { quiet: true }),
  );
}
