import { describe, expect, it } from 'vitest';
import { droopCurve, turnOfSet } from '../../../src/methods/flex/droopCurve.ts';
import { droopOfSet, setAtTip } from '../../../src/methods/flex/droopWithSet.ts';
import { droopShape } from '../../../src/methods/flex/elastica.ts';
import { expectClose } from '../../tolerance.ts';

describe('the curve of a droop', () => {
  it.each([0.5, 1, 6, 20])('begins at the clamp and ends where the shape says, λ %d', (lambda) => {
    const curve = droopCurve(lambda);
    const shape = droopShape(lambda);
    const tip = curve[curve.length - 1]!;
    expect(curve[0]).toEqual({ reach: 0, drop: 0 });
    expectClose(tip.reach, shape.reach, { relative: 1e-7 });
    expectClose(tip.drop, shape.drop, { relative: 1e-7 });
  });

  it.each([
    [3, 0.2, 1],
    [3, 0.2, -1],
    [1.4, -0.5, 1],
  ] as const)('of a piece with a set ends where that piece ends, λ %d, q %d, face %d', (lambda, turn, sign) => {
    const curve = droopCurve(lambda, turn, sign);
    const tip = curve[curve.length - 1]!;
    const wanted = droopOfSet(lambda, turn, sign);
    expectClose(tip.drop, wanted.drop, { relative: 1e-6 });
    expectClose(Math.atan2(tip.drop, tip.reach), wanted.chordAngle, { relative: 1e-6 });
  });

  it('is as long as the overhang', () => {
    const curve = droopCurve(6, 0.3, 1, 400);
    const length = curve.slice(1).reduce((sum, p, i) => {
      const before = curve[i]!;
      return sum + Math.hypot(p.reach - before.reach, p.drop - before.drop);
    }, 0);
    expectClose(length, 1, { relative: 1e-5 });
  });

  it('leaves the clamp level', () => {
    const [, first] = droopCurve(6, 0, 1, 200);
    expect(first!.drop / first!.reach).toBeLessThan(0.02);
  });
});

describe('the turn of a piece from how its tip stands off', () => {
  it.each([-0.3, -0.04, 0, 0.1, 0.6])('gives back a set of %d', (share) => {
    expectClose(setAtTip(turnOfSet(share)), share, { absolute: 1e-9 });
  });

  it('stays finite for what no even curve reaches', () => {
    expect(turnOfSet(0.9)).toBe(turnOfSet(5));
    expect(turnOfSet(-0.9)).toBe(-turnOfSet(0.9));
  });
});
