import { graphemes, printable } from '../../text/displayWidth.ts';
import { textWidth } from '../../textFit.ts';
import { LEAST_NAME } from './canvas.ts';

export interface FittedName {
  size: number;
  lines: string[];
  lineHeight: number;
}

/** Sizes a name steps down through, and in how many lines each may stand. */
const STEPS: readonly (readonly [size: number, lines: number])[] = [
  [84, 1],
  [64, 1],
  [48, 1],
  [48, 2],
  [40, 3],
  [34, 4],
  [LEAST_NAME, 6],
];
/** The display face is this much broader than the text face, and the estimate of a width may be a tenth short. */
const BREADTH = { display: 1.25 * 1.08, text: 1.08 };
const LINE = 1.16;

/**
 * A name at the largest step at which all of it fits: broken at spaces, and inside a word only where the word alone is wider than
 * the line. Only what does not fit in six lines of the least size ends in `…`.
 *
 * @param largest size to begin at
 */
export function fitName(
  typed: string,
  width: number,
  { largest = 84, most = 6, display = true }: { largest?: number; most?: number; display?: boolean } = {},
): FittedName {
  const name = printable(typed).trim() || 'no name';
  const breadth = display ? BREADTH.display : BREADTH.text;
  const steps = STEPS.filter(([size]) => size <= largest || size === LEAST_NAME);
  for (const [size, lines] of steps) {
    const broken = brokenLines(name, width, size * breadth);
    const wholeWords = lines > 2 || broken.every((l) => name.includes(l));
    if (broken.length <= Math.min(lines, most) && wholeWords && (lines > 1 || broken.length === 1))
      return { size, lines: broken, lineHeight: size * LINE };
  }
  const size = LEAST_NAME;
  const kept = brokenLines(name, width, size * breadth).slice(0, most);
  kept[most - 1] = `${kept[most - 1]!.replace(/\s*\S{0,2}$/u, '')}…`;
  return { size, lines: kept, lineHeight: size * LINE };
}

/** How far the last line of a name stands below its first. */
export const heightBelow = ({ lines, lineHeight }: FittedName): number => (lines.length - 1) * lineHeight;

/** Text of no fixed length in lines of a width, words broken only where they alone are wider. */
export function brokenLines(typed: string, width: number, size: number): string[] {
  const lines: string[] = [];
  let current = '';
  const push = () => {
    if (current !== '') lines.push(current);
    current = '';
  };
  for (const word of printable(typed).split(/ +/)) {
    const joined = current === '' ? word : `${current} ${word}`;
    if (textWidth(joined, size) <= width) {
      current = joined;
      continue;
    }
    push();
    for (const grapheme of graphemes(word)) {
      if (current !== '' && textWidth(current + grapheme, size) > width) push();
      current += grapheme;
    }
  }
  push();
  return lines;
}
