/** How much room a text takes in a picture, without a browser to ask: good to a tenth, which is enough to break a line. */
import { displayWidth, graphemes, printable } from './text/displayWidth.ts';

/** Mean width of a letter, and of the letters that are much wider or narrower, as shares of the size. */
const MEAN = 0.52;
const NARROW = 0.29;
const BROAD = 0.92;
const FULL = 1;

/** Widths that were asked for already: names come again at every redrawing, and parting letters from their accents is slow. */
const KNOWN = new Map<string, number>();
const MOST_KNOWN = 5000;

/** Estimated width of a text, px. */
export function textWidth(text: string, size: number): number {
  let ems = KNOWN.get(text);
  if (ems === undefined) {
    ems = widthInEms(text);
    if (KNOWN.size >= MOST_KNOWN) KNOWN.clear();
    KNOWN.set(text, ems);
  }
  return ems * size;
}

function widthInEms(text: string): number {
  let ems = 0;
  for (const grapheme of graphemes(text)) {
    if (displayWidth(grapheme) === 0) continue;
    if (displayWidth(grapheme) > 1) ems += FULL;
    else if (/[ijlftrI.,:;'’!|() ]/.test(grapheme)) ems += NARROW;
    else ems += /[MW@mw%—…]/.test(grapheme) ? BROAD : MEAN;
  }
  return ems;
}

/** The text in at most `most` lines of `width` px, broken at spaces; what does not fit ends in `…`. */
export function fittedLines(text: string, width: number, size: number, most: number): string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of printable(text)
    .split(' ')
    .filter((part) => part !== '')) {
    const joined = current === '' ? word : `${current} ${word}`;
    if (current === '' || textWidth(joined, size) <= width) current = joined;
    else {
      lines.push(current);
      current = word;
    }
  }
  if (current !== '') lines.push(current);
  const kept = lines.slice(0, most);
  if (lines.length > most) kept[most - 1] = `${kept[most - 1]}…`;
  return kept.map((line) => cut(line, width, size));
}

function cut(line: string, width: number, size: number): string {
  if (textWidth(line, size) <= width) return line;
  let kept = '';
  for (const grapheme of graphemes(line)) {
    if (textWidth(`${kept}${grapheme}…`, size) > width) break;
    kept += grapheme;
  }
  return `${kept.trimEnd()}…`;
}
