import type { JacketCable } from '../../../findings/shapes/jacket.ts';
import { ruledRectangle } from '../../hatch.ts';
import { jacketColour } from '../../jacketColour.ts';
import { isRuled, type MetalKind, metalFill } from '../../metalKind.ts';
import { nameLabel } from '../../nameLabel.ts';
import { element, group, label, rectangle, svgDocument } from '../../svg.ts';
import type { Theme } from '../../theme.ts';
import type { ChartPicture } from './nameChart.ts';

export interface ShareRow {
  name: string;
  shares: NonNullable<JacketCable['shares']>;
  metal: MetalKind;
  colour: string;
}

const ROW = 27;
const BAR = 18;
const NAME = 14;
const NAMES = 150;
const FIGURES = 110;
const GAP = 16;
const RULING = 5;

/** Where each cut face goes: metal, air between the strands, jacket, as one bar of the whole face for each cable. */
export function shareBars(rows: readonly ShareRow[], { width, theme }: { width: number; theme: Theme }): ChartPicture {
  const room = width - NAMES - FIGURES - 2 * GAP;
  const height = rows.length * ROW;
  const percent = (x: number) => Math.round(100 * x);
  const texts = rows.map(
    ({ shares: s }) => `${percent(s.metal.value)} · ${percent(s.air.value)} · ${percent(s.jacket.value)} %`,
  );
  const drawn = rows.map(({ name, shares, metal, colour }, i) => {
    const y = i * ROW + (ROW - BAR) / 2;
    const left = NAMES + GAP;
    const [metalWidth, airWidth] = [shares.metal.value * room, shares.air.value * room];
    const fill = metalFill(metal, theme);
    return group(
      {},
      nameLabel(0, y + 14, name, { size: NAME, width: NAMES, theme }),
      rectangle(left, y, metalWidth, BAR, { fill: fill ?? theme.bed, stroke: fill ? null : theme.edge }),
      isRuled(metal)
        ? element('path', {
            d: ruledRectangle(left, y, metalWidth, BAR, RULING, 'rising'),
            stroke: theme.bed,
            'stroke-width': 1,
            fill: 'none',
          })
        : '',
      rectangle(left + metalWidth, y, Math.max(0, airWidth), BAR, {
        fill: theme.bed,
        stroke: theme.edge,
        'stroke-width': 0.75,
      }),
      rectangle(left + metalWidth + airWidth, y, Math.max(0, room - metalWidth - airWidth), BAR, {
        fill: jacketColour(colour, theme).fill,
      }),
      label(width, y + 14, texts[i]!, { 'font-size': NAME, fill: theme.ink, 'text-anchor': 'end' }),
    );
  });
  const description = rows.map(({ name }, i) => `${name}: metal, air and jacket ${texts[i]}.`).join(' ');
  return { svg: svgDocument({ width, height, description }, ...drawn), width, height, description };
}
