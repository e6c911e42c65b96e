import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CutWish, cutList } from '../../../src/methods/decide/cutList.ts';
import { costOf, FOOT, lengthToBuy, pricePerMetre } from '../../../src/methods/decide/lengthToBuy.ts';
import { expectClose } from '../../tolerance.ts';

const WISH: CutWish = {
  bend: { count: 2, length: 0.4, why: 'droop' },
  apart: { count: 1, length: 0.3, why: 'weigh' },
  abuse: { count: 3, length: 0.2, why: 'jacket' },
  kept: 0.3,
  sawLoss: 0.002,
  leastWhole: 1.1,
};

describe('a cut list', () => {
  it('starts with the whole, cuts bent pieces before pieces to take apart, and keeps one back', () => {
    const kinds = cutList(WISH).pieces.map((p) => p.kind);
    expect(kinds).toEqual(['whole', 'bend', 'bend', 'apart', 'abuse', 'abuse', 'abuse', 'kept']);
  });

  it('cuts the piece to take apart from a bent one that holds it, and counts its length once', () => {
    const list = cutList(WISH);
    expect(list.pieces[3]).toMatchObject({ kind: 'apart', cutFrom: 1 });
    expectClose(list.used, 2 * 0.402 + 3 * 0.202 + 0.302, { relative: 1e-12 });
    expect(list.cuts).toBe(7);
  });

  it('cuts it from the whole when no bent piece is long enough', () => {
    const list = cutList({ ...WISH, apart: { count: 1, length: 0.399, why: '' } });
    expect(list.pieces[3]!.cutFrom).toBe(0);
    expectClose(list.used, 2 * 0.402 + 0.401 + 3 * 0.202 + 0.302, { relative: 1e-12 });
  });

  it('needs a length on which ohms are worth reading, however little is cut', () => {
    const nothing = { count: 0, length: 0, why: '' };
    const list = cutList({ ...WISH, bend: nothing, apart: nothing, abuse: nothing, kept: 0 });
    expect(list).toMatchObject({ used: 0, needed: 1.1, cuts: 0 });
  });

  it.each([
    ['half a piece', { bend: { count: 0.5, length: 1, why: '' } }],
    ['a piece of no length', { apart: { count: 1, length: 0, why: '' } }],
    ['a negative saw', { sawLoss: -1 }],
    ['an endless kept piece', { kept: Number.POSITIVE_INFINITY }],
  ])('refuses %s', (_what, wrong) => {
    expect(() => cutList({ ...WISH, ...wrong })).toThrow(RangeError);
  });

  const pieces = fc.record({
    count: fc.integer({ min: 0, max: 6 }),
    length: fc.double({ min: 0.01, max: 3, noNaN: true }),
    why: fc.constant(''),
  });
  const wishes = fc.record({
    bend: pieces,
    apart: pieces,
    abuse: pieces,
    kept: fc.double({ min: 0, max: 1, noNaN: true }),
    sawLoss: fc.double({ min: 0, max: 0.005, noNaN: true }),
    leastWhole: fc.double({ min: 0, max: 3, noNaN: true }),
  });

  it('always has every piece fit into what it is cut from, and the total hold all pieces', () => {
    fc.assert(
      fc.property(wishes, (wish) => {
        const list = cutList(wish);
        const fromWhole = list.pieces.filter((p) => p.cutFrom === 0).reduce((sum, p) => sum + p.length!, 0);
        expect(list.needed).toBeGreaterThanOrEqual(fromWhole);
        for (const [i, piece] of list.pieces.entries()) {
          if (piece.cutFrom === null) continue;
          expect(piece.cutFrom).toBeLessThan(i);
          const parent = list.pieces[piece.cutFrom]!;
          if (parent.length === null) continue;
          const children = list.pieces.filter((p) => p.cutFrom === piece.cutFrom);
          expect(children.reduce((sum, p) => sum + p.length! + wish.sawLoss, 0)).toBeLessThanOrEqual(parent.length);
        }
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });
});

describe('the length to buy', () => {
  const cases = [
    { needed: 1.5, step: FOOT, least: 0, length: 5 * FOOT },
    { needed: 5 * FOOT, step: FOOT, least: 0, length: 5 * FOOT },
    { needed: 1.5, step: 1, least: 0, length: 2 },
    { needed: 1.5, step: 0, least: 0, length: 1.5 },
    { needed: 1.5, step: FOOT, least: 3, length: 10 * FOOT },
    { needed: 0, step: 1, least: 0, length: 0 },
  ];
  it.each(cases)('$needed m in steps of $step, at least $least: $length', ({ needed, step, least, length }) => {
    const bought = lengthToBuy(needed, { step, least });
    expectClose(bought.length, length, { relative: 1e-12, absolute: 1e-12 });
    expectClose(bought.leftover, length - needed, { absolute: 1e-12 });
  });
});

describe('a price', () => {
  it('of a foot, a metre, a piece and a spool is one price per metre', () => {
    expectClose(pricePerMetre({ amount: 3.048, per: 'foot', length: null })!, 10, { relative: 1e-12 });
    expect(pricePerMetre({ amount: 10, per: 'metre', length: null })).toBe(10);
    expect(pricePerMetre({ amount: 30, per: 'piece', length: 3 })).toBe(10);
    expect(pricePerMetre({ amount: 300, per: 'spool', length: 30 })).toBe(10);
    expect(pricePerMetre({ amount: 300, per: 'spool', length: null })).toBeNull();
  });

  it('of a spool is paid for the whole spool', () => {
    expect(costOf({ amount: 300, per: 'spool', length: 30 }, 2)).toBe(300);
    expect(costOf({ amount: 300, per: 'spool', length: 30 }, 31)).toBe(600);
    expect(costOf({ amount: 10, per: 'metre', length: null }, 2)).toBe(20);
    expect(costOf({ amount: 10, per: 'piece', length: null }, 2)).toBeNull();
  });
});
