import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cannotBeToldFrom, cleanCutBands } from '../../../src/methods/flex/pairs/bands.ts';
import { bestSet, chancesOfPairs, drawAbilities, placeChances } from '../../../src/methods/flex/pairs/chances.ts';
import { connectedGroups } from '../../../src/methods/flex/pairs/connection.ts';
import type { JudgedPair } from '../../../src/methods/flex/pairs/judgement.ts';
import { judgesApart } from '../../../src/methods/flex/pairs/judgesApart.ts';
import { pairSchedule } from '../../../src/methods/flex/pairs/schedule.ts';
import { fitPairs, type PairsModel, WEAK_PRIOR } from '../../../src/methods/flex/pairs/tiedPreference.ts';
import { expectClose } from '../../tolerance.ts';

const MODEL: PairsModel = { prior: WEAK_PRIOR, side: true, ties: 'always' };
const SEED = '00112233445566778899aabbccddeeff';
const times = (n: number, left: number, right: number, result: JudgedPair['result'], judge = 0): JudgedPair[] =>
  Array.from({ length: n }, () => ({ left, right, result, judge }));
const mirrored = (p: JudgedPair): JudgedPair => ({
  ...p,
  left: p.right,
  right: p.left,
  result: p.result === 'left' ? 'right' : p.result === 'right' ? 'left' : 'same',
});

const anyPairs = fc.array(
  fc
    .record({
      left: fc.nat(4),
      step: fc.integer({ min: 1, max: 4 }),
      result: fc.constantFrom('left' as const, 'right' as const, 'same' as const),
      judge: fc.nat(2),
    })
    .map(({ left, step, result, judge }) => ({ left, right: (left + step) % 5, result, judge })),
  { minLength: 1, maxLength: 60 },
);

