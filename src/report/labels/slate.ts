import { DISPLAY, group, label, line, rectangle, svgDocument } from '../svg.ts';
import { fittedLines } from '../textFit.ts';
import { lightTheme, type Theme } from '../theme.ts';

/** What is filmed once at the start of a take, so that every entry has its place in the footage. */
export interface SlateInput {
  trial: string;
  part: string;
  step: string;
  /** Of the piece in hand; empty for none. */
  code: string;
  take: number;
  /** `14:07:32`: the time of day, to the second, handed in. */
  timeOfDay: string;
  /** `2026-10-03` */
  day: string;
}

const WIDTH = 1920;
const HEIGHT = 1080;
const EDGE = 96;
/** The display face is this much broader than the text face. */
const DISPLAY_BREADTH = 1.25;

/**
 * The filming clock's frame, 1920 × 1080: trial, part, step, code, take and the time of day in figures that a camera reads
 * from across a room.
 */
export function slate(input: SlateInput, theme: Theme = lightTheme): string {
  const { ink, ink2, ground } = theme;
  const room = WIDTH - 2 * EDGE;
  const [title] = fittedLines(input.trial, room, 64 * DISPLAY_BREADTH, 1);
  const fields = [
    { head: 'part', text: input.part },
    { head: 'step', text: input.step },
    { head: 'piece', text: input.code },
    { head: 'take', text: String(input.take) },
  ].filter(({ text }) => text !== '');
  const column = room / Math.max(1, fields.length);
  const drawn = fields.map(({ head, text }, i) => {
    const x = EDGE + i * column;
    const [shown] = fittedLines(text, column - 24, 72, 1);
    return group(
      {},
      label(x, 320, head, { 'font-size': 32, fill: ink2 }),
      label(x, 400, shown ?? '', { 'font-size': 72, 'font-weight': 600, fill: ink }),
    );
  });
  const said = fields.map(({ head, text }) => `${head} ${text}`).join(', ');
  return svgDocument(
    { width: WIDTH, height: HEIGHT, description: `${input.trial}, ${said}, ${input.day} ${input.timeOfDay}` },
    rectangle(0, 0, WIDTH, HEIGHT, { fill: ground }),
    label(EDGE, 150, title ?? '', { 'font-size': 64, 'font-weight': 600, 'font-family': DISPLAY, fill: ink }),
    line(EDGE, 210, WIDTH - EDGE, 210, { stroke: ink, 'stroke-width': 3 }),
    ...drawn,
    label(WIDTH / 2, 800, input.timeOfDay, {
      'font-size': 380,
      'font-weight': 700,
      'text-anchor': 'middle',
      'font-variant-numeric': 'tabular-nums',
      fill: ink,
    }),
    label(WIDTH / 2, 960, input.day, { 'font-size': 64, 'text-anchor': 'middle', fill: ink2 }),
  );
}
