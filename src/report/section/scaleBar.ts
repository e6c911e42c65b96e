import { numberWord } from '../../units/numberWords.ts';
import { group, label, line } from '../svg.ts';
import type { Theme } from '../theme.ts';

export const SCALE_BAR_HEIGHT = 26;
const NOTE = 13;

/** Lengths a scale bar may have, mm, and the width it may take at most, px. */
const LENGTHS = [10, 5, 2, 1];
const WIDEST = 200;

/** `10 mm, one scale for all six`: said wherever cut faces stand together. */
export function scaleText(millimetres: number, drawings: number): string {
  if (drawings === 1) return `${millimetres} mm`;
  return `${millimetres} mm, one scale for ${drawings === 2 ? 'both' : `all ${numberWord(drawings)}`}`;
}

/** A bar of whole millimetres ending at `right`, ticked at each of them, with its words below it. */
export function scaleBar(right: number, top: number, scalePxPerMm: number, drawings: number, theme: Theme): string {
  const length = LENGTHS.find((mm) => mm * scalePxPerMm <= WIDEST) ?? 1;
  const ink = { stroke: theme.ink, 'stroke-width': 1 };
  const y = top + 6;
  const left = right - length * scalePxPerMm;
  const ticks = Array.from({ length: length + 1 }, (_, mm) => {
    const reach = mm === 0 || mm === length ? 4 : mm % 5 === 0 ? 6 : 0;
    const x = left + mm * scalePxPerMm;
    return line(x, reach === 4 ? y - 4 : y - reach, x, reach === 0 ? y + 3 : y + 4, ink);
  });
  const words = label(right, top + SCALE_BAR_HEIGHT - 2, scaleText(length, drawings), {
    'font-size': NOTE,
    fill: theme.ink2,
    'text-anchor': 'end',
  });
  return group({}, line(left, y, right, y, ink), ...ticks, words);
}
