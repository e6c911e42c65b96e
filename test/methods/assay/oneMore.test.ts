import { describe, expect, it } from 'vitest';
import { lnFigure } from '../../../src/methods/assay/figures.ts';
import { jointAssay } from '../../../src/methods/assay/joint.ts';
import { halfWidth, lnAreaAfter, type Proposal } from '../../../src/methods/assay/oneMore.ts';
import type { AssayCable } from '../../../src/methods/assay/row.ts';
import { lnLikelihoodOfSight } from '../../../src/methods/metal/eye.ts';
import { metalHypotheses } from '../../../src/methods/metal/hypotheses.ts';
import { mixtureMean } from '../../../src/numerics/mixture.ts';
import { expectClose } from '../../tolerance.ts';
import {
  cableOf,
  copperOf,
  EVERYTHING,
  MASS_AND_OHMS,
  massRow,
  ohmsRow,
  type Readings,
  strandsRow,
  tools,
} from './bench.ts';

const TRUTH = copperOf(33.6);
const COPPER = metalHypotheses().filter((m) => m.metal === 'copper');
const nothing: Proposal = { row: null, sight: null, shrink: {} };
const one = (cable: AssayCable, inputs = tools(), metals = metalHypotheses()) => {
  const joint = jointAssay([cable], inputs, metals);
  return { joint, assay: joint.cables[0] };
};
const widthNow = (cable: AssayCable, inputs = tools()) => halfWidth(lnFigure(one(cable, inputs).assay, 'area'), 0.95);

describe('what one more measurement would buy', () => {
  const PROMISES = [
    { what: 'ohms after mass', have: { weighed: [0.3] }, row: ohmsRow(TRUTH, 1, 0) },
    { what: 'mass after ohms', have: { ohmed: { over: 1 } }, row: massRow(TRUTH, 0.3, 'new') },
    { what: 'strands after mass and ohms', have: MASS_AND_OHMS, row: strandsRow(TRUTH, 665) },
    { what: 'a second piece', have: MASS_AND_OHMS, row: massRow(TRUTH, 0.15, 'new') },
  ];
  it.each(PROMISES)('$what: kept, when the reading comes out as foretold', ({ have, row }) => {
    const cable = cableOf('x', TRUTH, have as Readings);
    const { joint, assay } = one(cable);
    const { y: _, ...proposed } = row;
    const promised = halfWidth(lnAreaAfter(joint, assay, { ...nothing, row: proposed }), 0.95);
    // The truth here is the middle of what is expected, so the true reading is the foretold one to within a hair.
    const kept = widthNow({ ...cable, rows: [...cable.rows, row] });
    expectClose(promised, kept, { relative: 0.04 });
    expect(promised).toBeLessThan(widthNow(cable) * 1.001);
  });

  it('a look at the strands: kept exactly', () => {
    const sight = lnLikelihoodOfSight([{ look: 'scraped_strand', seen: 'red through', count: null, seenIn: null }]);
    const cable = cableOf('x', TRUTH, MASS_AND_OHMS);
    const { joint, assay } = one(cable);
    const promised = halfWidth(lnAreaAfter(joint, assay, { ...nothing, sight }), 0.95);
    expectClose(promised, widthNow({ ...cable, sight }), { relative: 1e-3 });
    expect(promised).toBeLessThan(widthNow(cable));
  });

  it('a tool checked: kept exactly', () => {
    const cable = cableOf('x', TRUTH, EVERYTHING);
    const { joint, assay } = one(cable);
    const shrink = { micrometer: 0.25, 'meter gain': 0.25 };
    const promised = halfWidth(lnAreaAfter(joint, assay, { ...nothing, shrink }), 0.95);
    const checked = tools().map((i) => (i.input in shrink ? { ...i, sd: i.sd / 4, limit: i.limit / 4 } : i));
    expectClose(promised, widthNow(cable, checked), { relative: 1e-3 });
    expect(promised).toBeLessThan(widthNow(cable));
  });

  it('nothing more changes nothing', () => {
    const cable = cableOf('x', TRUTH, EVERYTHING);
    const { joint, assay } = one(cable);
    expectClose(halfWidth(lnAreaAfter(joint, assay, nothing), 0.95), widthNow(cable), { relative: 1e-4 });
  });

  it('a reading that comes out as foretold moves nothing, however the cable is laid and the tools are off', () => {
    for (const lay of [1.005, 1.034, 1.065]) {
      const truth = copperOf(33.6, { lay });
      const cable = cableOf('x', truth, { ohmed: { over: 1, above20: 9 }, strands: 665 }, { strands: 0.01 });
      const { joint, assay } = one(cable, tools(), COPPER);
      const top = [...assay.components].sort((a, b) => b.weight - a.weight)[0];
      const only = { ...assay, components: [top] };
      for (const row of [massRow(truth, 0.3, 'new'), ohmsRow(truth, 2, -5), strandsRow(truth, 665)]) {
        // What scatters in the new reading is its own, not that of a reading already made.
        const own = row.own.map((o) => ({ ...o, input: `one more ${o.input}` }));
        const { y: _, ...proposed } = { ...row, own };
        const after = lnAreaAfter(joint, only, { ...nothing, row: proposed });
        expectClose(mixtureMean(after), top.answer.x[0], { absolute: 1e-8, because: `${row.kind} at lay ${lay}` });
      }
    }
  });
});
