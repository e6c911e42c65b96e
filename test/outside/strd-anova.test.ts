/**
 * Source of data and certified values: National Institute of Standards and Technology, Statistical Reference Datasets (StRD),
 * Analysis of Variance, SiRstv (lower difficulty) and AtmWtAg (average difficulty, seven constant leading digits). Both were also
 * computed independently in high precision.
 */
import { describe, expect, it } from 'vitest';
import { oneWayAnalysis } from '../../src/numerics/analysisOfVariance.ts';
import { digitsOfAgreement, expectDigits } from '../tolerance.ts';
import { readTable } from './readTable.ts';

function grouped(instrument: number[], values: number[]): number[][] {
  const names = [...new Set(instrument)];
  return names.map((name) => values.filter((_, i) => instrument[i] === name));
}

describe('NIST StRD, analysis of variance', () => {
  it('SiRstv', () => {
    const table = readTable('strd-sirstv.csv');
    const found = oneWayAnalysis(grouped(table.instrument, table.ohm_cm));
    expect([found.betweenDof, found.withinDof]).toEqual([4, 20]);
    expectDigits(found.betweenSquares, 5.11462616e-2, 12);
    expectDigits(found.withinSquares, 2.1663656e-1, 12);
    expectDigits(found.fRatio, 1.18046237440255, 12);
    expectDigits(found.rSquared, 1.90999039051129e-1, 12);
    expectDigits(found.residualSd, 1.04076068334656e-1, 12);
    expect(digitsOfAgreement(1.01 * found.fRatio, 1.18046237440255)).toBeLessThan(3);
  });

  it('AtmWtAg: no more than nine digits survive reading the data into doubles', () => {
    const table = readTable('strd-atmwtag.csv');
    const found = oneWayAnalysis(grouped(table.instrument, table.AgWt));
    expect([found.betweenDof, found.withinDof]).toEqual([1, 46]);
    expectDigits(found.betweenSquares, 3.638341875e-9, 8);
    expectDigits(found.withinSquares, 1.04951729166667e-8, 8);
    expectDigits(found.fRatio, 15.946733567793, 8);
    expectDigits(found.rSquared, 2.57426544538321e-1, 8);
    expectDigits(found.residualSd, 1.5104831444641e-5, 8);
  });
});
