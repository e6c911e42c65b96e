import type { CriterionFound } from '../../findings/shapes/decide.ts';
import { element, label, line, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';

export type Scale = Pick<CriterionFound, 'shape' | 'worst' | 'best'>;

interface CurveOptions {
  width: number;
  height: number;
  theme: Theme;
  /** The two ends in words, below the axis where there is room for them; null leaves them out. */
  ends: { low: string; high: string } | null;
  description: string;
}

/** Share of the width that lies beyond each end of the scale. */
const BEYOND = 0.15;
const PAD = 3;
const FOOT = 18;

/** Worth at a place along the axis, 0 to 1 between the ends of the scale; beyond them a linear one runs on. */
function worthAt(shape: Scale['shape'], along: number): number {
  if (shape === 'threshold') return along >= 1 ? 1 : 0;
  return shape === 'flat' ? Math.min(1, Math.max(0, along)) : along;
}

/** What a figure is worth, from nothing at the foot to everything at the top; the axis runs from the smaller figure to the larger. */
export function valueCurve(scale: Scale, { width, height, theme, ends, description }: CurveOptions): string {
  const rising = scale.best > scale.worst;
  const foot = height - (ends ? FOOT : 0) - PAD;
  const x = (share: number) => PAD + share * (width - 2 * PAD);
  const y = (worth: number) => foot - worth * (foot - 2 * PAD);
  const along = (share: number) => (share - BEYOND) / (1 - 2 * BEYOND);
  const worth = (share: number) =>
    Math.min(1.08, Math.max(-0.08, worthAt(scale.shape, rising ? along(share) : 1 - along(share))));
  const corners = cornersOf(scale.shape, rising);
  const path = corners
    .map(([share, side], i) => `${i === 0 ? 'M' : 'L'}${x(share).toFixed(1)} ${y(worth(side)).toFixed(1)}`)
    .join('');
  const words = { 'font-size': 13, fill: theme.ink2 };
  return svgDocument(
    { width, height, description },
    line(PAD, PAD, PAD, foot, { stroke: theme.edge, 'stroke-width': 1 }),
    line(PAD, foot, width - PAD, foot, { stroke: theme.edge, 'stroke-width': 1 }),
    element('path', { d: path, fill: 'none', stroke: theme.ink, 'stroke-width': 2 }),
    ...(ends
      ? [
          line(x(BEYOND), foot, x(BEYOND), foot + 4, { stroke: theme.edge, 'stroke-width': 1 }),
          line(x(1 - BEYOND), foot, x(1 - BEYOND), foot + 4, { stroke: theme.edge, 'stroke-width': 1 }),
          label(x(BEYOND), height - 3, ends.low, { ...words, 'text-anchor': 'middle' }),
          label(x(1 - BEYOND), height - 3, ends.high, { ...words, 'text-anchor': 'middle' }),
        ]
      : []),
  );
}

/** Corners of the curve: where along the width, and from which side of a step its worth is taken. */
function cornersOf(shape: Scale['shape'], rising: boolean): [number, number][] {
  const last = 1 - BEYOND;
  const [before, after] = [1e-6, -1e-6];
  if (shape !== 'threshold')
    return [
      [0, 0],
      [BEYOND, BEYOND],
      [last, last],
      [1, 1],
    ];
  const step = rising ? last : BEYOND;
  return [
    [0, 0],
    [step, step - before],
    [step, step - after],
    [1, 1],
  ];
}
