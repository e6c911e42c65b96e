/** Pieces that several cards are put together from. */
import type { Measured } from '../../../findings/schema.ts';
import { capital } from '../../../units/capital.ts';
import { type IntervalAxis, intervalAxis, positionOn } from '../../intervalAxis.ts';
import { intervalHead, intervalHeadHeight, intervalRow } from '../../intervalBar.ts';
import type { MetalKind } from '../../metalKind.ts';
import { outcomeMark } from '../../outcomeMark.ts';
import { circle, group, line } from '../../svg.ts';
import { textWidth } from '../../textFit.ts';
import { AMPS_CAUTION, type Shown } from './aspects.ts';
import { type Canvas, LEAST_TEXT } from './canvas.ts';
import { brokenLines, type FittedName, fitName } from './fitName.ts';

/** Who, which part, when sealed. */
export interface CardFoot {
  who: string;
  part: string;
}

/** The mark and the word at the left, who and which part at the right; a caution line above where the card is about current. */
export function foot(canvas: Canvas, { who, part }: CardFoot, caution: boolean): string {
  const { safe, theme } = canvas;
  const y = safe.bottom;
  const mark = group(
    { transform: `translate(${safe.left} ${y - 34}) scale(1.46)` },
    circle(13, 13, 13, { fill: theme.ink }),
    circle(13, 13, 9.6, { fill: theme.ground }),
    circle(13, 13, 7.7, { fill: 'none', stroke: theme.ink, 'stroke-width': 1.4, 'stroke-dasharray': '2.42 1.61' }),
    circle(13, 13, 5.6, { fill: theme.copper }),
  );
  const room = safe.right - safe.left - 240;
  const said = brokenLines([who, part].filter((text) => text !== '').join(' · '), room, LEAST_TEXT * 1.08).slice(0, 2);
  return group(
    {},
    mark,
    canvas.text(safe.left + 54, y - 5, 'Cupel', { size: 32, weight: '600', display: true }),
    ...said.map((text, i) =>
      canvas.text(safe.right, y - 6 - (said.length - 1 - i) * 28, text, {
        size: LEAST_TEXT,
        fill: canvas.quiet,
        anchor: 'end',
      }),
    ),
    caution ? cautionLine(canvas) : '',
  );
}

function cautionLine(canvas: Canvas): string {
  const { safe } = canvas;
  const room = safe.right - safe.left;
  const { lines, lineHeight, size } = fitName(AMPS_CAUTION, room, { largest: 28, most: 2, display: false });
  const top = safe.bottom - 62 - lines.length * lineHeight;
  return group(
    {},
    canvas.line(safe.left, top, safe.right, top, 2),
    ...lines.map((text, i) => canvas.text(safe.left, top + 34 + i * lineHeight, text, { size, weight: '600' })),
  );
}

/** Height that foot and caution take from the bottom of the card's text area. */
export const footRoom = (caution: boolean): number => (caution ? 160 : 76);

/** A name in its lines; `y` is the base line of the first. */
export function nameLines(
  canvas: Canvas,
  x: number,
  y: number,
  name: FittedName,
  anchor: 'start' | 'middle' = 'start',
): string {
  return group(
    {},
    ...name.lines.map((text, i) =>
      canvas.text(x, y + i * name.lineHeight, text, { size: name.size, weight: '600', display: true, anchor }),
    ),
  );
}

/**
 * The outcome as a small cut face with its word; what is said of it goes below where it does not fit beside. `x` is the left end, or
 * the middle.
 */
export function outcomeLine(
  canvas: Canvas,
  x: number,
  y: number,
  { outcome, remark }: Shown,
  { size, width, anchor = 'start' }: { size: number; width: number; anchor?: 'start' | 'middle' },
): string {
  const { theme } = canvas;
  if (outcome === null) return remarkLines(canvas, x, y, remark, size * 0.72, width, anchor);
  const mark = size * 1.05;
  const settled = outcome.word !== 'not settled';
  const beside = mark + 16 + textWidth(`${outcome.word} ${outcome.note}`, size) * 1.08 <= width;
  const words = beside ? `${outcome.word} ${outcome.note}`.trim() : outcome.word;
  const left = anchor === 'start' ? x : x - (mark + 16 + textWidth(words, size)) / 2;
  return group(
    {},
    group(
      { transform: `translate(${left} ${y - mark * 0.86})` },
      outcomeMark(outcome.mark, { size: mark, theme, as: 'group' }),
    ),
    canvas.runs(left + mark + 16, y, [
      { text: capital(outcome.word), size, weight: settled ? '700' : '400', fill: settled ? theme.ink : canvas.quiet },
      { text: beside ? outcome.note : '', size, fill: canvas.quiet },
    ]),
    beside ? '' : remarkLines(canvas, x, y + size * 1.1, outcome.note, size * 0.72, width, anchor),
  );
}

