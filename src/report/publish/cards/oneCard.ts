import type { CableFindings, Findings } from '../../../findings/schema.ts';
import { measuredText, percentText, plainText } from '../../figures.ts';
import { type SectionInput, sectionInput } from '../../section/sectionInput.ts';
import { reach, sectionRadii } from '../../section/sectionRadii.ts';
import { circle, element, group, round } from '../../svg.ts';
import { shownCables } from '../document/overview.ts';
import { type About, type Shown, shownOf } from './aspects.ts';
import type { Canvas } from './canvas.ts';
import { brokenLines, fitName, heightBelow } from './fitName.ts';
import { axisOf, type CardFoot, endsLine, foot, footRoom, nameLines, outcomeLine, strips } from './pieces.ts';
import { placedFace, widestReach } from './placedFace.ts';

/** What has been shown so far of one cable, for cuts that look like an animation: name, claim, what was found, outcome. */
export const REVEAL_STEPS = 4;
const CLAIM = 2;
const FOUND = 3;
const OUTCOME = 4;

interface Place {
  /** Centre of the cut face and the largest radius. */
  cx: number;
  cy: number;
  r: number;
  /** Column of the words. */
  x: number;
  width: number;
  top: number;
}

function placeOf(canvas: Canvas, caution: boolean): Place {
  const { safe, format } = canvas;
  const bottom = safe.bottom - footRoom(caution);
  if (format.shape === 'wide') {
    const r = Math.min(392, (bottom - safe.top) / 2 - 26);
    return {
      cx: 520,
      cy: safe.top + (bottom - safe.top) / 2,
      r,
      x: 1010,
      width: safe.right - 1010,
      top: safe.top + 86,
    };
  }
  const width = safe.right - safe.left;
  const r = format.shape === 'tall' ? 280 : 168;
  return { cx: safe.left + width / 2, cy: 0, r, x: safe.left, width, top: safe.top + 64 };
}

/** The face as it may be seen at a step: the metal only once it is found, the claim only once it is named. */
function faceAt(cable: CableFindings, step: number): SectionInput {
  const input = sectionInput(cable);
  return {
    ...input,
    metalArea: step >= FOUND ? input.metalArea : null,
    claimedArea: step >= CLAIM ? input.claimedArea : null,
    ...(step >= FOUND ? {} : { areaWords: ' ' }),
  };
}

function face(canvas: Canvas, cable: CableFindings, step: number, cx: number, cy: number, r: number): string {
  // The scale comes from the whole cable, so that nothing moves from one step to the next.
  const scalePxPerMm = r / widestReach([cable]);
  return placedFace(faceAt(cable, step), cx, cy, { scalePxPerMm, theme: canvas.theme, showTicks: true, weight: 2 });
}

interface Said {
  dim: string;
  strong: string;
  /** Share of the radius at which the leader ends on the face. */
  at: number;
}

/** More lines than these stand closer, so that the scale below still finds room. */
const USUAL_LINES = 2;
/** Radius of the face on a square card that says more, px. */
const SMALLER_FACE = 140;
/** Where the leader of the metal ends, share of the radius. */
const METAL_AT = 0.25;

/** The lines with leaders: jacket, label; the third, what was found, stands large below them. */
function saidOf(about: About, findings: Findings, cable: CableFindings, step: number, { allMetal }: Shown): Said[] {
  const jacket = findings.jacket?.cables.find((c) => c.cable === cable.cable);
  const share = jacket?.shares ? `, ${percentText(jacket.shares.jacket)} of the section` : '';
  const radii = sectionRadii(sectionInput(cable));
  const outer = reach(radii) ?? 1;
  const middle = (radii.outer ?? outer) / outer;
  const inner = (radii.jacketInside ?? 0) / outer;
  const lines: Said[] = [];
  if (about !== 'jacket' && step >= FOUND && cable.wall !== null)
    lines.push({ dim: 'Jacket', strong: `${measuredText(cable.wall.mean)}${share}`, at: (middle + inner) / 2 });
  if (step >= CLAIM) {
    const area = cable.label.claimed_area_mm2;
    const nominal = area === null || cable.label.size.includes('mm') ? '' : `, ${plainText(area, 'mm2')}`;
    const metal = cable.label.metal === '' ? '' : ` ${cable.label.metal}`;
    lines.push({ dim: 'Label says', strong: `${cable.label.size}${nominal}${metal}`, at: (radii.claim ?? 0) / outer });
  }
  if (step >= FOUND && allMetal !== '') lines.push({ dim: 'Metal', strong: allMetal, at: METAL_AT });
  return lines;
}

/** Where the leader of the key figure ends: in the copper rim where the copper is only that, else well inside the metal. */
function copperAt(cable: CableFindings, { allMetal, metal }: Shown): number {
  if (allMetal === '' || metal !== 'copper-clad aluminium') return METAL_AT;
  const radii = sectionRadii(sectionInput(cable));
  const inner = Math.sqrt(1 - Math.min(1, Math.max(0, cable.copper_share?.value ?? 0)));
  return ((radii.metal ?? 0) / (reach(radii) ?? 1)) * ((1 + inner) / 2);
}

