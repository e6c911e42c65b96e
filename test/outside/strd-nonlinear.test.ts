/**
 * Source of data, certified values, starting values and standard deviations: National Institute of Standards and Technology,
 * Statistical Reference Datasets (StRD), Nonlinear Least Squares Regression. Read in reproductions of the data files; Misra1a
 * was also computed independently in high precision. Both starts of each set are tried.
 */
import { describe, expect, it } from 'vitest';
import { levenbergMarquardt } from '../../src/numerics/levenbergMarquardt.ts';
import { digitsOfAgreement, expectDigits } from '../tolerance.ts';
import { readTable } from './readTable.ts';

interface Certified {
  name: string;
  data: { x: number[]; y: number[] };
  model: (b: readonly number[], x: number) => number;
  starts: number[][];
  parameters: number[];
  deviations: number[];
  residualSquares: number;
  dof: number;
  /** Digits in which parameters and standard deviations agree at least. */
  floor: [parameters: number, deviations: number];
}

const { exp } = Math;
const columns = (name: string) => readTable(name) as { x: number[]; y: number[] };

const SETS: readonly Certified[] = [
  {
    name: 'Misra1a (lower difficulty; the form of a heating curve)',
    data: columns('strd-misra1.csv'),
    model: ([b1, b2], x) => b1 * (1 - exp(-b2 * x)),
    starts: [
      [500, 0.0001],
      [250, 0.0005],
    ],
    parameters: [2.3894212918e2, 5.5015643181e-4],
    deviations: [2.7070075241, 7.2668688436e-6],
    residualSquares: 1.2455138894e-1,
    dof: 12,
    floor: [9, 8],
  },
  {
    name: 'Misra1b (lower difficulty)',
    data: columns('strd-misra1.csv'),
    model: ([b1, b2], x) => b1 * (1 - (1 + (b2 * x) / 2) ** -2),
    starts: [
      [500, 0.0001],
      [300, 0.0002],
    ],
    parameters: [3.3799746163e2, 3.9039091287e-4],
    deviations: [3.1643950207, 4.2547321834e-6],
    residualSquares: 7.5464681533e-2,
    dof: 12,
    floor: [9, 7],
  },
  {
    name: 'Lanczos3 (lower difficulty; three exponentials)',
    data: columns('strd-lanczos3.csv'),
    model: ([b1, b2, b3, b4, b5, b6], x) => b1 * exp(-b2 * x) + b3 * exp(-b4 * x) + b5 * exp(-b6 * x),
    starts: [
      [1.2, 0.3, 5.6, 5.5, 6.5, 7.6],
      [0.5, 0.7, 3.6, 4.2, 4, 6.3],
    ],
    parameters: [8.6816414977e-2, 9.5498101505e-1, 8.4400777463e-1, 2.9515951832, 1.5825685901, 4.9863565084],
    deviations: [1.7197908859e-2, 9.7041624475e-2, 4.1488663282e-2, 1.0766312506e-1, 5.8371576281e-2, 3.4436403035e-2],
    residualSquares: 1.6117193594e-8,
    dof: 18,
    floor: [6, 6],
  },
  {
    name: 'MGH17 (average difficulty; two exponentials over a constant)',
    data: columns('strd-mgh17.csv'),
    model: ([b1, b2, b3, b4, b5], x) => b1 + b2 * exp(-x * b4) + b3 * exp(-x * b5),
    starts: [
      [50, 150, -100, 1, 2],
      [0.5, 1.5, -1, 0.01, 0.02],
    ],
    parameters: [3.7541005211e-1, 1.9358469127, -1.4646871366, 1.286753464e-2, 2.2122699662e-2],
    deviations: [2.0723153551e-3, 2.2031669222e-1, 2.2175707739e-1, 4.4861358114e-4, 8.9471996575e-4],
    residualSquares: 5.4648946975e-5,
    dof: 28,
    floor: [7, 6],
  },
  {
    name: 'Thurber (higher difficulty)',
    data: columns('strd-thurber.csv'),
    model: ([b1, b2, b3, b4, b5, b6, b7], x) =>
      (b1 + x * (b2 + x * (b3 + x * b4))) / (1 + x * (b5 + x * (b6 + x * b7))),
    starts: [
      [1000, 1000, 400, 40, 0.7, 0.3, 0.03],
      [1300, 1500, 500, 75, 1, 0.4, 0.05],
    ],
    parameters: [
      1.28813968e3, 1.4910792535e3, 5.8323836877e2, 7.5416644291e1, 9.6629502864e-1, 3.9797285797e-1, 4.9727297349e-2,
    ],
    deviations: [
      4.6647963344, 3.9571156086e1, 2.8698696102e1, 5.567537027, 3.1333340687e-2, 1.4984928198e-2, 6.5842344623e-3,
    ],
    residualSquares: 5.6427082397e3,
    dof: 30,
    floor: [7, 6],
  },
  {
    name: 'BoxBOD (higher difficulty; the form of a heating curve)',
    data: { x: [1, 2, 3, 5, 7, 10], y: [109, 149, 149, 191, 213, 224] },
    model: ([b1, b2], x) => b1 * (1 - exp(-b2 * x)),
    starts: [
      [1, 1],
      [100, 0.75],
    ],
    parameters: [2.1380940889e2, 5.4723748542e-1],
    deviations: [1.2354515176e1, 1.0455993237e-1],
    residualSquares: 1.1680088766e3,
    dof: 4,
    floor: [8, 7],
  },
  {
    name: 'Rat43 (higher difficulty)',
    data: columns('strd-rat43.csv'),
    model: ([b1, b2, b3, b4], x) => b1 / (1 + exp(b2 - b3 * x)) ** (1 / b4),
    starts: [
      [100, 10, 1, 1],
      [700, 5, 0.75, 1.3],
    ],
    parameters: [6.996415127e2, 5.2771253025, 7.5962938329e-1, 1.2792483859],
    deviations: [1.6302297817e1, 2.0828735829, 1.9566123451e-1, 6.8761936385e-1],
    residualSquares: 8.786404908e3,
    // The data file says 9; with 15 observations and 4 parameters it is 11, and the certified deviations use 11.
    dof: 11,
    floor: [7, 6],
  },
];

const runs = SETS.flatMap((set) =>
  set.starts.map((start, i) => ({ set, start, title: `${set.name}, start ${i + 1}` })),
);

describe('NIST StRD, nonlinear least squares', () => {
  it.each(runs)('$title', ({ set, start }) => {
    const { x, y } = set.data;
    const fit = levenbergMarquardt((b) => x.map((v, i) => set.model(b, v) - y[i]), start, { tolerance: 1e-12 });
    expect(fit.dof).toBe(set.dof);
    set.parameters.forEach((wanted, k) => {
      expectDigits(fit.parameters[k], wanted, set.floor[0], `b${k + 1}`);
    });
    set.deviations.forEach((wanted, k) => {
      expectDigits(fit.errors[k], wanted, set.floor[1], `standard deviation of b${k + 1}`);
    });
    expectDigits(fit.residualSquares, set.residualSquares, 7, 'residual sum of squares');
    expect(digitsOfAgreement(2 * fit.errors[0], set.deviations[0]), 'a doubled error would be seen').toBeLessThan(1);
  });
});
