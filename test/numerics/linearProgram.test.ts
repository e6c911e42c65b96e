import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linearProgram } from '../../src/numerics/linearProgram.ts';
import { expectClose } from '../tolerance.ts';

describe('linearProgram', () => {
  it('finds the corner of a small program (drawn on paper: x = 2, y = 6)', () => {
    const answer = linearProgram({
      cost: [-3, -5],
      atMost: [
        { row: [1, 0], bound: 4 },
        { row: [0, 2], bound: 12 },
        { row: [3, 2], bound: 18 },
      ],
      equal: [],
    })!;
    expectClose(answer.x[0], 2, { absolute: 1e-12 });
    expectClose(answer.x[1], 6, { absolute: 1e-12 });
    expectClose(answer.cost, -36, { relative: 1e-12 });
  });

  it('keeps equalities and bounds from below', () => {
    const answer = linearProgram({
      cost: [1, 2, 0],
      atMost: [{ row: [-1, -1, 0], bound: -3 }],
      equal: [{ row: [1, 0, -1], bound: -1 }],
    })!;
    expectClose(answer.cost, 3, { relative: 1e-12 });
    expect(answer.x.map((x) => Math.round(1e9 * x) / 1e9)).toEqual([3, 0, 4]);
  });

  it('says when nothing fits', () => {
    expect(linearProgram({ cost: [1], atMost: [{ row: [1], bound: -1 }], equal: [] })).toBeNull();
    const apart = [
      { row: [1, 1], bound: 1 },
      { row: [1, 1], bound: 2 },
    ];
    expect(linearProgram({ cost: [1, 1], atMost: [], equal: apart })).toBeNull();
  });

  it('refuses a cost without a least value, and rows of the wrong length', () => {
    expect(() => linearProgram({ cost: [-1], atMost: [{ row: [-1], bound: 0 }], equal: [] })).toThrow(/no least value/);
    expect(() => linearProgram({ cost: [1, 1], atMost: [{ row: [1], bound: 0 }], equal: [] })).toThrow(/2 numbers/);
  });

  it('does not go round in circles where many corners fall together', () => {
    // E. M. L. Beale, Naval Research Logistics Quarterly 2 (1955), his cycling example: from memory. Its least cost is −1/20.
    const answer = linearProgram({
      cost: [-0.75, 150, -0.02, 6],
      atMost: [
        { row: [0.25, -60, -0.04, 9], bound: 0 },
        { row: [0.5, -90, -0.02, 3], bound: 0 },
        { row: [0, 0, 1, 0], bound: 1 },
      ],
      equal: [],
    })!;
    expectClose(answer.cost, -0.05, { relative: 1e-12 });
  });

  it('never gives more than any point that fits, and a point that fits', () => {
    const small = fc.integer({ min: -5, max: 5 });
    fc.assert(
      fc.property(
        fc.array(fc.array(small, { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 4 }),
        fc.array(fc.integer({ min: 0, max: 5 }), { minLength: 3, maxLength: 3 }),
        fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 3, maxLength: 3 }),
        (rows, cost, point) => {
          const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * b[i], 0);
          const atMost = rows.map((row, i) => ({ row, bound: dot(row, point) + i }));
          const answer = linearProgram({ cost, atMost, equal: [] })!;
          expect(answer).not.toBeNull();
          expect(answer.cost).toBeLessThanOrEqual(dot(cost, point) + 1e-8);
          for (const { row, bound } of atMost) expect(dot(row, answer.x)).toBeLessThanOrEqual(bound + 1e-8);
          for (const x of answer.x) expect(x).toBeGreaterThanOrEqual(-1e-9);
        },
      ),
      { seed: 7, numRuns: 400 },
    );
  });
});
