import { describe, expect, it } from 'vitest';
import { robustZ } from '../../src/numerics/describe.ts';
import { criticalRobustZ, grubbsCritical, grubbsStatistic, outlying } from '../../src/numerics/outlying.ts';
import { SeededDraws } from '../../src/numerics/random.ts';
import { expectClose } from '../tolerance.ts';

describe('outlying', () => {
  it.each([
    { name: 'one of eight', values: [39.2, 39.3, 39.2, 39.25, 39.3, 39.2, 35.1, 39.28], flagged: [6] },
    {
      name: 'two of ten, one behind the other',
      values: [5, 5.1, 5.05, 5, 5.02, 5.08, 5.04, 5.06, 9, 40],
      flagged: [8, 9],
    },
    { name: 'none of six', values: [1, 2, 3, 4, 5, 6], flagged: [] },
    { name: 'one of five', values: [10, 10.1, 9.9, 10.05, 14], flagged: [4] },
    { name: 'two near and one not far off, of three', values: [10, 10.1, 10.6], flagged: [] },
    { name: 'a slipped decimal point among three', values: [39.27, 39.29, 392.8], flagged: [2] },
    { name: 'equal values', values: [4, 4, 4, 4, 4, 4, 4], flagged: [] },
    { name: 'two values', values: [1, 100], flagged: [] },
  ])('$name', ({ values, flagged }) => {
    const before = [...values];
    expect(outlying(values)).toEqual(flagged);
    expect(values, 'nothing is dropped').toEqual(before);
  });

  it('two equal readings do not condemn the third when the display cannot tell them apart', () => {
    expect(outlying([39.27, 39.27, 39.28])).toEqual([2]);
    expect(outlying([39.27, 39.27, 39.28], 0.05, 0.01 / Math.sqrt(12))).toEqual([]);
    expect(outlying([5, 5, 5, 5, 5, 5, 5.01], 0.05, 0.01)).toEqual([]);
  });

  it('refuses a level that is none', () => {
    for (const level of [0, 1, -0.1, Number.NaN]) expect(() => outlying([1, 2, 3, 4, 5, 6], level)).toThrow(RangeError);
    expect(() => outlying([1, 2, 3], 0.5)).toThrow(RangeError);
    expect(() => grubbsStatistic([1, 2])).toThrow(RangeError);
    expect(() => grubbsCritical(2, 0.05)).toThrow(RangeError);
    expect(() => criticalRobustZ(6, 0.05)).toThrow(RangeError);
  });

  it("Grubbs' statistic by hand", () => {
    // Mean 2, standard deviation 2 of 0 1 2 5 … : 0, 1, 2, 5 has mean 2, Σd² = 14.
    const { statistic, index } = grubbsStatistic([0, 1, 2, 5]);
    expect(index).toBe(3);
    expectClose(statistic, 3 / Math.sqrt(14 / 3), { relative: 1e-15 });
  });
});

describe('the promised level is kept for normal values', () => {
  // The whole routine is run; with Grubbs the first hit decides whether anything is flagged.
  it.each([
    [3, 0.05],
    [3, 0.01],
    [4, 0.05],
    [4, 0.01],
    [5, 0.1],
    [5, 0.05],
    [5, 0.03],
    [6, 0.05],
    [10, 0.05],
  ])('%i values, level %d', (size, level) => {
    // More samples where the level rests on a table of our own.
    const n = size < 6 ? 150_000 : 30_000;
    const draws = new SeededDraws(`6f75746c79696e${size.toString(16).padStart(2, '0')}`);
    let hits = 0;
    const sample = new Float64Array(size);
    for (let i = 0; i < n; i++) if (outlying(draws.fillNormal(sample), level).length > 0) hits++;
    expectClose(hits / n, level, {
      absolute: 4 * Math.sqrt((level * (1 - level)) / n),
      because: 'four standard errors',
    });
  });

  it('for three values the exact formula: the chance of a wide gap', () => {
    const n = 40_000;
    const draws = new SeededDraws('6f75746c79696eff');
    const critical = criticalRobustZ(3, 0.2);
    let hits = 0;
    for (let i = 0; i < n; i++) {
      const z = robustZ([draws.normal(), draws.normal(), draws.normal()]);
      if (Math.max(...z.map(Math.abs)) > critical) hits++;
    }
    expectClose(hits / n, 0.2, { absolute: 0.008 });
    // The common limit of 3.5 would flag a sound triple about every third time.
    expect(critical).toBeGreaterThan(5);
  });
});
