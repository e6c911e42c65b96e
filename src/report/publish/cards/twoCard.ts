import type { CableFindings, Findings } from '../../../findings/schema.ts';
import type { IntervalAxis } from '../../intervalAxis.ts';
import { intervalHeadHeight } from '../../intervalBar.ts';
import { sectionInput } from '../../section/sectionInput.ts';
import { group } from '../../svg.ts';
import { type About, type Shown, shownOf } from './aspects.ts';
import { type Canvas, LEAST_TEXT } from './canvas.ts';
import { type FittedName, fitName, heightBelow } from './fitName.ts';
import { axisOf, type CardFoot, ENLARGED, endsLine, foot, footRoom, nameLines, outcomeLine, strips } from './pieces.ts';
import { placedFace, widestReach } from './placedFace.ts';

/** How a face of two is drawn. */
const FACE = { showTicks: 'upright', weight: 1.6 } as const;

/** Two cables side by side: two cut faces at one scale, their figures, and two strips on one axis. */
export function twoCard(
  canvas: Canvas,
  findings: Findings,
  pair: readonly [CableFindings, CableFindings],
  { about, foot: said }: { about: About; foot: CardFoot },
): string {
  const { safe, format } = canvas;
  if (format.shape === 'tall') return uprightTwo(canvas, findings, pair, { about, foot: said });
  const caution = about === 'amps';
  const shown = pair.map((cable) => shownOf(about, findings, cable));
  const width = safe.right - safe.left;
  const column = width / 2;
  const bottom = safe.bottom - footRoom(caution);
  const axis = axisOf(shown);
  const stripRoom = axis ? stripsHeight(shown) : 0;
  const names = pair.map(({ name }) => fitName(name, column - 40, { largest: 48, most: 3 }));
  const figureBelow = Math.max(...names.map(heightBelow)) + 62;
  const words = format.shape === 'wide' ? 276 : 330;
  const r = Math.min(column / 2 - 30, (bottom - safe.top - words - stripRoom) / 2, 300);
  const scalePxPerMm = r / widestReach(pair);
  const cy = safe.top + r + 20;
  const parts: string[] = [];
  pair.forEach((cable, i) => {
    const cx = safe.left + (i + 0.5) * column;
    parts.push(
      placedFace(sectionInput(cable), cx, cy, { scalePxPerMm, theme: canvas.theme, ...FACE }),
      underFace(canvas, names[i]!, shown[i]!, { x: cx, y: cy + r + 62, width: column - 40, figureBelow }),
    );
  });
  const lowest = cy + r + 62 + figureBelow + 104;
  if (axis) parts.push(stripsOf(canvas, pair, shown, axis, Math.min(lowest + 48, bottom - stripRoom + 12)));
  const description = pair.map(({ name, sentence }) => `${name}: ${sentence}`).join(' ');
  return canvas.card(description, ...parts, foot(canvas, said, caution));
}

const STRIP_ROW = 50;
const stripsHeight = ([first]: readonly Shown[]): number =>
  ENLARGED * (intervalHeadHeight + 2 * STRIP_ROW) + 16 + (first?.ends ? LEAST_TEXT + 8 : 0);

/** Both figures on one axis, with their names and what the ends mean. */
function stripsOf(
  canvas: Canvas,
  pair: readonly CableFindings[],
  shown: readonly Shown[],
  axis: IntervalAxis,
  top: number,
): string {
  const { left, right } = canvas.safe;
  const rows = shown.map(({ figure, metal }) => ({ figure, metal }));
  const drawn = strips(canvas, left, top, right - left, rows, axis, { rowHeight: STRIP_ROW });
  const ends = shown[0]?.ends ?? null;
  return group(
    {},
    drawn.svg,
    ...stripNames(canvas, pair, top, STRIP_ROW),
    endsLine(canvas, left, top + drawn.height + LEAST_TEXT - 8, right - left, { ends, others: false }),
  );
}

/** Least and most of a face's radius on a card that stands upright. */
const UPRIGHT = { least: 120, most: 230, gap: 40 };

/** On a card that stands upright each cable has a band of its own, its words beside its face, so that the height is used. */
function uprightTwo(
  canvas: Canvas,
  findings: Findings,
  pair: readonly [CableFindings, CableFindings],
  { about, foot: said }: { about: About; foot: CardFoot },
): string {
  const { safe, theme } = canvas;
  const caution = about === 'amps';
  const shown = pair.map((cable) => shownOf(about, findings, cable));
  const axis = axisOf(shown);
  const bottom = safe.bottom - footRoom(caution);
  const stripTop = bottom - (axis ? stripsHeight(shown) : 0);
  const band = (stripTop - safe.top) / 2;
  const r = Math.max(UPRIGHT.least, Math.min(UPRIGHT.most, band / 2 - UPRIGHT.gap));
  const scalePxPerMm = r / widestReach(pair);
  const x = safe.left + 2 * r + 2 * UPRIGHT.gap;
  const width = safe.right - x;
  const parts = pair.map((cable, i) => {
    const cy = safe.top + (i + 0.5) * band;
    const name = fitName(cable.name, width, { largest: 64, most: 4 });
    const figure = shown[i]!;
    // Name, figure, outcome and the line below it, in the middle of their band.
    const nameY = cy - (heightBelow(name) + 150) / 2 + 10;
    const figureY = nameY + heightBelow(name) + 84;
    return group(
      {},
      placedFace(sectionInput(cable), safe.left + r + 20, cy, { scalePxPerMm, theme, ...FACE }),
      nameLines(canvas, x, nameY, name),
      canvas.runs(x, figureY, [
        { text: figure.value, size: figure.value.length > 6 ? 44 : 64, weight: '700' },
        { text: figure.after, size: figure.value.length > 6 ? 28 : 34, fill: canvas.quiet },
      ]),
      outcomeLine(canvas, x, figureY + 62, figure, { size: 38, width }),
    );
  });
  if (axis) parts.push(stripsOf(canvas, pair, shown, axis, stripTop + 12));
  const description = pair.map(({ name, sentence }) => `${name}: ${sentence}`).join(' ');
  return canvas.card(description, ...parts, foot(canvas, said, caution));
}

/** Name, figure and outcome, one below the other and all in the middle of their column. */
function underFace(
  canvas: Canvas,
  name: FittedName,
  shown: Shown,
  { x, y, width, figureBelow }: Record<'x' | 'y' | 'width' | 'figureBelow', number>,
): string {
  const figureAt = y + figureBelow;
  const small = width < 460;
  return group(
    {},
    nameLines(canvas, x, y, name, 'middle'),
    canvas.runs(
      x,
      figureAt,
      [
        { text: shown.value, size: small ? 44 : 56, weight: '700' },
        { text: shown.after, size: small ? 26 : 34, fill: canvas.quiet },
      ],
      'middle',
    ),
    outcomeLine(canvas, x, figureAt + 54, shown, { size: small ? 28 : 34, width, anchor: 'middle' }),
  );
}

/** Whose strip is whose: the name over the left end of each. */
function stripNames(canvas: Canvas, pair: readonly CableFindings[], top: number, row: number): string[] {
  const { safe } = canvas;
  return pair.map(({ name }, i) => {
    const y = top + ENLARGED * (intervalHeadHeight + i * row) + LEAST_TEXT + 6;
    const [first = ''] = fitName(name, safe.right - safe.left, { largest: 28, most: 1, display: false }).lines;
    return canvas.text(safe.left, y, first, { size: LEAST_TEXT, fill: canvas.quiet });
  });
}
