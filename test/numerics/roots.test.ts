import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brentRoot } from '../../src/numerics/roots.ts';
import { expectClose } from '../tolerance.ts';

describe('brentRoot', () => {
  it.each([
    { name: 'x² = 2', f: (x: number) => x * x - 2, a: 0, b: 2, root: Math.SQRT2 },
    {
      name: 'cos x = x (Dottie number, mpmath)',
      f: (x: number) => Math.cos(x) - x,
      a: 0,
      b: 1,
      root: 0.7390851332151607,
    },
    { name: 'eˣ = 1e-5', f: (x: number) => Math.exp(x) - 1e-5, a: -50, b: 10, root: Math.log(1e-5) },
    { name: 'a jump at 3', f: (x: number) => (x < 3 ? -1 : 1), a: 0, b: 10, root: 3 },
    { name: 'falling', f: (x: number) => 1 - x ** 3, a: 0, b: 4, root: 1 },
  ])('$name', ({ f, a, b, root }) => {
    expectClose(brentRoot(f, a, b, { tolerance: 1e-13 }), root, { absolute: 2e-13 });
    expectClose(brentRoot(f, b, a, { tolerance: 1e-13 }), root, { absolute: 2e-13, because: 'ends exchanged' });
  });

  it('takes a root at an end', () => {
    expect(brentRoot((x) => x, 0, 1)).toBe(0);
    expect(brentRoot((x) => x - 1, 0, 1)).toBe(1);
  });

  it('is quick on smooth functions', () => {
    let evaluations = 0;
    brentRoot(
      (x) => {
        evaluations++;
        return Math.exp(x) - 5;
      },
      -4,
      6,
      { tolerance: 1e-12 },
    );
    expect(evaluations).toBeLessThan(20);
  });

  it('refuses a bracket without a sign change, a function that is no number, and too few evaluations', () => {
    expect(() => brentRoot((x) => x * x + 1, -1, 1)).toThrow(/no sign change/);
    expect(() => brentRoot((x) => (x > 0.2 ? Number.NaN : x - 0.1), 0, 1)).toThrow(/not a number/);
    expect(() => brentRoot((x) => x ** 9, -1, 4, { tolerance: 1e-14, maximumEvaluations: 10 })).toThrow(RangeError);
  });

  it('finds the root of any cubic with one crossing', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: 0.01, max: 9, noNaN: true }),
        (root, c) => {
          const f = (x: number) => (x - root) * ((x - root) ** 2 + c);
          expectClose(brentRoot(f, -100, 100, { tolerance: 1e-11 }), root, { absolute: 2e-11 });
        },
      ),
      { seed: 20261125 },
    );
  });
});
