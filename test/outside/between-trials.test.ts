/** Excess spread between groups of known uncertainty, against published analyses and an independent computation. */
import { describe, expect, it } from 'vitest';
import { excessSpread, scatterWith } from '../../src/numerics/excessSpread.ts';
import { expectClose } from '../tolerance.ts';

/**
 * Thirteen trials of one vaccine: cases and non-cases with it, cases and non-cases without it. C. S. Berkey et al. (1994) and
 * G. A. Colditz et al. (1994), as tabulated by H. C. van Houwelingen, L. R. Arends, T. Stijnen, Statistics in Medicine 21 (2002),
 * Table I, p. 594.
 */
const TRIALS: readonly (readonly [number, number, number, number])[] = [
  [4, 119, 11, 128],
  [6, 300, 29, 274],
  [3, 228, 11, 209],
  [62, 13536, 248, 12619],
  [33, 5036, 47, 5761],
  [180, 1361, 372, 1079],
  [8, 2537, 10, 619],
  [505, 87886, 499, 87892],
  [29, 7470, 45, 7232],
  [17, 1699, 65, 1600],
  [186, 50448, 141, 27197],
  [5, 2493, 3, 2338],
  [27, 16886, 29, 17825],
];

describe('excess spread of thirteen logarithms of odds ratios', () => {
  const values = TRIALS.map(([a, b, c, d]) => Math.log((a * d) / (b * c)));
  const variances = TRIALS.map(([a, b, c, d]) => 1 / a + 1 / b + 1 / c + 1 / d);
  const found = excessSpread(values, variances, 0.95);

  it('has the interval that is published for it', () => {
    // The metafor project's page on van Houwelingen et al. (2002): Q-profile interval 0.1302 to 1.1812.
    expectClose(found.interval[0], 0.1302, { absolute: 0.0001, because: 'one step of the last printed digit' });
    expectClose(found.interval[1], 1.1812, { absolute: 0.0001, because: 'one step of the last printed digit' });
  });

  it('agrees with SciPy 1.17.1 (brentq on the same equations): computed independently', () => {
    expectClose(found.scatter, 163.16491518079974, { relative: 1e-12 });
    expectClose(found.variance, 0.341205102177868, { relative: 1e-10 });
    expectClose(found.interval[0], 0.13014911523838804, { relative: 1e-10 });
    expectClose(found.interval[1], 1.1811857921569642, { relative: 1e-10 });
    expectClose(scatterWith(values, variances, found.variance).mean, -0.7454603905316224, { relative: 1e-10 });
  });
});

describe('excess spread of thirteen logarithms of risk ratios', () => {
  const values = TRIALS.map(([a, b, c, d]) => Math.log(a / (a + b) / (c / (c + d))));
  const variances = TRIALS.map(([a, b, c, d]) => 1 / a - 1 / (a + b) + 1 / c - 1 / (c + d));
  const found = excessSpread(values, variances, 0.95);

  it('is what is usually quoted: scatter 152.23, Paule–Mandel 0.318, interval 0.120 to 1.11 (from memory)', () => {
    expectClose(found.scatter, 152.233, { absolute: 0.0005, because: 'three decimals' });
    expectClose(found.variance, 0.318, { absolute: 0.0005, because: 'three decimals' });
    expectClose(found.interval[0], 0.1197, { absolute: 0.00005, because: 'four decimals' });
    expectClose(found.interval[1], 1.1115, { absolute: 0.00005, because: 'four decimals' });
  });
});

describe('excess spread of nine laboratories', () => {
  // Values and variances of an interlaboratory example of R. N. Kacker, Metrologia 41 (2004) 132; figures from memory, and what
  // follows from them computed independently with SciPy 1.17.1.
  const values = [61.0, 61.4, 62.21, 62.3, 62.34, 62.6, 62.7, 62.84, 65.9];
  const variances = [0.2025, 1.21, 0.09, 0.2025, 0.3844, 0.5625, 0.0676, 0.0225, 1.8225];
  const found = excessSpread(values, variances, 0.95);

  it('agrees in estimate, interval and mean', () => {
    expectClose(found.variance, 0.7053953092192388, { relative: 1e-10 });
    expectClose(found.interval[0], 0.06880368888096529, { relative: 1e-10 });
    expectClose(found.interval[1], 5.591598283138329, { relative: 1e-10 });
    expectClose(scatterWith(values, variances, found.variance).mean, 62.40761991132827, { relative: 1e-12 });
    expect(found.dof).toBe(8);
  });
});
