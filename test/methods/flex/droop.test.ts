import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestOverhang, type DroopFound, type DroopInput, stiffnessFromDroop } from '../../../src/methods/flex/droop.ts';
import { droopOfSet, droopWithSet, setAtTip } from '../../../src/methods/flex/droopWithSet.ts';
import { droopShape } from '../../../src/methods/flex/elastica.ts';
import { lambdaFromChord, lambdaFromDrop } from '../../../src/methods/flex/lambdaFromDroop.ts';
import { expectClose } from '../../tolerance.ts';

const found = (input: DroopInput): DroopFound => {
  const answer = stiffnessFromDroop(input);
  if ('refused' in answer) throw new Error(`refused: ${answer.refused}`);
  return answer;
};
const straight = { weight: 6, overhang: 0.3, read: 'drop' as const, up: 0.16, down: 0.16 };

describe('λ from a droop', () => {
  it('agrees with the integration to 1e-9 all over its range', () => {
    for (let lambda = 0.01; lambda < 27; lambda *= 1.37) {
      const shape = droopShape(lambda);
      expectClose(lambdaFromDrop(shape.drop).lambda, lambda, { relative: 1e-9 });
      expectClose(lambdaFromChord(shape.chordAngle).lambda, lambda, { relative: 1e-9 });
    }
  });

  it.each([0.1, 0.4, 0.7, 0.84])('s at y/L = %f is the slope by differences', (drop) => {
    const h = 1e-5;
    const ln = (y: number) => Math.log(lambdaFromDrop(y).lambda);
    const s = (ln(drop * (1 + h)) - ln(drop * (1 - h))) / (2 * h);
    expectClose(lambdaFromDrop(drop).s, s, { relative: 1e-7 });
  });

  it.each([0, -0.1, 0.9, Number.NaN])('refuses y/L = %f', (drop) => {
    expect(() => lambdaFromDrop(drop)).toThrow(RangeError);
  });
});

describe('a piece with a set', () => {
  it.each([0.6, 2, 6, 12, 19])('comes back from both faces at λ = %f', (lambda) => {
    for (const q of [0, 0.2, 0.5, -0.4]) {
      const [up, down] = [droopOfSet(lambda, q, 1), droopOfSet(lambda, q, -1)];
      for (const read of ['drop', 'chordAngle'] as const) {
        const back = droopWithSet(read, up[read], down[read], lambda * 1.3);
        expectClose(back.lambda, lambda, { relative: 1e-8 });
        expectClose(back.set, q, { absolute: 1e-8 });
        const h = 1e-6;
        const moved = droopWithSet(read, up[read] + h, down[read], lambda);
        expectClose(Math.log(moved.lambda / back.lambda) / h, back.lnLambdaByFirst, { relative: 1e-3 });
      }
    }
  });

  it('the mean of both faces overstates EI as simulated', () => {
    // Independently simulated at λ 4 to 6, rounded: set at the tip as a share of L, bias of the mean.
    for (const [tip, bias] of [
      [0.1, 0.011],
      [0.15, 0.025],
      [0.2, 0.044],
    ]) {
      const q = 2 * tip;
      expectClose(setAtTip(q), tip, { relative: 0.04 });
      const middle = (droopOfSet(5, q, 1).drop + droopOfSet(5, q, -1).drop) / 2;
      expectClose(5 / lambdaFromDrop(middle).lambda - 1, bias, { absolute: 0.003 });
    }
  });

  it('is averaged when small, solved when large, and flagged when very large', () => {
    const ways = [0.05, 0.2, 0.3].map((q) => {
      const drop = (sign: 1 | -1) => 0.3 * droopOfSet(5, q, sign).drop;
      return found({ ...straight, up: drop(1), down: drop(-1) });
    });
    expect(ways.map((w) => w.way)).toEqual(['mean of both faces', 'both faces solved', 'both faces solved']);
    expect(ways.map((w) => w.muchSet)).toEqual([false, false, true]);
    for (const w of ways) expectClose(w.lambda, 5, { relative: 1e-3 });
  });

  it('turning it over changes the sign of the set and nothing else', () => {
    const [a, b] = [found({ ...straight, up: 0.19, down: 0.13 }), found({ ...straight, up: 0.13, down: 0.19 })];
    expectClose(a.lnStiffness, b.lnStiffness, { relative: 1e-9 });
    expectClose(a.set!, -b.set!, { relative: 1e-9 });
    expectClose(a.byUp, b.byDown, { relative: 1e-7 });
  });
});

describe('stiffness from a droop', () => {
  it('the slopes are those by differences', () => {
    for (const input of [straight, { ...straight, down: null }, { ...straight, up: 0.19, down: 0.13 }]) {
      const at = found(input);
      const h = 1e-6;
      const by = (moved: DroopInput) => (found(moved).lnStiffness - at.lnStiffness) / h;
      expectClose(by({ ...input, overhang: 0.3 * (1 + h) }), at.byLnOverhang, { relative: 1e-3 });
      expectClose(by({ ...input, up: input.up + h }), at.byUp, { relative: 1e-3 });
      if (input.down !== null) expectClose(by({ ...input, down: input.down + h }), at.byDown, { relative: 1e-3 });
    }
  });

  it('EI grows with the weight, and with the cube of the length of a like shape', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 20, noNaN: true }),
        fc.double({ min: 0.1, max: 0.8, noNaN: true }),
        fc.double({ min: 0.1, max: 0.75, noNaN: true }),
        fc.double({ min: 1.1, max: 3, noNaN: true }),
        (weight, overhang, share, k) => {
          const one = found({ weight, overhang, read: 'drop', up: share * overhang, down: null });
          const heavier = found({ weight: k * weight, overhang, read: 'drop', up: share * overhang, down: null });
          const longer = found({ weight, overhang: k * overhang, read: 'drop', up: k * share * overhang, down: null });
          expectClose(heavier.lnStiffness - one.lnStiffness, Math.log(k), { relative: 1e-9 });
          expectClose(longer.lnStiffness - one.lnStiffness, 3 * Math.log(k), { relative: 1e-9 });
        },
      ),
      { seed: 20261125, numRuns: 100 },
    );
  });

  it('deeper is softer', () => {
    const drops = [0.05, 0.1, 0.15, 0.2, 0.24].map((up) => found({ ...straight, up, down: null }).lnStiffness);
    expect([...drops].sort((a, b) => b - a)).toEqual(drops);
  });

  it.each([
    [0.005, 'too straight'],
    [0.265, 'too deep'],
    [0.29, 'too deep'],
    [-0.01, 'too straight'],
  ])('a drop of %f m in 0.3 m is %s', (up, refused) => {
    expect(stiffnessFromDroop({ ...straight, up, down: null })).toHaveProperty('refused', refused);
  });

  it('advises the overhang at which λ is 6', () => {
    expectClose(bestOverhang(0.3, 6), 0.3, { relative: 2e-3 });
    const deep = stiffnessFromDroop({ ...straight, up: 0.265, down: null });
    const better = 'refused' in deep ? deep.betterOverhang! : 0;
    expect(better).toBeGreaterThan(0.1);
    expect(better).toBeLessThan(0.25);
  });

  it.each([{ weight: 0 }, { overhang: -1 }, { up: Number.NaN }])('throws for %o', (wrong) => {
    expect(() => stiffnessFromDroop({ ...straight, ...wrong })).toThrow(RangeError);
  });
});
