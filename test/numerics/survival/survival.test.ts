import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binomialCdf, binomialInterval } from '../../../src/numerics/binomialInterval.ts';
import { holm } from '../../../src/numerics/holm.ts';
import { fitCommonShape, shapeIsHeld } from '../../../src/numerics/survival/commonShape.ts';
import { kaplanMeier } from '../../../src/numerics/survival/kaplanMeier.ts';
import { failedAt, failedBetween, type Lifetime, survivedTo } from '../../../src/numerics/survival/lifetime.ts';
import { logRank } from '../../../src/numerics/survival/logRank.ts';
import { logRankScores } from '../../../src/numerics/survival/logRankScores.ts';
import { permutationLogRank, waysToDeal } from '../../../src/numerics/survival/permutationLogRank.ts';
import { compareScales, fitWeibull, medianInterval, medianOf } from '../../../src/numerics/survival/weibull.ts';
import { twoShares } from '../../../src/numerics/twoShares.ts';
import { expectClose } from '../../tolerance.ts';

const SEED = 20261125;
const HEX = '00112233445566778899aabbccddeeff';

const life = fc.oneof(
  fc.integer({ min: 1, max: 500 }).map(failedAt),
  fc.integer({ min: 1, max: 500 }).map(survivedTo),
  fc.integer({ min: 1, max: 50 }).map((look) => failedBetween(10 * (look - 1), 10 * look)),
);
const lives = fc.array(life, { minLength: 3, maxLength: 8 });

describe('curves', () => {
  it('fall from step to step, within their bands, and reach 0 only when the last one fails', () => {
    fc.assert(
      fc.property(lives, (group) => {
        const steps = kaplanMeier(group);
        steps.forEach((s, i) => {
          expect(s.survival).toBeLessThan(i === 0 ? 1 : steps[i - 1].survival);
          if (s.interval) {
            expect(s.interval[0]).toBeLessThanOrEqual(s.survival);
            expect(s.interval[1]).toBeGreaterThanOrEqual(s.survival);
          } else expect(s.survival).toBe(0);
        });
      }),
      { seed: SEED, numRuns: 200 },
    );
  });
});

