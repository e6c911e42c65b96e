import { expect } from 'vitest';

/** How far a number may lie from the wanted one. Give `relative`, or `absolute` with a reason. */
export interface Tolerance {
  /** Largest |got − wanted| as a share of |wanted|. Not for a wanted value of 0: there use `absolute`. */
  relative?: number;
  /** Largest |got − wanted| in the unit of the value. */
  absolute?: number;
  /** Why the tolerance is what it is, or where the wanted value comes from; printed on failure. */
  because?: string;
}

/**
 * Digits in which two numbers agree: −log10(|got − wanted| / |wanted|), the measure in which NIST judges statistical
 * programs. Equal numbers give 17 (more than a double holds); for a wanted value of 0 the plain difference is taken.
 */
export function digitsOfAgreement(got: number, wanted: number): number {
  if (got === wanted) return 17;
  const scale = wanted === 0 ? 1 : Math.abs(wanted);
  const digits = -Math.log10(Math.abs(got - wanted) / scale);
  return Number.isFinite(digits) ? Math.min(17, digits) : Number.NEGATIVE_INFINITY;
}

/**
 * Asserts that `got` lies within the tolerance of `wanted`. A failure prints got, wanted, the digits in which they agree
 * and the reason. With both tolerances given, either one suffices. NaN never passes.
 *
 * @throws Error (a failed assertion), or RangeError when no usable tolerance was given.
 */
export function expectClose(got: number, wanted: number, tolerance: Tolerance): void {
  const { relative, absolute, because } = tolerance;
  if (relative === undefined && absolute === undefined)
    throw new RangeError('give a relative or an absolute tolerance');
  if (wanted === 0 && absolute === undefined) throw new RangeError('a wanted value of 0 needs an absolute tolerance');
  const allowed = Math.max(absolute ?? 0, (relative ?? 0) * Math.abs(wanted));
  const difference = got === wanted ? 0 : Math.abs(got - wanted);
  const digits = digitsOfAgreement(got, wanted).toFixed(1);
  expect(
    difference <= allowed,
    `got ${got}, wanted ${wanted}: ${digits} digits agree, difference ${difference}, allowed ${allowed}` +
      (because ? ` (${because})` : ''),
  ).toBe(true);
}

/** Asserts that two numbers agree in at least `digits` decimal digits, see {@link digitsOfAgreement}. */
export function expectDigits(got: number, wanted: number, digits: number, because = ''): void {
  const agree = digitsOfAgreement(got, wanted);
  expect(
    agree >= digits,
    `got ${got}, wanted ${wanted}: ${agree.toFixed(2)} digits agree, at least ${digits} asked${because ? ` (${because})` : ''}`,
  ).toBe(true);
}
