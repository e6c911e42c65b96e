import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { droopInPhoto, dropDoubt, type MarkedDroop, spotInPhoto } from '../../../src/methods/flex/droopInPhoto.ts';
import { expectClose } from '../../tolerance.ts';

/** 1000 pixels stand for 500 mm: half a millimetre each. */
const LEVEL: MarkedDroop = {
  clamp: { x: 100, y: 200 },
  tip: { x: 660, y: 440 },
  ruleFrom: { x: 50, y: 900 },
  ruleTo: { x: 1050, y: 900 },
  apart: 0.5,
  ruleIsLevel: false,
};

const turnedBy = (marks: MarkedDroop, angle: number): MarkedDroop => {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const turn = ({ x, y }: { x: number; y: number }) => ({ x: c * x - s * y, y: s * x + c * y });
  return {
    ...marks,
    clamp: turn(marks.clamp),
    tip: turn(marks.tip),
    ruleFrom: turn(marks.ruleFrom),
    ruleTo: turn(marks.ruleTo),
  };
};

describe('a droop marked in a photo', () => {
  it('has its drop, reach and chord to the scale of the two known spots', () => {
    const found = droopInPhoto(LEVEL)!;
    expectClose(found.scale, 0.0005, { relative: 1e-12 });
    expectClose(found.reach, 0.28, { relative: 1e-12 });
    expectClose(found.drop, 0.12, { relative: 1e-12 });
    expectClose(found.chord, Math.hypot(0.28, 0.12), { relative: 1e-12 });
  });

  it('is the same hanging to the left', () => {
    const mirrored = { ...LEVEL, clamp: LEVEL.tip, tip: { x: LEVEL.clamp.x, y: 680 } };
    const found = droopInPhoto(mirrored)!;
    expectClose(found.reach, 0.28, { relative: 1e-12 });
    expectClose(found.drop, 0.12, { relative: 1e-12 });
    expect(found.out.x).toBe(-1);
  });

  it('is the same however the camera was turned, where the known spots lie level', () => {
    fc.assert(
      fc.property(fc.double({ min: -1.2, max: 1.2, noNaN: true }), fc.boolean(), (angle, swapped) => {
        const turned = turnedBy({ ...LEVEL, ruleIsLevel: true }, angle);
        const marks = swapped ? { ...turned, ruleFrom: turned.ruleTo, ruleTo: turned.ruleFrom } : turned;
        const found = droopInPhoto(marks)!;
        expectClose(found.reach, 0.28, { relative: 1e-9 });
        expectClose(found.drop, 0.12, { relative: 1e-9 });
        const tip = spotInPhoto(found, marks.clamp, found.reach, found.drop);
        expectClose(tip.x, marks.tip.x, { absolute: 1e-6 });
        expectClose(tip.y, marks.tip.y, { absolute: 1e-6 });
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  it.each([
    ['two known spots on one place', { ruleTo: LEVEL.ruleFrom }],
    ['no distance', { apart: 0 }],
    ['a distance that is no number', { apart: Number.NaN }],
    ['the tip on the clamp', { tip: LEVEL.clamp }],
  ] as const)('is none with %s', (_, change) => {
    expect(droopInPhoto({ ...LEVEL, ...change })).toBeNull();
  });

  it('is doubted by what a tap is off, less over a longer rule', () => {
    const found = droopInPhoto(LEVEL)!;
    expectClose(dropDoubt(found, 0.5, 2), 0.0005 * 2 * Math.SQRT2 * Math.hypot(1, 0.24), { relative: 1e-12 });
    expect(dropDoubt(found, 0.1, 2)).toBeGreaterThan(dropDoubt(found, 0.5, 2));
  });
});
