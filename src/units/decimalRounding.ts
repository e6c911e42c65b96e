/**
 * A decimal number taken apart: 0.0332 is { negative: false, digits: '332', place: -4 }, that is 332 · 10⁻⁴.
 * The digits are the shortest that name the double, so that rounding sees 2.675 as a person does, not as 2.67499….
 */
interface Decimal {
  negative: boolean;
  digits: bigint;
  place: number;
}

function takeApart(x: number): Decimal {
  const [mantissa, exponent] = Math.abs(x).toExponential().split('e') as [string, string];
  const fraction = mantissa.split('.')[1] ?? '';
  return { negative: x < 0, digits: BigInt(mantissa.replace('.', '')), place: Number(exponent) - fraction.length };
}

/** Digits of x in units of 10^place, ties to the even digit (ASTM E29, rounding method: from memory). */
function digitsAt(x: Decimal, place: number): bigint {
  if (x.place >= place) return x.digits * 10n ** BigInt(x.place - place);
  const unit = 10n ** BigInt(place - x.place);
  const whole = x.digits / unit;
  const twiceRest = 2n * (x.digits % unit);
  const up = twiceRest > unit || (twiceRest === unit && whole % 2n === 1n);
  return up ? whole + 1n : whole;
}

/**
 * x rounded to a multiple of 10^place and divided by 10^power, as plain text with its trailing zeros:
 * (33.149, −1) → `33.1`, (123456, 2) → `123500`, (1.2e9, 6, 9) → `1.200`.
 * A real minus sign (U+2212); never a negative zero. x must be finite.
 */
export function roundedText(x: number, place: number, power = 0): string {
  const apart = takeApart(x);
  return digitsText(digitsAt(apart, place), apart.negative, place - power);
}

/**
 * x to a multiple of 10^place, as plain text: the next one above it (`up`), or below it. (33.149, 0, up) → `34`,
 * (−1.5, 0, down) → `−2`. A multiple stays as it is. x must be finite.
 */
export function roundedTowards(x: number, place: number, up: boolean): string {
  const apart = takeApart(x);
  return digitsText(digitsTowards(apart, place, up), apart.negative, place);
}

/** Power of ten of the first digit of x once it was rounded up or down to 10^place; x must not round to zero. */
export function leadingPlaceTowards(x: number, place: number, up: boolean): number {
  return place + digitsTowards(takeApart(x), place, up).toString().length - 1;
}

function digitsTowards(x: Decimal, place: number, up: boolean): bigint {
  if (x.place >= place) return x.digits * 10n ** BigInt(x.place - place);
  const unit = 10n ** BigInt(place - x.place);
  const away = up !== x.negative && x.digits % unit !== 0n;
  return x.digits / unit + (away ? 1n : 0n);
}

/** Whole digits as text, `zeros` places before the point, or after it where that is negative. */
function digitsText(digits: bigint, below: boolean, zeros: number): string {
  const negative = below && digits !== 0n;
  if (zeros >= 0) return withSign(negative, digits === 0n ? '0' : `${digits}${'0'.repeat(zeros)}`);
  const padded = digits.toString().padStart(1 - zeros, '0');
  return withSign(negative, `${padded.slice(0, zeros)}.${padded.slice(zeros)}`);
}

function withSign(negative: boolean, text: string): string {
  return negative ? `\u2212${text}` : text;
}

/** Power of ten of the first digit: 0.0332 → −2, 123 → 2. x must be finite and not zero. */
export function leadingPlace(x: number): number {
  const apart = takeApart(x);
  return apart.place + apart.digits.toString().length - 1;
}

/** The first `count` digits of x as a whole number, rounded: (0.0996, 3) → 996; (0.09999, 3) → 1000. */
export function leadingDigits(x: number, count: number): number {
  return Number(digitsAt(takeApart(x), leadingPlace(x) - count + 1));
}

/** Power of ten of the first digit of x once it is rounded to 10^place: (9.996, -2) → 1. x must not round to zero. */
export function leadingPlaceRounded(x: number, place: number): number {
  return place + digitsAt(takeApart(x), place).toString().length - 1;
}
