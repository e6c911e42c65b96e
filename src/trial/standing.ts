import { cell } from './cells.ts';
import type { Reading, TypedRow } from './trial.ts';

/**
 * Where each reading stands. A reading that another one names in `replaces` is replaced; one that a strike names is struck,
 * which outweighs being replaced.
 *
 * Nothing comes back by itself: striking a correction out does not restore what it corrected. To undo a correction, record
 * the value once more, replacing the correction.
 */
export function withStanding(readings: readonly Reading[], strikes: readonly TypedRow[]): Reading[] {
  const struck = new Map(strikes.map((strike) => [cell(strike.row, 'reading'), cell(strike.row, 'why')]));
  const replaced = new Map<string, string>();
  for (const reading of readings) {
    const earlier = cell(reading.row, 'replaces');
    if (earlier !== '' && earlier !== reading.reading) replaced.set(earlier, cell(reading.row, 'why'));
  }
  if (struck.size === 0 && replaced.size === 0) return [...readings];
  return readings.map((reading) => {
    const strike = struck.get(reading.reading);
    if (strike !== undefined) return { ...reading, standing: 'struck' as const, why: strike };
    const correction = replaced.get(reading.reading);
    return correction === undefined ? reading : { ...reading, standing: 'replaced' as const, why: correction };
  });
}
