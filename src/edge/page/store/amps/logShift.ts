/** Two logs of one piece must not run into each other: the later one begins well after the earlier. */

/** s: far beyond the usual step of a logger, so that the two are taken for two heatings. Ours. */
const APART = 3600;

/**
 * Rows of a log, put behind what is on record of the piece.
 *
 * @param times `time_s` of the piece's rows on record.
 */
export function behind(
  rows: readonly Record<string, string>[],
  times: readonly number[],
): { rows: Record<string, string>[]; shift: number } {
  const last = Math.max(...times.filter(Number.isFinite), Number.NEGATIVE_INFINITY);
  const first = Number(rows[0]?.time_s ?? 0);
  const shift = Number.isFinite(last) ? Math.ceil(last + APART - first) : 0;
  if (shift === 0) return { rows: rows.map((row) => ({ ...row })), shift };
  return {
    rows: rows.map((row) => ({ ...row, time_s: String(Number((Number(row.time_s) + shift).toFixed(3))) })),
    shift,
  };
}
