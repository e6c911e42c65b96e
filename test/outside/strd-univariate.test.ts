/**
 * Source of data and certified values: National Institute of Standards and Technology, Statistical Reference Datasets (StRD),
 * Univariate Summary Statistics (mean, standard deviation, lag-1 autocorrelation). The certified values were also computed
 * independently from the data in 60-digit arithmetic.
 *
 * The floors are digits of agreement for double arithmetic: 15 digits of certified value are given; where constant leading digits
 * have been spent on reading the data into doubles (NumAcc3, NumAcc4: 7 and 8 of them) that many fewer can be had.
 */
import { describe, expect, it } from 'vitest';
import { lag1Autocorrelation, mean, sampleStandardDeviation } from '../../src/numerics/describe.ts';
import { digitsOfAgreement, expectDigits } from '../tolerance.ts';
import { readTable } from './readTable.ts';

/** NumAcc2 to 4 are defined by rule: a first value, then 500 pairs 0.1 below and 0.1 above it. */
function alternating(first: number, low: number, high: number): number[] {
  return [first, ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? low : high))];
}

const SETS = [
  {
    name: 'Lottery',
    y: readTable('strd-lottery.csv').y,
    n: 218,
    mean: 518.95871559633,
    sd: 291.699727470969,
    lag1: -0.120948622967393,
    floors: [14.5, 14.5, 14],
  },
  {
    name: 'Lew',
    y: readTable('strd-lew.csv').y,
    n: 200,
    mean: -177.435,
    sd: 277.332168044316,
    lag1: -0.307304800605679,
    floors: [14.5, 14.5, 14],
  },
  {
    name: 'Mavro',
    y: readTable('strd-mavro.csv').y,
    n: 50,
    mean: 2.001856,
    sd: 0.000429123454003053,
    lag1: 0.937989183438248,
    floors: [14.5, 12, 12],
  },
  {
    name: 'Michelso',
    y: readTable('strd-michelso.csv').y,
    n: 100,
    mean: 299.8524,
    sd: 0.0790105478190518,
    lag1: 0.535199668621283,
    floors: [14.5, 13, 13],
  },
  { name: 'NumAcc1', y: [10000001, 10000003, 10000002], n: 3, mean: 10000002, sd: 1, lag1: -0.5, floors: [15, 15, 15] },
  {
    name: 'NumAcc2',
    y: alternating(1.2, 1.1, 1.3),
    n: 1001,
    mean: 1.2,
    sd: 0.1,
    lag1: -0.999,
    floors: [14.5, 14.5, 14.5],
  },
  {
    name: 'NumAcc3',
    y: alternating(1000000.2, 1000000.1, 1000000.3),
    n: 1001,
    mean: 1000000.2,
    sd: 0.1,
    lag1: -0.999,
    floors: [14.5, 9, 9],
  },
  {
    name: 'NumAcc4',
    y: alternating(10000000.2, 10000000.1, 10000000.3),
    n: 1001,
    mean: 10000000.2,
    sd: 0.1,
    lag1: -0.999,
    floors: [14.5, 7.5, 7.5],
  },
];

describe('NIST StRD, univariate', () => {
  it.each(SETS)('$name: mean, standard deviation and lag-1 autocorrelation', (set) => {
    expect(set.y.length, `${set.name} has as many values as NIST says`).toBe(set.n);
    expectDigits(mean(set.y), set.mean, set.floors[0], `${set.name} mean`);
    expectDigits(sampleStandardDeviation(set.y), set.sd, set.floors[1], `${set.name} standard deviation`);
    expectDigits(lag1Autocorrelation(set.y), set.lag1, set.floors[2], `${set.name} lag-1 autocorrelation`);
  });

  it('would notice one per cent, and the textbook one-pass formula', () => {
    const y = SETS[7].y;
    expect(digitsOfAgreement(1.01 * sampleStandardDeviation(y), 0.1)).toBeLessThan(3);
    // Σx² − (Σx)²/n loses all digits here; that is why it is not used.
    const sum = y.reduce((s, x) => s + x, 0);
    const squares = y.reduce((s, x) => s + x * x, 0);
    const onePass = Math.sqrt(Math.abs(squares - (sum * sum) / y.length) / (y.length - 1));
    expect(digitsOfAgreement(onePass, 0.1)).toBeLessThan(3);
  });
});
