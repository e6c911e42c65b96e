import { describe, expect, it } from 'vitest';
import { studentTQuantile } from '../../src/numerics/distributions.ts';
import { SeededDraws } from '../../src/numerics/random.ts';
import { typeA } from '../../src/numerics/typeA.ts';
import { expectClose } from '../tolerance.ts';

describe('type A variance', () => {
  it('leans on the stated repeatability while repeats are few', () => {
    // Two groups of three with s² = 1 each: ν = 4, s_p² = 1; s0 = 0.5: (4·0.25 + 4·1)/8.
    const found = typeA({
      groups: [
        [1, 2, 3],
        [7, 8, 9],
      ],
      resolution: 0.1,
      repeatability: 0.5,
    });
    expect(found).toEqual({ variance: 0.625, dof: 8 });
  });

  it('takes half a step where no repeatability is stated', () => {
    const found = typeA({ groups: [[1, 2, 3]], resolution: 0.4 });
    expectClose(found.variance, (4 * 0.04 + 2 * 1) / 6, { relative: 1e-15 });
    expect(found.dof).toBe(6);
  });

  it('without any repeats, what is stated, with the degrees of freedom it counts for', () => {
    expect(typeA({ groups: [[5], [6]], resolution: 0.2, repeatability: 0.3 })).toEqual({ variance: 0.09, dof: 4 });
    expect(typeA({ groups: [], resolution: 0.2 })).toEqual({ variance: 0.010000000000000002, dof: 4 });
  });

  it('never less than the rounding of the display: three equal readings have a spread', () => {
    const floor = 0.01 ** 2 / 12;
    const few = typeA({ groups: [[2, 2, 2]], resolution: 0.01, repeatability: 0 });
    expectClose(few.variance, floor, { relative: 1e-12 });
    const many = typeA({ groups: Array.from({ length: 12 }, () => [2, 2, 2]), resolution: 0.01 });
    expect(many.dof).toBe(Number.POSITIVE_INFINITY);
    expectClose(many.variance, floor, { relative: 1e-12 });
  });

  it('is trusted as it is from 20 degrees of freedom on', () => {
    const nineteen = Array.from({ length: 19 }, () => [0, Math.SQRT2]);
    const found = typeA({ groups: nineteen, resolution: 0, repeatability: 3 });
    expect(found.dof).toBe(23);
    expectClose(found.variance, (4 * 9 + 19) / 23, { relative: 1e-12 });
    const twenty = typeA({ groups: [...nineteen, [5, 5 + Math.SQRT2]], resolution: 0, repeatability: 3 });
    expect(twenty.dof).toBe(Number.POSITIVE_INFINITY);
    expectClose(twenty.variance, 1, { relative: 1e-12 });
  });

  it('refuses nonsense', () => {
    expect(() => typeA({ groups: [[1, 2]], resolution: -1 })).toThrow(RangeError);
    expect(() => typeA({ groups: [[1, 2]], resolution: 1, repeatability: Number.NaN })).toThrow(RangeError);
  });

  it('keeps the promised coverage with three repeats, where a Gaussian on them alone does not', () => {
    const draws = new SeededDraws('7479706541636f76');
    const n = 20_000;
    let held = 0;
    let heldByGaussian = 0;
    for (let i = 0; i < n; i++) {
      const x = [draws.normal(), draws.normal(), draws.normal()];
      const centre = (x[0] + x[1] + x[2]) / 3;
      const found = typeA({ groups: [x], resolution: 0.1, repeatability: 1 });
      const reach = studentTQuantile(0.975, found.dof) * Math.sqrt(found.variance / 3);
      if (Math.abs(centre) <= reach) held++;
      const s = Math.sqrt(x.reduce((sum, value) => sum + (value - centre) ** 2, 0) / 2);
      if (Math.abs(centre) <= (1.959964 * s) / Math.sqrt(3)) heldByGaussian++;
    }
    expect(held / n).toBeGreaterThan(0.945);
    expect(heldByGaussian / n).toBeLessThan(0.83);
  });
});
