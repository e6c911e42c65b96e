import { describe, expect, it } from 'vitest';
import { andList } from '../../../src/report/words/andList.ts';
import { chanceText, chanceWords } from '../../../src/report/words/chanceWords.ts';
import { numberWord, numberWordFirst, partOf } from '../../../src/units/numberWords.ts';

describe('words', () => {
  it.each([
    [[], ''],
    [['a'], 'a'],
    [['a', 'b'], 'a and b'],
    [['a', 'b', 'c'], 'a, b and c'],
  ])('lists %j', (items, text) => {
    expect(andList(items)).toBe(text);
  });

  it.each([
    [0, 'none'],
    [2, 'two'],
    [12, 'twelve'],
    [13, '13'],
    [5400, '5400'],
    [12_000, '12\u202f000'],
  ])('counts %d', (n, word) => {
    expect(numberWord(n)).toBe(word);
  });

  it('begins a sentence, and says parts of a whole', () => {
    expect(numberWordFirst(2)).toBe('Two');
    expect(partOf(2, 6)).toBe('two of the six');
    expect(partOf(6, 6)).toBe('all six');
    expect(partOf(2, 2)).toBe('both');
    expect(partOf(0, 6)).toBe('none of the six');
  });

  it.each([-1, 1.5, Number.NaN])('refuses %d as a count', (n) => {
    expect(() => numberWord(n)).toThrow(RangeError);
  });

  it.each([
    [1, 'almost certainly', 'over 99 %'],
    [0.975, 'very likely', '98 %'],
    [0.75, 'likely', '75 %'],
    [0.5, 'as likely as not', '50 %'],
    [0.31, 'rather less likely than not', '31 %'],
    [0.025, 'very unlikely', '3 %'],
    [0, 'almost certainly not', 'under 1 %'],
  ])('says a chance of %d', (p, words, text) => {
    expect(chanceWords(p)).toBe(words);
    expect(chanceText(p)).toBe(text);
  });

  it.each([-0.1, 1.1, Number.NaN])('refuses %d as a chance', (p) => {
    expect(() => chanceWords(p)).toThrow(RangeError);
    expect(() => chanceText(p)).toThrow(RangeError);
  });
});
