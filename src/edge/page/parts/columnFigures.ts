import { plusMinus } from '../../../findings/measured.ts';
import type { Measured } from '../../../findings/schema.ts';
import { converted, type FigureText, figureText, percentParts } from '../../../report/figures.ts';
import type { DisplayUnits } from '../../../units/display.ts';

/** The most decimals that a column is ever written with. */
const MOST_DECIMALS = 12;

/**
 * The figures of one column, all to the same decimals, so that they can be read downward: the fewest that any of them asks
 * for, yet enough to leave each ± at least one digit. Figures told by both ends of their interval stay as they are, and so
 * does a whole column that needs powers of ten or more than one unit.
 */
export function columnFigures(
  figures: readonly (Measured | null)[],
  units: DisplayUnits,
  percent = false,
): (FigureText | null)[] {
  const texts = figures.map((figure) =>
    figure === null ? null : percent ? percentParts(figure) : figureText(figure, units),
  );
  const known = texts.filter((text) => text !== null);
  if (known.some((text) => /[×∞]/.test(text.value)) || new Set(known.map((one) => one.unit)).size > 1) return texts;
  const plain = texts.flatMap((text, index) =>
    text !== null && isPlain(text) ? [{ text, figure: figures[index]! }] : [],
  );
  if (plain.length === 0) return texts;
  const least = Math.min(...plain.map(({ figure }) => shownHalfWidth(figure, units, percent)));
  const decimals = Math.max(Math.min(...plain.map(({ text }) => decimalsOf(text.value))), decimalsFor(least));
  return texts.map((text, index) =>
    text === null || !isPlain(text) ? text : rewritten(text, figures[index]!, units, percent, decimals),
  );
}

/** A value in digits, not a range such as `33 to 79`. */
const isPlain = (text: FigureText) => /^[−\d.]+$/.test(text.value);

function rewritten(
  text: FigureText,
  figure: Measured,
  units: DisplayUnits,
  percent: boolean,
  decimals: number,
): FigureText {
  const factor = percent ? 100 : 1;
  const shown = converted(figure, units);
  const write = (x: number) => (factor * x).toFixed(decimals).replace('-', '−');
  return { ...text, value: write(shown.value), plusMinus: text.plusMinus === '' ? '' : write(plusMinus(shown)) };
}

function shownHalfWidth(figure: Measured, units: DisplayUnits, percent: boolean): number {
  return plusMinus(converted(figure, units)) * (percent ? 100 : 1);
}

/** Decimals that leave a half-width one digit other than nought. */
function decimalsFor(half: number): number {
  if (!(half > 0) || !Number.isFinite(half)) return 0;
  const decimals = Math.max(0, -Math.floor(Math.log10(half)));
  return Math.min(
    MOST_DECIMALS,
    Number(half.toFixed(decimals)) >= 10 ** (1 - decimals) && decimals > 0 ? decimals - 1 : decimals,
  );
}

const decimalsOf = (value: string) => value.split('.')[1]?.length ?? 0;
