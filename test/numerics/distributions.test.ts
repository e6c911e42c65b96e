import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chiSquareCdf,
  chiSquareQuantile,
  chiSquareUpperTail,
  fUpperTail,
  normalCdf,
  normalLogPdf,
  normalQuantile,
  studentTCdf,
  studentTLogPdf,
  studentTQuantile,
} from '../../src/numerics/distributions.ts';
import { normalDensity, normalUpperTail, studentTUpperTail } from '../../src/numerics/fastTails.ts';
import { upperIncompleteGamma } from '../../src/numerics/incompleteGamma.ts';
import { expectClose } from '../tolerance.ts';

const run = { seed: 20261125, numRuns: 300 };
const anyDof = fc.double({ min: 0.3, max: 500, noNaN: true });
const anyP = fc.double({ min: 1e-10, max: 1 - 1e-10, noNaN: true });

describe('the examples in the documentation', () => {
  it.each([
    [normalCdf(1.4), 0.919243340766229],
    [normalQuantile(0.975), 1.959963984540054],
    [studentTCdf(2.228138851986275, 10), 0.975],
    [studentTQuantile(0.975, 9), 2.262157162798205],
    [chiSquareUpperTail(3.841458820694124, 1), 0.05],
  ])('%d', (got, printed) => {
    expectClose(got, printed, { relative: 1e-14 });
  });
});

describe('the ends of the range', () => {
  it('probabilities 0 and 1, infinite arguments', () => {
    const infinity = Number.POSITIVE_INFINITY;
    expect([normalQuantile(0), normalQuantile(1)]).toEqual([-infinity, infinity]);
    expect([studentTQuantile(0, 3), studentTQuantile(1, 3)]).toEqual([-infinity, infinity]);
    expect([chiSquareQuantile(0, 3), chiSquareQuantile(1, 3)]).toEqual([0, infinity]);
    expect([normalCdf(-infinity), normalCdf(infinity)]).toEqual([0, 1]);
    expect([studentTCdf(-infinity, 3), studentTCdf(infinity, 3)]).toEqual([0, 1]);
    expect([chiSquareCdf(-1, 3), chiSquareCdf(infinity, 3)]).toEqual([0, 1]);
    expect([chiSquareUpperTail(0, 3), chiSquareUpperTail(infinity, 3)]).toEqual([1, 0]);
    expect([fUpperTail(0, 3, 4), fUpperTail(infinity, 3, 4)]).toEqual([1, 0]);
  });

  it('infinite degrees of freedom are the normal distribution', () => {
    const infinity = Number.POSITIVE_INFINITY;
    expect(studentTCdf(1.3, infinity)).toBe(normalCdf(1.3));
    expect(studentTQuantile(0.9, infinity)).toBe(normalQuantile(0.9));
    expect(studentTLogPdf(0.4, infinity)).toBe(normalLogPdf(0.4));
    expectClose(studentTQuantile(0.975, 1e9), normalQuantile(0.975), { relative: 1e-8 });
  });

  it.each([
    ['dof 0', () => studentTCdf(1, 0)],
    ['dof negative', () => studentTQuantile(0.5, -1)],
    ['dof not a number', () => chiSquareCdf(1, Number.NaN)],
    ['p above 1', () => normalQuantile(1.01)],
    ['p not a number', () => studentTQuantile(Number.NaN, 3)],
    ['p negative', () => chiSquareQuantile(-0.1, 3)],
    ['x not a number', () => fUpperTail(Number.NaN, 1, 1)],
    ['z not a number', () => normalCdf(Number.NaN)],
    ['incomplete gamma, a = 0', () => upperIncompleteGamma(0, 1)],
    ['incomplete gamma, x < 0', () => upperIncompleteGamma(1, -1)],
  ])('refuses %s in a sentence', (_, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(/ /);
  });
});

describe('for all arguments', () => {
  it('quantiles undo distribution functions', () => {
    fc.assert(
      fc.property(anyP, anyDof, (p, dof) => {
        expectClose(normalCdf(normalQuantile(p)), p, { relative: 1e-12 });
        expectClose(studentTCdf(studentTQuantile(p, dof), dof), p, { relative: 1e-9 });
        expectClose(chiSquareCdf(chiSquareQuantile(p, dof), dof), p, { relative: 1e-9 });
      }),
      run,
    );
  });

  it('χ² tails complement each other, and 2 degrees of freedom are an exponential', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 600, noNaN: true }), anyDof, (x, dof) => {
        expectClose(chiSquareCdf(x, dof) + chiSquareUpperTail(x, dof), 1, { absolute: 1e-12 });
        expectClose(chiSquareUpperTail(x, 2), Math.exp(-x / 2), { relative: 1e-12 });
      }),
      run,
    );
  });

  it('F with one degree of freedom is t squared', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 40, noNaN: true }), anyDof, (t, dof) => {
        expectClose(fUpperTail(t * t, 1, dof), 2 * studentTCdf(-t, dof), { relative: 1e-9 });
      }),
      run,
    );
  });

  it('the density of t is the slope of its distribution function', () => {
    fc.assert(
      fc.property(fc.double({ min: -8, max: 8, noNaN: true }), anyDof, (t, dof) => {
        const h = 1e-4;
        const slope = (studentTCdf(t + h, dof) - studentTCdf(t - h, dof)) / (2 * h);
        expectClose(Math.exp(studentTLogPdf(t, dof)), slope, { relative: 1e-5, absolute: 1e-10 });
      }),
      run,
    );
  });
});

describe('the fast tails', () => {
  it('are the plain ones: normal', () => {
    for (let z = -12; z < 30; z += 0.0173)
      expectClose(normalUpperTail(z, normalDensity(z)), normalCdf(-z), { relative: 2e-13, because: `z = ${z}` });
  });

  it.each([0.5, 1, 2.3, 5, 18, 77, 400, 2000])('are the plain ones: t with %d degrees of freedom', (dof) => {
    for (let t = -12; t < 30; t += 0.0473) {
      const fast = studentTUpperTail(t, dof, Math.exp(studentTLogPdf(t, dof)));
      const plain = studentTCdf(-t, dof);
      if (plain > 1e-200) expectClose(fast, plain, { relative: 3e-13, because: `t = ${t}` });
    }
    expect(studentTUpperTail(0, dof, 1)).toBe(0.5);
  });
});
