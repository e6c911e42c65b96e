import type { ErrorLimit, Instrument } from './trial.ts';

/** A tool this many times further off than its own limit allows is seldom that wrong: the figure was typed wrong. Ours. */
const FAR = 3;

export interface CheckDoubt {
  /** Read less known, SI unit of what the tool reads. */
  off: number;
  /** How far off the tool may be there by its own limit, SI. */
  allowed: number;
}

/** What a tool may be off by as stated or assumed, whatever its checks have shown. */
export const ownLimitOf = ({ limit, ownLimit }: Pick<Instrument, 'limit' | 'ownLimit'>): ErrorLimit =>
  ownLimit ?? limit;

/**
 * Whether a check about to be kept is so far outside the tool's own limit that it should be asked about first; null when it
 * is not. It would widen the limit of every reading taken with the tool, and what the plan makes of it.
 *
 * @param check SI units of what the tool reads
 */
export function checkDoubt(
  tool: Pick<Instrument, 'limit' | 'ownLimit' | 'resolution'>,
  { known, knownError, read }: { known: number; knownError: number; read: number },
): CheckDoubt | null {
  const { absolute, fraction } = ownLimitOf(tool);
  const allowed = absolute + fraction * Math.abs(known);
  const off = read - known;
  return Math.abs(off) > FAR * allowed + knownError + tool.resolution ? { off, allowed } : null;
}
