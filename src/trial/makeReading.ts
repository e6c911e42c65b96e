import { type CellQuantity, cellNumber, cellQuantity } from '../journal/cellQuantity.ts';
import type { Entry } from '../journal/entry.ts';
import { leastProblem, outOfReach } from '../journal/impossible.ts';
import { quantityNamed } from '../journal/quantities.ts';
import type { ReadOutcome } from '../units/reading.ts';
import { type CellReader, trimmed } from './cells.ts';
import { NOT_RETAGGED } from './repoint.ts';
import type { Reading } from './trial.ts';

/** The value of a reading in SI by its quantity, or why it cannot be read or cannot be. */
export function readingValue(quantity: string, value: string, unit: string): ReadOutcome<CellQuantity> {
  const named = quantityNamed(quantity);
  if (named === null) return { ok: false, found: `"${quantity}"`, expected: 'a quantity from the list' };
  const { dimension, least } = named;
  const outcome = dimension === null ? cellNumber(value) : cellQuantity(value, dimension, unit);
  if (!outcome.ok) return outcome;
  const problem =
    leastProblem(value, outcome.value.value, least, dimension) ??
    (dimension === null ? null : outOfReach(value, outcome.value.value, dimension, false));
  return problem === null ? outcome : { ok: false, ...problem };
}

/**
 * A reading out of its row, standing as `counted` until strikes and corrections are known; null (with a remark) when its
 * quantity, value or unit cannot be read.
 *
 * @param cableOf cable of each specimen; a specimen not described yet gives an empty cable
 */
export function makeReading(entry: Entry, cells: CellReader, cableOf: ReadonlyMap<string, string>): Reading | null {
  // Columns are named outright here, and no list is made in between: this runs for every reading of a journal.
  const row = entry.body;
  const quantity = trimmed(row.quantity).toLowerCase();
  const outcome = readingValue(quantity, trimmed(row.value), row.unit ?? '');
  if (!outcome.ok) {
    cells.remark(row, quantityNamed(quantity) ? 'value' : 'quantity', outcome.found, outcome.expected);
    return null;
  }
  const specimen = trimmed(row.specimen);
  const atLength = row.at_length ? cells.quantity(row, 'at_length') : null;
  return {
    entry: entry.id,
    row,
    reading: trimmed(row.reading),
    specimen,
    cable: cableOf.get(specimen) ?? '',
    quantity,
    value: outcome.value.value,
    step: outcome.value.step,
    instrument: trimmed(row.instrument) || null,
    temperature: row.temperature ? cells.value(row, 'temperature') : null,
    atLength: atLength?.value ?? null,
    atLengthStep: atLength?.step ?? 0,
    replaces: trimmed(row.replaces) || null,
    set: trimmed(row.set),
    position: trimmed(row.position),
    standing: 'counted',
    why: '',
    retagged: NOT_RETAGGED,
  };
}