describe('log-rank', () => {
  it('scores sum to 0, and for two groups their sum is observed less expected', () => {
    fc.assert(
      fc.property(lives, lives, (a, b) => {
        const scores = logRankScores([...a, ...b]);
        expect(Math.abs(scores.reduce((x, y) => x + y, 0))).toBeLessThan(1e-9);
        const test = logRank([a, b]);
        if (!test) return;
        const sum = scores.slice(0, a.length).reduce((x, y) => x + y, 0);
        expectClose(sum, test.observed[0] - test.expected[0], { absolute: 1e-9, relative: 1e-9 });
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it('samples where there are too many ways to count; p never lies below the least that it could be', () => {
    const a = [3, 5, 9, 12, 15, 18, 22, 30].map(failedAt);
    const b = [6, 11, 14, 25, 33, 36, 40].map(failedAt);
    const counted = permutationLogRank([a, b], HEX)!;
    expect(counted).toMatchObject({ exact: true, ways: 6435 });
    const c = [...b, failedAt(44), failedAt(50), failedAt(60)];
    const sampled = permutationLogRank([a, c], HEX)!;
    expect(sampled.exact).toBe(false);
    expect(sampled.p).toBeGreaterThanOrEqual(sampled.smallest);
    expect(permutationLogRank([a, c], HEX), 'the same seed, the same digits').toEqual(sampled);
    // 1026 of all 43,758 splits, counted independently in Python; ±4 standard deviations of the sample.
    expectClose(sampled.p, 1026 / 43_758, { absolute: 4 * Math.sqrt(0.0234 / 100_000) });
  });

  it('ways to deal: 12!/(3!)⁴', () => {
    expect(waysToDeal([3, 3, 3, 3])).toBe(369_600);
    expect(permutationLogRank([[survivedTo(3)], [survivedTo(4)]], HEX)).toBeNull();
    expect(permutationLogRank([[failedAt(3)]], HEX)).toBeNull();
  });
});

describe('one Weibull shape', () => {
  const total = (fit: { ln: number } | null) => fit!.ln;
  it('is the maximum: no near shape or scale does better', () => {
    fc.assert(
      fc.property(lives, lives, (a, b) => {
        const groups = [a, b].map((group) => ({ lives: group }));
        const fit = fitCommonShape(groups);
        if (!fit) return;
        groups.forEach(({ lives: own }, g) => {
          if (!Number.isFinite(fit.a[g])) return;
          for (const off of [-1e-3, 1e-3]) {
            const held = groups.map((group, i) => (i === g ? { lives: own, heldAt: fit.a[g] + off } : group));
            expect(total(fitCommonShape(held))).toBeLessThanOrEqual(fit.ln + 1e-9);
          }
        });
      }),
      { seed: SEED, numRuns: 150 },
    );
  });

  it('settles wherever the data hold it, and says null elsewhere', () => {
    fc.assert(
      fc.property(lives, lives, (a, b) => {
        const fit = fitWeibull([a, b]);
        const held = shapeIsHeld([a, b]);
        expect(fit !== null, JSON.stringify([a, b])).toBe(held);
        if (fit) expect(fit.shape).toBeGreaterThan(0);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  it('is known to scale: all amounts times ten, all medians times ten', () => {
    const a: Lifetime[] = [failedAt(30), failedAt(44), survivedTo(60), failedBetween(40, 50)];
    const tenfold = a.map(({ from, until }) => ({ from: 10 * from, until: 10 * until }));
    const [one, ten] = [fitWeibull([a])!, fitWeibull([tenfold])!];
    expectClose(ten.shape, one.shape, { relative: 1e-9 });
    expectClose(medianOf(ten), 10 * medianOf(one), { relative: 1e-9 });
    const [low, high] = medianInterval([a], one, 0, 0.95);
    const [low10, high10] = medianInterval([tenfold], ten, 0, 0.95);
    expectClose(low10!, 10 * low!, { relative: 1e-6 });
    expectClose(high10!, 10 * high!, { relative: 1e-6 });
  });

  it('narrow looks come to the exact fit', () => {
    const exact = [120, 180, 240, 310].map(failedAt);
    const looked = exact.map(({ from }) => failedBetween(from - 5e-4, from + 5e-4));
    const [one, other] = [fitWeibull([exact])!, fitWeibull([looked])!];
    expectClose(other.shape, one.shape, { relative: 1e-5 });
    expectClose(medianOf(other), medianOf(one), { relative: 1e-5 });
  });

  it('equal groups differ by nothing', () => {
    const a = [120, 180, 240].map(failedAt);
    const test = compareScales([a, a], fitWeibull([a, a])!, 0, 1)!;
    expect(test.w).toBeLessThan(1e-9);
    expectClose(test.p, 1, { absolute: 1e-4, because: 'p falls from 1 like the root of w' });
  });
});

describe('exact shares', () => {
  it('the ends of an interval are where the tails have their chance', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.double({ min: 0, max: 1, noNaN: true }), (n, at) => {
        const count = Math.round(at * n);
        const [low, high] = binomialInterval(count, n, 0.95);
        if (count > 0) expectClose(1 - binomialCdf(count - 1, n, low), 0.025, { absolute: 1e-9 });
        if (count < n) expectClose(binomialCdf(count, n, high), 0.025, { absolute: 1e-9 });
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it('refuses what is no share; two equal shares have p 1', () => {
    expect(() => binomialInterval(4, 3, 0.95)).toThrow(RangeError);
    expect(() => binomialInterval(0, 0, 0.95)).toThrow(RangeError);
    expectClose(twoShares(2, 3, 2, 3).p, 1, { relative: 1e-12 });
    expectClose(twoShares(0, 3, 0, 3).smallest, 1, { relative: 1e-12 });
  });

  it('Holm never lowers a p and keeps their order', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 12 }), (p) => {
        const adjusted = holm(p);
        p.forEach((x, i) => {
          expect(adjusted[i]).toBeGreaterThanOrEqual(x);
          p.forEach((y, j) => {
            if (x < y) expect(adjusted[i]).toBeLessThanOrEqual(adjusted[j]);
          });
        });
      }),
      { seed: SEED, numRuns: 100 },
    );
  });
});
