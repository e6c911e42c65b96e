/**
 * Source of data and certified values: National Institute of Standards and Technology, Statistical Reference Datasets (StRD),
 * Linear Least Squares Regression. Norris was also computed independently in high precision, as was Wampler3.
 */
import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../src/numerics/leastSquares.ts';
import { lineThroughOrigin, polynomial, straightLine } from '../../src/numerics/regression.ts';
import { digitsOfAgreement, expectClose, expectDigits } from '../tolerance.ts';
import { readTable } from './readTable.ts';

function expectAll(got: number[], wanted: number[], floor: number, what: string): void {
  expect(got.length).toBe(wanted.length);
  wanted.forEach((value, k) => {
    expectDigits(got[k], value, floor, `${what} ${k}`);
  });
}

describe('NIST StRD, linear least squares', () => {
  it('Norris: a straight line', () => {
    const { x, y } = readTable('strd-norris.csv');
    const line = straightLine(x, y);
    expect(line.dof).toBe(34);
    expectDigits(line.intercept, -0.262323073774029, 12, 'intercept');
    expectDigits(line.interceptError, 0.232818234301152, 12, 'its standard error');
    expectDigits(line.slope, 1.00211681802045, 14, 'slope');
    expectDigits(line.slopeError, 0.429796848199937e-3, 12, 'its standard error');
    expectDigits(line.residualSd, 0.884796396144373, 12, 'residual standard deviation');
    expectDigits(line.rSquared, 0.999993745883712, 14, 'R²');
    expectDigits(line.fRatio, 5436385.54079785, 12, 'F');
    // The same by the general routine.
    const fit = polynomial(x, y, 1);
    expectAll(fit.coefficients, [-0.262323073774029, 1.00211681802045], 12, 'coefficient');
    expectAll(fit.errors, [0.232818234301152, 0.429796848199937e-3], 12, 'standard error');
    expectClose(digitsOfAgreement(1.01 * line.slopeError, 0.429796848199937e-3), 2, { absolute: 0.1 });
  });

  it('NoInt1 and NoInt2: lines through the origin', () => {
    const first = lineThroughOrigin(
      Array.from({ length: 11 }, (_, i) => 60 + i),
      Array.from({ length: 11 }, (_, i) => 130 + i),
    );
    expectDigits(first.slope, 2.07438016528926, 14);
    expectDigits(first.slopeError, 0.165289256198347e-1, 13);
    expectDigits(first.residualSd, 3.56753034006338, 13);
    const second = lineThroughOrigin([4, 5, 6], [3, 4, 4]);
    expectDigits(second.slope, 0.727272727272727, 14);
    expectDigits(second.slopeError, 0.420827318078432e-1, 13);
    expectDigits(second.residualSd, 0.369274472937998, 13);
  });

  it('Pontius: a parabola, coefficients over twelve powers of ten', () => {
    const { x, y } = readTable('strd-pontius.csv');
    const fit = polynomial(x, y, 2);
    expectAll(
      fit.coefficients,
      [0.673565789473684e-3, 0.732059160401003e-6, -0.316081871345029e-14],
      11,
      'coefficient',
    );
    expectAll(fit.errors, [0.107938612033077e-3, 0.157817399981659e-9, 0.486652849992036e-16], 11, 'standard error');
    expectDigits(fit.residualSd, 0.205177424076185e-3, 12);
    expectDigits(fit.rSquared, 0.999999900178537, 14);
  });

  it('Longley: six nearly parallel columns', () => {
    const { y, x1, x2, x3, x4, x5, x6 } = readTable('strd-longley.csv');
    const fit = leastSquares(
      y.map((_, i) => [1, x1[i], x2[i], x3[i], x4[i], x5[i], x6[i]]),
      y,
    );
    const coefficients = [
      -3482258.63459582, 15.0618722713733, -0.35819179292591e-1, -2.02022980381683, -1.03322686717359,
      -0.511041056535807e-1, 1829.15146461355,
    ];
    const errors = [
      890420.383607373, 84.9149257747669, 0.334910077722432e-1, 0.488399681651699, 0.214274163161675, 0.22607320006937,
      455.478499142212,
    ];
    expectAll(fit.coefficients, coefficients, 10, 'coefficient');
    expectAll(fit.errors, errors, 9, 'standard error');
    expectDigits(fit.residualSd, 304.854073561965, 12);
    expectDigits(fit.residualSquares, 836424.055505915, 12);
  });

  it('Filip: a polynomial of degree 10, which a normal-equations program cannot do', () => {
    const { x, y } = readTable('strd-filip.csv');
    const fit = polynomial(x, y, 10);
    const coefficients = [
      -1467.4896142298, -2772.17959193342, -2316.37108160893, -1127.97394098372, -354.478233703349, -75.1242017393757,
      -10.8753180355343, -1.06221498588947, -0.670191154593408e-1, -0.246781078275479e-2, -0.402962525080404e-4,
    ];
    const errors = [
      298.084530995537, 559.77986547495, 466.477572127796, 227.204274477751, 71.6478660875927, 15.28971787474,
      2.23691159816033, 0.221624321934227, 0.142363763154724e-1, 0.535617408889821e-3, 0.896632837373868e-5,
    ];
    expectAll(fit.coefficients, coefficients, 6.5, 'coefficient');
    expectAll(fit.errors, errors, 6.5, 'standard error');
    // The terms reach 5·10⁶, whose last bit in a double is 10⁻⁹: that leaves 7 digits of a residual of 3·10⁻³.
    expectDigits(fit.residualSd, 0.334801051324544e-2, 7);
    expectDigits(fit.rSquared, 0.99672741618562, 9);
  });

  const WAMPLER_ERRORS = [
    2152.3262467817, 2363.55173469681, 779.343524331583, 101.47550755035, 5.64566512170752, 0.112324854679312,
  ];

  it.each([
    { set: 'wampler1', ratio: 1, noise: 0, floor: 9 },
    { set: 'wampler2', ratio: 0.1, noise: 0, floor: 12 },
    { set: 'wampler3', ratio: 1, noise: 1, floor: 9 },
    { set: 'wampler4', ratio: 1, noise: 100, floor: 8 },
    { set: 'wampler5', ratio: 1, noise: 10000, floor: 6 },
  ])('$set: degree 5, noise $noise', ({ set, ratio, noise, floor }) => {
    const { x, y } = readTable(`strd-${set}.csv`);
    const fit = polynomial(x, y, 5);
    expectAll(
      fit.coefficients,
      [0, 1, 2, 3, 4, 5].map((k) => ratio ** k),
      floor,
      'coefficient',
    );
    if (noise === 0) expectClose(fit.residualSd, 0, { absolute: 1e-7, because: 'certified to be 0' });
    else {
      expectAll(
        fit.errors,
        WAMPLER_ERRORS.map((e) => e * noise),
        10,
        'standard error',
      );
      expectDigits(fit.residualSd, 2360.14502379268 * noise, 12);
    }
  });
});
