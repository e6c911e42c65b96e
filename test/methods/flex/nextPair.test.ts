import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type HandedPair, nextPair, roundOf } from '../../../src/methods/flex/pairs/nextPair.ts';

const SEED = '00112233445566778899aabbccddeeff';

/** So many pairs as one judge after the other takes them. */
function handedOver(count: number, judges: number, each: number): HandedPair[] {
  const handed: HandedPair[] = [];
  for (let n = 0; n < each; n++)
    for (let judge = 0; judge < judges; judge++)
      handed.push({ ...nextPair(count, handed, { judge, seed: SEED }), judge });
  return handed;
}

const named = ({ left, right }: HandedPair) => `${Math.min(left, right)} ${Math.max(left, right)}`;

describe('the next pair', () => {
  it('joins what hand-picked pairs have left apart, in any round', () => {
    const once = [
      { left: 0, right: 1, judge: 0 },
      { left: 2, right: 3, judge: 0 },
    ];
    for (const times of [2, 4, 7]) {
      const handed = Array.from({ length: times }, () => once).flat();
      const { left, right } = nextPair(4, handed, { judge: times % 2, seed: SEED });
      expect([left, right].filter((thing) => thing < 2)).toHaveLength(1);
    }
  });

  it.each([2, 3, 4, 6, 8])('comes once for every pair of %d in a round, then again with the sides changed', (count) => {
    const all = (count * (count - 1)) / 2;
    const handed = handedOver(count, 1, 2 * all);
    const [first, second] = [handed.slice(0, all), handed.slice(all)];
    expect(new Set(first.map(named)).size).toBe(all);
    expect(new Set(second.map(named)).size).toBe(all);
    for (const pair of second) expect(first.some((p) => p.left === pair.right && p.right === pair.left)).toBe(true);
    expect(roundOf(count, handed)).toBe(2);
  });

  it('gives every thing to the left hand as often as to the right, within one', () => {
    for (const count of [3, 5, 6, 8]) {
      const handed = handedOver(count, 1, (count * (count - 1)) / 2);
      for (let thing = 0; thing < count; thing++) {
        const lefts = handed.filter((p) => p.left === thing).length;
        const rights = handed.filter((p) => p.right === thing).length;
        expect(Math.abs(lefts - rights), `${thing} of ${count}: ${lefts} left, ${rights} right`).toBeLessThanOrEqual(2);
      }
    }
  });

  it('lets two judges who stop at 8 of 15 cover what the other left out', () => {
    const handed = handedOver(6, 2, 8);
    expect(new Set(handed.map(named)).size).toBe(15);
  });

  it('hands over nothing twice in a row with six things', () => {
    const handed = handedOver(6, 1, 30);
    const again = handed.slice(1).filter((p, i) => {
      const before = handed[i]!;
      return [p.left, p.right].some((thing) => thing === before.left || thing === before.right);
    });
    // At the end of a round there may be no other pair left.
    expect(again.length).toBeLessThanOrEqual(4);
  });

  it('is some pair of two different things whatever was judged before, and the same for the same', () => {
    const anything = fc.array(
      fc
        .record({ left: fc.nat(4), step: fc.integer({ min: 1, max: 4 }), judge: fc.nat(2) })
        .map(({ left, step, judge }): HandedPair => ({ left, right: (left + step) % 5, judge })),
      { maxLength: 40 },
    );
    fc.assert(
      fc.property(anything, fc.nat(3), (handed, judge) => {
        const pair = nextPair(5, handed, { judge, seed: SEED });
        expect(pair.left).not.toBe(pair.right);
        expect(Math.max(pair.left, pair.right)).toBeLessThan(5);
        expect(nextPair(5, handed, { judge, seed: SEED })).toEqual(pair);
        // Never one that this judge has had more often than another.
        const own = handed.filter((p) => p.judge === judge);
        expect(own.filter((p) => named(p) === named({ ...pair, judge })).length).toBe(roundOf(5, own));
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });
});
