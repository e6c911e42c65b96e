import { describe, expect, it } from 'vitest';
import { equalTailedInterval, shortestInterval } from '../../src/numerics/coverage.ts';
import { adaptive, numericalTolerance } from '../../src/numerics/monteCarlo.ts';
import { SeededDraws } from '../../src/numerics/random.ts';
import { expectClose } from '../tolerance.ts';

describe('numerical tolerance', () => {
  it.each([
    // Source of the first three: JCGM 101:2008, 7.9.2, examples (0.35 mg; 0.032 g; 2 K).
    [0.00035, 2, 0.000005],
    [0.032, 2, 0.0005],
    [2, 1, 0.5],
    [996, 2, 50],
    [9.96, 2, 0.5],
    [0.0754, 2, 0.0005],
    [12, 2, 0.5],
    [0, 2, 0],
  ])('of u = %d to %i digits is %d', (u, digits, wanted) => {
    expect(numericalTolerance(u, digits)).toBe(wanted);
  });

  it('refuses nonsense', () => {
    expect(() => numericalTolerance(-1, 2)).toThrow(RangeError);
    expect(() => numericalTolerance(1, 0)).toThrow(RangeError);
    expect(() => numericalTolerance(Number.NaN, 2)).toThrow(RangeError);
  });
});

describe('coverage intervals of sorted draws', () => {
  const hundred = Float64Array.from({ length: 100 }, (_, i) => i + 1);

  it('by hand on 1 to 100', () => {
    // q = 90 of M = 100: r = 5, so from the 5th to the 95th.
    expect(equalTailedInterval(hundred, 0.9)).toEqual([5, 95]);
    expect(shortestInterval(hundred, 0.9)).toEqual([1, 91]);
  });

  it('the shortest lies where draws are densest', () => {
    const squares = hundred.map((i) => i * i);
    expect(shortestInterval(squares, 0.9)).toEqual([1, 91 * 91]);
    const mirrored = squares.map((x) => -x).reverse();
    expect(shortestInterval(mirrored, 0.9)).toEqual([-91 * 91, -1]);
  });

  it('refuses a level that the draws cannot show', () => {
    expect(() => equalTailedInterval(hundred, 0.999)).toThrow(/too few/);
    expect(() => shortestInterval(hundred, 1)).toThrow(RangeError);
    expect(() => equalTailedInterval(new Float64Array(0), 0.5)).toThrow(RangeError);
  });
});

describe('the adaptive procedure', () => {
  const origin = new SeededDraws('6164617074697665');
  const normalBlock = (mean: number, sd: number) => (block: number, size: number) =>
    origin
      .stream(block)
      .fillNormal(new Float64Array(size))
      .map((z) => mean + sd * z);

  it('settles on a normal result', () => {
    const found = adaptive(normalBlock(10, 0.32));
    expect(found.stable).toBe(true);
    expect(found.tolerance).toBe(0.005);
    expect(Math.max(...Object.values(found.spread))).toBeLessThanOrEqual(found.tolerance);
    expectClose(found.mean, 10, { absolute: 0.01 });
    expectClose(found.u, 0.32, { absolute: 0.01 });
    expectClose(found.interval[0], 10 - 1.959964 * 0.32, { absolute: 0.01 });
    expectClose(found.interval[1], 10 + 1.959964 * 0.32, { absolute: 0.01 });
    expect(found.sorted.length).toBe(found.draws);
    expect(found.sorted.every((x, i) => i === 0 || x >= found.sorted[i - 1])).toBe(true);
  });

  it('three digits take more draws than two, one fewer', () => {
    const draws = [1, 2, 3].map((significantDigits) => adaptive(normalBlock(0, 1), { significantDigits }).draws);
    expect(draws[0]).toBeLessThanOrEqual(draws[1]);
    expect(draws[2]).toBeGreaterThan(10 * draws[1]);
  });

  it('gives the same digits when run again', () => {
    const [a, b] = [1, 2].map(() => adaptive(normalBlock(3, 1), { significantDigits: 1 }));
    expect(a).toEqual(b);
  });

  it('says so when it stops unsettled', () => {
    const found = adaptive(normalBlock(0, 1), { significantDigits: 3, maximumDraws: 40_000 });
    expect(found.stable).toBe(false);
    expect(found.draws).toBe(40_000);
  });

  it('a heavy tail without a standard deviation never counts as settled by luck of one block', () => {
    const cauchy = (block: number, size: number) => {
      const draws = origin.stream(100 + block);
      return Float64Array.from({ length: size }, () => draws.studentT(1));
    };
    expect(adaptive(cauchy, { maximumDraws: 200_000 }).stable).toBe(false);
  });

  it('the size of a block follows the level', () => {
    expect(
      adaptive(normalBlock(0, 1), { level: 0.999, maximumDraws: 200_000, significantDigits: 1 }).blocks * 100_000,
    ).toBe(200_000);
    expect(() => adaptive(normalBlock(0, 1), { level: 0.99, blockSize: 5000 })).toThrow(/at least 10000/);
    expect(() => adaptive(normalBlock(0, 1), { level: 0 })).toThrow(RangeError);
    expect(() => adaptive(() => new Float64Array(3))).toThrow(/3 came/);
    expect(() => adaptive((_, size) => new Float64Array(size).fill(Number.NaN))).toThrow(/not a number/);
  });

  it('a constant result is settled at once', () => {
    const found = adaptive((_, size) => new Float64Array(size).fill(4));
    expect([found.stable, found.mean, found.u, found.blocks]).toEqual([true, 4, 0, 2]);
    expect(found.interval).toEqual([4, 4]);
  });
});
