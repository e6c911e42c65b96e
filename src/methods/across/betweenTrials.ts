import { normalQuantile } from '../../numerics/distributions.ts';
import { excessSpread, likelyExcess, scatterWith } from '../../numerics/excessSpread.ts';
import { mixtureInterval } from '../../numerics/mixture.ts';

/** One figure of one trial by its natural logarithm, with its standard uncertainty: a share of the figure. */
export interface TrialFigure {
  trial: string;
  ln: number;
  u: number;
}

/** What one piece, measured in several trials, says of the error that each trial brings along. */
export interface BetweenTrials {
  /** Trials in which the piece was measured. */
  trials: number;
  /** Standard deviation between trials as a share of the figure, beyond what the readings explain; its interval. */
  spread: number;
  interval: [number, number];
  /** Equally likely variances of it. */
  likely: readonly number[];
  /** By trial: how far the piece read above its mean over all trials, as a logarithm, and the standard uncertainty of that. */
  shifts: ReadonlyMap<string, { ln: number; u: number }>;
  /** Scatter of the piece in units of its readings' own doubt, squared and summed, and its degrees of freedom. */
  scatter: number;
  dof: number;
}

/** So many likely variances: the 97.5 % point of what they widen stands to a hundredth of itself. */
const LIKELY = 200;
/** Figures known better than this share are taken to be known so well: below it only rounding is left. */
const LEAST_U = 1e-6;

/** The middle one of likely variances that rise: half of them are larger; 0 where there are none. */
export const middleOf = (likely: readonly number[]): number => likely[Math.floor(likely.length / 2)] ?? 0;

/**
 * The error between trials from one piece that was measured in each of them: ln xₜ = μ + bₜ + eₜ with eₜ of the known uₜ and bₜ of an
 * unknown spread, estimated after Paule and Mandel. What the trials have in common, such as one scale, does not show in it.
 *
 * @param figures one for each trial
 * @returns null for fewer than two trials
 */
export function betweenTrials(figures: readonly TrialFigure[], level: number): BetweenTrials | null {
  if (figures.length < 2) return null;
  const values = figures.map(({ ln }) => ln);
  const variances = figures.map(({ u }) => Math.max(u, LEAST_U) ** 2);
  const { variance, interval, scatter, dof } = excessSpread(values, variances, level);
  const { mean } = scatterWith(values, variances, variance);
  return {
    trials: figures.length,
    spread: Math.sqrt(variance),
    interval: [Math.sqrt(interval[0]), Math.sqrt(interval[1])],
    likely: likelyExcess(values, variances, LIKELY),
    shifts: new Map(figures.map(({ trial, ln }, i) => [trial, { ln: ln - mean, u: Math.sqrt(variances[i]!) }])),
    scatter,
    dof,
  };
}

/** Interval of a logarithm known to `u`, widened by the error that each trial brings: a mixture over the likely variances. */
export function widenedInterval(ln: number, u: number, likely: readonly number[], level: number): [number, number] {
  const parts = likely.map((variance) => ({
    weight: 1,
    mean: ln,
    sd: Math.sqrt(u * u + variance),
    dof: Number.POSITIVE_INFINITY,
  }));
  return mixtureInterval(parts, level);
}

/**
 * Interval of the logarithm of a ratio of two figures. Of two trials, each brings its own error: twice the likely variance; with
 * `likely` null nobody measured it, and none is added.
 */
export function ratioInterval(
  a: TrialFigure,
  b: TrialFigure,
  likely: readonly number[] | null,
  level: number,
): [number, number] {
  const ln = a.ln - b.ln;
  const u = Math.hypot(a.u, b.u);
  if (likely === null || a.trial === b.trial) {
    const half = normalQuantile((1 + level) / 2) * u;
    return [ln - half, ln + half];
  }
  return widenedInterval(
    ln,
    u,
    likely.map((variance) => 2 * variance),
    level,
  );
}
