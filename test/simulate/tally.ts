/** Counts over judged cables. A share without cases is null, never 0. */
import type { Judged } from './judge.ts';

export interface Share {
  hits: number;
  of: number;
}

/** How many of those for which the question makes sense (not null) answer yes. */
export function share(judged: readonly Judged[], question: (each: Judged) => boolean | null): Share {
  const answers = judged.map(question).filter((answer) => answer !== null);
  return { hits: answers.filter(Boolean).length, of: answers.length };
}

export function rate({ hits, of }: Share): number | null {
  return of === 0 ? null : hits / of;
}

export function shareText({ hits, of }: Share): string {
  return of === 0 ? '–' : `${hits}/${of} (${percent(hits / of)})`;
}

export function percent(value: number | null, decimals = 1): string {
  return value === null ? '–' : `${(100 * value).toFixed(decimals)} %`;
}

export function median(values: readonly (number | null)[]): number | null {
  const sorted = values.filter((value) => value !== null).sort((a, b) => a - b);
  if (sorted.length === 0) return null;
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** Least and greatest share over the lots: what a single trial may see. */
export function rangeOverLots(judged: readonly Judged[], question: (each: Judged) => boolean | null) {
  const lots = new Map<string, Judged[]>();
  for (const each of judged) lots.set(each.lot, [...(lots.get(each.lot) ?? []), each]);
  const rates = [...lots.values()].map((lot) => rate(share(lot, question))).filter((value) => value !== null);
  return rates.length === 0 ? null : ([Math.min(...rates), Math.max(...rates)] as const);
}

/** Honest cables by the strictest meaning: the only ones that can be accused. */
export function honestOf(judged: readonly Judged[]): Judged[] {
  return judged.filter((each) => each.cable.honest);
}
