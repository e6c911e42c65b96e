import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { oneWayAnalysis } from '../../src/numerics/analysisOfVariance.ts';
import { leastSquares } from '../../src/numerics/leastSquares.ts';
import { SeededDraws } from '../../src/numerics/random.ts';
import {
  correlationCoefficient,
  lineAt,
  lineThroughOrigin,
  polynomial,
  straightLine,
} from '../../src/numerics/regression.ts';
import { expectClose } from '../tolerance.ts';

describe('straight lines', () => {
  it('points on a line give the line, with no error', () => {
    const line = straightLine([1, 2, 3, 4], [5, 7, 9, 11]);
    expect([line.intercept, line.slope, line.residualSd, line.rSquared]).toEqual([3, 2, 0, 1]);
  });

  it('worked by hand: 0 0, 1 1, 2 1', () => {
    // x̄ 1, ȳ 2/3, Sxx 2, Sxy 1: slope ½, intercept 1/6; residuals −1/6, 1/3, −1/6: s² = 1/6.
    const line = straightLine([0, 1, 2], [0, 1, 1]);
    expectClose(line.slope, 0.5, { relative: 1e-15 });
    expectClose(line.intercept, 1 / 6, { relative: 1e-14 });
    expectClose(line.residualSd, Math.sqrt(1 / 6), { relative: 1e-14 });
    expectClose(line.slopeError, Math.sqrt(1 / 12), { relative: 1e-14 });
    expectClose(line.interceptError, Math.sqrt((1 / 6) * (1 / 3 + 1 / 2)), { relative: 1e-14 });
    expectClose(line.rSquared, 0.75, { relative: 1e-14 });
    expectClose(line.fRatio, 3, { relative: 1e-13 });
    expectClose(correlationCoefficient([0, 1, 2], [0, 1, 1]), Math.sqrt(0.75), { relative: 1e-14 });
    // At x̄ only the mean is uncertain.
    expectClose(lineAt(line, 1).u, Math.sqrt(1 / 6 / 3), { relative: 1e-13 });
  });

  it('through the origin, by hand: 1 2, 2 3', () => {
    const line = lineThroughOrigin([1, 2], [2, 3]);
    expectClose(line.slope, 8 / 5, { relative: 1e-15 });
    expectClose(line.residualSd, Math.sqrt(0.2), { relative: 1e-14 });
    expectClose(line.slopeError, Math.sqrt(0.2 / 5), { relative: 1e-14 });
  });

  it('standard errors are the scatter that the estimates really have', () => {
    const draws = new SeededDraws('7265677265737321');
    const x = [1, 2, 4, 7, 11];
    let squares = 0;
    let claimed = 0;
    const n = 5000;
    for (let i = 0; i < n; i++) {
      const line = straightLine(
        x,
        x.map((value) => 2 + 0.5 * value + 0.3 * draws.normal()),
      );
      squares += (line.slope - 0.5) ** 2;
      claimed += line.slopeError ** 2;
    }
    expectClose(claimed / squares, 1, { absolute: 0.1, because: 'four standard errors of a ratio of 5000 squares' });
  });

  it('agrees with the general routine', () => {
    const points = fc.array(
      fc.tuple(fc.double({ min: -50, max: 50, noNaN: true }), fc.double({ min: -50, max: 50, noNaN: true })),
      { minLength: 4, maxLength: 20 },
    );
    fc.assert(
      fc.property(points, (pairs) => {
        const x = pairs.map(([a], i) => a + i * 7);
        const y = pairs.map(([, b]) => b);
        const line = straightLine(x, y);
        const fit = polynomial(x, y, 1);
        const scale = 1e-9 * (1 + line.interceptError + Math.abs(line.intercept));
        expectClose(fit.coefficients[0], line.intercept, { absolute: scale });
        expectClose(fit.coefficients[1], line.slope, { absolute: scale });
        expectClose(fit.errors[1], line.slopeError, { relative: 1e-8, absolute: 1e-9 });
        expectClose(fit.residualSd, line.residualSd, { relative: 1e-8, absolute: 1e-9 });
      }),
      { seed: 20261125 },
    );
  });
});

