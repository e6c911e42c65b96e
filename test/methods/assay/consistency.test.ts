/** Gross errors: what disagreement is seen, and which reading is named. */
import { describe, expect, it } from 'vitest';
import { consistency, standardisedResiduals } from '../../../src/methods/assay/consistency.ts';
import { lnFigure } from '../../../src/methods/assay/figures.ts';
import { jointAssay } from '../../../src/methods/assay/joint.ts';
import { mixtureInterval } from '../../../src/numerics/mixture.ts';
import { expectClose } from '../../tolerance.ts';
import { cableOf, copperOf, EVERYTHING, MASS_AND_OHMS, type Readings, type Slips, tools } from './bench.ts';

const TRUTH = copperOf(33.6);
function assayOf(readings: Readings, slips: Slips = {}, truth = TRUTH) {
  return jointAssay([cableOf('x', truth, readings, slips)], tools()).cables[0];
}

describe('readings that agree', () => {
  it.each([EVERYTHING, MASS_AND_OHMS])('ask for nothing to be taken again', (readings) => {
    const c = consistency(assayOf(readings))!;
    expect(c.recheck).toBeNull();
    expect(c.off).toBeNull();
    expect(c.p).toBeGreaterThan(0.5);
    expect(c.dof).toBe(assayOf(readings).cable.rows.length - 1);
    for (const belief of Object.values(c.faultBelief)) expect(belief).toBeLessThan(0.03);
  });

  it('are not judged where there is one only', () => {
    expect(consistency(assayOf({ weighed: [0.3] }))).toBeNull();
    expect(standardisedResiduals(assayOf({ weighed: [0.3] }))).toEqual([null]);
  });
});

describe('one gross error', () => {
  const GIVEN: readonly (readonly [string, Slips, string, number])[] = [
    ['one bundle of seven left out of the count', { strands: Math.log(6 / 7) }, 'strands', 6 / 7 - 1],
    ['a bundle of seven counted twice', { strands: Math.log(8 / 7) }, 'strands', 8 / 7 - 1],
    ['two wires instead of four: 0.3 mΩ on 0.53', { resistance: Math.log(1 + 0.3 / 0.53) }, 'resistance', 0.3 / 0.53],
    ['a weight a tenth too large', { mass: Math.log(1.1) }, 'mass', 0.1],
    ['grams typed with a digit wrong', { mass: Math.log(0.62) }, 'mass', -0.38],
  ];
  it.each(GIVEN)('%s', (_, slips, kind, off) => {
    const assay = assayOf(EVERYTHING, slips);
    const c = consistency(assay)!;
    expect(c.recheck).toBe(kind);
    expectClose(c.off!, off, { absolute: 0.05, because: 'lay and constants are free within their spread' });
    expect(c.p < 0.01 || c.faultBelief[kind as 'mass'] > 0.5).toBe(true);
  });

  it('does not carry the area away where the other two readings hold it', () => {
    for (const [, slips] of GIVEN) {
      const [low, high] = mixtureInterval(lnFigure(assayOf(EVERYTHING, slips), 'area'), 0.95).map(Math.exp);
      expect(low * 1e6).toBeLessThan(33.6);
      expect(high * 1e6).toBeGreaterThan(33.6);
    }
  });

  it('of one strand in nineteen is below what redundancy can see', () => {
    const c = consistency(assayOf(EVERYTHING, { strands: Math.log(18 / 19) }))!;
    expect(c.faultBelief.strands).toBeLessThan(0.9);
  });

  it('stands out among residuals as the largest', () => {
    const assay = assayOf(EVERYTHING, { strands: Math.log(6 / 7) });
    const residuals = standardisedResiduals(assay).map((r) => Math.abs(r ?? 0));
    const at = assay.cable.rows.findIndex((row) => row.kind === 'strands');
    expect(residuals[at]).toBe(Math.max(...residuals));
    expect(residuals[at]).toBeGreaterThan(2.5);
  });
});
