import { DISPLAY, label } from './svg.ts';
import { fittedLines } from './textFit.ts';
import type { Theme } from './theme.ts';

/** The display face is this much broader than the text face that widths are reckoned by. */
export const DISPLAY_BREADTH = 1.25;

export interface NameLabel {
  size: number;
  /** What the name may take, px; a longer one is cut. */
  width: number;
  theme: Theme;
  /** How much broader than the text face the name is reckoned. */
  breadth?: number;
}

/** What stands for a cable in a picture. */
export const pictureName = (name: string): string => (name === '' ? 'no name' : name);

/** A cable's name on one line of a picture, in the display face; `y` is its baseline. */
export function nameLabel(
  x: number,
  y: number,
  name: string,
  { size, width, theme, breadth = DISPLAY_BREADTH }: NameLabel,
): string {
  const [shown = ''] = fittedLines(pictureName(name), width, size * breadth, 1);
  return label(x, y, shown, { 'font-family': DISPLAY, 'font-size': size, 'font-weight': '600', fill: theme.ink });
}
