/** From so many digits on they stand in groups of three. */
const GROUPED_FROM = 5;
/** Narrow no-break space, U+202F. */
const THIN_SPACE = '\u202f';

/**
 * A whole number: no mark between the thousands below 10 000, a thin space above. Never a comma: `1,064` is 1.064 to half of
 * the world, and what people type is refused for it. Rounds; a real minus sign (U+2212). n must be finite.
 *
 * @example wholeText(1064) // '1064'
 */
export function wholeText(n: number): string {
  const digits = Math.round(Math.abs(n)).toString();
  const text = digits.length < GROUPED_FROM ? digits : digits.replace(/\B(?=(\d{3})+$)/g, THIN_SPACE);
  return n < 0 && text !== '0' ? `\u2212${text}` : text;
}
