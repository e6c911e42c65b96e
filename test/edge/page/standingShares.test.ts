import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { downOne, leftOut, levelWithAbove, rankOf, upOne } from '../../../src/edge/page/store/standing/ranks.ts';
import { movedShares, wholeShares } from '../../../src/edge/page/store/standing/shares.ts';
import { openSliders, slidersOf } from '../../../src/edge/page/store/standing/sliders.ts';
import { rankingText, readRanking, readWeights, weightsText } from '../../../src/findings/standing/settings.ts';

const shares = (text: Record<string, number>) => new Map(Object.entries(text));
const plain = (map: ReadonlyMap<string, number>) => Object.fromEntries(map);

describe('whole shares', () => {
  it.each([
    [
      [1, 1, 1],
      [34, 33, 33],
    ],
    [
      [0.25, 0.25, 0.25, 0.25],
      [25, 25, 25, 25],
    ],
    [
      [0, 2, 0],
      [0, 100, 0],
    ],
    [
      [0, 0],
      [0, 0],
    ],
  ])('%j come to %j', (weights, wanted) => {
    expect(wholeShares(weights)).toEqual(wanted);
  });

  it('always add up to a hundred and stay within one of the exact share', () => {
    const weights = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(weights, (list) => {
        const sum = list.reduce((a, b) => a + b, 0);
        fc.pre(sum > 1e-6);
        const whole = wholeShares(list);
        expect(whole.reduce((a, b) => a + b, 0)).toBe(100);
        for (const [at, share] of whole.entries()) expect(Math.abs(share - (100 * list[at]!) / sum)).toBeLessThan(1);
      }),
      { seed: 20261125 },
    );
  });
});

describe('a weight that moves', () => {
  const base = shares({ copper: 40, bend: 30, wall: 20, price: 10 });

  it('makes the others give way in proportion', () => {
    expect(plain(movedShares(base, ['copper'], 70))).toEqual({ copper: 70, bend: 15, wall: 10, price: 5 });
    expect(plain(movedShares(base, ['copper'], 100))).toEqual({ copper: 100, bend: 0, wall: 0, price: 0 });
  });

  it('goes there and back from one beginning without losing a proportion', () => {
    movedShares(base, ['copper'], 100);
    expect(plain(movedShares(base, ['copper'], 40))).toEqual(plain(base));
  });

  it('moves several together, evenly where they had nothing', () => {
    const tests = shares({ copper: 100, 'endurance:a': 0, 'endurance:b': 0 });
    expect(plain(movedShares(tests, ['endurance:a', 'endurance:b'], 30))).toEqual({
      copper: 70,
      'endurance:a': 15,
      'endurance:b': 15,
    });
  });

  it('gives what is left to the ones that stand open when all others have nothing', () => {
    const alone = shares({ copper: 100, bend: 0, wall: 0, price: 0 });
    expect(plain(movedShares(alone, ['copper'], 60, ['copper', 'bend', 'price']))).toEqual({
      copper: 60,
      bend: 20,
      wall: 0,
      price: 20,
    });
  });

  it('a lone criterion keeps everything', () => {
    expect(plain(movedShares(shares({ copper: 100 }), ['copper'], 20))).toEqual({ copper: 100 });
  });

  it('comes exactly to where it was moved, with a sum of a hundred', () => {
    const some = fc.tuple(fc.array(fc.nat(100), { minLength: 2, maxLength: 9 }), fc.nat(100), fc.nat(8));
    fc.assert(
      fc.property(some, ([list, to, which]) => {
        const ids = list.map((_, at) => `c${at}`);
        const moved = ids[which % ids.length]!;
        const now = movedShares(new Map(ids.map((id, at) => [id, list[at]!])), [moved], to);
        expect(now.get(moved)).toBe(to);
        expect([...now.values()].reduce((a, b) => a + b, 0)).toBe(100);
        for (const share of now.values()) expect(Number.isInteger(share) && share >= 0).toBe(true);
      }),
      { seed: 20261126 },
    );
  });
});

describe('what is kept', () => {
  it('is read back by the findings as it was meant', () => {
    const text = weightsText(shares({ copper: 40, 'endurance:hot iron': 35, wall: 0, price: 25 }));
    expect(text).toBe('copper 40, endurance:hot iron 35, price 25');
    expect(Object.fromEntries(readWeights(text)!)).toEqual({ copper: 40, 'endurance:hot iron': 35, price: 25 });
    const ranking = [['copper'], ['judged', 'wall'], ['price']];
    expect(readRanking(rankingText(ranking))).toEqual(ranking);
  });
});

describe('sliders', () => {
  const criteria = ['copper', 'wall', 'endurance:scrape', 'endurance:cut', 'price', 'mass'].map((id) => ({
    id,
    name: id,
  }));

  it('put the tests of endurance on one rule', () => {
    const now = slidersOf(criteria, shares({ copper: 50, 'endurance:scrape': 20, 'endurance:cut': 10, price: 20 }));
    expect(now.map(({ id, share }) => [id, share])).toEqual([
      ['copper', 50],
      ['wall', 0],
      ['endurance', 30],
      ['price', 20],
      ['mass', 0],
    ]);
  });

  it('stand open by weight: four, and a fifth only when it counts', () => {
    const four = slidersOf(criteria, shares({ price: 60, copper: 40 }));
    expect(openSliders(four)).toEqual(['price', 'copper', 'wall', 'endurance']);
    const five = slidersOf(criteria, shares({ price: 30, copper: 30, wall: 20, 'endurance:cut': 10, mass: 10 }));
    expect(openSliders(five)).toHaveLength(5);
  });
});

describe('an order of importance', () => {
  const ranks = [['a'], ['b', 'c'], ['d']];

  it('follows from shares, equal ones level and none left out', () => {
    expect(rankOf(shares({ a: 10, b: 40, c: 40, d: 0, e: 10 }))).toEqual([
      ['b', 'c'],
      ['a', 'e'],
    ]);
  });

  it.each([
    ['up, past a single one', upOne([['a'], ['b']], 'b'), [['b'], ['a']]],
    ['up, out of its group', upOne(ranks, 'c'), [['a'], ['c'], ['b'], ['d']]],
    ['down, out of its group', downOne(ranks, 'b'), [['a'], ['c'], ['b'], ['d']]],
    ['down, past a group', downOne(ranks, 'a'), [['b', 'c'], ['a'], ['d']]],
    ['level with the one above', levelWithAbove(ranks, 'd'), [['a'], ['b', 'c', 'd']]],
    ['the first has none above', levelWithAbove(ranks, 'a'), ranks],
    ['left out', leftOut(ranks, 'a'), [['b', 'c'], ['d']]],
  ])('%s', (_what, got, wanted) => {
    expect(got).toEqual(wanted);
  });
});
