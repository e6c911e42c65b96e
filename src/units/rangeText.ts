import { leadingPlace, leadingPlaceTowards, roundedTowards } from './decimalRounding.ts';
import { formatPlain } from './digits.ts';

/** Significant digits of either end: more would promise what a wide range does not hold. */
const DIGITS = 2;
/** An end this much nearer to nothing than the other is written as nothing. */
const NEGLIGIBLE = 1e-3;
/** Digits that a figure holds after its arithmetic: 100 × 1.1 is 110, and not a hair above it. */
const HELD_DIGITS = 12;
/** Beyond these nothing that was measured lies; such a figure may have a power of ten. */
const LARGEST_SENSIBLE = 1e12;
const SMALLEST_SENSIBLE = 1e-12;

/**
 * A range by both its ends, rounded outwards to two significant digits, so that it never promises more than it should:
 * (33.4, 78.2) → `33 to 79`, (0.0412, 0.0907) → `0.041 to 0.091`. A positive end of less than a thousandth of the other is
 * `0`. For figures whose ± is so large a part of them that a ± misleads; otherwise use `formatMeasured`.
 *
 * @example rangeText(33.4, 78.2) // '33 to 79'
 */
export function rangeText(low: number, high: number): string {
  const from = low > 0 && low < NEGLIGIBLE * high ? 0 : low;
  return `${endText(from, false)} to ${endText(high, true)}`;
}

function endText(end: number, up: boolean): string {
  const x = Number(end.toPrecision(HELD_DIGITS));
  const size = Math.abs(x);
  if (!Number.isFinite(x) || x === 0) return formatPlain(x, 1);
  if (size > LARGEST_SENSIBLE || size < SMALLEST_SENSIBLE) return formatPlain(x, DIGITS);
  const place = leadingPlace(x) - DIGITS + 1;
  // 99.5 becomes 100: one digit more, so that one place less is shown.
  const carried = leadingPlaceTowards(x, place, up) - leadingPlace(x);
  return roundedTowards(x, place + carried, up);
}
