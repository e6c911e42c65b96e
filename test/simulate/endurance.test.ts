/** Short runs of the simulated jackets; the full ones are in docs/figures-jacket.md. */
import { describe, expect, it } from 'vitest';
import { oneAnalysis, tellDifferences, tellMedians, tellShapes, tellShownMedians } from './endurance.ts';

const SHORT = { firstSeed: 90_000, runs: 1500 };

describe('medians of few pieces', () => {
  it.each([
    [3, 1.5, 0],
    [4, 2.5, 0.3],
    [5, 4, 0],
    [6, 2.5, 0.3],
  ])('%i pieces, shape %d, survivors %d: covered 92 to 98 times in 100', (pieces, shape, survivors) => {
    const told = tellMedians({ ...SHORT, pieces, shape, survivors });
    expect(told.answered).toBeGreaterThan(SHORT.runs / 2);
    expect(told.covered / told.answered).toBeGreaterThan(0.925);
    expect(told.covered / told.answered).toBeLessThan(0.98);
    expect(told.factor, 'an interval over everything would be right and useless').toBeLessThan(7);
  });

  it('what is shown first among four cables does too', () => {
    const told = tellShownMedians({ ...SHORT, runs: 300, pieces: 3, shape: 2.5, survivors: 0.3, cables: 4 });
    expect(told.answered).toBe(1200);
    expect(told.covered / told.answered).toBeGreaterThan(0.92);
  });
});

describe('differences', () => {
  it('equal jackets are said to differ at most 6 times in 100, in a family of four at most 7', () => {
    const o = { ...SHORT, pieces: 5, shape: 2.5 };
    const noise = 1.5 * Math.sqrt((0.06 * 0.94) / SHORT.runs);
    expect(tellDifferences({ ...o, scales: [1, 1] }).falsely / SHORT.runs).toBeLessThan(0.06 + noise);
    expect(tellDifferences({ ...o, scales: [1, 1, 1, 1] }).falsely / SHORT.runs).toBeLessThan(0.07);
  });

  it('three-fold is found at least 80 times in 100 with five pieces, among four cables too', () => {
    for (const scales of [
      [3, 1],
      [3, 1, 1, 1],
    ]) {
      const told = tellDifferences({ ...SHORT, runs: 600, pieces: 5, shape: 2.5, scales });
      expect(told.found / told.unequal).toBeGreaterThan(0.8);
    }
  });

  it('three pieces by the exact test alone part nothing', () => {
    const told = tellDifferences({ ...SHORT, runs: 50, pieces: 3, shape: 4, scales: [10, 1], by: 'exact' });
    expect(told.found).toBe(0);
  });
});

it('unequal shapes are warned of more often than equal ones', () => {
  const o = { ...SHORT, runs: 800, pieces: 6 };
  const equal = tellShapes({ ...o, shapes: [2, 2] }).warned / o.runs;
  expect(equal).toBeLessThan(0.08);
  expect(tellShapes({ ...o, shapes: [1.5, 4] }).warned / o.runs).toBeGreaterThan(3 * equal);
});

it('six cables of three pieces are worked out within a breath', () => {
  const started = performance.now();
  for (let i = 0; i < 5; i++)
    oneAnalysis({ firstSeed: i, runs: 1, pieces: 3, shape: 2.5, scales: [1, 1.5, 2, 1, 1, 1], survivors: 0.2 });
  expect((performance.now() - started) / 5).toBeLessThan(500);
});
