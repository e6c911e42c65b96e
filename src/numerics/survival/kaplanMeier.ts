import { normalQuantile } from '../distributions.ts';
import { atRiskAt, failedJustAt, failureAmounts, type Lifetime, seenAt } from './lifetime.ts';

/** One step of the curve: an amount at which something failed. */
export interface SurvivalStep {
  amount: number;
  atRisk: number;
  failed: number;
  /** Share that lasts longer than this. */
  survival: number;
  /** Greenwood's standard error of it. */
  se: number;
  /** Interval of the share by log(−log); null where the curve has come to 0. */
  interval: [number, number] | null;
}

/** Where a curve falls through one half; null where it does not. */
export interface CurveMedian {
  median: number | null;
  low: number | null;
  high: number | null;
}

/** How near a share must come to one half to count as one half. */
const HALF_WAY = 1e-9;

/**
 * Kaplan–Meier curve: S(t) = Π (1 − d/r) over the amounts at which d of r still at risk failed. What ended as a survivor at an
 * amount at which others failed counts as at risk there. The interval is exp(−exp(ln(−ln S) ± z · se(ln S)/ln S)).
 *
 * Lifetimes known between two looks count where the failure was found. For steps that vary from piece to piece that is rough.
 *
 * Source: E. L. Kaplan, P. Meier, J. Amer. Statist. Assoc. 53 (1958) 457; J. D. Kalbfleisch, R. L. Prentice, The Statistical
 * Analysis of Failure Time Data (2nd edition 2002), 1.4 (log–log).
 */
export function kaplanMeier(lives: readonly Lifetime[], level = 0.95): SurvivalStep[] {
  const z = normalQuantile((1 + level) / 2);
  const steps: SurvivalStep[] = [];
  let survival = 1;
  let greenwood = 0;
  for (const amount of failureAmounts(lives)) {
    const atRisk = atRiskAt(lives, amount);
    const failed = failedJustAt(lives, amount);
    survival *= 1 - failed / atRisk;
    greenwood += failed === atRisk ? Number.POSITIVE_INFINITY : failed / (atRisk * (atRisk - failed));
    const ended = failed === atRisk;
    steps.push({
      amount,
      atRisk,
      failed,
      survival: ended ? 0 : survival,
      se: ended ? 0 : survival * Math.sqrt(greenwood),
      interval: ended ? null : logLog(survival, Math.sqrt(greenwood), z),
    });
    if (ended) break;
  }
  return steps;
}

function logLog(survival: number, seOfLn: number, z: number): [number, number] {
  const ln = Math.log(survival);
  const reach = (z * seOfLn) / ln;
  // ln S is below 0, so the lower end of log(−log) is the upper end of the share.
  return [-reach, reach].map((d) => Math.exp(-Math.exp(Math.log(-ln) + d))) as [number, number];
}

/**
 * Median of a curve and the interval that its band gives, as R's `survfit` does it: each line where it falls to one half or
 * below; where it runs level at one half, the middle of that stretch. null: not reached.
 */
export function curveMedian(steps: readonly SurvivalStep[], lives: readonly Lifetime[]): CurveMedian {
  const end = Math.max(...lives.map(seenAt));
  return {
    median: crossing(
      steps.map((s) => [s.amount, s.survival]),
      end,
    ),
    low: crossing(
      steps.flatMap((s) => (s.interval ? [[s.amount, s.interval[0]] as const] : [])),
      end,
    ),
    high: crossing(
      steps.flatMap((s) => (s.interval ? [[s.amount, s.interval[1]] as const] : [])),
      end,
    ),
  };
}

function crossing(line: readonly (readonly [amount: number, share: number])[], end: number): number | null {
  const at = line.findIndex(([, share]) => share <= 0.5 + HALF_WAY);
  if (at < 0) return null;
  const [amount, share] = line[at];
  if (share < 0.5 - HALF_WAY) return amount;
  return (amount + (line[at + 1]?.[0] ?? end)) / 2;
}
