/**
 * How long one thing lasted, as far as it is known: it failed after `from` and at `until` at the latest. Equal ends: it failed
 * just there. `until` = Infinity: it had not failed at `from`, where the trial of it ended (a survivor).
 */
export interface Lifetime {
  from: number;
  until: number;
}

export const failedAt = (amount: number): Lifetime => ({ from: amount, until: amount });
export const survivedTo = (amount: number): Lifetime => ({ from: amount, until: Number.POSITIVE_INFINITY });
/** Looked at every so often: whole at `from`, found failed at `until`. */
export const failedBetween = (from: number, until: number): Lifetime => ({ from, until });

export const hasFailed = ({ until }: Lifetime): boolean => until !== Number.POSITIVE_INFINITY;
/** Where it was seen last: found failed, or left as a survivor. */
export const seenAt = (life: Lifetime): number => (hasFailed(life) ? life.until : life.from);

/** Amounts at which something was found failed, the least first, each once. */
export const failureAmounts = (lives: readonly Lifetime[]): number[] =>
  [...new Set(lives.filter(hasFailed).map(seenAt))].sort((a, b) => a - b);

/** How many were still at risk at an amount: what ended there counts. */
export const atRiskAt = (lives: readonly Lifetime[], amount: number): number =>
  lives.filter((life) => seenAt(life) >= amount).length;

/** How many were found failed just there. */
export const failedJustAt = (lives: readonly Lifetime[], amount: number): number =>
  lives.filter(({ until }) => until === amount).length;

export const failures = (lives: readonly Lifetime[]): number => lives.filter(hasFailed).length;
