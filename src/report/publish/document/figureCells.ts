import type { Measured } from '../../../findings/schema.ts';
import { type FigureUnits, figureText, percentParts, UNKNOWN } from '../../figures.ts';
import type { Cell } from './blocks.ts';

/** A figure in a table: the value strong, then ± and unit. */
export function figureCell(figure: Measured | null, units: FigureUnits = {}): Cell {
  return parts(figureText(figure, units));
}

export function percentCell(ratio: Measured | null): Cell {
  return parts(percentParts(ratio));
}

/** The same without its unit, for a column whose head names it. */
export function bareCell(figure: Measured | null, units: FigureUnits = {}): Cell {
  const { condition, ...text } = figureText(figure, units);
  return parts({ ...text, unit: '', condition });
}

/** The unit that a column's head names: that of its first figure. */
export function unitOf(figures: readonly (Measured | null)[], units: FigureUnits = {}): string {
  const first = figures.find((figure) => figure !== null) ?? null;
  const { unit } = figureText(first, units);
  return unit === 'N m2' ? 'N·m²' : unit;
}

/** The interval's two ends as the table shows them: `32.7 to 33.6`. */
export function intervalCell(figure: Measured | null, scale = 1): string {
  if (figure === null) return UNKNOWN;
  const [low, high] = figure.interval.map((end) => end * scale);
  const digits = decimalsOf(Math.max(Math.abs(high - low) / 20, Number.MIN_VALUE));
  return `${fixed(low, digits)} to ${fixed(high, digits)}`;
}

function parts({ value, plusMinus, unit, condition }: ReturnType<typeof figureText>): Cell {
  if (value === UNKNOWN) return UNKNOWN;
  const after = [plusMinus === '' ? '' : `± ${plusMinus}`, unit, condition].filter((part) => part !== '').join(' ');
  return { value, after: after === '' ? '' : ` ${after}` };
}

const MOST_DECIMALS = 6;
const decimalsOf = (step: number): number => Math.min(MOST_DECIMALS, Math.max(0, Math.ceil(-Math.log10(step))));
const fixed = (x: number, decimals: number): string => x.toFixed(decimals).replace('-', '−');
