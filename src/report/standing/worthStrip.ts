import { ruledRectangle } from '../hatch.ts';
import { element, line, rectangle, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';

const HEIGHT = 20;
const BAR = 6;
const PAD = 1;
const SPACING = 6;

interface WorthOptions {
  width: number;
  theme: Theme;
  /** False where nothing was measured: the whole scale is possible, and crossed. */
  known: boolean;
  description: string;
}

/** Where a cable stands on the scale of one criterion, from nothing at the left to everything at the right. */
export function worthStrip(worth: number, { width, theme, known, description }: WorthOptions): string {
  const middle = HEIGHT / 2;
  const room = width - 2 * PAD;
  const at = PAD + Math.min(1, Math.max(0, worth)) * room;
  const frame = { fill: 'none', stroke: theme.edge, 'stroke-width': 1 };
  const crossed = { d: '', stroke: theme.edge, 'stroke-width': 1, fill: 'none' };
  const ruled = (slant: 'rising' | 'falling') =>
    element('path', { ...crossed, d: ruledRectangle(PAD, middle - BAR, room, 2 * BAR, SPACING, slant) });
  return svgDocument(
    { width, height: HEIGHT, description },
    ...(known
      ? [
          rectangle(PAD, middle - BAR / 2, room, BAR, { fill: theme.sunk }),
          rectangle(PAD, middle - BAR / 2, at - PAD, BAR, { fill: theme.copper }),
          line(at, middle - 8, at, middle + 8, { stroke: theme.ink, 'stroke-width': 2 }),
        ]
      : [
          ruled('rising'),
          ruled('falling'),
          rectangle(PAD, middle - BAR, room, 2 * BAR, { ...frame, 'stroke-dasharray': '3 3' }),
        ]),
  );
}
