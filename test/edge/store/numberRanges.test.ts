import { describe, expect, it } from 'vitest';
import { numberRanges } from '../../../src/edge/store/numberRanges.ts';

describe('numbers in words', () => {
  it.each<[number[], string]>([
    [[], ''],
    [[7], '7'],
    [[7, 8], '7 and 8'],
    [[7, 8, 9], '7 to 9'],
    [[1, 3, 4, 5, 9], '1, 3 to 5 and 9'],
    [[1, 2, 5, 6], '1, 2, 5 and 6'],
    [Array.from({ length: 20 }, (_, n) => 2 * n), '0, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22 and 8 more'],
  ])('%j: %s', (numbers, words) => {
    expect(numberRanges(numbers)).toBe(words);
  });
});
