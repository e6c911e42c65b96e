import { chiSquareUpperTail, normalQuantile } from '../../numerics/distributions.ts';
import { mixtureInterval } from '../../numerics/mixture.ts';
import { middleOf } from './betweenTrials.ts';

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
 * Change of a figure over time by a weighted straight line through its logarithms: slope Σw(t − t̄)y/Σw(t − t̄)², w = 1/(u² + τ²) with
 * the middle one of the likely variances τ² that each time brings besides its own; its interval is that of the mixture over all of
 * them. Where three or more times scatter about the line more than that allows, the doubt of the slope is enlarged by the square root
 * of χ²/(n − 2) (Birge) and Student's t is taken. Not for figures that carry one common error between times.
 *
 * @param likely equally likely variances of the error that each time brings, rising; [0] for none
 * @returns null for fewer than two different times
 */
export function driftOf(figures: readonly TimedFigure[], likely: readonly number[], level: number): Drift | null {
  const times = figures.map(({ years }) => years);
  const span = Math.max(...times) - Math.min(...times);
  if (figures.length < 2 || !(span >= ONE_TIME)) return null;
  const usual = middleOf(likely);
  const weights = figures.map(({ u }) => 1 / (u * u + usual));
  const total = weights.reduce((sum, w) => sum + w, 0);
  const over = (of: (f: TimedFigure, w: number) => number) =>
    figures.reduce((sum, f, i) => sum + of(f, weights[i]!), 0);
  const middle = over(({ years }, w) => w * years) / total;
  const height = over(({ ln }, w) => w * ln) / total;
  const spread = over(({ years }, w) => w * (years - middle) ** 2);
  const slope = over(({ years, ln }, w) => w * (years - middle) * (ln - height)) / spread;
  const residual = over(({ years, ln }, w) => w * (ln - height - slope * (years - middle)) ** 2);
  const dof = figures.length - 2;
  const inflated = dof > 0 && residual > dof;
  const factor = (span / spread) * (inflated ? Math.sqrt(residual / dof) : 1);
  const doubt = (extra: number) =>
    factor * Math.sqrt(over(({ u, years }, w) => (w * (years - middle)) ** 2 * (u * u + extra)));
  const ln = slope * span;
  const parts = likely.map((extra) => ({
    weight: 1,
    mean: ln,
    sd: doubt(extra),
    dof: inflated ? dof : Number.POSITIVE_INFINITY,
  }));
  const [low, high] = mixtureInterval(parts, level);
  return {
    change: Math.expm1(ln),
    interval: [Math.expm1(low), Math.expm1(high)],
    years: span,
    wouldShow: Math.expm1((high - low) / 2 + normalQuantile(POWER) * doubt(usual)),
    scatterChance: dof > 0 ? chiSquareUpperTail(residual, dof) : null,
  };
}
