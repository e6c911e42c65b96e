import { describe, expect, it } from 'vitest';
import { betweenTrials, ratioInterval, widenedInterval } from '../../../src/methods/across/betweenTrials.ts';
import { SeededDraws } from '../../../src/numerics/random.ts';
import { expectClose } from '../../tolerance.ts';

const figures = (...all: readonly (readonly [ln: number, u: number])[]) =>
  all.map(([ln, u], i) => ({ trial: `t${i}`, ln, u }));

describe('the error between trials', () => {
  it('is not known from one trial', () => {
    expect(betweenTrials(figures([0, 0.01]), 0.95)).toBeNull();
  });

  it('is what the differences leave beyond the doubt of the readings', () => {
    const found = betweenTrials(figures([0, 0.01], [0.02, 0.01]), 0.95)!;
    expectClose(found.spread, 0.01, { relative: 1e-9 });
    expect(found.interval[0]).toBe(0);
    expectClose(found.interval[1], Math.sqrt(0.20355165394393415), { relative: 1e-8, because: 'SciPy 1.17.1, brentq' });
    expectClose(found.shifts.get('t1')!.ln, 0.01, { relative: 1e-9 });
    expectClose(found.shifts.get('t0')!.ln, -0.01, { relative: 1e-9 });
  });

  it('widens more, the fewer trials it is known from', () => {
    const half = (n: number) => {
      const spread = figures(...Array.from({ length: n }, (_, i) => [i % 2 ? 0.01 : -0.01, 0.002] as const));
      const [low, high] = widenedInterval(0, 0.004, betweenTrials(spread, 0.95)!.likely, 0.95);
      expectClose(low, -high, { relative: 1e-6 });
      return high;
    };
    expect(half(2)).toBeGreaterThan(3 * half(4));
    expect(half(4)).toBeGreaterThan(half(10));
    expect(half(10)).toBeGreaterThan(1.96 * Math.hypot(0.004, 0.01));
  });

  it('counts once between two cables of one trial: not at all', () => {
    const likely = betweenTrials(figures([0, 0.002], [0.02, 0.002], [-0.02, 0.002]), 0.95)!.likely;
    const [a, b] = [
      { trial: 'x', ln: 0.1, u: 0.003 },
      { trial: 'x', ln: 0, u: 0.004 },
    ];
    const same = ratioInterval(a, b, likely, 0.95);
    expectClose(same[1] - same[0], 2 * 1.959963984540054 * 0.005, { relative: 1e-9 });
    const other = ratioInterval(a, { ...b, trial: 'y' }, likely, 0.95);
    expect(other[1] - other[0]).toBeGreaterThan(2 * (same[1] - same[0]));
    expect(ratioInterval(a, { ...b, trial: 'y' }, null, 0.95)).toEqual(same);
  });
});

describe('intervals widened by it', () => {
  it.each([
    [2, 0.01, 0.005],
    [3, 0.01, 0.005],
    [5, 0.004, 0.005],
    [4, 0, 0.005],
  ])('hold a cable of another trial 95 times in 100: %i trials, spread %f, doubt %f', (trials, spread, u) => {
    const random = new SeededDraws(`0${trials}0${1000 * spread}`.padEnd(16, '0'));
    const RUNS = 250;
    let held = 0;
    for (let run = 0; run < RUNS; run += 1) {
      const link = Array.from({ length: trials }, () => [spread * random.normal() + u * random.normal(), u] as const);
      const ln = spread * random.normal() + u * random.normal();
      const [low, high] = widenedInterval(ln, u, betweenTrials(figures(...link), 0.95)!.likely, 0.95);
      if (low <= 0 && high >= 0) held += 1;
    }
    // Four standard deviations of a count below 95 %.
    expect(held / RUNS).toBeGreaterThan(0.95 - 4 * Math.sqrt((0.95 * 0.05) / RUNS));
  });
});
