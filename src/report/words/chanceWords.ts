/** Least probability for each phrase, read downward: the one table from which every chance in words is taken. */
const CHANCES: readonly (readonly [number, string])[] = [
  [0.995, 'almost certainly'],
  [0.9, 'very likely'],
  [0.7, 'likely'],
  [0.55, 'rather more likely than not'],
  [0.45, 'as likely as not'],
  [0.3, 'rather less likely than not'],
  [0.1, 'unlikely'],
  [0.005, 'very unlikely'],
  [0, 'almost certainly not'],
];

/**
 * A probability as a phrase that can be spoken, coarser than the number and never `certain`.
 * Throws RangeError outside 0 … 1. Do not use it where an outcome is given: the outcome has its own words.
 */
export function chanceWords(probability: number): string {
  if (!(probability >= 0 && probability <= 1)) {
    throw new RangeError(`A probability lies between 0 and 1, and got ${probability}.`);
  }
  return CHANCES.find(([least]) => probability >= least)![1];
}

/** A probability as a figure: `75 %`, but `under 1 %` and `over 99 %` at the ends, so that no chance reads as none or all. */
export function chanceText(probability: number): string {
  if (!(probability >= 0 && probability <= 1)) {
    throw new RangeError(`A probability lies between 0 and 1, and got ${probability}.`);
  }
  if (probability < 0.01) return 'under 1 %';
  if (probability > 0.99) return 'over 99 %';
  return `${Math.round(100 * probability)} %`;
}
