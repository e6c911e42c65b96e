import { DISPLAY_BREADTH } from '../nameLabel.ts';
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

/** Sizes of what stands under a head, px, and the lines that fit above the clock in each. */
const SIZES = [
  { size: 72, most: 2 },
  { size: 54, most: 3 },
  { size: 40, most: 4 },
];

/** A text whole, over as many lines as it takes, smaller only where it must be. */
function wrapped(text: string, width: number): { lines: string[]; size: number } {
  const tries = SIZES.map(({ size, most }) => ({ size, lines: fittedLines(text, width, size, most) }));
  return tries.find(({ lines }) => !lines.some((line) => line.endsWith('…'))) ?? tries.at(-1)!;
}

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
  // The step is said in words, the others in a few signs: it has the room of two.
  const shares = fields.map(({ head }) => (head === 'step' ? 2 : 1));
  const column =
    room /
    Math.max(
      1,
      shares.reduce((sum, share) => sum + share, 0),
    );
  const drawn = fields.map(({ head, text }, i) => {
    const x = EDGE + column * shares.slice(0, i).reduce((sum, share) => sum + share, 0);
    const { lines, size } = wrapped(text, column * shares[i]! - 32);
    return group(
      {},
      label(x, 290, head, { 'font-size': 32, fill: ink2 }),
      ...lines.map((shown, row) =>
        label(x, 306 + (row + 1) * size, shown, { 'font-size': size, 'font-weight': 600, fill: ink }),
      ),
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
