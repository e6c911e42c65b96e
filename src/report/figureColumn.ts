import { plusMinus } from '../findings/measured.ts';
import type { Measured } from '../findings/schema.ts';
import {
  converted,
  type FigureText,
  type FigureUnits,
  figureText,
  inPercent,
  percentParts,
  type Shown,
} from './figures.ts';

/**
 * The figures of one column with the same decimals where their uncertainties allow it: every ± keeps at least one digit, and
 * no figure gets more digits than it would have alone. Nulls stay `—`. `as: 'percent'` shows ratios in per cent.
 */
export function figureColumn(
  figures: readonly (Measured | null)[],
  units: FigureUnits,
  as: 'plain' | 'percent' = 'plain',
): FigureText[] {
  const texts = figures.map((figure) => (as === 'percent' ? percentParts(figure) : figureText(figure, units)));
  const plain = texts.filter(isDecimal);
  const common = Math.max(0, ...plain.map(fewestDecimals));
  return texts.map((text, i) => {
    const figure = figures[i] ?? null;
    if (figure === null || !isDecimal(text) || decimals(text.value) <= common) return text;
    return shortened(text, as === 'percent' ? inPercent(figure) : converted(figure, units), common);
  });
}

/** A figure without powers of ten, with a ± of its own. */
const isDecimal = (text: FigureText): boolean => /^[−-]?\d+(\.\d+)?$/.test(text.value) && Number(text.plusMinus) > 0;

const decimals = (text: string): number => text.split('.')[1]?.length ?? 0;

/** Decimals at which the ± still has one digit that is not zero after rounding. */
function fewestDecimals({ plusMinus }: FigureText): number {
  const most = decimals(plusMinus);
  for (let d = 0; d < most; d++) if (Number(Number(plusMinus).toFixed(d)) > 0) return d;
  return most;
}

/** Fewer decimals of the figure itself: of its rounded text, 3.46 would become 3.5 and then 4. */
function shortened(text: FigureText, figure: Shown, places: number): FigureText {
  const value = figure.value.toFixed(places).replace('-', '−');
  return { ...text, value, plusMinus: plusMinus(figure).toFixed(places) };
}
