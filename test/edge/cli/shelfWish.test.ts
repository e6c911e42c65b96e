import { describe, expect, it } from 'vitest';
import { priceOf, shelfWish } from '../../../src/edge/cli/shelfWish.ts';

describe('what cupel shelf is asked for', () => {
  it.each([
    ['copper', 'copper'],
    [' Copper ', 'copper'],
    ['CCA', 'copper-clad aluminium'],
    ['not settled', 'not settled'],
    ['', ''],
  ])('--metal "%s" is %j', async (metal, meant) => {
    expect(await shelfWish({ find: '', metal })).toMatchObject({ metal: meant });
  });

  it.each(['gold', 'coppe', '🙂'])('--metal "%s" is refused by its name', async (metal) => {
    await expect(shelfWish({ find: '', metal })).rejects.toThrow(`--metal was "${metal}"; expected one of copper, `);
  });

  it.each(['-3', '', 'cheap', 'Infinity', 'NaN'])('--least "%s" is refused', (text) => {
    expect(() => priceOf('--least')(text)).toThrow(`--least was "${text}"; expected a price a metre`);
  });

  it('refuses a least price above the most, and takes equal ones', async () => {
    await expect(shelfWish({ find: '', metal: '', least: 20, most: 5 })).rejects.toThrow(
      'expected the lower price first',
    );
    expect(await shelfWish({ find: 'x', metal: '', least: 5, most: 5 })).toMatchObject({
      words: 'x',
      least: 5,
      most: 5,
    });
    expect(priceOf('--most')('0')).toBe(0);
  });
});
