import { label, line, rectangle, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';
import { chanceText } from '../words/chanceWords.ts';

const HEIGHT = 96;
const BASE = 74;
const FULL = 54;
const LEAST_SHOWN = 0.005;
const BOLD_FROM = 0.3;

/**
 * The chance of each place as bars on one line, with the figure over each; places with less than half a per cent are left blank.
 *
 * @param chances of the first place, the second … summing to 1
 */
export function placeStrip(chances: readonly number[], { width, theme }: { width: number; theme: Theme }): string {
  const cell = width / Math.max(chances.length, 1);
  const bars = chances.map((chance, i) => {
    const middle = (i + 0.5) * cell;
    const foot = label(middle, HEIGHT - 6, String(i + 1), {
      'font-size': 13,
      fill: theme.ink2,
      'text-anchor': 'middle',
    });
    if (chance < LEAST_SHOWN) return foot;
    const tall = Math.max(1, chance * FULL);
    const bold = chance >= BOLD_FROM;
    return (
      rectangle(i * cell + 4, BASE - tall, cell - 8, tall, { fill: theme.copper }) +
      label(middle, BASE - tall - 4, shortChance(chance), {
        'font-size': 14,
        'font-weight': bold ? '600' : '400',
        fill: theme.ink,
        'text-anchor': 'middle',
      }) +
      foot
    );
  });
  const said = chances
    .map((chance, i) => (chance < LEAST_SHOWN ? '' : `place ${i + 1} ${Math.round(100 * chance)} %`))
    .filter(Boolean);
  return svgDocument(
    { width, height: HEIGHT, description: `Chance of each place: ${said.join(', ')}.` },
    line(0, BASE, width, BASE, { stroke: theme.ink, 'stroke-width': 1 }),
    ...bars,
  );
}

/** As `chanceText` has it, with signs for its words: there is no room for them over a bar. */
const shortChance = (chance: number): string => chanceText(chance).replace('under ', '<').replace('over ', '>');
