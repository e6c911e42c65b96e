import { element, round } from '../svg.ts';
import { paperTheme } from '../theme.ts';

/** Sheets that printers hold, mm. ISO 216; ANSI/ASME Y14.1 size A. */
export const PAPERS = {
  A4: { width: 210, height: 297 },
  Letter: { width: 215.9, height: 279.4 },
} as const;
export type Paper = keyof typeof PAPERS;

/** What a desk printer leaves blank at each edge, mm. Common practice, no source. */
export const MARGIN = 10;

/** Points in a millimetre: type sizes are named in points and drawn in mm. Exact: 1 pt = 1/72 in. */
const MILLIMETRES_PER_POINT = 25.4 / 72;

/** A type size in points, as the mm that a sheet is drawn in. */
export const points = (size: number): number => size * MILLIMETRES_PER_POINT;

/** One printed sheet: coordinates inside are millimetres, and it prints at true size. */
export function sheet(paper: Paper, description: string, ...children: string[]): string {
  const { width, height } = PAPERS[paper];
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${round(width)}mm`,
      height: `${round(height)}mm`,
      viewBox: `0 0 ${round(width)} ${round(height)}`,
      role: 'img',
      'aria-label': description,
    },
    element('rect', { width, height, fill: paperTheme.ground }),
    ...children,
  );
}

/** Parts a list into pages of at most `each`; none for an empty list. */
export function pagesOf<T>(items: readonly T[], each: number): T[][] {
  return Array.from({ length: Math.ceil(items.length / each) }, (_, i) => [...items.slice(i * each, (i + 1) * each)]);
}
