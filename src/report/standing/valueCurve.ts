import type { CriterionFound } from '../../findings/shapes/decide.ts';
import { worthOf } from '../../methods/decide/standing/valueFunction.ts';
import { element, label, line, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';
import { type CurveWindow, endsOf, windowOf } from './curveWindow.ts';

export type Scale = Pick<CriterionFound, 'shape' | 'worst' | 'best'>;

interface CurveOptions {
  width: number;
  height: number;
  theme: Theme;
  /** The two ends in words, below the axis where there is room for them; null leaves them out. */
  ends: { low: string; high: string } | null;
  description: string;
  /** Figures that the axis spans; left out, a little beyond both ends. */
  window?: CurveWindow;
  /** Whether there is room about the ends for handles. */
  roomy?: boolean;
}

type Sizes = Pick<CurveOptions, 'width' | 'height' | 'ends' | 'roomy'>;

const PAD = 3;
/** Height of the words below the axis, px; of the words with a handle above them, and of what is above the curve then. */
const FOOT = 18;
const ROOMY_FOOT = 30;
const ROOMY_TOP = 16;
/** A straight curve goes on past its ends by so much worth: as much as there is room for. */
const PAST = 0.08;
const ROOMY_PAST = 0.22;
/** Width of a figure of 13 px, and the least space between two words; px. */
const FIGURE = 7.4;
const SPACE = 8;

/** Where figures and worth lie in the picture, px; whoever sets a handle on it asks here. */
export function curvePlaces([low, high]: CurveWindow, { width, height, ends, roomy = false }: Sizes) {
  const foot = height - (ends ? (roomy ? ROOMY_FOOT : FOOT) : 0) - PAD;
  const top = roomy ? ROOMY_TOP : 2 * PAD;
  const span = width - 2 * PAD;
  return {
    foot,
    x: (figure: number) => PAD + ((figure - low) / (high - low)) * span,
    y: (worth: number) => foot - worth * (foot - top),
    figureAt: (x: number) => low + ((x - PAD) / span) * (high - low),
  };
}

/** What a figure is worth, from nothing at the foot to everything at the top; the axis runs from the smaller figure to the larger. */
export function valueCurve(scale: Scale, options: CurveOptions): string {
  const { width, height, theme, ends, description, window = windowOf(scale) } = options;
  const { x, y, foot } = curvePlaces(window, options);
  const path = cornersOf(scale, window, options.roomy ? ROOMY_PAST : PAST)
    .map(([figure, worth], i) => `${i === 0 ? 'M' : 'L'}${x(figure).toFixed(1)} ${y(worth).toFixed(1)}`)
    .join('');
  const { worst, best, shape } = scale;
  const figures = endsOf(scale);
  const said = ends && (shape !== 'threshold' ? [ends.low, ends.high] : [best > worst ? ends.high : ends.low]);
  return svgDocument(
    { width, height, description },
    line(PAD, PAD, PAD, foot, { stroke: theme.edge, 'stroke-width': 1 }),
    line(PAD, foot, width - PAD, foot, { stroke: theme.edge, 'stroke-width': 1 }),
    element('path', { d: path, fill: 'none', stroke: theme.ink, 'stroke-width': 2 }),
    ...(said === null ? [] : endWords(said, figures.map(x), { width, height, foot, theme })),
  );
}

/** Corners of the curve as figures and worth, from the left edge of the axis to the right. */
function cornersOf(scale: Scale, [low, high]: CurveWindow, beyond: number): [figure: number, worth: number][] {
  const { shape, worst, best } = scale;
  if (shape === 'threshold') {
    const [before, after] = best > worst ? [0, 1] : [1, 0];
    const corners: [number, number][] = [
      [low, before],
      [best, before],
      [best, after],
      [high, after],
    ];
    return corners.filter(([figure]) => figure >= low && figure <= high);
  }
  const within = (figure: number) => Math.min(high, Math.max(low, figure));
  const figureOf = (worth: number) => worst + worth * (best - worst);
  const past = shape === 'flat' ? 0 : beyond;
  const turns = [figureOf(-past), figureOf(1 + past)].map(within).sort((a, b) => a - b);
  const all = shape === 'flat' ? [low, ...turns, high] : turns;
  return all.map((figure) => [figure, worthOf(scale, figure)]);
}

/** Ticks at the ends and their figures below, moved aside where they would meet or be cut off. */
function endWords(
  said: readonly string[],
  at: readonly number[],
  { width, height, foot, theme }: { width: number; height: number; foot: number; theme: Theme },
): string[] {
  const halves = said.map((text) => (text.length * FIGURE) / 2);
  const centres = at.map((x, i) => Math.min(width - halves[i]!, Math.max(halves[i]!, x)));
  if (centres.length === 2) {
    const short = halves[0]! + halves[1]! + SPACE - (centres[1]! - centres[0]!);
    if (short > 0) {
      const left = Math.max(halves[0]!, Math.min(centres[0]! - short / 2, width - 2 * halves[1]! - SPACE - halves[0]!));
      centres.splice(0, 2, left, left + halves[0]! + SPACE + halves[1]!);
    }
  }
  return at.flatMap((x, i) => [
    line(x, foot, x, foot + 4, { stroke: theme.edge, 'stroke-width': 1 }),
    label(centres[i]!, height - 3, said[i]!, { 'font-size': 13, fill: theme.ink2, 'text-anchor': 'middle' }),
  ]);
}