function leaders(canvas: Canvas, place: Place, said: readonly Said[], ys: readonly number[]): string {
  const knee = place.x - 56;
  return group(
    {},
    ...said.map(({ at }, i) => {
      const y = ys[i]!;
      // The end lies on its ring, on the side that looks to the words.
      const angle = Math.atan2(y - place.cy, knee - place.cx);
      const r = at * place.r;
      const [ex, ey] = [place.cx + r * Math.cos(angle * 0.6), place.cy + r * Math.sin(angle * 0.6)];
      const { theme } = canvas;
      const pen = (width: number, stroke: string) =>
        group(
          { stroke, 'stroke-width': width, fill: 'none' },
          element('path', {
            d: `M${round(ex)} ${round(ey)}L${round(knee)} ${round(y)}L${round(place.x - 18)} ${round(y)}`,
          }),
        );
      return group(
        {},
        pen(6, theme.ground),
        pen(2, theme.ink),
        circle(ex, ey, 6, { fill: theme.ink, stroke: theme.ground, 'stroke-width': 2 }),
      );
    }),
  );
}

/** The key figure with its ±: smaller where both ends are given. */
function keyFigure(canvas: Canvas, x: number, y: number, shown: Shown, width: number): string {
  const long = shown.value.length * 68 + (shown.after.length + shown.condition.length) * 28 > width;
  const size = long ? 84 : 128;
  return canvas.runs(x, y, [
    { text: shown.value, size, weight: '700' },
    {
      text: [shown.after, shown.condition].filter((part) => part !== '').join(' '),
      size: long ? 40 : 56,
      fill: canvas.quiet,
    },
  ]);
}

/** The other cables' figures where no claim's limit gives the scale a reference. */
function othersOf(about: About, findings: Findings, cable: CableFindings, { ends, unit }: Shown): Shown[] {
  if (ends === null) return [];
  return shownCables(findings)
    .filter((other) => other.cable !== cable.cable)
    .map((other) => shownOf(about, findings, other))
    .filter((other) => other.figure !== null && other.unit === unit);
}

/** One cable: its cut face, what the label says, what was found, and the outcome. */
export function oneCard(
  canvas: Canvas,
  findings: Findings,
  cable: CableFindings,
  { about, step = REVEAL_STEPS, foot: said }: { about: About; step?: number; foot: CardFoot },
): string {
  const { safe, format } = canvas;
  const caution = about === 'amps';
  const place = placeOf(canvas, caution);
  const shown = shownOf(about, findings, cable);
  // One line more on the shortest card: a smaller face leaves it its room.
  if (format.shape === 'square' && shown.allMetal !== '') place.r = SMALLER_FACE;
  const name = fitName(cable.name, place.width);
  const parts: string[] = [nameLines(canvas, place.x, place.top, name)];
  let y = place.top + heightBelow(name) + 44;
  if (format.shape !== 'wide') {
    place.cy = y + place.r + 8;
    parts.push(face(canvas, cable, step, place.cx, place.cy, place.r));
    y = place.cy + place.r + 30;
  }
  const lines = saidOf(about, findings, cable, step, shown);
  const ys: number[] = [];
  const wideStep = lines.length > USUAL_LINES ? 64 : 84;
  for (const { dim, strong } of lines) {
    const broken = brokenLines(`${dim} ${strong}`, place.width, 34 * 1.08);
    y += format.shape === 'wide' ? wideStep : 46;
    ys.push(y - 12);
    broken.slice(0, 2).forEach((text, i) => {
      if (i > 0) y += 42;
      const strongPart = i === 0 ? text.slice(dim.length + 1) : text;
      parts.push(
        canvas.runs(place.x, y, [
          { text: i === 0 ? dim : '', size: 34, fill: canvas.quiet },
          { text: strongPart, size: 34, weight: '600' },
        ]),
      );
    });
  }
  if (step >= FOUND) {
    y += format.shape === 'wide' ? wideStep + 20 : 64;
    parts.push(canvas.text(place.x, y, shown.head, { size: 34, fill: canvas.quiet }));
    if (format.shape === 'wide') ys.push(y - 12);
    y += format.shape === 'square' ? 96 : 122;
    parts.push(keyFigure(canvas, place.x, y, shown, place.width));
    const beside = othersOf(about, findings, cable, shown);
    const axis = axisOf([shown, ...beside]);
    const room = safe.bottom - footRoom(caution) - y;
    const gap = format.shape === 'wide' ? 44 : 24;
    if (axis && room > 240) {
      const drawn = strips(
        canvas,
        place.x,
        y + gap,
        place.width,
        [{ figure: shown.figure, metal: shown.metal }],
        axis,
        { rowHeight: 30, others: beside.flatMap(({ figure }) => figure?.value ?? []) },
      );
      parts.push(drawn.svg);
      y += gap + drawn.height;
      if (shown.ends !== null) {
        y += 24;
        parts.push(endsLine(canvas, place.x, y, place.width, { ends: shown.ends, others: beside.length > 0 }));
      }
    }
  }
  if (step >= OUTCOME) {
    const at = Math.min(y + (format.shape === 'wide' ? 84 : 66), safe.bottom - footRoom(caution) - 8);
    parts.push(outcomeLine(canvas, place.x, at, shown, { size: 52, width: place.width }));
  }
  if (format.shape === 'wide') {
    const targets =
      step >= FOUND && about === 'inside' ? [...lines, { dim: '', strong: '', at: copperAt(cable, shown) }] : lines;
    parts.unshift(
      face(canvas, cable, step, place.cx, place.cy, place.r),
      leaders(canvas, place, targets, ys.slice(0, targets.length)),
    );
  }
  const description = `${cable.name}: ${cable.sentence}`;
  return canvas.card(description, ...parts, foot(canvas, said, caution));
}
