import type { Measured } from '../../../findings/schema.ts';
import type { IntervalAxis } from '../../intervalAxis.ts';
import { intervalHead, intervalHeadHeight, intervalRow } from '../../intervalBar.ts';
import type { MetalKind } from '../../metalKind.ts';
import { nameLabel } from '../../nameLabel.ts';
import { group, label, svgDocument } from '../../svg.ts';
import type { Theme } from '../../theme.ts';

export interface ChartRow {
  name: string;
  figure: Measured | null;
  metal: MetalKind;
  /** Written at the right end: `33.1 ± 0.4`. */
  text: string;
}

export interface ChartPicture {
  svg: string;
  width: number;
  height: number;
  description: string;
}

const ROW = 27;
const NAME = 14;
const FIGURE = 14;
const NAMES = 150;
const FIGURES = 118;
const GAP = 16;

/** Intervals of several cables on one axis, names at the left and figures at the right, the limit unbroken through all rows. */
export function nameChart(
  rows: readonly ChartRow[],
  axis: IntervalAxis,
  { width, theme, description }: { width: number; theme: Theme; description: string },
): ChartPicture {
  const chart = width - NAMES - FIGURES - 2 * GAP;
  const height = intervalHeadHeight + rows.length * ROW;
  const drawn = rows.map((row, i) => {
    const y = intervalHeadHeight + i * ROW;
    return group(
      {},
      nameLabel(0, y + ROW / 2 + 5, row.name, { size: NAME, width: NAMES, theme }),
      group(
        { transform: `translate(${NAMES + GAP} ${y})` },
        intervalRow(row.figure, row.metal, axis, { width: chart, height: ROW, theme, as: 'group' }),
      ),
      label(width, y + ROW / 2 + 5, row.text, { 'font-size': FIGURE, fill: theme.ink, 'text-anchor': 'end' }),
    );
  });
  const head = group(
    { transform: `translate(${NAMES + GAP} 0)` },
    intervalHead(axis, { width: chart, theme, as: 'group' }),
  );
  return { svg: svgDocument({ width, height, description }, head, ...drawn), width, height, description };
}
