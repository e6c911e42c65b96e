import { describe, expect, it } from 'vitest';
import { analyseEndurance } from '../../../src/methods/jacket/endurance/compareCables.ts';
import { shownMedian } from '../../../src/methods/jacket/endurance/lasting.ts';
import { analysePassing } from '../../../src/methods/jacket/endurance/passing.ts';
import { MOST_PIECES, piecesToPart, powerOfPieces } from '../../../src/methods/jacket/endurance/planPieces.ts';
import { failedAt, type Lifetime, survivedTo } from '../../../src/numerics/survival/lifetime.ts';
import { expectClose } from '../../tolerance.ts';

const O = { level: 0.95, seed: '00112233445566778899aabbccddeeff' };
const failed = (...at: number[]): Lifetime[] => at.map(failedAt);

describe('cables against each other', () => {
  it('parts what is far apart and not what is near, the longest lasting in band 1', () => {
    const found = analyseEndurance([failed(60, 75, 100), failed(600, 700, 800), failed(70, 90, 100)], O);
    expect(found.band).toEqual([2, 1, 2]);
    expect(found.order[0]).toBe(1);
    expect(found.pairs.map((p) => p.parted)).toEqual([true, false, true]);
  });

  it('the ratio does not depend on the unit, nor on which comes first', () => {
    const one = analyseEndurance([failed(60, 75, 100), failed(120, 150, 260)], O);
    const scaled = analyseEndurance([failed(600, 750, 1000), failed(1200, 1500, 2600)], O);
    const turned = analyseEndurance([failed(120, 150, 260), failed(60, 75, 100)], O);
    expectClose(scaled.pairs[0].ratio!, one.pairs[0].ratio!, { relative: 1e-8 });
    expectClose(turned.pairs[0].ratio!, 1 / one.pairs[0].ratio!, { relative: 1e-8 });
    expectClose(turned.pairs[0].p!, one.pairs[0].p!, { relative: 1e-8 });
    expectClose(turned.pairs[0].interval[0]!, 1 / one.pairs[0].interval[1]!, { relative: 1e-6 });
  });

  it('survivors count: a cable that only survived lasts longer than one that failed early, with a lower end alone', () => {
    const found = analyseEndurance([[survivedTo(500), survivedTo(500), survivedTo(500)], failed(40, 50, 60)], O);
    const [pair] = found.pairs;
    expect(pair).toMatchObject({ ratio: null, parted: true });
    expect(pair.interval[0]).toBeGreaterThan(1);
    expect(pair.interval[1]).toBeNull();
    const [survivors] = found.cables;
    expect(survivors.weibull).toBeNull();
    expect(survivors.curve).toEqual([]);
    expect(shownMedian(survivors)).toMatchObject({ value: null, how: 'common shape' });
    expect(shownMedian(survivors).interval[0]).toBeGreaterThan(100);
  });

  it('throwing survivors away would say something else', () => {
    const kept = analyseEndurance([[...failed(210, 260), survivedTo(400)], failed(90, 120, 150)], O);
    const dropped = analyseEndurance([failed(210, 260), failed(90, 120, 150)], O);
    expect(kept.pairs[0].ratio!).toBeGreaterThan(dropped.pairs[0].ratio! * 1.1);
  });

  it('nothing failed at all: no curve, no test, one band', () => {
    const found = analyseEndurance([[survivedTo(5)], [survivedTo(9)]], O);
    expect(found).toMatchObject({ commonShape: null, logRank: null, permutation: null, equalShapes: null });
    expect(found.pairs[0]).toMatchObject({ p: null, exact: null, parted: false });
    expect(found.band).toEqual([1, 1]);
  });

  it('every piece failed at one and the same amount: no shape, and no infinite one', () => {
    const found = analyseEndurance([failed(100, 100, 100), failed(100, 100, 100)], O);
    expect(found.commonShape).toBeNull();
    expect(found.cables[0].weibull).toBeNull();
    expect(shownMedian(found.cables[0])).toMatchObject({ how: 'curve', value: 100 });
  });

  it('n = 3 without survivors: the exact test cannot come below 0.1, and says so', () => {
    const found = analyseEndurance([failed(1, 2, 3), failed(100, 200, 300)], O);
    expectClose(found.pairs[0].exact!.p, 0.1, { relative: 1e-12 });
    expectClose(found.pairs[0].exact!.smallest, 0.1, { relative: 1e-12 });
  });
});

describe('passed or not', () => {
  it('3 of 3 against 0 of 3 is not parted; 8 of 8 against 0 of 8 is', () => {
    const few = analysePassing(
      [
        { n: 3, passed: 3 },
        { n: 3, passed: 0 },
      ],
      0.95,
    );
    expectClose(few.pairs[0].p, 0.1, { relative: 1e-12 });
    expect(few.pairs[0].parted).toBe(false);
    const many = analysePassing(
      [
        { n: 8, passed: 0 },
        { n: 8, passed: 8 },
      ],
      0.95,
    );
    expect(many.pairs[0].parted).toBe(true);
    expect(many.band).toEqual([2, 1]);
  });
});

describe('planning more pieces', () => {
  const plan = { shape: 2.5, level: 0.95, power: 0.8, pairs: 1 };
  it('three-fold at shape 2.5 takes about four pieces, a half more needs many, nothing needs none', () => {
    const three = piecesToPart({ ...plan, ratio: 3 })!;
    expect(three).toBeGreaterThanOrEqual(3);
    expect(three).toBeLessThanOrEqual(5);
    const half = piecesToPart({ ...plan, ratio: 1.5 })!;
    expect(half).toBeGreaterThan(10);
    expect(half).toBeLessThanOrEqual(MOST_PIECES);
    expect(piecesToPart({ ...plan, ratio: 1.05 })).toBeNull();
    expect(piecesToPart({ ...plan, ratio: 1 })).toBeNull();
  });

  it('more pairs, more pieces; what is planned has the power by other draws too', () => {
    const one = piecesToPart({ ...plan, ratio: 2 })!;
    expect(piecesToPart({ ...plan, ratio: 2, pairs: 6 })!).toBeGreaterThan(one);
    expect(powerOfPieces(one, { ...plan, ratio: 2 }, 1500, 'fedcba9876543210')).toBeGreaterThan(0.74);
    expect(powerOfPieces(one - 2, { ...plan, ratio: 2 }, 1500, 'fedcba9876543210')).toBeLessThan(0.8);
  });
});
