import { describe, expect, it } from 'vitest';
import { priceIn, priceTrouble } from '../../../src/edge/page/store/across/priceAsked.ts';

describe('a price that is asked for', () => {
  it.each<[string, number | null]>([
    ['12.50', 12.5],
    [' 12,50 ', 12.5],
    ['0', 0],
    ['', null],
    ['abc', Number.NaN],
    ['-4', Number.NaN],
    ['1e999', Number.NaN],
  ])('%j is %s', (text, price) => {
    expect(priceIn(text)).toBe(price);
  });

  it.each<['least' | 'most', string, string, string | null]>([
    ['least', 'abc', '', 'Found “abc”; expected a price, such as 12.50.'],
    ['most', '', '-4', 'Found “-4”; expected a price, such as 12.50.'],
    ['most', '20', '5', 'Found “5”, which is below “20”; expected the higher price here.'],
    ['least', '20', '5', null],
    ['most', '5', '20', null],
    ['most', 'abc', '5', null],
  ])('%s of %j to %j: %s', (field, least, most, trouble) => {
    expect(priceTrouble(field, { least, most })).toBe(trouble);
  });
});
