import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { portableExp, portableLog } from '../../src/numerics/portableElementary.ts';
import { expectClose } from '../tolerance.ts';

describe('exp and log from the four operations', () => {
  it('known values', () => {
    expect(portableExp(0)).toBe(1);
    expect(portableLog(1)).toBe(0);
    expect(portableExp(-1000)).toBe(0);
    // Computed independently (mpmath).
    expectClose(portableExp(1), 2.718281828459045, { relative: 3e-16 });
    expectClose(portableExp(-6.676416652), 0.001260285934022474, { relative: 3e-15 });
    expectClose(portableLog(10), 2.302585092994046, { relative: 3e-16 });
    expectClose(portableLog(1e-300), -690.7755278982137, { relative: 3e-16 });
  });

  it('agree with the engine to a few last bits', () => {
    fc.assert(
      fc.property(fc.double({ min: -700, max: 700, noNaN: true }), (x) => {
        expectClose(portableExp(x), Math.exp(x), { relative: 4e-16 * Math.max(1, Math.abs(x) / 50) });
      }),
      { seed: 20261125, numRuns: 2000 },
    );
    fc.assert(
      fc.property(fc.double({ min: 1e-300, max: 1e300, noNaN: true }), (x) => {
        expectClose(portableLog(x), Math.log(x), { relative: 5e-16, absolute: 1e-300 });
      }),
      { seed: 20261125, numRuns: 2000 },
    );
    for (let x = 0.5; x < 2; x += 0.0007)
      expectClose(portableLog(x), Math.log(x), { relative: 1e-15, absolute: 2e-17 });
  });

  it('refuse what they cannot do', () => {
    for (const x of [710, Number.NaN]) expect(() => portableExp(x)).toThrow(RangeError);
    for (const x of [0, -1, 1e-320, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => portableLog(x)).toThrow(RangeError);
  });
});
