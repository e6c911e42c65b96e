/** Circular triads, Kendall's W and rank correlations against published figures, recomputed in R 4.2.2. */
import { describe, expect, it } from 'vitest';
import { concordance } from '../../src/methods/flex/pairs/concordance.ts';
import type { JudgedPair } from '../../src/methods/flex/pairs/judgement.ts';
import { mostCircularTriads, selfAgreement } from '../../src/methods/flex/pairs/triads.ts';
import { chiSquareUpperTail } from '../../src/numerics/distributions.ts';
import { kendallTau, kendallTauChance, spearman } from '../../src/numerics/ranks.ts';
import { expectClose } from '../tolerance.ts';
import { readTable } from './readTable.ts';

/** Rows beat columns where there is a 1. */
const pairsOf = (beats: readonly (readonly number[])[]): JudgedPair[] =>
  beats.flatMap((row, i) =>
    row.flatMap((_, j) => (j > i ? [{ left: i, right: j, result: row[j] ? 'left' : 'right', judge: 0 } as const] : [])),
  );

describe('circular triads (Kendall and Babington Smith, Biometrika 31, 1940; counted by hand besides)', () => {
  it('five things: 3 of them, ζ = 0.4', () => {
    const agreement = selfAgreement(
      pairsOf([
        [0, 1, 1, 1, 0],
        [0, 0, 1, 1, 1],
        [0, 0, 0, 1, 1],
        [0, 0, 0, 0, 1],
        [1, 0, 0, 0, 0],
      ]),
      5,
    );
    expect(agreement.circular).toBe(3);
    expect(agreement.decided).toBe(10);
    expectClose(agreement.consistency!, 0.4, { relative: 1e-14 });
  });

  it('six things: 5 of them, ζ = 0.375', () => {
    const agreement = selfAgreement(
      pairsOf([
        [0, 1, 1, 0, 1, 1],
        [0, 0, 0, 1, 1, 0],
        [0, 1, 0, 1, 1, 1],
        [1, 0, 0, 0, 0, 0],
        [0, 0, 0, 1, 0, 1],
        [0, 1, 0, 1, 0, 0],
      ]),
      6,
    );
    expect(agreement.circular).toBe(5);
    expect(mostCircularTriads(6)).toBe(8);
    expectClose(agreement.consistency!, 0.375, { relative: 1e-14 });
  });

  it('a pair left out, or a tie, leaves ζ open', () => {
    const order = pairsOf([
      [0, 1, 1],
      [0, 0, 1],
      [0, 0, 0],
    ]);
    expect(selfAgreement(order, 3)).toEqual({ circular: 0, decided: 1, consistency: 1 });
    expect(selfAgreement(order.slice(1), 3).consistency).toBeNull();
    expect(selfAgreement([{ ...order[0], result: 'same' }, ...order.slice(1)], 3).consistency).toBeNull();
  });
});

describe("Kendall's W", () => {
  it('three judges of six things', () => {
    const w = concordance([
      [1, 6, 3, 2, 5, 4],
      [1, 5, 6, 2, 4, 3],
      [6, 3, 2, 5, 4, 1],
    ])!;
    expectClose(w.w, 0.2126984127, { absolute: 1e-10 });
    expectClose(w.chi2, 3.1904761905, { absolute: 1e-9 });
    expect(w.dof).toBe(5);
    expectClose(w.p, 0.6706468, { absolute: 1e-7 });
  });

  it('22 players, three ways, with ties (Hollander and Wolfe; R friedman.test)', () => {
    const { round_out, narrow_angle, wide_angle } = readTable('rounding-times.csv');
    const w = concordance(round_out.map((x, i) => [x, narrow_angle[i], wide_angle[i]]))!;
    expectClose(w.w, 0.2532467532, { absolute: 1e-10 });
    expectClose(w.chi2, 78 / 7, { relative: 1e-12 });
    expectClose(w.p, 0.003805041, { relative: 1e-6 });
    expectClose(chiSquareUpperTail(78 / 7, 2), 0.003805041, { relative: 1e-6 });
  });

  it('one and the same order is 1; nobody telling anything apart is no figure', () => {
    expect(
      concordance([
        [1, 2, 3],
        [10, 20, 30],
      ])!.w,
    ).toBe(1);
    expect(
      concordance([
        [1, 1, 1],
        [2, 2, 2],
      ]),
    ).toBeNull();
  });
});

describe('rank correlation: canned tuna (Hollander and Wolfe)', () => {
  const x = [44.4, 45.9, 41.9, 53.3, 44.7, 44.1, 50.7, 45.2, 60.1];
  const y = [2.6, 3.1, 2.5, 5.0, 3.6, 4.0, 5.2, 2.8, 3.8];
  it("Kendall's τ with its exact chance, Spearman's ρ", () => {
    expectClose(kendallTau(x, y), 4 / 9, { relative: 1e-14 });
    expectClose(kendallTauChance(4 / 9, 9), 0.1194389, { absolute: 1e-7 });
    expectClose(spearman(x, y), 0.6, { relative: 1e-14 });
  });
});
