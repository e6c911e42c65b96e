import { ruledRectangle } from './hatch.ts';
import { element, group, line, rectangle, svgDocument } from './svg.ts';
import type { Theme } from './theme.ts';

/** What would come of a hundred cables alike. Shares of 1; what is left over is not settled. */
export interface HundredShares {
  /** Outcome as it should be. */
  rightly: number;
  /** Outcome that wrongs somebody. */
  wrongly: number;
}

export interface HundredRuleOptions {
  width: number;
  theme: Theme;
  /** Said in place of the picture; empty where the text beside it says the same. */
  description?: string;
}

const HEIGHT = 22;
const BAR = 7;
const HUNDRED = 100;
/** Distance of the ruling in the part that is not settled, px. */
const RULING = 5;

const tickLength = (at: number): number => (at % 10 === 0 ? 12 : at % 5 === 0 ? 8 : 5);

/**
 * A measuring rule of a hundred ticks, one for each cable: copper above it for those that come out as they should, ruled for
 * those that are not settled, solid ink at the far end for those that would be wronged. Length and texture carry it, not colour.
 *
 * @throws RangeError for shares outside 0 to 1, or above 1 together
 */
export function hundredRule(shares: HundredShares, { width, theme, description = '' }: HundredRuleOptions): string {
  const { rightly, wrongly } = shares;
  const rest = 1 - rightly - wrongly;
  if (!(rightly >= 0 && wrongly >= 0 && rest >= -1e-9))
    throw new RangeError(`shares lie between 0 and 1 and make at most 1 together, got ${rightly} and ${wrongly}`);
  const right = rightly * width;
  const middle = Math.max(0, rest) * width;
  const ticks = Array.from({ length: HUNDRED + 1 }, (_, at) => {
    // The outermost ticks stand half a line inside, so that none is cut off.
    const x = Math.min(width - 0.5, Math.max(0.5, (at / HUNDRED) * width));
    return line(x, BAR, x, BAR + tickLength(at), { stroke: theme.edge, 'stroke-width': at % 10 === 0 ? 1 : 0.75 });
  });
  return svgDocument(
    { width, height: HEIGHT, description },
    group({}, ...ticks),
    right > 0 ? rectangle(0, 0, right, BAR, { fill: theme.copper }) : '',
    middle > 0
      ? group(
          {},
          rectangle(right, 0, middle, BAR, { fill: theme.sunk }),
          element('path', {
            d: ruledRectangle(right, 0, middle, BAR, RULING, 'rising'),
            stroke: theme.edge,
            'stroke-width': 1,
            fill: 'none',
          }),
        )
      : '',
    wrongly > 0 ? rectangle(width - wrongly * width, 0, wrongly * width, BAR, { fill: theme.ink }) : '',
    line(0, BAR, width, BAR, { stroke: theme.ink, 'stroke-width': 1 }),
    line(right, 0, right, BAR + tickLength(0) + 3, { stroke: theme.ink, 'stroke-width': 3 }),
  );
}
