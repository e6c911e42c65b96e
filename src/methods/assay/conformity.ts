import { type Component, mixtureCdf, mixtureInterval, mixtureMean } from '../../numerics/mixture.ts';

export type Outcome = 'meets' | 'falls short' | 'not settled';

/** When a claim is said to be met, or not: both are settings with these defaults. JCGM 106:2012, 8.3. */
export interface OutcomeLevels {
  meetsAbove: number;
  shortBelow: number;
}
export const DEFAULT_LEVELS: OutcomeLevels = { meetsAbove: 0.975, shortBelow: 0.025 };

/** Outcome from the probability that the claim is met. */
export function outcomeOf(probability: number, levels: OutcomeLevels = DEFAULT_LEVELS): Outcome {
  if (probability < levels.shortBelow) return 'falls short';
  return probability > levels.meetsAbove ? 'meets' : 'not settled';
}

export interface Conformity {
  probability: number;
  outcome: Outcome;
  /** How far on the wrong side of the requirement, as a share of it (positive is short), with its interval. */
  shortfall: { value: number; interval: [number, number] };
}

/**
 * Probability that a figure, known as a mixture of its logarithm, is at least the requirement. JCGM 106:2012, 7.3.
 *
 * @param lnFigure mixture of ln(figure)
 * @param required in the unit of the figure
 */
export function atLeast(
  lnFigure: readonly Component[],
  required: number,
  level: number,
  levels: OutcomeLevels = DEFAULT_LEVELS,
): Conformity {
  const probability = 1 - mixtureCdf(lnFigure, Math.log(required));
  const [low, high] = mixtureInterval(lnFigure, level);
  const short = (ln: number) => 1 - Math.exp(ln) / required;
  return {
    probability,
    outcome: outcomeOf(probability, levels),
    shortfall: { value: short(mixtureMean(lnFigure)), interval: [short(high), short(low)] },
  };
}

/** As {@link atLeast} for a requirement that must not be exceeded: resistance per metre. */
export function atMost(
  lnFigure: readonly Component[],
  required: number,
  level: number,
  levels: OutcomeLevels = DEFAULT_LEVELS,
): Conformity {
  const probability = mixtureCdf(lnFigure, Math.log(required));
  const [low, high] = mixtureInterval(lnFigure, level);
  const short = (ln: number) => Math.exp(ln) / required - 1;
  return {
    probability,
    outcome: outcomeOf(probability, levels),
    shortfall: { value: short(mixtureMean(lnFigure)), interval: [short(low), short(high)] },
  };
}
