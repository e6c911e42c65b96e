import type { CableFindings, Findings } from '../../../findings/schema.ts';
import { numberWordFirst } from '../../../units/numberWords.ts';
import { plainText } from '../../figures.ts';
import { sectionInput } from '../../section/sectionInput.ts';
import { group } from '../../svg.ts';
import { type About, FIELD_TITLES, type Shown, shownOf } from './aspects.ts';
import { type Canvas, LEAST_TEXT } from './canvas.ts';
import { brokenLines, type FittedName, fitName, heightBelow } from './fitName.ts';
import { type CardFoot, foot, footRoom, nameLines, outcomeLine } from './pieces.ts';
import { placedFace, widestReach } from './placedFace.ts';
import { uprightStrips } from './uprightStrips.ts';

/** Most cables on one card; more go on further ones. */
export const MOST_ON_A_CARD = 12;

/** `Six cables, one label: 2 AWG`, or `Six cables` where labels differ. */
export function fieldTitle(cables: readonly CableFindings[]): string {
  const head = `${numberWordFirst(cables.length)} cables`;
  const [first] = cables;
  const same = first !== undefined && first.label.size !== '' && cables.every((c) => c.label.size === first.label.size);
  return same ? `${head}, one label: ${first.label.size}` : head;
}

interface Grid {
  columns: number;
  rows: number;
}

/** As square as the card's own shape allows, so that no line holds a single cable where it need not. */
function gridOf(count: number, canvas: Canvas): Grid {
  const most = canvas.format.shape === 'wide' ? 6 : canvas.format.shape === 'tall' ? 2 : 3;
  const perRow = count <= most ? count : count <= 4 && most < 4 ? 2 : most;
  const rows = Math.ceil(count / perRow);
  return { columns: Math.ceil(count / rows), rows };
}

/** Room that the upright strips need to say anything, and the most they take. */
const LEAST_CHART = 220;
const MOST_CHART = 330;
const WORDS = 172;

/** The whole field: every cut face at one scale, its figure, its interval where there is room, and its outcome. */
export function fieldCard(
  canvas: Canvas,
  findings: Findings,
  cables: readonly CableFindings[],
  { about, title, foot: said }: { about: About; title?: string; foot: CardFoot },
): string {
  const { safe, format, theme } = canvas;
  const caution = about === 'amps';
  const shown = cables.map((cable) => shownOf(about, findings, cable));
  const width = safe.right - safe.left;
  const head = fitName(title ?? fieldTitle(cables), width, { largest: 64, most: 2 });
  const headTop = safe.top + head.size * 0.8;
  const sub = brokenLines(subOf(about, shown), width, 28 * 1.08).slice(0, 2);
  const subY = headTop + heightBelow(head) + 46;
  const top = subY + (sub.length - 1) * 36 + 26;
  const bottom = safe.bottom - footRoom(caution);
  const { columns, rows } = gridOf(cables.length, canvas);
  const column = width / columns;
  const words = WORDS + roomForMetals(shown, column - 16);
  const chart = rows === 1 ? Math.min(MOST_CHART, bottom - top - words - 2 * Math.min(130, column / 2 - 16)) : 0;
  const row = (bottom - top - (chart >= LEAST_CHART ? chart : 0)) / rows;
  const r = Math.max(24, Math.min(column / 2 - 16, (row - words) / 2 - 6));
  const scalePxPerMm = r / widestReach(cables);
  const parts = [
    nameLines(canvas, safe.left, headTop, head),
    ...sub.map((text, i) => canvas.text(safe.left, subY + i * 36, text, { size: 28, fill: canvas.quiet })),
  ];
  const names = cables.map(({ name }) => fitName(name, column - 16, { largest: 34, most: 2 }));
  cables.forEach((cable, i) => {
    const line = Math.floor(i / columns);
    const beside = names.slice(line * columns, (line + 1) * columns);
    const cx = safe.left + ((i % columns) + 0.5) * column;
    const cy = top + line * row + r + 14;
    const weight = format.shape === 'wide' ? 1.4 : 1.2;
    parts.push(
      placedFace(sectionInput(cable), cx, cy, { scalePxPerMm, theme, showTicks: 'upright', weight }),
      faceWords(canvas, names[i]!, shown[i]!, {
        x: cx,
        y: cy + r + 40,
        width: column - 16,
        figureBelow: Math.max(...beside.map(heightBelow)) + 40,
      }),
    );
  });
  if (chart >= LEAST_CHART) parts.push(uprightStrips(canvas, shown, top + row + 6, chart - 34));
  const description = cables.map(({ name }, i) => `${name}: ${shown[i]!.value} ${shown[i]!.after}.`).join(' ');
  return canvas.card(description, ...parts, foot(canvas, said, caution));
}

/** Room for the names of metals that are not copper, below the outcomes; most fields need none. */
function roomForMetals(shown: readonly Shown[], width: number): number {
  const lines = shown.map((s) =>
    s.otherMetal === '' ? 0 : brokenLines(s.otherMetal, width, LEAST_TEXT * 1.08).length,
  );
  return Math.min(2, Math.max(...lines)) * LEAST_TEXT * 1.25;
}

function subOf(about: About, shown: readonly Shown[]): string {
  const unit = shown.find(({ figure }) => figure !== null)?.unit ?? '';
  const limit = shown[0]?.limit ?? null;
  const one = about === 'inside' && limit !== null && shown.every((s) => s.limit === limit);
  const asks = one ? ` The label asks for at least ${plainText(limit, 'mm2')}.` : '';
  const conditions = new Set(shown.map(({ condition }) => condition));
  const [condition = ''] = conditions.size === 1 ? conditions : [''];
  const under = condition === '' ? '' : `, ${condition}`;
  const what = shown.some(({ allMetal }) => allMetal !== '') ? 'area of the copper' : FIELD_TITLES[about];
  const easier = about === 'bend' ? ' The smaller, the more easily it bends.' : '';
  return `Cut faces at one scale; ${what}${unit === '' ? '' : ` in ${unit}`}${under}.${asks}${easier}`;
}

interface WordsPlace {
  x: number;
  y: number;
  width: number;
  /** From the name's first line to the figure's, the same for all faces of a row. */
  figureBelow: number;
}

function faceWords(canvas: Canvas, name: FittedName, shown: Shown, { x, y, width, figureBelow }: WordsPlace): string {
  const figureAt = y + figureBelow;
  const { outcome, otherMetal } = shown;
  const small: Shown = { ...shown, outcome: outcome && { ...outcome, note: otherMetal }, remark: otherMetal };
  return group(
    {},
    nameLines(canvas, x, y, name, 'middle'),
    canvas.runs(
      x,
      figureAt,
      [
        { text: shown.value, size: width > 240 ? 34 : 30, weight: '700' },
        { text: shown.plain, size: 26, fill: canvas.quiet },
      ],
      'middle',
    ),
    outcomeLine(canvas, x, figureAt + 40, small, { size: width > 240 ? 28 : 24, width, anchor: 'middle' }),
  );
}
