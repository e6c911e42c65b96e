import type { CableFindings, Findings } from '../../../findings/schema.ts';
import { intervalHeadHeight } from '../../intervalBar.ts';
import { sectionDrawing } from '../../section/sectionDrawing.ts';
import { sectionInput } from '../../section/sectionInput.ts';
import { reach, sectionRadii } from '../../section/sectionRadii.ts';
import { group } from '../../svg.ts';
import { type About, type Shown, shownOf } from './aspects.ts';
import { type Canvas, LEAST_TEXT } from './canvas.ts';
import { type FittedName, fitName, heightBelow } from './fitName.ts';
import { axisOf, type CardFoot, ENLARGED, foot, footRoom, nameLines, outcomeLine, strips } from './pieces.ts';

/** Two cables side by side: two cut faces at one scale, their figures, and two strips on one axis. */
export function twoCard(
  canvas: Canvas,
  findings: Findings,
  pair: readonly [CableFindings, CableFindings],
  { about, foot: said }: { about: About; foot: CardFoot },
): string {
  const { safe, format } = canvas;
  const caution = about === 'amps';
  const shown = pair.map((cable) => shownOf(about, findings, cable));
  const width = safe.right - safe.left;
  const column = width / 2;
  const bottom = safe.bottom - footRoom(caution);
  const axis = axisOf(shown);
  const stripRow = 50;
  const stripRoom = axis ? ENLARGED * (intervalHeadHeight + 2 * stripRow) + 16 : 0;
  const names = pair.map(({ name }) => fitName(name, column - 40, { largest: 48, most: 3 }));
  const figureBelow = Math.max(...names.map(heightBelow)) + 62;
  const words = format.shape === 'wide' ? 276 : 330;
  const r = Math.min(column / 2 - 30, (bottom - safe.top - words - stripRoom) / 2, 300);
  const widest = Math.max(...pair.map((cable) => reach(sectionRadii(sectionInput(cable))) ?? 8));
  const cy = safe.top + r + 20;
  const parts: string[] = [];
  pair.forEach((cable, i) => {
    const cx = safe.left + (i + 0.5) * column;
    const drawing = sectionDrawing(sectionInput(cable), {
      scalePxPerMm: r / widest,
      theme: canvas.theme,
      showTicks: 'upright',
      weight: 1.6,
      as: 'group',
    });
    parts.push(
      group({ transform: `translate(${cx - drawing.width / 2} ${cy - drawing.height / 2})` }, drawing.svg),
      underFace(canvas, names[i]!, shown[i]!, { x: cx, y: cy + r + 62, width: column - 40, figureBelow }),
    );
  });
  const lowest = cy + r + 62 + figureBelow + 104;
  if (axis) {
    const rows = shown.map(({ figure, metal }) => ({ figure, metal }));
    const top = Math.min(lowest + 48, bottom - stripRoom + 12);
    parts.push(
      strips(canvas, safe.left, top, width, rows, axis, stripRow).svg,
      ...stripNames(canvas, pair, top, stripRow),
    );
  }
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
