import type { Dimension } from '../units/dimension.ts';
import type { ReadOutcome } from '../units/reading.ts';
import { findUnit, type Unit } from '../units/unit.ts';
import { type CellQuantity, cellQuantity } from './cellQuantity.ts';
import { leastProblem, outOfReach } from './impossible.ts';
import { readLimitText } from './limitText.ts';

const PER_CENT = 0.01;

/** A check as numbers, SI units of what the tool reads. */
export interface KnownThing {
  dimension: Dimension;
  known: number;
  /** How far the known thing may be from `known`. */
  knownError: number;
  read: CellQuantity;
}

export type KnownThingOutcome =
  | { ok: true; value: KnownThing }
  | { ok: false; column: string; found: string; expected: string; advice?: string };

type Row = Readonly<Record<string, string>>;

const cellOf = (row: Row, name: string): string => (row[name] ?? '').trim();

/** Whether the check is of the tool's zero: nothing on the scale, jaws closed, clips shorted. */
export const isZeroCheck = (row: Row): boolean => cellOf(row, 'against').toLowerCase() === 'zero';

/** The known value, which for a zero check may be blank, and for a known thing must be something. */
function knownValue(row: Row, unit: Unit, unitText: string): ReadOutcome<CellQuantity> {
  const typed = cellOf(row, 'known_value');
  const zero = isZeroCheck(row);
  if (typed === '')
    return zero
      ? { ok: true, value: { value: unit.toSI(0), step: 0 } }
      : { ok: false, found: 'nothing', expected: 'what the known thing is' };
  const outcome = cellQuantity(typed, unit.dimension, unitText);
  if (!outcome.ok) return outcome;
  const { value } = outcome.value;
  if (zero)
    return value === unit.toSI(0) ? outcome : { ok: false, found: `"${typed}"`, expected: '0 for a zero check' };
  const least = unit.dimension === 'temperature' ? 'any' : 'positive';
  const problem = leastProblem(typed, value, least, unit.dimension) ?? outOfReach(typed, value, unit.dimension, true);
  return problem ? { ok: false, ...problem } : outcome;
}

function knownError(row: Row, unit: Unit, known: number): ReadOutcome<number> {
  const typed = cellOf(row, 'known_error');
  if (typed === '') return { ok: true, value: 0 };
  const outcome = readLimitText(typed, unit);
  if (!outcome.ok) return outcome;
  const { absolute, percent, counts } = outcome.value;
  if (counts > 0)
    return { ok: false, found: `"${typed}"`, expected: 'an error of the known thing itself, which has no counts' };
  return { ok: true, value: absolute + percent * PER_CENT * Math.abs(known) };
}

/** Reads what a row of checks.csv says, or the first thing that is wrong with it. */
export function readKnownThing(row: Row): KnownThingOutcome {
  const unitText = cellOf(row, 'unit');
  const unit = unitText === '' ? null : findUnit(unitText);
  if (unit === null) {
    const found = unitText === '' ? 'nothing' : `"${unitText}"`;
    return { ok: false, column: 'unit', found, expected: 'a unit, such as g, mm, mohm or C' };
  }
  const known = knownValue(row, unit, unitText);
  if (!known.ok) return { ...known, column: 'known_value' };
  const error = knownError(row, unit, known.value.value);
  if (!error.ok) return { ...error, column: 'known_error' };
  const typed = cellOf(row, 'read_value');
  const read = cellQuantity(typed, unit.dimension, unitText);
  if (!read.ok) return { ...read, column: 'read_value' };
  const beyond = outOfReach(typed, read.value.value, unit.dimension, true);
  if (beyond) return { ok: false, column: 'read_value', ...beyond };
  const { dimension } = unit;
  return { ok: true, value: { dimension, known: known.value.value, knownError: error.value, read: read.value } };
}
