import { describe, expect, it } from 'vitest';
import { driftOf } from '../../../src/methods/across/drift.ts';
import { expectClose } from '../../tolerance.ts';

const at = (years: number, ln: number, u = 0.005) => ({ years, ln, u });

describe('drift of one lot', () => {
  it('is not known from one time, or from two readings of one day', () => {
    expect(driftOf([at(0, 1)], [0], 0.95)).toBeNull();
    expect(driftOf([at(0, 1), at(0.001, 1.1)], [0], 0.95)).toBeNull();
  });

  it('of two times is their difference with both doubts', () => {
    const found = driftOf([at(0, 0), at(2, Math.log(1.03), 0.003)], [0], 0.95)!;
    expectClose(found.change, 0.03, { relative: 1e-10 });
    expect(found.scatterChance).toBeNull();
    const half = 1.959963984540054 * Math.hypot(0.005, 0.003);
    expectClose(found.interval[0], Math.expm1(Math.log(1.03) - half), { relative: 1e-9 });
    expectClose(found.wouldShow, Math.expm1((1.959963984540054 + 1.2815515655446004) * Math.hypot(0.005, 0.003)), {
      relative: 1e-9,
    });
  });

  it('of three times on a line is that line; off it the doubt grows', () => {
    const line = driftOf([at(0, 0), at(1, 0.01), at(2, 0.02)], [0], 0.95)!;
    expectClose(line.change, Math.expm1(0.02), { relative: 1e-9 });
    expectClose(line.scatterChance!, 1, { relative: 1e-9 });
    const off = driftOf([at(0, 0), at(1, 0.05), at(2, 0.02)], [0], 0.95)!;
    expectClose(off.change, Math.expm1(0.02), { relative: 1e-9 });
    expect(off.interval[1] - off.interval[0]).toBeGreaterThan(10 * (line.interval[1] - line.interval[0]));
    expect(off.scatterChance).toBeLessThan(0.001);
  });

  it('shows less with an error between trials', () => {
    const plain = driftOf([at(0, 0), at(1, 0.02)], [0], 0.95)!;
    const wide = driftOf([at(0, 0), at(1, 0.02)], [0.01 ** 2], 0.95)!;
    expect(plain.interval[0]).toBeGreaterThan(0);
    expect(wide.interval[0]).toBeLessThan(0);
    expect(wide.wouldShow).toBeGreaterThan(2 * plain.wouldShow);
  });
});
