/** Diagrams of the ways in which the metal inside is found. */
import { group } from '../../../svg.ts';
import type { Pen } from './pen.ts';

/** Current through the outer clips, volts between the inner contacts. */
export function fourWiresDiagram(pen: Pen): string {
  const y = 214;
  const clip = (x: number, up: boolean) =>
    pen.path(
      up
        ? `M${x - 14} ${y - 52} L${x} ${y - 16} L${x + 14} ${y - 52} Z`
        : `M${x - 14} ${y + 52} L${x} ${y + 16} L${x + 14} ${y + 52} Z`,
      { fill: pen.theme.ink },
    );
  return group(
    {},
    pen.path(`M70 ${y - 50} L70 64 L310 64 M490 64 L730 64 L730 ${y - 50}`, { width: 5 }),
    pen.window(310, 35, 180, 'A'),
    pen.path(`M180 ${y + 50} L180 372 L310 372 M490 372 L620 372 L620 ${y + 50}`),
    pen.window(310, 343, 180, 'mV'),
    pen.cable(`M120 ${y} L680 ${y}`, `M40 ${y} L130 ${y} M670 ${y} L760 ${y}`),
    clip(70, true),
    clip(730, true),
    pen.path(`M180 ${y - 18} L180 ${y + 18} M620 ${y - 18} L620 ${y + 18}`, { width: 9, stroke: pen.theme.copper }),
    clip(180, false),
    clip(620, false),
    pen.distance([180, 288], [620, 288]),
    pen.word(400, 326, 'only this counts', { strong: true }),
    pen.word(400, 152, 'current', { quiet: true }),
    pen.arrow([470, 142], [560, 142]),
  );
}

/** A measured length of bare metal on a scale. */
export function weighDiagram(pen: Pen): string {
  const strands = Array.from({ length: 5 }, (_, i) => {
    const y = 218 + i * 14;
    const out = (i - 2) * 9;
    return `M210 ${y} L590 ${y} M210 ${y} L172 ${y + out} M590 ${y} L628 ${y + out}`;
  });
  return group(
    {},
    pen.scale(130, 292, 540, 'g'),
    pen.path(strands.join(' '), { width: 13, stroke: pen.theme.copper }),
    pen.path('M210 225 L590 225 M210 239 L590 239 M210 253 L590 253 M210 267 L590 267', {
      width: 2,
      stroke: pen.theme.copperLine,
    }),
    pen.distance([172, 150], [628, 150]),
    pen.line([172, 160], [172, 196], { width: 2, stroke: pen.theme.edge, dash: '8 7' }),
    pen.line([628, 160], [628, 196], { width: 2, stroke: pen.theme.edge, dash: '8 7' }),
    pen.word(400, 130, 'length', { strong: true }),
  );
}

/** Seven bundles, one of them opened into its strands, and the jaws on a single one. */
export function strandsDiagram(pen: Pen): string {
  const { theme } = pen;
  const round = (x: number, y: number, r: number, across: number) =>
    [
      [0, 0] as const,
      ...Array.from({ length: 6 }, (_, i) => [Math.cos((i * Math.PI) / 3), Math.sin((i * Math.PI) / 3)] as const),
    ].map(([dx, dy]): readonly [number, number, number] => [x + dx * across, y + dy * across, r]);
  const [cx, cy] = [190, 220];
  const bundles = round(cx, cy, 50, 104);
  const strandsOf = ([x, y]: readonly [number, number, number]) =>
    round(x, y, 15, 33).map(([sx, sy, r]) =>
      pen.circle(sx, sy, r, { fill: theme.copper, stroke: theme.copperLine, width: 2 }),
    );
  const opened = round(462, 220, 33, 74).map(([sx, sy, r]) =>
    pen.circle(sx, sy, r, { fill: theme.copper, stroke: theme.copperLine, width: 2 }),
  );
  return group(
    {},
    ...bundles.flatMap(strandsOf),
    ...bundles.slice(0, 2).map(([x, y]) => pen.circle(x, y, 53, { width: 2, stroke: theme.edge, dash: '8 7' })),
    pen.line([cx + 104 + 56, 206], [348, 206], { width: 2, stroke: theme.edge, dash: '8 7' }),
    pen.line([cx + 104 + 56, 234], [348, 234], { width: 2, stroke: theme.edge, dash: '8 7' }),
    ...opened,
    pen.path('M650 183 L730 183 M650 257 L730 257', { width: 9 }),
    pen.path('M690 183 L690 100 M690 257 L690 340', { width: 9 }),
    pen.circle(690, 220, 33, { fill: theme.copper, stroke: theme.copperLine, width: 2 }),
    pen.word(190, 420, '7 ×', { strong: true }),
    pen.word(462, 420, 'strands', { strong: true }),
    pen.word(690, 420, 'gauge', { strong: true }),
  );
}
