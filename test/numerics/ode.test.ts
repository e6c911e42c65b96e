import { describe, expect, it } from 'vitest';
import { chebyshevAt, chebyshevOf } from '../../src/numerics/chebyshev.ts';
import { integrate, integrateUntil } from '../../src/numerics/ode.ts';
import { expectClose } from '../tolerance.ts';

const circle = (_x: number, y: Float64Array, d: Float64Array) => {
  d[0] = y[1];
  d[1] = -y[0];
};

describe('ordinary differential equations', () => {
  it('growth, and a circle once round', () => {
    const e = integrate(
      (_x, y, d) => {
        d[0] = y[0];
      },
      [1],
      0,
      1,
    );
    expectClose(e[0], Math.E, { relative: 1e-11 });
    const [s, c] = integrate(circle, [0, 1], 0, 2 * Math.PI);
    expectClose(s, 0, { absolute: 1e-10, because: 'sin 2π' });
    expectClose(c, 1, { relative: 1e-10 });
  });

  it('meets a right side that depends on x alone exactly to order five', () => {
    // A pair of order 5 integrates x⁴ without error: a wrong coefficient of it would show.
    const y = integrate(
      (x, _y, d) => {
        d[0] = 5 * x ** 4;
      },
      [0],
      0,
      1,
      { tolerance: 1 },
    );
    expectClose(y[0], 1, { relative: 1e-12 });
  });

  it('the error falls with the tolerance', () => {
    const error = (tolerance: number) => Math.abs(integrate(circle, [0, 1], 0, 10, { tolerance })[0] - Math.sin(10));
    expect(error(1e-10)).toBeLessThan(error(1e-6) / 100);
    expect(error(1e-6)).toBeLessThan(error(1e-3));
  });

  it('ends where a value rises through zero', () => {
    const end = integrateUntil(circle, [-1, 0], 0, 10, (y) => y[0]);
    expectClose(end.x, Math.PI / 2, { relative: 1e-11 });
    expectClose(end.y[1], 1, { relative: 1e-11 });
    expect(() => integrateUntil(circle, [-1, 0], 0, 1, (y) => y[0])).toThrow(/no crossing/);
  });

  it('gives up on what has no end', () => {
    expect(() =>
      integrate(
        (_x, y, d) => {
          d[0] = y[0] ** 2;
        },
        [1],
        0,
        2,
        { maximumSteps: 2000 },
      ),
    ).toThrow(RangeError);
  });
});

describe('Chebyshev series', () => {
  it('value and slope of a smooth function', () => {
    const series = chebyshevOf(Math.sin, -1, 3, 24);
    for (const x of [-1, -0.3, 0, 1.7, 3]) {
      expectClose(chebyshevAt(series, x).value, Math.sin(x), { absolute: 1e-13 });
      expectClose(chebyshevAt(series, x).slope, Math.cos(x), { absolute: 1e-11 });
    }
    expect(Math.abs(chebyshevAt(chebyshevOf(Math.sin, -1, 3, 4), 1.7).value - Math.sin(1.7))).toBeGreaterThan(1e-4);
    expect(() => chebyshevOf(Math.sin, 1, 1, 5)).toThrow(RangeError);
  });
});
