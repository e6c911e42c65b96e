import type { Dimension } from '../units/dimension.ts';
import type { ReadOutcome } from '../units/reading.ts';
import { readTypedNumber, type TypedNumber } from '../units/typedNumber.ts';
import { readTypedQuantity } from '../units/typedQuantity.ts';
import { findUnit, type Unit } from '../units/unit.ts';

/** A quantity out of a row: value and one step of its last digit, in SI. */
export interface CellQuantity {
  value: number;
  step: number;
}

/** 1, 0.1, 0.01 …: one step of the last digit, by number of decimals. */
const STEPS = Array.from({ length: 16 }, (_, decimals) => Number(`1e-${decimals}`));

/**
 * A number of plain digits with at most one decimal point, as instruments show it; null for everything else, which the full
 * reader takes. Reads the same as `readTypedNumber` for what it accepts, without its cost.
 */
export function plainDecimal(text: string): TypedNumber | null {
  const length = text.length;
  if (length === 0 || length > 15) return null;
  let point = -1;
  for (let i = 0; i < length; i++) {
    const code = text.charCodeAt(i);
    if (code === 46 && point < 0 && i > 0 && i < length - 1) point = i;
    else if (code < 48 || code > 57) return null;
  }
  return { value: Number(text), step: STEPS[point < 0 ? 0 : length - 1 - point]! };
}

/** A trial types the same few units thousands of times. */
const REMEMBERED = 100;
const remembered = new Map<Dimension, Map<string, Unit | null>>();

function unitOf(text: string, dimension: Dimension): Unit | null {
  let units = remembered.get(dimension);
  if (units === undefined) {
    units = new Map();
    remembered.set(dimension, units);
  }
  let unit = units.get(text);
  if (unit === undefined) {
    if (units.size >= REMEMBERED) units.clear();
    unit = findUnit(text, dimension);
    units.set(text, unit);
  }
  return unit;
}

/**
 * Reads a quantity out of a cell and the cell of its unit. The unit may also stand in the same cell (`5.6 oz`), which then
 * counts; a blank unit cell means `defaultUnit`.
 */
export function cellQuantity(
  text: string,
  dimension: Dimension,
  unitText: string,
  defaultUnit = '',
): ReadOutcome<CellQuantity> {
  const unit = unitText.trim() || defaultUnit;
  const plain = plainDecimal(text);
  if (plain !== null) {
    const found = unitOf(unit, dimension);
    if (found) return { ok: true, value: { value: found.toSI(plain.value), step: found.stepToSI(plain.step) } };
  }
  return readTypedQuantity(text, dimension, unit);
}

/** Reads a bare number out of a cell. */
export function cellNumber(text: string): ReadOutcome<TypedNumber> {
  const plain = plainDecimal(text);
  return plain === null ? readTypedNumber(text) : { ok: true, value: plain };
}
