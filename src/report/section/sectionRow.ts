import { max } from 'd3-array';
import { DISPLAY_BREADTH, pictureName } from '../nameLabel.ts';
import { type MarkInput, outcomeMark } from '../outcomeMark.ts';
import { DISPLAY, element, escapeText, group, label, line, SANS, svgDocument } from '../svg.ts';
import { fittedLines, textWidth } from '../textFit.ts';
import type { Theme } from '../theme.ts';
import { SCALE_BAR_HEIGHT, scaleBar } from './scaleBar.ts';
import { drawnRadius, sectionDrawing } from './sectionDrawing.ts';
import type { SectionInput } from './sectionInput.ts';
import { reach, sectionRadii } from './sectionRadii.ts';

/** Room at the sides of the widest drawing in its column, px. */
const COLUMN_MARGIN = 20;
const LEAST_COLUMN = 128;
/** Room above and below the widest drawing, for its ticks. */
const TICK_ROOM = 12;
const NAME = 16;
const OUTCOME = 15;
const MARK = 14;
const LINE_HEIGHT = 21;
/** From the lower tick to the base line of the name, px. */
const CAPTION_GAP = 18;

export interface RowCable {
  section: SectionInput;
  /** Said below the name, with its mark; null leaves the line out. */
  outcome: { mark: MarkInput; word: string; note: string } | null;
}

export interface SectionRowOptions {
  theme: Theme;
  /** Names and outcomes below the drawings (the default); false where the page sets them itself. */
  captions?: boolean;
  /** The scale bar above the drawings, at the right; on by default. */
  scale?: boolean;
  /** Most columns in one line of drawings; as many as fit when left out. */
  columns?: number;
  /** Overrides the scale that would be worked out from the width: 2:1 in the report, px per mm. */
  scalePxPerMm?: number;
}

/** Where each drawing landed, for a page that sets its own captions: centre and foot in px. */
export interface Placed {
  x: number;
  y: number;
  foot: number;
}

export interface SectionRow {
  svg: string;
  width: number;
  height: number;
  description: string;
  scalePxPerMm: number;
  columns: number;
  placed: Placed[];
}

/**
 * All cables' cut faces at one true scale, in the order given, on one centre line, with a scale bar. Where the width does
 * not hold them in one line they go into several, still at one scale.
 */
export function sectionRow(cables: readonly RowCable[], width: number, options: SectionRowOptions): SectionRow {
  const { theme, captions = true, scale: withScale = true } = options;
  const columns = evenColumns(
    cables.length,
    Math.min(options.columns ?? cables.length, Math.floor(width / LEAST_COLUMN)),
  );
  const column = width / columns;
  const scale = options.scalePxPerMm ?? commonScale(cables, column);
  const radius = max(cables, ({ section }) => drawnRadius(sectionRadii(section), scale)) ?? 0;
  const top = withScale ? SCALE_BAR_HEIGHT + 8 : 0;
  const captionHeight = captions ? captionRoom(cables, column) : 0;
  const lineHeight = 2 * (radius + TICK_ROOM) + captionHeight;
  const lines = Math.ceil(cables.length / columns);

  const placed = cables.map((_, i) => {
    const row = Math.floor(i / columns);
    const y = top + row * lineHeight + radius + TICK_ROOM;
    return { x: ((i % columns) + 0.5) * column, y, foot: y + radius + TICK_ROOM };
  });
  const marks = cables.map((cable, i) => oneCable(cable, placed[i]!, scale, column, captions, theme));
  const centres = Array.from({ length: lines }, (_, row) => centreLine(placed[row * columns]!.y, width, theme));
  const bar = withScale && cables.length > 0 ? scaleBar(width, 0, scale, cables.length, theme) : '';
  const height = top + lines * lineHeight;
  const description = cables.map(({ section }) => section.description).join(' ');
  return {
    svg: svgDocument({ width, height, description }, ...centres, ...marks, bar),
    width,
    height,
    description,
    scalePxPerMm: scale,
    columns,
    placed,
  };
}

/** Columns for so many drawings, at most `most`: as many as make the lines equally long, so that none stands alone. */
function evenColumns(drawings: number, most: number): number {
  const lines = Math.ceil(drawings / Math.max(1, most));
  return Math.max(1, Math.ceil(drawings / Math.max(1, lines)));
}

/** Whole px per mm that let the widest cable fill its column less the margin; at least 1. */
export function commonScale(cables: readonly RowCable[], column: number): number {
  const widest = max(cables, ({ section }) => 2 * (reach(sectionRadii(section)) ?? 0));
  if (widest === undefined || widest === 0) return 1;
  return Math.max(1, Math.floor((column - COLUMN_MARGIN) / widest));
}

function oneCable(
  { section, outcome }: RowCable,
  at: Placed,
  scale: number,
  column: number,
  captions: boolean,
  theme: Theme,
): string {
  const drawing = sectionDrawing(section, { scalePxPerMm: scale, theme, showTicks: 'upright', as: 'group' });
  const face = group({ transform: `translate(${at.x - drawing.width / 2} ${at.y - drawing.height / 2})` }, drawing.svg);
  return captions ? group({}, face, caption(section.name, outcome, at, column, theme)) : face;
}

function caption(name: string, outcome: RowCable['outcome'], at: Placed, column: number, theme: Theme): string {
  const lines = nameLines(name, column);
  const names = lines.map((text, i) =>
    label(at.x, at.foot + CAPTION_GAP + i * LINE_HEIGHT, text, {
      'font-family': DISPLAY,
      'font-size': NAME,
      'font-weight': '600',
      'text-anchor': 'middle',
      fill: theme.ink,
    }),
  );
  if (outcome === null) return names.join('');
  const y = at.foot + CAPTION_GAP + lines.length * LINE_HEIGHT;
  const settled = outcome.mark.outcome !== 'not settled';
  const words = outcome.note === '' ? outcome.word : `${outcome.word} ${outcome.note}`;
  const left = at.x - (MARK + 7 + textWidth(words, OUTCOME)) / 2;
  const mark = group(
    { transform: `translate(${left} ${y - MARK + 2})` },
    outcomeMark(outcome.mark, { size: MARK, theme, as: 'group' }),
  );
  const word = element(
    'text',
    { x: left + MARK + 7, y, 'font-family': SANS, 'font-size': OUTCOME, fill: settled ? theme.ink : theme.ink2 },
    element('tspan', { 'font-weight': settled ? '600' : '400' }, escapeText(outcome.word)),
    outcome.note === '' ? '' : element('tspan', { fill: theme.ink2 }, escapeText(` ${outcome.note}`)),
  );
  return group({}, ...names, mark, word);
}

const nameLines = (name: string, column: number): string[] =>
  fittedLines(pictureName(name), column - 12, NAME * DISPLAY_BREADTH, 2);

function captionRoom(cables: readonly RowCable[], column: number): number {
  const most = max(cables, ({ section }) => nameLines(section.name, column).length) ?? 1;
  return CAPTION_GAP + (most + 1) * LINE_HEIGHT;
}

/** One line through all centres, long dash and short. */
function centreLine(y: number, width: number, theme: Theme): string {
  return line(0, y, width, y, { stroke: theme.edge, 'stroke-width': 0.75, 'stroke-dasharray': '16 4 3 4' });
}
