import { displayWidth, graphemes } from './displayWidth.ts';

/** What may not begin or end a line: a figure keeps its ± and its unit. */
const BOUND = [
  [/(\d) (±|\+\/-) /g, '$1\u00A0$2\u00A0'],
  [/(^| )(±|\+\/-) (?=\d)/g, '$1$2\u00A0'],
  [/(\d) (?=(%|mm²?|mm2|Ω\S*|mΩ\S*|°C|AWG|kcmil|g)(?![\p{L}]))/gu, '$1\u00A0'],
] as const;

/** The text in lines of at most `width` columns, broken at spaces; a word longer than a line is broken inside. At least one line. */
export function wrap(text: string, width: number): string[] {
  if (width < 2) throw new RangeError(`Lines need at least two columns, and got ${width}.`);
  const lines: string[] = [];
  const bound = BOUND.reduce((rest, [found, kept]) => rest.replace(found, kept), text);
  let current = '';
  for (const word of bound.split(' ').filter((part) => part !== '')) {
    for (const piece of pieces(word, width)) {
      if (current !== '' && displayWidth(current) + 1 + displayWidth(piece) <= width) current += ` ${piece}`;
      else {
        if (current !== '') lines.push(current);
        current = piece;
      }
    }
  }
  return [...lines, current].map((line) => line.replaceAll('\u00A0', ' ').trim());
}

/** A word cut so that each piece fits a line. */
function pieces(word: string, width: number): string[] {
  if (displayWidth(word) <= width) return [word];
  const list: string[] = [];
  let current = '';
  for (const grapheme of graphemes(word)) {
    if (displayWidth(current + grapheme) > width && current !== '') {
      list.push(current);
      current = '';
    }
    current += grapheme;
  }
  return current === '' ? list : [...list, current];
}
