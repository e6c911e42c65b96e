/** What must hold for any cable and any readings, whatever the numbers. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atLeast, atMost, outcomeOf } from '../../../src/methods/assay/conformity.ts';
import { standardisedResiduals } from '../../../src/methods/assay/consistency.ts';
import { probabilityCopperHeld } from '../../../src/methods/assay/copperHeld.ts';
import { lnFigure, metalBelief } from '../../../src/methods/assay/figures.ts';
import { jointAssay } from '../../../src/methods/assay/joint.ts';
import type { AssayCable } from '../../../src/methods/assay/row.ts';
import { spreadOfArea } from '../../../src/methods/assay/spread.ts';
import { lnLikelihoodOfSight } from '../../../src/methods/metal/eye.ts';
import { type Component, mixtureInterval, mixtureMean } from '../../../src/numerics/mixture.ts';
import { expectClose } from '../../tolerance.ts';
import { cableOf, copperOf, EVERYTHING, MASS_AND_OHMS, type Readings, tools } from './bench.ts';

const SEED = 20261125;
const runs = (numRuns: number) => ({ seed: SEED, numRuns });

const one = (cable: AssayCable, inputs = tools()) => {
  const joint = jointAssay([cable], inputs);
  return { joint, assay: joint.cables[0] };
};
const lnArea = (cable: AssayCable, inputs = tools()) => lnFigure(one(cable, inputs).assay, 'area');
const width = (ln: readonly Component[]) => {
  const [low, high] = mixtureInterval(ln, 0.95);
  return high - low;
};

const mm2 = fc.double({ min: 8, max: 120, noNaN: true });
const lay = fc.double({ min: 1.005, max: 1.065, noNaN: true });
const metal = fc.constantFrom(
  { density: 8890, resistivity: 1.717e-8 },
  { density: 8860, resistivity: 1.81e-8 },
  { density: 3480, resistivity: 2.7e-8 },
);
const truth = fc.tuple(mm2, lay, metal).map(([area, k, m]) => copperOf(area, { lay: k, ...m }));
const readings = fc.constantFrom<Readings>(
  { weighed: [0.3] },
  { ohmed: { over: 1 } },
  MASS_AND_OHMS,
  { weighed: [0.3], strands: 665 },
  EVERYTHING,
  { ...EVERYTHING, weighed: [0.15, 0.3, 0.15] },
);
/** Two kinds of reading or more: the metal is not left to its starting odds. */
const severalKinds = fc.constantFrom<Readings>(MASS_AND_OHMS, { weighed: [0.3], strands: 665 }, EVERYTHING);
const slip = fc.double({ min: -0.02, max: 0.02, noNaN: true });
const anyCable = fc
  .tuple(truth, readings, fc.record({ mass: slip, resistance: slip, strands: slip }))
  .map(([t, r, s]) => cableOf('x', t, r, s));

describe('order', () => {
  it('of rows and of tools changes nothing', () => {
    fc.assert(
      fc.property(anyCable, (cable) => {
        const plain = lnArea(cable);
        const turned = lnArea({ ...cable, rows: [...cable.rows].reverse() }, [...tools()].reverse());
        expectClose(mixtureMean(turned), mixtureMean(plain), { absolute: 1e-9 });
        expectClose(width(turned), width(plain), { relative: 1e-4, because: 'ln A starts from a variance of 4' });
      }),
      runs(60),
    );
  });

  it('of cables changes nothing that can be seen', () => {
    fc.assert(
      fc.property(fc.array(anyCable, { minLength: 2, maxLength: 6 }), (list) => {
        const cables = list.map((c, i) => ({ ...c, cable: `c${i}` }));
        const forth = jointAssay(cables, tools());
        const back = jointAssay([...cables].reverse(), tools());
        forth.cables.forEach((assay, i) => {
          const a = lnFigure(assay, 'area');
          const b = lnFigure(back.cables[cables.length - 1 - i], 'area');
          // Beliefs are found cable by cable, in passes until they stand still.
          expectClose(mixtureMean(b), mixtureMean(a), { absolute: 1e-3 * width(a) });
          expectClose(width(b), width(a), { relative: 1e-3 });
        });
      }),
      runs(25),
    );
  });
});

