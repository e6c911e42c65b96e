/** Diagrams of heating under a steady current, and of how an order is made. */
import { group, rectangle, round } from '../../../svg.ts';
import type { Pen } from './pen.ts';

/** Shape alone: a rise towards its end, 1 − e^(−t/τ), with τ a quarter of what is shown. */
const TAU = 0.25;

/** A steady current through a cable, and its temperature rising until it stays. */
export function heatDiagram(pen: Pen): string {
  const { theme } = pen;
  const [left, right, bottom, top] = [110, 560, 290, 60];
  const end = top + 36;
  const points = Array.from({ length: 61 }, (_, i) => {
    const share = i / 60;
    const y = bottom - 30 - (bottom - 30 - end) * (1 - Math.exp(-share / TAU));
    return `${round(left + share * (right - left))} ${round(y)}`;
  });
  return group(
    {},
    pen.line([left, top - 30], [left, bottom], { width: 2 }),
    pen.line([left, bottom], [right + 30, bottom], { width: 2 }),
    pen.line([left, end], [right + 30, end], { width: 2, stroke: theme.edge, dash: '10 8' }),
    pen.line([left, bottom - 30], [right + 30, bottom - 30], { width: 2, stroke: theme.edge }),
    pen.path(`M${points.join(' L')}`, { width: 6 }),
    pen.word(left - 14, top + 4, '°C', { anchor: 'end', quiet: true }),
    pen.word(right + 42, end + 11, 'stays here', { anchor: 'start', strong: true }),
    pen.word(right + 42, bottom - 19, 'the air', { anchor: 'start', quiet: true }),
    pen.cable('M150 380 L650 380', 'M80 380 L160 380 M640 380 L720 380'),
    pen.arrow([200, 332], [330, 332], { width: 4 }),
    pen.word(346, 342, 'steady current', { anchor: 'start', strong: true }),
    pen.circle(420, 380, 9, { fill: theme.ground }),
  );
}

/** Weights that are set, and the chance of each place that follows; two cables share theirs. */
export function orderDiagram(pen: Pen): string {
  const { theme } = pen;
  const slider = (y: number, share: number) =>
    group(
      {},
      pen.line([40, y], [320, y], { width: 2 }),
      ...Array.from({ length: 11 }, (_, i) =>
        pen.line([40 + i * 28, y], [40 + i * 28, y - (i % 5 === 0 ? 14 : 8)], { width: 2 }),
      ),
      pen.line([40, y], [40 + 280 * share, y], { width: 7 }),
      pen.circle(40 + 280 * share, y, 15, { fill: theme.ground, width: 4 }),
      pen.circle(40 + 280 * share, y, 4, { fill: theme.ink }),
    );
  const row = (y: number, chances: readonly number[]) =>
    group(
      {},
      pen.line([450, y], [760, y], { width: 2, stroke: theme.rule }),
      ...chances.map((chance, i) =>
        chance < 0.02 ? '' : rectangle(462 + i * 104, y - 96 * chance, 84, 96 * chance, { fill: theme.copper }),
      ),
    );
  return group(
    {},
    slider(110, 0.7),
    slider(210, 0.35),
    slider(310, 0.5),
    pen.word(180, 412, 'what matters', { strong: true }),
    pen.arrow([346, 210], [408, 210], { width: 4 }),
    row(110, [0.55, 0.45, 0]),
    row(210, [0.45, 0.53, 0.02]),
    row(310, [0, 0.04, 0.96]),
    pen.path('M446 30 L434 30 L434 214 L446 214', { width: 4 }),
    pen.word(605, 412, 'chance of each place', { strong: true }),
  );
}
