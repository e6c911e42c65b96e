/** Which figures the axis of a value curve spans, and where they lie on it. */
import type { ValueFunction } from '../../methods/decide/standing/valueFunction.ts';

/** Figures at the left and the right edge of the axis. */
export type CurveWindow = readonly [low: number, high: number];

/** Share of the width that lies beyond each end of a scale. */
const BEYOND = 0.15;
/** A window is kept while the ends lie so far within it, and so far apart, in shares of its width. */
const EDGE = 0.08;
const CLOSEST = 0.25;
/** A threshold has one end: the axis goes so many times its step to either side. */
const ABOUT_THRESHOLD = 0.6;
/** A drag or a key moves an end by about this share of the axis, to a round figure. */
const STEPS = 100;

/** Where a scale ends: the lower figure first, or the one step of a threshold. */
export const endsOf = ({ shape, worst, best }: ValueFunction): number[] =>
  shape === 'threshold' ? [best] : [Math.min(worst, best), Math.max(worst, best)];

/** The window about a scale: a little beyond both ends. */
export function windowOf(scale: ValueFunction): CurveWindow {
  const { shape, worst, best } = scale;
  const span = Math.abs(best - worst);
  if (shape === 'threshold') return [best - ABOUT_THRESHOLD * span, best + ABOUT_THRESHOLD * span];
  const beyond = (BEYOND / (1 - 2 * BEYOND)) * span;
  return [Math.min(worst, best) - beyond, Math.max(worst, best) + beyond];
}

/** The same window while the scale still shows well in it, so that nothing jumps; else the one about the scale. */
export function keptWindow([low, high]: CurveWindow, scale: ValueFunction): CurveWindow {
  const shares = endsOf(scale).map((end) => (end - low) / (high - low));
  const within = shares.every((share) => share >= EDGE && share <= 1 - EDGE);
  const apart = shares.length < 2 || shares[1]! - shares[0]! >= CLOSEST;
  return within && apart ? [low, high] : windowOf(scale);
}

/** A round step for that axis: 1, 2 or 5 times a power of ten, about a hundredth of it. */
export function stepWithin([low, high]: CurveWindow): number {
  const exact = (high - low) / STEPS;
  const ten = 10 ** Math.floor(Math.log10(exact));
  return ten * ([1, 2, 5].find((times) => times * ten >= exact * 0.7) ?? 10);
}

/** A figure at a round place. */
export const roundedTo = (figure: number, step: number): number =>
  Number((Math.round(figure / step) * step).toPrecision(12));