describe('scale', () => {
  it('a cable with so many times the metal is found to have so many times the area', () => {
    fc.assert(
      fc.property(truth, severalKinds, fc.double({ min: 0.7, max: 1.4, noNaN: true }), (t, r, factor) => {
        // Limits in per cent only, so that both cables are read equally well.
        const inputs = tools().map((i) => (i.unit === '1' || i.unit === 'K' ? i : { ...i, sd: 1e-12, limit: 1e-12 }));
        const thin = lnArea(cableOf('x', t, r), inputs);
        const thick = lnArea(cableOf('x', { ...t, area: t.area * factor }, r), inputs);
        const because =
          'before any reading very thin and very thick are a little less likely, which the far tails feel';
        expectClose(mixtureMean(thick) - mixtureMean(thin), Math.log(factor), {
          absolute: 0.02 * width(thin),
          because,
        });
        expectClose(width(thick), width(thin), { relative: 0.15, because });
      }),
      runs(40),
    );
  });

  it('more mass means more area, more ohms less, whatever else was read', () => {
    fc.assert(
      fc.property(truth, fc.double({ min: 0.001, max: 0.01, noNaN: true }), (t, more) => {
        const plain = mixtureMean(lnArea(cableOf('x', t, { weighed: [0.3] })));
        expect(mixtureMean(lnArea(cableOf('x', t, { weighed: [0.3] }, { mass: more })))).toBeGreaterThan(plain);
        const ohmed = { ohmed: { over: 1 } };
        const byOhms = mixtureMean(lnArea(cableOf('x', t, ohmed)));
        expect(mixtureMean(lnArea(cableOf('x', t, ohmed, { resistance: more })))).toBeLessThan(byOhms);
      }),
      runs(40),
    );
  });
});

describe('outcomes', () => {
  it('the probability of meeting falls as more is asked for, and so does the outcome', () => {
    const rank = { 'falls short': 0, 'not settled': 1, meets: 2 };
    fc.assert(
      fc.property(anyCable, mm2, fc.double({ min: 1, max: 1.3, noNaN: true }), (cable, required, more) => {
        const { assay } = one(cable);
        const ln = lnFigure(assay, 'area');
        const less = atLeast(ln, required * 1e-6, 0.95);
        const harder = atLeast(ln, required * more * 1e-6, 0.95);
        expect(harder.probability).toBeLessThanOrEqual(less.probability);
        expect(rank[harder.outcome]).toBeLessThanOrEqual(rank[less.outcome]);
        expect(harder.shortfall.value).toBeGreaterThanOrEqual(less.shortfall.value);
        const held = probabilityCopperHeld(assay, required * 1e-6);
        expect(held).toBeLessThanOrEqual(less.probability + 1e-12);
        expect(probabilityCopperHeld(assay, required * more * 1e-6)).toBeLessThanOrEqual(held);
        expectClose(less.probability + atMost(ln, required * 1e-6, 0.95).probability, 1, { absolute: 1e-12 });
      }),
      runs(60),
    );
  });

  it.each([
    [0.02499, 'falls short'],
    [0.025, 'not settled'],
    [0.5, 'not settled'],
    [0.975, 'not settled'],
    [0.97501, 'meets'],
  ] as const)('at a probability of %s: %s', (p, outcome) => {
    expect(outcomeOf(p)).toBe(outcome);
  });
});

describe('beliefs and shares', () => {
  it('beliefs in metals sum to 1, and so do the shares of the spread', () => {
    fc.assert(
      fc.property(anyCable, (cable) => {
        const { joint, assay } = one(cable);
        const belief = [...metalBelief(assay).values()].reduce((a, b) => a + b, 0);
        expectClose(belief, 1, { absolute: 1e-12 });
        const shares = spreadOfArea(joint, assay);
        const sum = shares.reduce((a, s) => a + s.share, 0);
        // Sources below a twentieth of a per cent are not listed.
        expectClose(sum, 1, { absolute: 0.0005 * 12 });
        expect(shares.every((s) => s.share >= 0)).toBe(true);
      }),
      runs(60),
    );
  });

  it('the shares of a sound reading of copper add up to the variance that was stated', () => {
    const copper = one(cableOf('x', copperOf(33.6), EVERYTHING));
    const variances = copper.assay.components.map((c) => c.weight * c.answer.cov[0]);
    const within = variances.reduce((a, b) => a + b, 0);
    const mean = copper.assay.components.reduce((s, c) => s + c.weight * c.answer.x[0], 0);
    const between = copper.assay.components.reduce((s, c) => s + c.weight * (c.answer.x[0] - mean) ** 2, 0);
    const metal = spreadOfArea(copper.joint, copper.assay).find((s) => s.input === 'which metal')!;
    expectClose(metal.share, between / (between + within), { relative: 2e-3 });
  });
});

