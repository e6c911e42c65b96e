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

/** 1, 10, 100 …: doubles hold each of them exactly. */
const POWERS = Array.from({ length: 16 }, (_, decimals) => 10 ** decimals);
const MOST_CHARACTERS = 15;

/** Decimals of a number of plain digits with at most one point within; −1 for every other text. */
function plainDecimals(text: string): number {
  const length = text.length;
  if (length === 0 || length > MOST_CHARACTERS) return -1;
  let point = -1;
  for (let i = 0; i < length; i++) {
    const code = text.charCodeAt(i);
    if (code === 46 && point < 0 && i > 0 && i < length - 1) point = i;
    else if (code < 48 || code > 57) return -1;
  }
  return point < 0 ? 0 : length - 1 - point;
}

/** What `Number` gives: digits below 2⁵³ over a power of ten below 10²³ make one division, which rounds once. */
function plainValue(text: string, decimals: number): number {
  let digits = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code !== 46) digits = digits * 10 + (code - 48);
  }
  return digits / POWERS[decimals]!;
}

/**
 * A number of plain digits with at most one decimal point, as instruments show it; null for everything else, which the full
 * reader takes. Reads the same as `readTypedNumber` for what it accepts, without its cost.
 */
export function plainDecimal(text: string): TypedNumber | null {
  const decimals = plainDecimals(text);
  return decimals < 0 ? null : { value: plainValue(text, decimals), step: STEPS[decimals]! };
}

/** A trial types the same few units thousands of times, and mostly the same one as before. */
const REMEMBERED = 100;

class UnitsOf {
  readonly #dimension: Dimension;
  readonly #units = new Map<string, Unit | null>();
  #lastText: string | null = null;
  #lastUnit: Unit | null = null;

  constructor(dimension: Dimension) {
    this.#dimension = dimension;
  }

  called(text: string): Unit | null {
    if (text === this.#lastText) return this.#lastUnit;
    let unit = this.#units.get(text);
    if (unit === undefined) {
      if (this.#units.size >= REMEMBERED) this.#units.clear();
      unit = findUnit(text, this.#dimension);
      this.#units.set(text, unit);
    }
    this.#lastText = text;
    this.#lastUnit = unit;
    return unit;
  }
}

const remembered = new Map<Dimension, UnitsOf>();

function unitOf(text: string, dimension: Dimension): Unit | null {
  let units = remembered.get(dimension);
  if (units === undefined) {
    units = new UnitsOf(dimension);
    remembered.set(dimension, units);
  }
  return units.called(text);
}

/**
 * The value alone of a cell of plain digits with a known unit, SI; NaN for everything else, which `cellQuantity` reads. Makes
 * nothing on the way: for journals with a hundred thousand readings.
 */
export function plainCellValue(text: string, dimension: Dimension, unitText: string, defaultUnit = ''): number {
  const decimals = plainDecimals(text);
  if (decimals < 0) return Number.NaN;
  const unit = unitOf(unitText.trim() || defaultUnit, dimension);
  return unit === null ? Number.NaN : unit.toSI(plainValue(text, decimals));
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
  const decimals = plainDecimals(text);
  const found = decimals < 0 ? null : unitOf(unit, dimension);
  if (found === null) return readTypedQuantity(text, dimension, unit);
  return { ok: true, value: { value: found.toSI(plainValue(text, decimals)), step: found.stepToSI(STEPS[decimals]!) } };
}

/** Reads a bare number out of a cell. */
export function cellNumber(text: string): ReadOutcome<TypedNumber> {
  const plain = plainDecimal(text);
  return plain === null ? readTypedNumber(text) : { ok: true, value: plain };
}