describe('least squares', () => {
  it('residuals stand square on every column', () => {
    const draws = new SeededDraws('7371756172657321');
    const rows = Array.from({ length: 12 }, () => [1, draws.normal(), draws.normal(), draws.normal()]);
    const y = rows.map(() => draws.normal());
    const { coefficients, covariance, errors } = leastSquares(rows, y);
    const residuals = rows.map((row, i) => y[i] - row.reduce((sum, value, j) => sum + value * coefficients[j], 0));
    for (let j = 0; j < 4; j++) {
      expectClose(
        residuals.reduce((sum, r, i) => sum + r * rows[i][j], 0),
        0,
        { absolute: 1e-13 },
      );
      expectClose(covariance[j][j], errors[j] ** 2, { relative: 1e-14 });
      for (let k = 0; k < 4; k++) expectClose(covariance[j][k], covariance[k][j], { relative: 1e-12, absolute: 1e-16 });
    }
  });

  it('the covariance is that of two columns worked by hand', () => {
    // Columns 1 1 1 and −1 0 1 are square to each other: XᵀX = diag(3, 2); residual squares of y = 0 3 0: 6.
    const fit = leastSquares(
      [
        [1, -1],
        [1, 0],
        [1, 1],
      ],
      [0, 3, 0],
    );
    expectClose(fit.coefficients[0], 1, { relative: 1e-15 });
    expectClose(fit.coefficients[1], 0, { absolute: 1e-15 });
    expectClose(fit.residualSquares, 6, { relative: 1e-15 });
    expectClose(fit.errors[0], Math.SQRT2, { relative: 1e-15 });
    expectClose(fit.errors[1], Math.sqrt(3), { relative: 1e-15 });
  });

  it.each([
    [
      'columns that depend on each other',
      () =>
        leastSquares(
          [
            [1, 2, 3],
            [1, 5, 6],
            [1, 7, 8],
            [1, 9, 10],
          ],
          [1, 2, 3, 4],
        ),
    ],
    [
      'a column of zeros',
      () =>
        leastSquares(
          [
            [1, 0],
            [1, 0],
            [1, 0],
          ],
          [1, 2, 3],
        ),
    ],
    [
      'too few rows',
      () =>
        leastSquares(
          [
            [1, 2],
            [1, 3],
          ],
          [1, 2],
        ),
    ],
    ['lengths that differ', () => leastSquares([[1], [1], [1]], [1, 2])],
    ['ragged rows', () => leastSquares([[1, 2], [1], [1, 3]], [1, 2, 3])],
    ['equal x', () => straightLine([2, 2, 2], [1, 2, 3])],
    ['two points', () => straightLine([1, 2], [1, 2])],
    ['a point that is no number', () => straightLine([1, 2, Number.NaN], [1, 2, 3])],
    ['x all 0 through the origin', () => lineThroughOrigin([0, 0], [1, 2])],
    ['a degree that is none', () => polynomial([1, 2, 3, 4], [1, 2, 3, 4], 1.5)],
    ['values that do not vary', () => correlationCoefficient([1, 1], [1, 2])],
    ['one group', () => oneWayAnalysis([[1, 2, 3]])],
    ['groups of one value', () => oneWayAnalysis([[1], [2]])],
  ])('refuses %s', (_, call) => {
    expect(call).toThrow(RangeError);
  });
});

describe('analysis of variance', () => {
  it('two groups, by hand', () => {
    // Means 2 and 5, grand mean 3.5: between 3·1.5²·2 = 13.5; within 2 + 2 = 4 with 4 degrees of freedom.
    const found = oneWayAnalysis([
      [1, 2, 3],
      [4, 5, 6],
    ]);
    expectClose(found.betweenSquares, 13.5, { relative: 1e-15 });
    expectClose(found.withinSquares, 4, { relative: 1e-15 });
    expectClose(found.fRatio, 13.5, { relative: 1e-15 });
    // t = √13.5 on 4 degrees of freedom, two-sided: computed independently (scipy).
    expectClose(found.p, 0.02131164, { relative: 1e-6 });
  });
});
