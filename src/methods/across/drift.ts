import { chiSquareUpperTail, normalQuantile, studentTQuantile } from '../../numerics/distributions.ts';

/** A figure of one lot at one time. */
export interface TimedFigure {
  /** Years, from any beginning. */
  years: number;
  /** Natural logarithm of the figure, and its standard uncertainty, a share of the figure. */
  ln: number;
  u: number;
}

export interface Drift {
  /** Change of the figure from the first to the last time, as a share of it, with its interval. */
  change: number;
  interval: [number, number];
  /** Years between the first and the last time. */
  years: number;
  /** The least change that would have shown with nine chances in ten, as a share. */
  wouldShow: number;
  /** Chance of a scatter about the line as large as this one or larger by the figures' own doubt; null for two times. */
  scatterChance: number | null;
}

/** Chance with which a change of `wouldShow` is found. */
const POWER = 0.9;
/** Times that lie closer than this are one time: a day, in years. */
const ONE_TIME = 1 / 365;

/**
 * Change of a figure over time by a weighted straight line through its logarithms: slope Σw(t − t̄)y/Σw(t − t̄)², w = 1/u². Where
 * three or more times scatter about the line more than their doubt allows, the doubt of the slope is enlarged by the square root of
 * χ²/(n − 2) (Birge) and Student's t is taken. Not for figures that carry one common error between times.
 *
 * @param extra variance that every time brings besides its own, as of the error between trials
 * @returns null for fewer than two different times
 */
export function driftOf(figures: readonly TimedFigure[], extra: number, level: number): Drift | null {
  const times = figures.map(({ years }) => years);
  const span = Math.max(...times) - Math.min(...times);
  if (figures.length < 2 || !(span >= ONE_TIME)) return null;
  const weights = figures.map(({ u }) => 1 / (u * u + extra));
  const total = weights.reduce((sum, w) => sum + w, 0);
  const mean = (of: (f: TimedFigure) => number) => figures.reduce((sum, f, i) => sum + weights[i]! * of(f), 0) / total;
  const middle = mean(({ years }) => years);
  const level0 = mean(({ ln }) => ln);
  const spread = figures.reduce((sum, { years }, i) => sum + weights[i]! * (years - middle) ** 2, 0);
  const slope =
    figures.reduce((sum, { years, ln }, i) => sum + weights[i]! * (years - middle) * (ln - level0), 0) / spread;
  const residual = figures.reduce(
    (sum, { years, ln }, i) => sum + weights[i]! * (ln - level0 - slope * (years - middle)) ** 2,
    0,
  );
  const dof = figures.length - 2;
  const inflated = dof > 0 && residual > dof;
  const se = Math.sqrt((inflated ? residual / dof : 1) / spread) * span;
  const p = (1 + level) / 2;
  const factor = inflated ? studentTQuantile(p, dof) : normalQuantile(p);
  const shares = (ln: number) => Math.expm1(ln);
  return {
    change: shares(slope * span),
    interval: [shares(slope * span - factor * se), shares(slope * span + factor * se)],
    years: span,
    wouldShow: shares((factor + normalQuantile(POWER)) * se),
    scatterChance: dof > 0 ? chiSquareUpperTail(residual, dof) : null,
  };
}