describe('agreement', () => {
  it('readings that say the same leave no residuals', () => {
    fc.assert(
      fc.property(mm2, fc.constantFrom(MASS_AND_OHMS, EVERYTHING), (area, r) => {
        const { assay } = one(cableOf('x', copperOf(area), r));
        if (assay.sound?.supposition.metal.metal !== 'copper') return;
        for (const residual of standardisedResiduals(assay))
          if (residual !== null) expectClose(residual, 0, { absolute: 0.02, because: `${area} mm²` });
      }),
      runs(40),
    );
  });
});

describe('what is known', () => {
  it('larger limits of error never narrow what is known under one supposition', () => {
    fc.assert(
      fc.property(
        anyCable,
        fc.double({ min: 1, max: 5, noNaN: true }),
        fc.integer({ min: 0, max: 5 }),
        (c, f, which) => {
          const wider = tools().map((i, k) => (k === which ? { ...i, sd: i.sd * f, limit: i.limit * f } : i));
          const before = one(c).assay;
          const after = one(c, wider).assay;
          for (const a of before.components) {
            const b = after.components.find(
              (o) =>
                o.supposition.metal.detail === a.supposition.metal.detail &&
                o.supposition.metal.metal === a.supposition.metal.metal &&
                o.supposition.fault === a.supposition.fault,
            );
            if (b) expect(b.answer.cov[0]).toBeGreaterThanOrEqual(a.answer.cov[0] * (1 - 1e-4) - 1e-9);
          }
        },
      ),
      runs(60),
    );
  });

  it('larger limits of error widen the interval of a cable whose readings agree', () => {
    for (const r of [MASS_AND_OHMS, EVERYTHING, { weighed: [0.3] }])
      for (const factor of [1.5, 3]) {
        const cable = cableOf('x', copperOf(33.6), r);
        expect(width(lnArea(cable, tools(factor)))).toBeGreaterThan(width(lnArea(cable)));
      }
  });

  it('one more reading that agrees does not widen the interval', () => {
    const steps: Readings[] = [
      { weighed: [0.3] },
      MASS_AND_OHMS,
      { ...MASS_AND_OHMS, strands: 665 },
      { ...MASS_AND_OHMS, strands: 665, weighed: [0.15, 0.15] },
      { ...MASS_AND_OHMS, strands: 665, weighed: [0.15, 0.15], density: true },
    ];
    fc.assert(
      fc.property(mm2, (area) => {
        const widths = steps.map((r) => width(lnArea(cableOf('x', copperOf(area), r))));
        for (let i = 1; i < widths.length; i++)
          expect(widths[i], `${area} mm², step ${i}`).toBeLessThanOrEqual(widths[i - 1] * 1.01);
      }),
      runs(15),
    );
  });

  it('seeing red all through narrows the area and leaves its middle at bare copper', () => {
    const sight = lnLikelihoodOfSight([{ look: 'scraped_strand', seen: 'red through', count: 10, seenIn: 10 }]);
    fc.assert(
      fc.property(mm2, fc.double({ min: 1.02, max: 1.045, noNaN: true }), (area, k) => {
        const cable = cableOf('x', copperOf(area, { lay: k }), MASS_AND_OHMS);
        const unseen = lnArea(cable);
        const seen = lnArea({ ...cable, sight });
        expect(width(seen)).toBeLessThan(0.8 * width(unseen));
        expectClose(mixtureMean(seen), Math.log(area * 1e-6), { absolute: 0.006 });
      }),
      runs(25),
    );
  });
});
