import { ordinal } from '../publish/pictures/placeChart.ts';
import { label, line, rectangle, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';

/** Height of the row and of a bar that says 100 %, px. */
export const PLACE_ROW = { height: 84, full: 62 };
const FIGURE = 14;
const WIDEST = 64;
const GAP = 10;
/** Chances smaller than this have neither bar nor figure. */
export const LEAST_SHOWN = 0.005;
const STRONG_FROM = 0.3;

/** `1st 58 %, 2nd 35 %`: every place with half a per cent and more. */
export function placesSaid(chances: readonly number[]): string {
  return chances
    .flatMap((chance, at) => (chance < LEAST_SHOWN ? [] : [`${ordinal(at + 1)} ${Math.round(100 * chance)} %`]))
    .join(', ');
}

/**
 * The chance of each place as bars that stand on the foot of a row, the figure above each; heads and names stand in the table
 * about it. Length carries it, not shade.
 *
 * @param chances of the first place, the second …
 */
export function placeBars(chances: readonly number[], { width, theme }: { width: number; theme: Theme }): string {
  const { height, full } = PLACE_ROW;
  const cell = width / Math.max(chances.length, 1);
  const wide = Math.min(WIDEST, cell - GAP);
  const bars = chances.flatMap((chance, at) => {
    if (chance < LEAST_SHOWN) return [];
    const tall = Math.max(1, chance * full);
    const middle = (at + 0.5) * cell;
    return [
      rectangle(middle - wide / 2, height - tall, wide, tall, { fill: theme.copper }),
      label(middle, height - tall - 5, String(Math.round(100 * chance)), {
        'font-size': FIGURE,
        'font-weight': chance >= STRONG_FROM ? '600' : '400',
        fill: theme.ink,
        'text-anchor': 'middle',
      }),
    ];
  });
  return svgDocument(
    { width, height, description: `Chance of each place: ${placesSaid(chances)}.` },
    ...bars,
    line(0, height - 0.5, width, height - 0.5, { stroke: theme.rule, 'stroke-width': 1 }),
  );
}
