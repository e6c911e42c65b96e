import { describe, expect, it } from 'vitest';
import { coilRatio, radiusFromDiameter, radiusFromTurns } from '../../../src/methods/flex/coil.ts';
import { fallOf, hysteresis, initialSlope, shearShare, stiffnessFromPush } from '../../../src/methods/flex/push.ts';
import { springBackShare } from '../../../src/methods/flex/springBack.ts';
import { expectClose } from '../../tolerance.ts';

const points = (forces: readonly number[]) => forces.map((force, i) => ({ deflection: 0.001 * (i + 1), force }));

describe('the straight beginning of a push', () => {
  it('takes all points of a line, whatever its intercept', () => {
    const slope = initialSlope(points([2.3, 4.3, 6.3, 8.3]));
    expectClose(slope.slope, 2000, { relative: 1e-9 });
    expectClose(slope.intercept, 0.3, { relative: 1e-9 });
    expect(slope.points).toBe(4);
  });

  it('leaves out points that bend away', () => {
    const slope = initialSlope(points([2, 4, 6, 7, 7.5, 7.8]));
    expect(slope.points).toBeLessThanOrEqual(4);
    expect(slope.slope).toBeGreaterThan(1600);
  });

  it('takes what steps of the display make of a line for a line', () => {
    expect(initialSlope(points([40, 81, 123, 166])).points).toBe(3);
    expect(initialSlope(points([40, 81, 123, 166]), 0.6).points).toBe(4);
  });

  it('finds the deepest fall, and none within two steps', () => {
    const [before, after] = fallOf(points([120, 240, 180, 480]), 1)!;
    expect([before.force, after.force]).toEqual([240, 180]);
    expect(fallOf(points([120, 240, 238.5, 480]), 1)).toBeNull();
    expect(fallOf(points([1, 2, 3]), 0)).toBeNull();
  });

  it('is not frightened by scatter', () => {
    expect(initialSlope(points([2.05, 3.93, 6.06, 7.95, 10.04, 11.97])).points).toBe(6);
  });

  it('gives a standard error that is scatter over spread', () => {
    const slope = initialSlope(points([2.1, 3.9, 6.1, 7.9]));
    expectClose(slope.u, slope.residualSd / slope.spread, { relative: 1e-9 });
    expect(slope.dof).toBe(2);
  });

  it.each([[[1, 2]], [[3, 2, 1]]])('refuses %o', (forces) => {
    expect(() => initialSlope(points(forces))).toThrow(RangeError);
  });

  it('refuses deflections that do not rise', () => {
    const same = [1, 2, 3].map((force) => ({ deflection: 0.001, force }));
    expect(() => initialSlope(same)).toThrow(/rise/);
  });
});

describe('a push and its release', () => {
  const at = (list: readonly [number, number][]) => list.map(([deflection, force]) => ({ deflection, force }));
  it('the work that is not given back', () => {
    const lost = hysteresis(
      at([
        [0, 0],
        [1, 1],
        [2, 2],
      ]),
      at([
        [2, 2],
        [1, 0.5],
        [0, 0],
      ]),
    )!;
    expectClose(lost.lost, 0.5, { relative: 1e-12, because: '2 less 0.25 less 1.25' });
    expectClose(lost.share, 0.25, { relative: 1e-12 });
  });
  it('over the deflections that both share; null where they share none', () => {
    expectClose(
      hysteresis(
        at([
          [0, 0],
          [4, 4],
        ]),
        at([
          [2, 1],
          [1, 0.5],
        ]),
      )!.share,
      0.5,
      { relative: 1e-12 },
    );
    expect(
      hysteresis(
        at([
          [0, 0],
          [1, 1],
        ]),
        at([
          [2, 2],
          [3, 3],
        ]),
      ),
    ).toBeNull();
    expect(
      hysteresis(
        at([
          [0, 0],
          [1, 1],
        ]),
        [],
      ),
    ).toBeNull();
  });
});

describe('smaller formulas', () => {
  it('stiffness goes with the cube of the span; shear with the square of the diameter', () => {
    expectClose(stiffnessFromPush(100, 0.4) / stiffnessFromPush(100, 0.2), 8, { relative: 1e-12 });
    expectClose(shearShare(0.02, 0.2) / shearShare(0.01, 0.2), 4, { relative: 1e-12 });
    expectClose(shearShare(0.01, 0.1), 0.0217, { relative: 2e-3 });
  });

  it('coils', () => {
    const radius = radiusFromTurns({ value: 0.4, u: 0.004 }, { value: 2, u: 0.02 });
    expectClose(radius.value, 0.1 / Math.PI, { relative: 1e-12 });
    expectClose(radius.u / radius.value, Math.SQRT2 * 0.01, { relative: 1e-9 });
    expectClose(radiusFromDiameter({ value: 0.09, u: 0 }, 'inside', 0.01), 0.05, { relative: 1e-12 });
    expectClose(radiusFromDiameter({ value: 0.11, u: 0 }, 'outside', 0.01), 0.05, { relative: 1e-12 });
    expectClose(coilRatio({ value: 0.05, u: 0.001 }, { value: 0.01, u: 0 }).u, 0.1, { relative: 1e-9 });
    expect(() => radiusFromTurns({ value: 0.4, u: 0 }, { value: 0, u: 0 })).toThrow(RangeError);
  });

  it('spring-back', () => {
    expectClose(springBackShare(90, 60), 1 / 3, { relative: 1e-12 });
    expect(() => springBackShare(0, 0)).toThrow(RangeError);
  });
});
