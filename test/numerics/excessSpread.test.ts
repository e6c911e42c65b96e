import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { excessSpread, excessVariance, likelyExcess, scatterWith } from '../../src/numerics/excessSpread.ts';
import { expectClose } from '../tolerance.ts';

describe('excess spread', () => {
  it('of two values is half their squared difference, less their variance', () => {
    expectClose(excessSpread([0, 0.02], [1e-4, 1e-4], 0.95).variance, 1e-4, { relative: 1e-10 });
  });

  it('is nothing where the known variances explain the scatter', () => {
    const found = excessSpread([0, 0.004, 0.001], [1e-4, 1e-4, 2e-4], 0.95);
    expect(found.variance).toBe(0);
    expect(found.interval[0]).toBe(0);
    expectClose(found.interval[1], 6.74077296822681e-5, { relative: 1e-8, because: 'SciPy 1.17.1, brentq' });
  });

  it.each([
    ['one value', [1], [1]],
    ['a variance of nothing', [1, 2], [0, 1]],
    ['fewer variances than values', [1, 2], [1]],
    ['a variance that is no number', [1, 2], [1, Number.NaN]],
  ])('refuses %s', (_, values, variances) => {
    expect(() => excessVariance(values, variances, 1)).toThrow(RangeError);
  });

  const spreads = fc.array(
    fc.record({ y: fc.double({ min: -1, max: 1, noNaN: true }), v: fc.double({ min: 1e-6, max: 1e-2, noNaN: true }) }),
    { minLength: 2, maxLength: 8 },
  );

  it('brings the scatter down to what was wanted, and lies within its interval', () => {
    fc.assert(
      fc.property(spreads, (all) => {
        const [values, variances] = [all.map(({ y }) => y), all.map(({ v }) => v)];
        const { variance, interval, dof } = excessSpread(values, variances, 0.95);
        if (variance > 0) expectClose(scatterWith(values, variances, variance).scatter, dof, { relative: 1e-6 });
        expect(interval[0]).toBeLessThanOrEqual(interval[1]);
      }),
      { seed: 7, numRuns: 100 },
    );
  });

  it('likely values rise, and their middle is between the ends of a wide interval', () => {
    fc.assert(
      fc.property(spreads, (all) => {
        const [values, variances] = [all.map(({ y }) => y), all.map(({ v }) => v)];
        const likely = likelyExcess(values, variances, 20);
        expect([...likely].sort((a, b) => a - b)).toEqual(likely);
        const [low, high] = excessSpread(values, variances, 0.99).interval;
        expect(likely[10]).toBeGreaterThanOrEqual(low);
        expect(likely[10]).toBeLessThanOrEqual(high);
      }),
      { seed: 8, numRuns: 60 },
    );
  });
});
