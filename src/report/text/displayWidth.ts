/**
 * How many columns a text takes in a terminal. Letters of East Asian scripts and emoji take two, marks that sit on another
 * letter none; control characters are taken out first, since a name must not move the cursor or colour the screen.
 */

/** Ranges that take two columns: Unicode 15.1, EastAsianWidth W and F, joined where only unassigned points lie between. */
const WIDE: readonly (readonly [number, number])[] = [
  [0x1100, 0x115f],
  [0x231a, 0x231b],
  [0x2329, 0x232a],
  [0x23e9, 0x23ec],
  [0x2e80, 0x303e],
  [0x3041, 0x33ff],
  [0x3400, 0x4dbf],
  [0x4e00, 0x9fff],
  [0xa000, 0xa4cf],
  [0xa960, 0xa97f],
  [0xac00, 0xd7a3],
  [0xf900, 0xfaff],
  [0xfe10, 0xfe19],
  [0xfe30, 0xfe6f],
  [0xff00, 0xff60],
  [0xffe0, 0xffe6],
  [0x16fe0, 0x18cff],
  [0x1aff0, 0x1b2ff],
  [0x1f000, 0x1faff],
  [0x20000, 0x3fffd],
];

const GRAPHEMES = new Intl.Segmenter('en', { granularity: 'grapheme' });
const PLAIN = /^[\x20-\x7e]*$/;
const EMOJI = /\p{Emoji_Presentation}|\p{Extended_Pictographic}\uFE0F|\p{Regional_Indicator}|[#*0-9]\uFE0F?\u20E3/u;
const NOTHING_OF_ITS_OWN = /^[\p{Mn}\p{Me}\p{Cf}\u1160-\u11FF]+$/u;

/** Whole characters as a reader sees them. */
export function graphemes(text: string): string[] {
  return PLAIN.test(text) ? [...text] : Array.from(GRAPHEMES.segment(text), (part) => part.segment);
}

/** Columns taken by a text without control characters (see `printable`). */
export function displayWidth(text: string): number {
  if (PLAIN.test(text)) return text.length;
  let width = 0;
  for (const grapheme of graphemes(text)) width += graphemeWidth(grapheme);
  return width;
}

function graphemeWidth(grapheme: string): number {
  if (NOTHING_OF_ITS_OWN.test(grapheme)) return 0;
  if (EMOJI.test(grapheme)) return 2;
  // A cluster may hold several letters of its own (some scripts): each counts, but no cluster takes more than two.
  let width = 0;
  for (const character of grapheme) {
    if (!NOTHING_OF_ITS_OWN.test(character)) width += isWide(character.codePointAt(0)!) ? 2 : 1;
  }
  return Math.min(2, width);
}

function isWide(point: number): boolean {
  if (point < WIDE[0]![0]) return false;
  return WIDE.some(([from, to]) => point >= from && point <= to);
}

/**
 * The text as it may be printed: line breaks and tabs become a space; other control characters, marks that turn the
 * writing direction, and halves of surrogate pairs are replaced by U+FFFD or dropped.
 */
export function printable(text: string): string {
  if (PLAIN.test(text)) return text;
  return text
    .replace(/[\t\n\r\u00A0\u2007\u202F\u2028\u2029]+/g, ' ')
    .replace(/[\u200E\u200F\u202A-\u202E\u2066-\u2069\u061C\uFEFF]/g, '')
    .replace(/[\p{Cc}\p{Cs}\p{Co}]/gu, '\uFFFD');
}

/** The text cut to `width` columns, with `…` as the last when anything was cut. */
export function truncate(text: string, width: number, ellipsis = '…'): string {
  if (displayWidth(text) <= width) return text;
  if (width <= 0) return '';
  const room = width - displayWidth(ellipsis);
  let kept = '';
  let used = 0;
  for (const grapheme of graphemes(text)) {
    const own = graphemeWidth(grapheme);
    if (used + own > room) break;
    kept += grapheme;
    used += own;
  }
  return room < 0 ? '' : kept.trimEnd() + ellipsis;
}

/** The text with spaces after it (or before it) up to `width` columns; longer text is cut. */
export function pad(text: string, width: number, side: 'left' | 'right' = 'left', ellipsis = '…'): string {
  const fitted = truncate(text, width, ellipsis);
  const space = ' '.repeat(Math.max(0, width - displayWidth(fitted)));
  return side === 'left' ? fitted + space : space + fitted;
}
