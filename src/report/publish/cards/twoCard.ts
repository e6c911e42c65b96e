import type { CableFindings, Findings } from '../../../findings/schema.ts';
import { sectionDrawing } from '../../section/sectionDrawing.ts';
import { sectionInput } from '../../section/sectionInput.ts';
import { reach, sectionRadii } from '../../section/sectionRadii.ts';
import { group } from '../../svg.ts';
import { type About, type Shown, shownOf } from './aspects.ts';
import type { Canvas } from './canvas.ts';
import { fitName } from './fitName.ts';
import { axisOf, type CardFoot, foot, footRoom, nameLines, outcomeLine, strips } from './pieces.ts';

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
  const stripRow = 30;
  const stripRoom = axis ? 2 * (42 + 2 * stripRow) + 16 : 0;
  const words = format.shape === 'wide' ? 276 : 330;
  const r = Math.min(column / 2 - 30, (bottom - safe.top - words - stripRoom) / 2, 300);
  const widest = Math.max(...pair.map((cable) => reach(sectionRadii(sectionInput(cable))) ?? 8));
  const cy = safe.top + r + 20;
  const parts: string[] = [];
  let lowest = cy + r;
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
      underFace(canvas, cable, shown[i]!, cx, cy + r + 62, column - 40),
    );
    const name = fitName(cable.name, column - 40, { largest: 48, most: 3 });
    lowest = Math.max(lowest, cy + r + 62 + (name.lines.length - 1) * name.lineHeight + 166);
  });
  if (axis) {
    const rows = shown.map(({ figure, metal }) => ({ figure, metal }));
    const top = Math.min(lowest + 48, bottom - stripRoom + 12);
    parts.push(strips(canvas, safe.left, top, width, rows, axis, stripRow).svg);
  }
  const description = pair.map(({ name, sentence }) => `${name}: ${sentence}`).join(' ');
  return canvas.card(description, ...parts, foot(canvas, said, caution));
}

/** Name, figure and outcome, one below the other and all in the middle of their column. */
function underFace(canvas: Canvas, cable: CableFindings, shown: Shown, x: number, y: number, width: number): string {
  const name = fitName(cable.name, width, { largest: 48, most: 3 });
  const figureAt = y + (name.lines.length - 1) * name.lineHeight + 62;
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
