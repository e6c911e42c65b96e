import { line, rectangle, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';

const HEIGHT = 14;
const BAR = 8;

/** One chance as a length between nothing and all; the figure stands beside it. */
export function chanceBar(chance: number, { width, theme }: { width: number; theme: Theme }): string {
  const top = (HEIGHT - BAR) / 2;
  return svgDocument(
    { width, height: HEIGHT, description: '' },
    line(0, HEIGHT / 2, width, HEIGHT / 2, { stroke: theme.rule, 'stroke-width': 1 }),
    chance > 0 ? rectangle(0, top, Math.max(1, chance * width), BAR, { fill: theme.copper }) : '',
    line(width - 0.5, 1, width - 0.5, HEIGHT - 1, { stroke: theme.edge, 'stroke-width': 1 }),
  );
}
