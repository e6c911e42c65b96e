import type { Log } from '../../methods/current/log/readLog.ts';
import { largestOf } from '../../methods/current/log/segments.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';

/** What the person states where the log does not hold it. */
export interface StatedWithLog {
  specimen: string;
  /** A, all the while; null when the log has a column of it. */
  current: number | null;
  /** K, all the while; null when the log has a column of it, or nobody knows. */
  ambient: number | null;
}

/** Rows that a log is brought down to: enough for every curve that can be told from it, few enough to keep and publish. */
export const MOST_ROWS = 400;
/** A change of the current by this share of its largest ends a mean. */
const SWITCHED = 0.05;

interface Sum {
  n: number;
  sum: number;
}
const COLUMNS = ['time', 'current', 'conductor', 'surface', 'ambient', 'drop'] as const;
type ColumnName = (typeof COLUMNS)[number];

/**
 * A logger's file as rows of currents.csv, brought down to about {@link MOST_ROWS} means over equal spans of time; no mean runs
 * across a switching of the current, so the moment it came on is kept to the row.
 *
 * @throws RangeError when neither the log nor the person says the current.
 */
export function currentRowsOf(log: Log, stated: StatedWithLog): Record<string, string>[] {
  if (log.current === null && stated.current === null)
    throw new RangeError('the log has no column of current: say how many amps flowed');
  const n = log.time.length;
  const span = (log.time[n - 1] - log.time[0]) / MOST_ROWS;
  const largest = log.current ? largestOf(log.current) : 0;
  const rows: Record<string, string>[] = [];
  let sums = emptySums();
  let start = log.time[0];
  for (let i = 0; i < n; i++) {
    const switched =
      i > 0 && log.current !== null && Math.abs(log.current[i] - log.current[i - 1]) > SWITCHED * largest;
    if (sums.time.n > 0 && (switched || log.time[i] - start > span)) {
      rows.push(rowOf(sums, stated));
      sums = emptySums();
      start = log.time[i];
    }
    for (const name of COLUMNS) {
      const value = name === 'time' ? log.time[i] : log[name]?.[i];
      if (value === undefined || !Number.isFinite(value)) continue;
      sums[name].n++;
      sums[name].sum += value;
    }
  }
  if (sums.time.n > 0) rows.push(rowOf(sums, stated));
  return rows;
}

const emptySums = (): Record<ColumnName, Sum> => ({
  time: { n: 0, sum: 0 },
  current: { n: 0, sum: 0 },
  conductor: { n: 0, sum: 0 },
  surface: { n: 0, sum: 0 },
  ambient: { n: 0, sum: 0 },
  drop: { n: 0, sum: 0 },
});

function rowOf(sums: Record<ColumnName, Sum>, { specimen, current, ambient }: StatedWithLog): Record<string, string> {
  const mean = (name: ColumnName): number | null => (sums[name].n > 0 ? sums[name].sum / sums[name].n : null);
  const text = (value: number | null, decimals: number) =>
    value === null ? '' : String(Number(value.toFixed(decimals)));
  const celsius = (name: ColumnName, otherwise: number | null = null) => {
    const kelvin = mean(name) ?? otherwise;
    return text(kelvin === null ? null : kelvin - ZERO_CELSIUS, 3);
  };
  const cells = {
    specimen,
    time_s: text(mean('time'), 3),
    current_A: text(mean('current') ?? current, 4),
    conductor_C: celsius('conductor'),
    surface_C: celsius('surface'),
    ambient_C: celsius('ambient', ambient),
    drop_V: text(mean('drop'), 8),
  };
  return Object.fromEntries(Object.entries(cells).filter(([, cell]) => cell !== ''));
}
