import type { CableFindings, Findings } from '../../../findings/schema.ts';
import { rectangle } from '../../svg.ts';
import { type About, AMPS_CAUTION, shownOf } from './aspects.ts';
import type { Canvas } from './canvas.ts';
import { fitName, heightBelow } from './fitName.ts';
import { nameLines, outcomeLine } from './pieces.ts';

const HEIGHT = 196;

/** A strip over the lower part of a film: the cable's name, its figure and outcome in one line. The rest stays empty, without a ground. */
export function lowerThird(
  canvas: Canvas,
  findings: Findings,
  cable: CableFindings,
  { about }: { about: About },
): string {
  const { safe, theme, format } = canvas;
  const shown = shownOf(about, findings, cable);
  const caution = about === 'amps';
  const width = safe.right - safe.left;
  const narrow = format.shape !== 'wide';
  const height = HEIGHT + (narrow ? 84 : 0) + (caution ? 44 : 0);
  const top = safe.bottom - height;
  const name = fitName(cable.name, narrow ? width - 48 : width * 0.46, { largest: 48, most: 2 });
  const nameY = top + 62 + (name.lines.length > 1 ? -8 : 0);
  const x = safe.left + 32;
  const figureX = narrow ? x : safe.left + width * 0.5;
  const figureY = narrow ? nameY + heightBelow(name) + 66 : top + 72;
  return canvas.overlay(
    `${cable.name}: ${shown.head} ${shown.value} ${shown.after}.`,
    rectangle(safe.left, top, width, height, { fill: theme.ground }),
    rectangle(safe.left, top, 8, height, { fill: theme.copper }),
    nameLines(canvas, x, nameY, name),
    canvas.runs(figureX, figureY, [
      { text: shown.head, size: 28, fill: theme.ink2 },
      { text: shown.value, size: 44, weight: '700' },
      { text: shown.after, size: 28, fill: theme.ink2 },
    ]),
    outcomeLine(canvas, figureX, figureY + 62, shown, { size: 36, width: safe.right - figureX - 24 }),
    caution ? canvas.text(x, top + height - 20, AMPS_CAUTION, { size: 24, weight: '600' }) : '',
  );
}
