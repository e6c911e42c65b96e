import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { displayWidth, pad, printable, truncate } from '../../../src/report/text/displayWidth.ts';
import { wrap } from '../../../src/report/text/wrap.ts';

describe('columns of a terminal', () => {
  it.each([
    ['', 0],
    ['plain', 5],
    ['mm² ± Ω', 7],
    ['e\u0301', 1],
    ['電池', 4],
    ['Ａ', 2],
    ['한글', 4],
    ['🔌', 2],
    ['👩‍🔧', 2],
    ['👍🏽', 2],
    ['🇬🇧', 2],
    ['1️⃣', 2],
    ['סליל', 4],
    ['a\u200bb', 2],
    ['━╋│', 3],
    ['⚡️', 2],
  ])('%j takes %d', (text, width) => {
    expect(displayWidth(text)).toBe(width);
  });

  it.each([
    ['a\tb\nc', 'a b c'],
    ['a\u001b[31mb', 'a\uFFFD[31mb'],
    ['a\u202Eb', 'ab'],
    ['\ud800', '\uFFFD'],
  ])('%j is printed %j', (text, printed) => {
    expect(printable(text)).toBe(printed);
  });

  it.each([
    ['Brackenfell', 20, 'Brackenfell'],
    ['Brackenfell', 6, 'Brack…'],
    ['電池電池', 6, '電池…'],
    ['👩‍🔧👩‍🔧👩‍🔧', 4, '👩‍🔧…'],
    ['ab cd', 4, 'ab…'],
    ['abc', 0, ''],
  ])('%j cut to %d is %j', (text, width, cut) => {
    expect(truncate(text, width)).toBe(cut);
  });

  it('pads to the width exactly, whatever the letters', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 30 }), fc.integer({ min: 1, max: 20 }), (text, width) => {
        const clean = printable(text);
        expect(displayWidth(pad(clean, width))).toBe(width);
        expect(displayWidth(pad(clean, width, 'right'))).toBe(width);
      }),
      { seed: 7 },
    );
  });
});

describe('lines of a terminal', () => {
  it('break at spaces, and inside a word only where it is longer than a line', () => {
    expect(wrap('one two three', 8)).toEqual(['one two', 'three']);
    expect(wrap('abcdefghij k', 4)).toEqual(['abcd', 'efgh', 'ij k']);
    expect(wrap('', 10)).toEqual(['']);
    expect(() => wrap('a', 1)).toThrow(RangeError);
  });

  it('do not part a figure from its ± and its unit', () => {
    expect(wrap('at 33.1 ± 0.4 mm² now', 12)).toEqual(['at', '33.1 ± 0.4 m', 'm² now']);
    expect(wrap('it is 33.1 ± 0.4 mm² now', 17)).toEqual(['it is', '33.1 ± 0.4 mm²', 'now']);
    expect(wrap('up to 2.5 %; then', 10)).toEqual(['up to', '2.5 %;', 'then']);
    expect(wrap('becomes ± 0.29 mm²', 14)).toEqual(['becomes', '± 0.29 mm²']);
  });

  it('lose no letter and hold their width', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), fc.integer({ min: 2, max: 40 }), (text, width) => {
        const clean = printable(text);
        const lines = wrap(clean, width);
        for (const line of lines) expect(displayWidth(line)).toBeLessThanOrEqual(width);
        expect(lines.join('').replaceAll(' ', '')).toBe(clean.replaceAll(' ', ''));
      }),
      { seed: 8 },
    );
  });
});
