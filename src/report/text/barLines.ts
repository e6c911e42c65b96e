import type { Measured } from '../../findings/schema.ts';
import { type IntervalAxis, limitText, positionOn } from '../intervalAxis.ts';
import type { MetalKind } from '../metalKind.ts';
import type { Glyphs } from './glyphs.ts';

/** The axis above the bars: what the lines mean, then the ticks' values. Two lines of `width` columns. */
export function axisLines(axis: IntervalAxis, width: number, glyphs: Glyphs): string[] {
  const at = columnOn(axis, width);
  const marks = emptyLine(axis, width, glyphs);
  if (axis.limit !== null) {
    const text = `limit ${limitText(axis.limit)}`;
    const column = at(axis.limit);
    if (!place(marks, text, column - text.length - 1)) place(marks, text, column + 2);
  }
  if (axis.nominal !== null && axis.nominal !== axis.limit) {
    const text = `label ${limitText(axis.nominal)}`;
    if (!place(marks, text, at(axis.nominal) + 2)) place(marks, text, at(axis.nominal) - text.length - 1);
  }
  const values = emptyLine(axis, width, glyphs);
  for (const { value, text } of axis.ticks) {
    const written = glyphs.write(text);
    const middle = at(value) - Math.floor((written.length - 1) / 2);
    place(values, written, Math.min(Math.max(0, middle), width - written.length));
  }
  return [marks.join(''), values.join('')];
}

/** One cable's interval between its ends, the estimate on it, the claim's lines through it. */
export function barLine(
  figure: Measured | null,
  metal: MetalKind,
  axis: IntervalAxis,
  width: number,
  glyphs: Glyphs,
): string {
  const cells = emptyLine(axis, width, glyphs);
  if (figure === null) return cells.join('');
  const at = columnOn(axis, width);
  const limit = axis.limit === null ? -1 : at(axis.limit);
  for (let i = at(figure.interval[0]); i <= at(figure.interval[1]); i++) {
    cells[i] = i === limit ? glyphs.crossing[metal] : glyphs.bar[metal];
  }
  cells[at(figure.value)] = glyphs.estimate;
  return cells.join('');
}

function columnOn(axis: IntervalAxis, width: number): (value: number) => number {
  const position = positionOn(axis, width - 1);
  return (value) => Math.min(width - 1, Math.max(0, Math.round(position(value))));
}

function emptyLine(axis: IntervalAxis, width: number, glyphs: Glyphs): string[] {
  const cells = Array<string>(width).fill(' ');
  const at = columnOn(axis, width);
  if (axis.nominal !== null) cells[at(axis.nominal)] = glyphs.nominal;
  if (axis.limit !== null) cells[at(axis.limit)] = glyphs.limit;
  return cells;
}

/** Puts a text at a column if every place it needs, and one on each side, is free. */
function place(cells: string[], text: string, from: number): boolean {
  if (from < 0 || from + text.length > cells.length) return false;
  const around = cells.slice(Math.max(0, from - 1), from + text.length + 1);
  // A claim's line may stand directly beside a text, but not a digit of another.
  const inside = cells.slice(from, from + text.length);
  if (inside.some((cell) => cell !== ' ') || around.some((cell) => /[\w.]/.test(cell))) return false;
  for (let i = 0; i < text.length; i++) cells[from + i] = text[i]!;
  return true;
}
