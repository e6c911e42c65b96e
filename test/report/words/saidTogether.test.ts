import { describe, expect, it } from 'vitest';
import { andList } from '../../../src/report/words/andList.ts';
import { saidTogether } from '../../../src/report/words/saidTogether.ts';

describe('several things said together', () => {
  it.each<[string, string[], string]>([
    ['words', ['resistance', 'wall thickness'], 'Missing: resistance; wall thickness.'],
    ['one word', ['resistance'], 'Missing: resistance.'],
    ['sentences', ['No ohms were read.', 'No wall was read.'], 'No ohms were read. No wall was read.'],
    ['both', ['No ohms were read.', 'wall thickness'], 'Missing: No ohms were read; wall thickness.'],
    ['nothing', [], ''],
    ['blanks', [' ', ''], ''],
  ])('%s', (_, items, text) => {
    expect(saidTogether('Missing', items)).toBe(text);
  });

  it('words as the caller joins them', () => {
    expect(saidTogether('Assumed', ['scale', 'rule', 'meter'], andList)).toBe('Assumed: scale, rule and meter.');
  });
});