describe('abilities', () => {
  it('changing hands turns the side effect round and leaves the rest', () => {
    fc.assert(
      fc.property(anyPairs, (pairs) => {
        const a = fitPairs(pairs, 5, MODEL);
        const b = fitPairs(pairs.map(mirrored), 5, MODEL);
        a.abilities.forEach((x, i) => {
          expectClose(b.abilities[i], x, { absolute: 1e-8 });
        });
        expectClose(b.side!.value, -a.side!.value, { absolute: 1e-8 });
        expectClose(b.tie, a.tie, { relative: 1e-8 });
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });

  it('are finite whatever was judged, and the prior holds their sum at 0', () => {
    fc.assert(
      fc.property(anyPairs, (pairs) => {
        const fit = fitPairs(pairs, 5, MODEL);
        expect(fit.abilities.every(Number.isFinite)).toBe(true);
        expectClose(
          fit.abilities.reduce((s, a) => s + a, 0),
          0,
          { absolute: 1e-8, because: 'all pairs only see differences' },
        );
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it('refuse a thing beside itself and one that is not there', () => {
    expect(() => fitPairs(times(1, 1, 1, 'left'), 3, MODEL)).toThrow(/itself/);
    expect(() => fitPairs(times(1, 0, 3, 'left'), 3, MODEL)).toThrow(RangeError);
  });
});

describe('chances', () => {
  const known = {
    abilities: Float64Array.of(1, 0, -0.5),
    covariance: Float64Array.of(0.2, 0.05, 0, 0.05, 0.3, 0, 0, 0, 0.25),
  };
  it('of one over another, closed form and by draws', () => {
    const chances = chancesOfPairs(known);
    const rows = drawAbilities(known, 40_000, SEED);
    for (const [i, j] of [
      [0, 1],
      [0, 2],
      [1, 2],
    ]) {
      let over = 0;
      for (let d = 0; d < 40_000; d++) if (rows[d * 3 + i] > rows[d * 3 + j]) over++;
      expectClose(over / 40_000, chances[i * 3 + j], { absolute: 0.01, because: 'four standard errors' });
      expectClose(chances[i * 3 + j] + chances[j * 3 + i], 1, { relative: 1e-12 });
    }
    const places = placeChances(rows, 3);
    for (let i = 0; i < 3; i++) {
      expectClose(places[i * 3] + places[i * 3 + 1] + places[i * 3 + 2], 1, { relative: 1e-9 });
      expectClose(places[i] + places[3 + i] + places[6 + i], 1, { relative: 1e-9 });
    }
  });

  it('the best set is the smallest that reaches the level', () => {
    expect(bestSet([0.1, 0.6, 0.3], 0.95)).toEqual([1, 2, 0]);
    expect(bestSet([0.02, 0.67, 0.31], 0.95)).toEqual([1, 2]);
    expect(bestSet([0.96, 0.03, 0.01], 0.95)).toEqual([0]);
  });
});

describe('bands by clean cuts', () => {
  const matrix = (rows: readonly (readonly number[])[]) => Float64Array.from(rows.flat());
  it('a chain A~B, B~C with A over C is one band, and the list shows what is parted', () => {
    const chances = matrix([
      [0.5, 0.8, 0.99],
      [0.2, 0.5, 0.8],
      [0.01, 0.2, 0.5],
    ]);
    expect(cleanCutBands([2, 1, 0], chances).band).toEqual([1, 1, 1]);
    expect(cannotBeToldFrom(chances, 3)).toEqual([[1], [0, 2], [1]]);
  });
  it('cut where everything above beats everything below', () => {
    const chances = matrix([
      [0.5, 0.7, 0.95],
      [0.3, 0.5, 0.93],
      [0.05, 0.07, 0.5],
    ]);
    expect(cleanCutBands([2, 1, 0], chances)).toEqual({ order: [0, 1, 2], band: [1, 1, 2] });
    expect(cleanCutBands([2, 1, 0], chances, 0.94).band).toEqual([1, 1, 1]);
  });
});

describe('schedules', () => {
  it.each([2, 3, 4, 5, 6, 7, 8, 12])('%i things: every pair once, sides even', (n) => {
    const pairs = pairSchedule(n, { seed: SEED });
    expect(pairs).toHaveLength((n * (n - 1)) / 2);
    expect(new Set(pairs.map((p) => [p.left, p.right].sort((a, b) => a - b).join())).size).toBe(pairs.length);
    for (let i = 0; i < n; i++) {
      const [left, right] = [pairs.filter((p) => p.left === i).length, pairs.filter((p) => p.right === i).length];
      expect(Math.abs(left - right), `${i} left ${left}, right ${right}`).toBeLessThanOrEqual(1);
    }
  });

  it('the next round changes the sides; another seed the order', () => {
    const key = (p: { left: number; right: number }) => `${p.left} ${p.right}`;
    const one = pairSchedule(6, { seed: SEED }).map(key).sort();
    const two = pairSchedule(6, { seed: SEED, round: 1 })
      .map((p) => `${p.right} ${p.left}`)
      .sort();
    expect(two).toEqual(one);
    expect(pairSchedule(6, { seed: SEED.replace('00', '01') })).not.toEqual(pairSchedule(6, { seed: SEED }));
    expect(pairSchedule(6, { seed: SEED })).toEqual(pairSchedule(6, { seed: SEED }));
  });

  it('an incomplete one is joined and even; too few pairs are refused', () => {
    const pairs = pairSchedule(8, { seed: SEED, pairs: 16 });
    expect(pairs).toHaveLength(16);
    const met = Array.from({ length: 8 }, (_, i) => pairs.filter((p) => p.left === i || p.right === i).length);
    expect(Math.max(...met) - Math.min(...met)).toBeLessThanOrEqual(1);
    expect(
      connectedGroups(
        pairs.map((p) => ({ ...p, result: 'left', judge: 0 })),
        8,
      ),
    ).toHaveLength(1);
    expect(() => pairSchedule(8, { seed: SEED, pairs: 6 })).toThrow(/join/);
  });

  it('seldom hands the same piece twice in a row', () => {
    const pairs = pairSchedule(8, { seed: SEED });
    const again = pairs.filter(
      (p, i) => i > 0 && [p.left, p.right].some((x) => [pairs[i - 1].left, pairs[i - 1].right].includes(x)),
    );
    expect(again.length).toBeLessThanOrEqual(2);
  });
});

describe('judges', () => {
  const orderBy = (judge: number, order: readonly number[]) =>
    order.flatMap((a, i) =>
      order.slice(i + 1).flatMap((b) => [...times(3, a, b, 'left', judge), ...times(3, b, a, 'right', judge)]),
    );
  it('of one mind are not widened; of opposite minds they are', () => {
    const like = [...orderBy(0, [0, 1, 2, 3]), ...orderBy(1, [0, 1, 2, 3])];
    const opposite = [...orderBy(0, [0, 1, 2, 3]), ...orderBy(1, [3, 2, 1, 0])];
    expect(judgesApart(like, fitPairs(like, 4, MODEL))!.overdispersion).toBe(1);
    const apart = judgesApart(opposite, fitPairs(opposite, 4, MODEL))!;
    expect(apart.p).toBeLessThan(0.01);
    expect(apart.dof).toBe(3);
    expect(judgesApart(orderBy(0, [0, 1, 2]), fitPairs(orderBy(0, [0, 1, 2]), 3, MODEL))).toBeNull();
  });
});
