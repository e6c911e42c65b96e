import { line } from './svg.ts';
import type { Theme } from './theme.ts';

const BRACKET = { inset: 5, foot: 9 };
/** What brackets and a gap take left of the names, px. */
export const BRACKET_ROOM = 16;

export interface BandRows {
  /** Top of the first row, height of each, and width of the whole, px. */
  top: number;
  rowHeight: number;
  width: number;
  theme: Theme;
}

/** A bracket before every band of two and more; a line where a band ends. Rows of band null stand outside the order. */
export function bandBrackets(
  bands: readonly (number | null)[],
  { top: head, rowHeight, width, theme }: BandRows,
): string[] {
  const marks: string[] = [];
  for (let from = 0; from < bands.length; ) {
    let until = from;
    while (until + 1 < bands.length && bands[until + 1] === bands[from]) until++;
    const [top, bottom] = [head + from * rowHeight, head + (until + 1) * rowHeight];
    if (until > from && bands[from] !== null) {
      const ink = { stroke: theme.ink, 'stroke-width': 2 };
      const [a, b] = [top + BRACKET.inset, bottom - BRACKET.inset];
      marks.push(
        line(1, a, 1, b, ink),
        line(1, a + 1, BRACKET.foot, a + 1, ink),
        line(1, b - 1, BRACKET.foot, b - 1, ink),
      );
    }
    const last = until === bands.length - 1;
    marks.push(line(0, bottom, width, bottom, { stroke: last ? theme.rule : theme.ink, 'stroke-width': 1 }));
    from = until + 1;
  }
  return marks;
}
