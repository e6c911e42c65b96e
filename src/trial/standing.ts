import { cell } from './cells.ts';
import type { Reading, Standing, TypedRow } from './trial.ts';

/** How a reading stands, as it is said after it. */
export const STANDING_WORDS: Readonly<Record<Standing, string>> = {
  counted: 'counted',
  struck: 'struck',
  replaced: 'replaced',
  aside: 'put aside',
};

interface Fate {
  standing: Standing;
  why: string;
}

function fates(readings: readonly Reading[], strikes: readonly TypedRow[]): Map<string, Fate> {
  const byReading = new Map<string, Fate>();
  for (const { row, reading, replaces } of readings)
    if (replaces !== null && replaces !== reading)
      byReading.set(replaces, { standing: 'replaced', why: cell(row, 'why') });
  for (const { row } of strikes) byReading.set(cell(row, 'reading'), { standing: 'struck', why: cell(row, 'why') });
  return byReading;
}

/**
 * Where each reading stands. A reading that another one names in `replaces` is replaced; one that a strike names is struck,
 * which outweighs being replaced.
 *
 * Nothing comes back by itself: striking a correction out does not restore what it corrected. To undo a correction, record
 * the value once more, replacing the correction.
 */
export function withStanding(readings: readonly Reading[], strikes: readonly TypedRow[]): Reading[] {
  const byReading = fates(readings, strikes);
  if (byReading.size === 0) return [...readings];
  return readings.map((reading) => {
    const fate = byReading.get(reading.reading);
    return fate === undefined ? reading : { ...reading, standing: fate.standing, why: fate.why };
  });
}