function remarkLines(
  canvas: Canvas,
  x: number,
  y: number,
  text: string,
  largest: number,
  width: number,
  anchor: 'start' | 'middle',
): string {
  if (text === '') return '';
  const size = Math.max(LEAST_TEXT, largest);
  const lines = brokenLines(text, width, size * 1.08).slice(0, 2);
  return group(
    {},
    ...lines.map((l, i) => canvas.text(x, y + i * size * 1.25, l, { size, fill: canvas.quiet, anchor })),
  );
}

/** Text of the screen's strips is made for 13 px: enlarged so that it is read on film. */
export const ENLARGED = 2;

/** Half the height of the light tick of a cable that the card is not about, px of the strip. */
const OTHER = 6;
/** Light edge round a strip where there is no ground, px of the strip. */
const STRIP_EDGE = 3;

/** The same drawing in the ground's colour and a little broader, to lie below it where there is no ground. */
function edgeOf(svg: string, ground: string): string {
  const broad = svg
    .replace(/(stroke|fill)="(?!none")[^"]*"/g, `$1="${ground}"`)
    .replace(/stroke-width="([\d.]+)"/g, (_, width: string) => `stroke-width="${Number(width) + STRIP_EDGE}"`);
  return group({ stroke: ground, 'stroke-width': STRIP_EDGE, 'stroke-linejoin': 'round' }, broad);
}

/** Below a scale: what its ends mean, and what its light ticks are. */
export function endsLine(
  canvas: Canvas,
  x: number,
  y: number,
  width: number,
  { ends, others }: { ends: Shown['ends']; others: boolean },
): string {
  if (ends === null) return '';
  const look = { size: LEAST_TEXT, fill: canvas.quiet } as const;
  return group(
    {},
    canvas.text(x, y, `← ${ends[0]}`, look),
    others ? canvas.text(x + width / 2, y, 'light: the other cables', { ...look, anchor: 'middle' }) : '',
    canvas.text(x + width, y, `${ends[1]} →`, { ...look, anchor: 'end' }),
  );
}

/** Strips on one axis, all at the text's width, enlarged for film. */
export function strips(
  canvas: Canvas,
  x: number,
  y: number,
  width: number,
  rows: readonly { figure: Measured | null; metal: MetalKind }[],
  axis: IntervalAxis,
  { rowHeight = 36, others = [] }: { rowHeight?: number; others?: readonly number[] } = {},
): { svg: string; height: number } {
  const { theme } = canvas;
  const inner = width / ENLARGED;
  const drawn = rows.map(({ figure, metal }, i) =>
    group(
      { transform: `translate(0 ${intervalHeadHeight + i * rowHeight})` },
      intervalRow(figure, metal, axis, { width: inner, height: rowHeight, theme, as: 'group' }),
    ),
  );
  const head = intervalHead(axis, { width: inner, theme, as: 'group' });
  const at = positionOn(axis, inner);
  const middle = intervalHeadHeight + rowHeight / 2;
  const light = others.map((value) =>
    line(at(value), middle - OTHER, at(value), middle + OTHER, { stroke: theme.edge, 'stroke-width': 1 }),
  );
  const all = [head, ...light, ...drawn].join('');
  return {
    svg: group(
      { transform: `translate(${x} ${y}) scale(${ENLARGED})` },
      canvas.transparent ? edgeOf(all, theme.ground) : '',
      canvas.transparent ? all.replaceAll(theme.ink2, canvas.quiet) : all,
    ),
    height: ENLARGED * (intervalHeadHeight + rows.length * rowHeight),
  };
}

/** One axis for what is shown, with the claim's limit where all have the same. */
export function axisOf(shown: readonly Shown[], ticks = 6): IntervalAxis | null {
  const [first] = shown;
  const same = shown.every((s) => s.limit === first?.limit && s.nominal === first?.nominal);
  return intervalAxis(
    shown.map(({ figure }) => figure),
    same ? (first?.limit ?? null) : null,
    same ? (first?.nominal ?? null) : null,
    ticks,
  );
}
