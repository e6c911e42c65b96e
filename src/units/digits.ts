import { leadingDigits, leadingPlace, leadingPlaceRounded, roundedText } from './decimalRounding.ts';

/**
 * How many digits to show: the one rule for page, command line, report and card.
 *
 * JCGM 100 (GUM) 7.2.6 allows at most two significant digits of an uncertainty. Which of one or two is taken from the rounding
 * rule of the Particle Data Group (Review of Particle Physics, introduction, "Rounding": from memory), by the first three
 * digits of the uncertainty: 100 to 354 two digits, 355 to 949 one, 950 to 999 rounded up to 1000 and two. So one step of
 * the last digit shown is always 3 % to 28 % of the uncertainty. The value is given to the same place. Ties go to even.
 */
const TWO_DIGITS_UP_TO = 354;
const ONE_DIGIT_UP_TO = 949;
/** What stands for a figure that does not exist. */
const NO_FIGURE = '–';
/** Beyond these powers of ten a figure is written as a number times a power of ten. */
const LARGEST_PLAIN_POWER = 6;
const SMALLEST_PLAIN_POWER = -4;
/** The same for figures that are written without powers of ten: beyond these nothing that was measured lies. */
const LARGEST_SENSIBLE_POWER = 12;
const SMALLEST_SENSIBLE_POWER = -12;
/** Significant digits when nothing is known about the uncertainty, and when it is exactly nothing. */
const DIGITS_WITHOUT_UNCERTAINTY = 4;
const DIGITS_OF_EXACT = 12;

/** 1 or 2: significant digits of the uncertainty u to show. Throws RangeError unless u is positive and finite. */
export function digitsToShow(u: number): 1 | 2 {
  if (!(u > 0) || !Number.isFinite(u)) throw new RangeError(`an uncertainty above zero is needed, not ${u}`);
  const lead = leadingDigits(u, 3);
  return lead <= TWO_DIGITS_UP_TO || lead > ONE_DIGIT_UP_TO ? 2 : 1;
}

/** Power of ten of the last digit to show. */
function lastPlace(u: number): number {
  const carries = leadingDigits(u, 3) > ONE_DIGIT_UP_TO;
  return leadingPlace(u) + (carries ? 1 : 0) - (digitsToShow(u) - 1);
}

export interface DigitsOptions {
  /** Write small and large figures out, without a power of ten, as people who read areas and per cents expect. */
  plain?: boolean;
}

const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';

function powerOfTen(power: number): string {
  const digits = String(Math.abs(power)).replace(/\d/g, (d) => SUPERSCRIPTS[Number(d)]!);
  return ` × 10${power < 0 ? '⁻' : ''}${digits}`;
}

/** x to the last place, with the power of ten written out unless it is 0. */
function scaledText(x: number, place: number, power: number): string {
  return power === 0 ? roundedText(x, place) : `${roundedText(x, place, power)}${powerOfTen(power)}`;
}

/** The power of ten to write out, 0 for none; `largest` is what sets it, and does not round to zero. */
function powerToShow(largest: number, place: number, { plain = false }: DigitsOptions): number {
  const power = leadingPlaceRounded(largest, place);
  const most = plain ? LARGEST_SENSIBLE_POWER : LARGEST_PLAIN_POWER;
  const least = plain ? SMALLEST_SENSIBLE_POWER : SMALLEST_PLAIN_POWER;
  return power > most || power < least ? power : 0;
}

/**
 * A value to a stated number of significant digits, trailing zeros kept: (0.39, 3) → `0.390`. A real minus sign (U+2212).
 * NaN is `–`, infinities `∞`. For a figure with an uncertainty use `formatMeasured`.
 */
export function formatPlain(value: number, digits: number, options: DigitsOptions = {}): string {
  if (Number.isNaN(value)) return NO_FIGURE;
  if (!Number.isFinite(value)) return value < 0 ? '\u2212∞' : '∞';
  if (value === 0) return '0';
  const carries = leadingDigits(value, digits) >= 10 ** digits;
  const place = leadingPlace(value) + (carries ? 1 : 0) - digits + 1;
  return scaledText(value, place, powerToShow(value, place, options));
}

/** As few digits as name the number, at most twelve: for figures that are exact. */
function formatExact(value: number, options: DigitsOptions): string {
  if (!Number.isFinite(value) || value === 0) return formatPlain(value, 1);
  const text = formatPlain(value, DIGITS_OF_EXACT, options);
  return text.includes('.') ? text.replace(/\.?0+(?= |$)/, '') : text;
}

export interface FormattedMeasurement {
  value: string;
  /** Without the sign ±. */
  plusMinus: string;
}

/**
 * A value and its uncertainty as text: (33.149, 0.22) → `33.15` ± `0.22`; (33.149, 0.4) → `33.1` ± `0.4`.
 *
 * `u` times `expandedFactor` (1 by default) is what is shown after ±, and it decides the digits. Units are the caller's. Both
 * texts end at the same decimal place; where powers of ten are written out, both carry the same one. An uncertainty of
 * exactly zero leaves the value as it is; one that is unknown (NaN, negative) shows `–` and four digits of the value.
 *
 * @example formatMeasured(33.149, 0.4) // { value: '33.1', plusMinus: '0.4' }
 */
export function formatMeasured(
  value: number,
  u: number,
  { expandedFactor = 1, plain = false }: { expandedFactor?: number } & DigitsOptions = {},
): FormattedMeasurement {
  const shown = u * expandedFactor;
  if (!Number.isFinite(value)) return { value: formatPlain(value, 1), plusMinus: NO_FIGURE };
  if (shown === 0) return { value: formatExact(value, { plain }), plusMinus: '0' };
  if (Number.isNaN(shown) || shown < 0) {
    return { value: formatPlain(value, DIGITS_WITHOUT_UNCERTAINTY, { plain }), plusMinus: NO_FIGURE };
  }
  if (shown === Number.POSITIVE_INFINITY) return { value: formatPlain(value, 1), plusMinus: '∞' };
  const place = lastPlace(shown);
  const power = powerToShow(Math.max(Math.abs(value), shown), place, { plain });
  return { value: scaledText(value, place, power), plusMinus: scaledText(shown, place, power) };
}
