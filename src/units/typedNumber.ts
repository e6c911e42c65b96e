import type { Dimension } from './dimension.ts';
import type { ReadOutcome } from './reading.ts';

/** A number as typed, with the size of one step of its last digit: 39.27 → 0.01, 3/8 → 1/8, 1.2e3 → 100. */
export interface TypedNumber {
  value: number;
  step: number;
}

const WANTED = 'a number, such as 39.27, 12,5 or 1 3/8';
/** More than any instrument shows, and few enough to print in a message. */
const LONGEST = 40;

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅐': '1/7',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅑': '1/9',
  '⅒': '1/10',
};

const FRACTION = /^([+-]?)(?:(\d+)(?: +| *- *))?(\d+) *\/ *(\d+)$/;
const DECIMAL = /^([+-]?)([\d.,]+)(?:e([+-]?\d{1,4}))?$/i;
const GROUPED = /^\d{1,3}(?:([.,])\d{3})(?:\1\d{3})*$/;

function refuse(found: string, advice?: string): ReadOutcome<TypedNumber> {
  return advice === undefined ? { ok: false, found, expected: WANTED } : { ok: false, found, expected: WANTED, advice };
}

/** One kind of space, hyphen and slash; a group of three after a no-break or thin space joined on; `1½` as `1 1/2`. */
function plainNumberText(text: string): string {
  return text
    .replace(/(?<=\d)[\u00a0\u2009\u202f](?=\d{3}(?!\d))/g, '')
    .replace(/[\s\u00a0\u2009\u202f]+/g, ' ')
    .replace(/[\u2212\u2010-\u2013]/g, '-')
    .replace(/[\u00bc-\u00be\u2150-\u215e]/g, (mark) => ` ${VULGAR[mark] ?? mark}`)
    .replace(/\u2044/g, '/')
    .replace(/^([+-]) +(?=\d)/, '$1')
    .trim();
}

function readFraction(match: RegExpExecArray, shown: string): ReadOutcome<TypedNumber> {
  const [, sign, whole, above, below] = match;
  const numerator = Number(above);
  const denominator = Number(below);
  if (denominator === 0) return refuse(`"${shown}", which divides by zero`);
  if (whole !== undefined && numerator >= denominator) return refuse(`"${shown}", a fraction that is not below one`);
  const size = Number(whole ?? 0) + numerator / denominator;
  return { ok: true, value: { value: sign === '-' ? -size : size, step: 1 / denominator } };
}

/**
 * Tells the decimal mark from the marks between thousands. Both kinds present: the last one is decimal. One kind, more than
 * once: thousands. One comma before exactly three digits could be either, so the caller must decide (`'either'`).
 */
function digitsWithPoint(digits: string): string | 'either' | null {
  const commas = digits.split(',').length - 1;
  const points = digits.split('.').length - 1;
  if (commas > 0 && points > 0) {
    const decimal = digits.lastIndexOf(',') > digits.lastIndexOf('.') ? ',' : '.';
    const [head, tail, more] = digits.split(decimal);
    if (more !== undefined || !GROUPED.test(head!) || tail === '') return null;
    return `${head!.replace(/[.,]/g, '')}.${tail}`;
  }
  if (commas > 1 || points > 1) return GROUPED.test(digits) ? digits.replace(/[.,]/g, '') : null;
  if (/^[1-9]\d{0,2},\d{3}$/.test(digits)) return 'either';
  return /\d/.test(digits) ? digits.replace(',', '.') : null;
}

function readDecimal(match: RegExpExecArray, shown: string, expected?: Dimension): ReadOutcome<TypedNumber> {
  const [, sign, typed, exponent] = match;
  let digits = digitsWithPoint(typed!);
  if (digits === null) return refuse(`"${shown}"`, 'Use one decimal mark, and no marks between thousands.');
  if (digits === 'either') {
    const joined = typed!.replace(',', '');
    const decimal = typed!.replace(',', '.');
    if (expected !== 'count') {
      return refuse(`"${shown}", which may mean ${decimal} or ${joined}`, `Type ${decimal} or ${joined}.`);
    }
    digits = joined;
  }
  const value = Number(`${sign}${digits}e${exponent ?? 0}`);
  const decimals = digits.split('.')[1]?.length ?? 0;
  const step = Number(`1e${Number(exponent ?? 0) - decimals}`);
  if (!Number.isFinite(value) || !Number.isFinite(step) || step === 0) return refuse(`"${shown}", out of any range`);
  return { ok: true, value: { value: value === 0 ? 0 : value, step } };
}

/**
 * Reads a number as people type it: decimal point or comma, `1 3/8`, `1-3/8`, `1½`, signs (also U+2212), exponents, and
 * thousands where they cannot be mistaken (`1,234.5`, `1.234,5`, `1,234,567`, or a no-break or thin space).
 *
 * `1,064` is refused, being 1.064 to some and 1064 to others, unless a count is `expected`: then it is 1064. A single point is
 * always the decimal mark. Text, NaN, Infinity, nothing, and two numbers are refused with a sentence.
 *
 * @example readTypedNumber('1 3/8') // { ok: true, value: { value: 1.375, step: 0.125 } }
 */
export function readTypedNumber(text: string, expected?: Dimension): ReadOutcome<TypedNumber> {
  const shown = text.trim().slice(0, LONGEST);
  if (shown === '') return refuse('nothing');
  if (text.trim().length > LONGEST) return refuse(`"${shown}…", ${text.trim().length} characters long`);
  const plain = plainNumberText(text);
  const fraction = FRACTION.exec(plain);
  if (fraction) return readFraction(fraction, shown);
  const decimal = DECIMAL.exec(plain);
  if (decimal) return readDecimal(decimal, shown, expected);
  if (/^[+-]?[\d.,]+(?: +| *- *)[\d.,]+$/.test(plain)) {
    return refuse(`"${shown}", two numbers`, 'Type one number, without gaps between its digits.');
  }
  return refuse(`"${shown}"`);
}
