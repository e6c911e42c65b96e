import type { ReadOutcome } from '../units/reading.ts';
import { findUnit, type Unit } from '../units/unit.ts';
import { cellNumber } from './cellQuantity.ts';

/** A limit of error in parts: ±(absolute + percent of the reading + counts of the last digit). */
export interface LimitParts {
  /** SI unit of what the tool reads. */
  absolute: number;
  percent: number;
  counts: number;
}

const WANTED = 'a limit of error, such as 0.02, ±0.02 mm or 0.5 % + 3 counts';
const PART = /^([\d.,]+(?:e-?\d+)?)\s*(.*)$/i;
const PERCENT = /^(?:%|percent|per cent)(?: of (?:the )?reading| rdg\.?)?$/i;
const COUNTS = /^(?:counts?|digits?|dgts?\.?|steps?|lsd)$/i;

function readPart(text: string, unit: Unit, parts: LimitParts): boolean {
  const match = PART.exec(text.trim());
  const number = match ? cellNumber(match[1]!) : null;
  if (!match || !number?.ok) return false;
  const { value } = number.value;
  const words = match[2]!.trim();
  if (PERCENT.test(words)) parts.percent += value;
  else if (COUNTS.test(words)) parts.counts += value;
  else {
    const own = words === '' ? unit : findUnit(words, unit.dimension);
    if (own === null) return false;
    parts.absolute += own.stepToSI(value);
  }
  return true;
}

/**
 * Reads a limit of error as the box prints it: `0.02` in the tool's unit, `±0.02 mm`, `0.5 % + 3 counts`, `±(1 % + 5 digits)`.
 *
 * @param unit unit of the tool, for parts that name none
 */
export function readLimitText(text: string, unit: Unit): ReadOutcome<LimitParts> {
  const plain = text
    .trim()
    .replace(/^(?:±|\+\/-|\+-)\s*/, '')
    .replace(/^\((.*)\)$/, '$1');
  const parts: LimitParts = { absolute: 0, percent: 0, counts: 0 };
  const read = plain !== '' && plain.split('+').every((part) => readPart(part, unit, parts));
  return read ? { ok: true, value: parts } : { ok: false, found: `"${text.trim()}"`, expected: WANTED };
}
