import type { Dimension } from './dimension.ts';
import { dimensionName, dimensionUnits, dimensionWanted } from './dimensionWords.ts';
import type { ReadOutcome } from './reading.ts';
import { readTypedNumber } from './typedNumber.ts';
import { findUnit, type Unit } from './unit.ts';

/** A quantity as typed and as SI, with one step of its last digit in both senses. */
export interface TypedQuantity {
  /** SI. */
  value: number;
  /** SI: one step of the last digit typed (39.27 g → 0.01 g). */
  step: number;
  /** In `unit`; for `5' 3 1/2"` in the smaller of the two units, 63.5. */
  typedValue: number;
  /** Symbol of the unit that was typed, or of the fallback. */
  unit: string;
}

type Outcome = ReadOutcome<TypedQuantity>;

/** The number in front: digits with their marks, spaces, fraction bars and hyphens between digits, and an exponent. */
export const NUMBER_IN_FRONT =
  /^\s*[+\-−–]?\s*(?:[\d.,½⅓⅔¼¾⅕-⅞⅐⅑⅒]|[\s\u00a0\u2009\u202f]*[/⁄‐‑–-]?[\s\u00a0\u2009\u202f]*(?=[\d½⅓⅔¼¾⅕-⅞⅐⅑⅒]))+(?:e[+\-−]?\d+)?/iu;
/** A first unit and what follows it: the `'` of `5' 3 1/2"`, the `lb` of `2 lb 3 oz`. */
const UNIT_THEN_MORE = /^\s*(\p{L}+\.?|['′’])\s*(\d.*|[½⅓⅔¼¾⅕-⅞⅐⅑⅒].*)$/u;
/** Pairs that people do say together. */
const TWO_PART: Readonly<Record<string, string>> = { ft: 'in', lb: 'oz', m: 'cm', kg: 'g', h: 'min', min: 's' };
const LONGEST_SHOWN = 60;
const LONGEST_READ = 200;

function quoted(text: string): string {
  const trimmed = text.trim();
  return `"${trimmed.length > LONGEST_SHOWN ? `${trimmed.slice(0, LONGEST_SHOWN)}…` : trimmed}"`;
}

function refuse(found: string, expected: Dimension, advice?: string): Outcome {
  const refusal = { ok: false as const, found, expected: dimensionWanted(expected) };
  return advice === undefined ? refusal : { ...refusal, advice };
}

/** Says why a unit text will not do: another kind of unit, or no unit at all. */
function refuseUnit(text: string, unitText: string, expected: Dimension): Outcome {
  const whole = text.includes(unitText) ? text : `${text.trim()} ${unitText}`;
  const other = findUnit(unitText);
  if (other) return refuse(`${quoted(whole)} (${dimensionName(other.dimension)})`, expected);
  const found = `${quoted(whole)}, whose unit ${quoted(unitText)} is not known`;
  return refuse(found, expected, `Units understood here: ${dimensionUnits(expected)}.`);
}

function accept(text: string, expected: Dimension, unit: Unit, typedValue: number, typedStep: number): Outcome {
  const value = unit.toSI(typedValue);
  const step = unit.stepToSI(typedStep);
  if (!Number.isFinite(value) || !Number.isFinite(step)) return refuse(`${quoted(text)}, out of any range`, expected);
  if (expected === 'temperature' && value < 0) return refuse(`${quoted(text)}, below absolute zero`, expected);
  return { ok: true, value: { value, step, typedValue, unit: unit.symbol } };
}

/** `5' 3 1/2"`, `2 lb 3 oz`: whole larger units and less than one larger unit of the smaller. */
function readTwoParts(
  text: string,
  expected: Dimension,
  first: number,
  firstUnit: string,
  more: string,
): Outcome | null {
  const larger = findUnit(firstUnit, expected);
  const front = NUMBER_IN_FRONT.exec(more);
  const smaller = front && findUnit(more.slice(front[0].length), expected);
  if (!larger || !smaller || TWO_PART[larger.symbol] !== smaller.symbol) return null;
  const second = readTypedNumber(front[0]);
  if (!second.ok) return refuse(quoted(text), expected);
  const inOneLarger = Math.round(smaller.fromSI(larger.toSI(1)));
  if (!Number.isInteger(first) || second.value.value < 0 || second.value.value >= inOneLarger) {
    const advice = `Type a whole number of ${larger.symbol}, then less than ${inOneLarger} ${smaller.symbol}.`;
    return refuse(quoted(text), expected, advice);
  }
  const sign = /^\s*[-−–]/.test(text) ? -1 : 1;
  const total = sign * (Math.abs(first) * inOneLarger + second.value.value);
  return accept(text, expected, smaller, total, second.value.step);
}

/**
 * Reads a number with its unit as people type it, into SI: `1 3/8 in`, `0.3249"`, `12,5 mm`, `5.6 oz`, `312 gr`,
 * `0.1 ohm/1000ft`, `48 F`, `5' 3 1/2"`, `2 lb 3 oz`.
 *
 * Without a unit the `fallbackUnit` is taken (the unit column, or the unit that the page shows); without that, only counts
 * and shares are read. A unit of another kind is refused, never converted; so is a temperature below absolute zero. A step of
 * temperature scales without the offset: 48 °F has a step of 5/9 K. Whether a value makes sense (a negative mass, a strand
 * wider than its cable) is for the caller to judge.
 *
 * @example readTypedQuantity('12,5 mm', 'length') // value 0.0125, step 0.0001, typedValue 12.5, unit 'mm'
 */
export function readTypedQuantity(text: string, expected: Dimension, fallbackUnit?: string): Outcome {
  const front = text.length <= LONGEST_READ ? NUMBER_IN_FRONT.exec(text) : null;
  if (!front) return refuse(text.trim() === '' ? 'nothing' : quoted(text), expected);
  const rest = text.slice(front[0].length).trim();
  const number = readTypedNumber(front[0], expected);
  if (!number.ok) {
    const { found, advice } = number;
    return refuse(found, expected, advice);
  }
  const { value, step } = number.value;
  const unitText = rest === '' && fallbackUnit !== undefined ? fallbackUnit : rest;
  const unit = findUnit(unitText, expected);
  if (unit) return accept(text, expected, unit, value, step);
  const more = UNIT_THEN_MORE.exec(rest);
  const twoParts = more && readTwoParts(text, expected, value, more[1]!, more[2]!);
  if (twoParts) return twoParts;
  if (unitText.trim() !== '') return refuseUnit(text, unitText, expected);
  return refuse(`${quoted(text)} without a unit`, expected, `Add the unit: ${dimensionUnits(expected)}.`);
}
