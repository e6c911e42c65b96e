/** A log brought down to means over equal spans of time. */
export interface Blocks {
  /** s, mean time of each block. */
  time: Float64Array;
  /** Mean of what was logged. */
  value: Float64Array;
}

/** So many blocks hold what a heating curve says: more add time, not knowledge. Tried by simulation with 48. */
export const BLOCKS = 48;
export const FEWEST_BLOCKS = 12;

/**
 * Means over equal spans of time; spans without readings (a gap in the log) give no block.
 *
 * @param time s, rising; @param value as many.
 */
export function blockMeans(time: ArrayLike<number>, value: ArrayLike<number>, count = BLOCKS): Blocks {
  const n = time.length;
  if (n <= count) return { time: Float64Array.from(time), value: Float64Array.from(value) };
  const from = time[0];
  const span = time[n - 1] - from;
  const sums = Array.from({ length: count }, () => ({ n: 0, time: 0, value: 0 }));
  for (let i = 0; i < n; i++) {
    const block = sums[Math.min(count - 1, Math.floor(((time[i] - from) / span) * count))];
    block.n++;
    block.time += time[i];
    block.value += value[i];
  }
  const filled = sums.filter((b) => b.n > 0);
  return {
    time: Float64Array.from(filled, (b) => b.time / b.n),
    value: Float64Array.from(filled, (b) => b.value / b.n),
  };
}
