import { atRiskAt, failedJustAt, failureAmounts, hasFailed, type Lifetime, seenAt } from './lifetime.ts';

/**
 * Log-rank score of each lifetime: c = e − Σ d/r over the amounts up to its own, where e is 1 for a failure and 0 for a
 * survivor, and d of r at risk failed. They sum to 0; a group that fails early has a sum above 0.
 *
 * Source: R. Peto, J. Peto, J. Roy. Statist. Soc. A 135 (1972) 185, with the Nelson–Aalen estimate.
 */
export function logRankScores(lives: readonly Lifetime[]): Float64Array {
  const steps = failureAmounts(lives).map((amount) => ({
    amount,
    hazard: failedJustAt(lives, amount) / atRiskAt(lives, amount),
  }));
  return Float64Array.from(lives, (life) => {
    let c = hasFailed(life) ? 1 : 0;
    for (const { amount, hazard } of steps) if (amount <= seenAt(life)) c -= hazard;
    return c;
  });
}
