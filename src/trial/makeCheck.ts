import type { Entry } from '../journal/entry.ts';
import { isZeroCheck, readKnownThing } from '../journal/knownThing.ts';
import { type CellReader, cell } from './cells.ts';
import type { Check } from './trial.ts';

/** A check out of its row, or null (with a remark) when its unit or a value cannot be read. */
export function makeCheck(entry: Entry, cells: CellReader): Check | null {
  const row = entry.body;
  const outcome = readKnownThing(row);
  if (!outcome.ok) {
    cells.remark(row, outcome.column, outcome.found, outcome.expected);
    return null;
  }
  const { known, knownError, read } = outcome.value;
  return {
    entry: entry.id,
    row,
    check: cell(row, 'check'),
    instrument: cell(row, 'instrument'),
    against: cell(row, 'against').toLowerCase(),
    zero: isZeroCheck(row),
    known,
    knownError,
    read: read.value,
    temperature: cells.value(row, 'temperature'),
  };
}
