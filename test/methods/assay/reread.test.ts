import { describe, expect, it } from 'vitest';
import { probabilityCopperHeld } from '../../../src/methods/assay/copperHeld.ts';
import { lnFigure, metalBelief } from '../../../src/methods/assay/figures.ts';
import { jointAssay } from '../../../src/methods/assay/joint.ts';
import { rereading } from '../../../src/methods/assay/reread.ts';
import { mixtureMean, mixtureSd } from '../../../src/numerics/mixture.ts';
import { expectClose } from '../../tolerance.ts';
import { cableOf, copperOf, EVERYTHING, MASS_AND_OHMS, tools } from './bench.ts';

const REQUIRED = 33e-6;

describe('rereading the same rows at other values', () => {
  const cases = [
    { what: 'the same values', readings: MASS_AND_OHMS, moved: [0, 0] },
    { what: 'both a little lower', readings: MASS_AND_OHMS, moved: [-0.02, 0.03] },
    { what: 'a mass far off', readings: MASS_AND_OHMS, moved: [0.4, 0] },
    { what: 'clad by its product', readings: MASS_AND_OHMS, moved: [-0.9, 0.5] },
    { what: 'all kinds', readings: EVERYTHING, moved: [-0.03, 0.02, -0.06] },
  ];
  it.each(cases)('$what: as the joint assay of that cable alone', ({ readings, moved }) => {
    const cable = cableOf('one', copperOf(33.6), readings);
    const y = cable.rows.map((row, i) => row.y + moved[i]!);
    const got = rereading(cable, tools())(y);
    const rows = cable.rows.map((row, i) => ({ ...row, y: y[i]! }));
    const [wanted] = jointAssay([{ ...cable, rows }], tools()).cables;
    expectClose(probabilityCopperHeld(got, REQUIRED), probabilityCopperHeld(wanted!, REQUIRED), { absolute: 1e-7 });
    const metals = metalBelief(wanted!);
    for (const [metal, belief] of metals) expectClose(metalBelief(got).get(metal) ?? 0, belief, { absolute: 1e-7 });
    for (const figure of ['area', 'resistancePerMetre', 'lay'] as const) {
      const [mine, theirs] = [lnFigure(got, figure), lnFigure(wanted!, figure)];
      expectClose(mixtureMean(mine), mixtureMean(theirs), { absolute: 1e-7 });
      expectClose(mixtureSd(mine), mixtureSd(theirs), { relative: 1e-5 });
    }
  });

  it('moves with what is read', () => {
    const cable = cableOf('one', copperOf(33.6), MASS_AND_OHMS);
    const read = rereading(cable, tools());
    const base = cable.rows.map((row) => row.y);
    const lighter = base.map((y, i) => y + (cable.rows[i]!.kind === 'mass' ? -0.05 : 0.05));
    expect(mixtureMean(lnFigure(read(lighter), 'area'))).toBeLessThan(mixtureMean(lnFigure(read(base), 'area')) - 0.04);
  });
});
