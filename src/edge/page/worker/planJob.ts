import { planOf, type TrialPlan } from '../../../findings/plan.ts';
import { fold } from '../../../trial/fold.ts';
import type { Jobs } from './jobs.ts';

/** Entries to the plan of their trial; with draws, also whether it would show the shortfall that it is to show. */
export function planJob({ entries, ...options }: Jobs['plan']['ask'], tell: (tried: number) => void): TrialPlan {
  return planOf(fold(entries), { ...options, onTried: tell });
}
