/**
 * The joint assay beside a second implementation that shares nothing with it (denseReference.ts). Where every cable has one
 * supposition, or there is one cable only, both are exact. With several suppositions on several cables the program collapses
 * what each cable says of the tools to one Gaussian: there the tolerances say how near that comes.
 */
import { describe, expect, it } from 'vitest';
import { type Direction, lnFigure, sharedCovarianceOfAreas } from '../../../src/methods/assay/figures.ts';
import { type CableAssay, type JointAssay, jointAssay } from '../../../src/methods/assay/joint.ts';
import type { AssayCable } from '../../../src/methods/assay/row.ts';
import { metalHypotheses } from '../../../src/methods/metal/hypotheses.ts';
import { mixtureInterval, mixtureMean, mixtureSd } from '../../../src/numerics/mixture.ts';
import { expectClose } from '../../tolerance.ts';
import { cableOf, copperOf, EVERYTHING, MASS_AND_OHMS, tools } from './bench.ts';
import { denseAnswer, exactMixture, supposedOf } from './denseReference.ts';
import { drawnMixture } from './drawsReference.ts';

const METALS = metalHypotheses();
const COPPER = METALS.filter((m) => m.metal === 'copper').map((m) => ({ ...m, prior: 1 }));

/** The program's weights in the order of the reference's list. */
function weightsOf(assay: CableAssay, cable: AssayCable, metals = METALS): number[] {
  return supposedOf(cable, metals).map(
    (s) =>
      assay.components.find((c) => c.supposition.metal === s.metal && c.supposition.fault === s.fault)?.weight ?? 0,
  );
}

function areasOf(joint: JointAssay) {
  return joint.cables.map((assay) => {
    const ln = lnFigure(assay, 'area');
    return { mean: mixtureMean(ln), sd: mixtureSd(ln) };
  });
}

describe('one supposition about each cable', () => {
  // A density cannot hold a gross error in the model, so with copper alone each cable has one supposition.
  const cables = [27, 33, 54].map((mm2, i) =>
    cableOf(`cable-${i}`, copperOf(mm2, { density: 8890 * (1 + 0.006 * (i - 1)) }), { density: true }),
  );
  const joint = jointAssay(cables, tools(), COPPER);
  const dense = denseAnswer(
    cables,
    cables.map((cable) => supposedOf(cable, COPPER)[0]),
    tools(),
  );

  it.each(['area', 'lay', 'density'] as const)('gives ln %s the mean and spread of the one big Gaussian', (figure) => {
    const k = ['area', 'lay', 'density'].indexOf(figure);
    joint.cables.forEach((assay, c) => {
      const [only, ...more] = lnFigure(assay, figure);
      expect(more).toEqual([]);
      expectClose(only.mean, dense.mean[4 * c + k], { absolute: 1e-10, because: `cable ${c}` });
      expectClose(only.sd ** 2, dense.cov[4 * c + k][4 * c + k], { relative: 1e-9, because: `cable ${c}` });
    });
  });

  it('learns of the tools what the one big Gaussian learns', () => {
    const first = 4 * cables.length;
    tools().forEach((_, k) => {
      expectClose(joint.shared.mean[k], dense.mean[first + k], { absolute: 1e-10 });
      tools().forEach((_, l) => {
        const nb = joint.inputs.length;
        expectClose(joint.shared.cov[k * nb + l], dense.cov[first + k][first + l], { absolute: 1e-10 });
      });
    });
    expect(Math.abs(joint.shared.mean[0]), 'the scale is blamed for something').toBeGreaterThan(0.01);
  });
});

describe('one cable, every supposition', () => {
  const given = [
    { what: 'mass alone', readings: { weighed: [0.3] }, truth: copperOf(33) },
    { what: 'mass and ohms', readings: MASS_AND_OHMS, truth: copperOf(33, { lay: 1.055 }) },
    { what: 'ohms and strands', readings: { ohmed: { over: 1, above20: -8 }, strands: 665 }, truth: copperOf(33) },
    { what: 'all, and two pieces', readings: { ...EVERYTHING, weighed: [0.3, 0.15] }, truth: copperOf(54) },
    { what: 'clad', readings: EVERYTHING, truth: copperOf(33, { density: 3480, resistivity: 2.7e-8 }) },
  ];
  it.each(given)('$what: the weights and the area are exact', ({ readings, truth }) => {
    const cable = cableOf('one', truth, readings);
    const joint = jointAssay([cable], tools(), METALS);
    const exact = exactMixture([cable], tools(), METALS);
    const got = weightsOf(joint.cables[0], cable);
    exact.weights[0].forEach((w, h) => {
      // Suppositions below 1e-9 are dropped from the answer.
      expectClose(got[h], w, { relative: 1e-7, absolute: 2e-9 });
    });
    const [area] = areasOf(joint);
    expectClose(area.mean, exact.mean[0], { absolute: 1e-7 });
    expectClose(area.sd ** 2, exact.cov[0][0], { relative: 1e-5 });
  });

  it.each(['massPerMetre', 'resistancePerMetre', 'massResistivity', 'lay', 'density'] as const)(
    '%s holds the departure that all cables have in common',
    (figure) => {
      const a: Record<string, readonly number[]> = {
        massPerMetre: [1, 1, 1, 0],
        resistancePerMetre: [-1, 1, 0, 1],
        massResistivity: [0, 2, 1, 1],
        lay: [0, 1, 0, 0],
        density: [0, 0, 1, 0],
      };
      const cable = cableOf('one', copperOf(33, { lay: 1.06 }), MASS_AND_OHMS);
      const joint = jointAssay([cable], tools(), COPPER);
      const sound = supposedOf(cable, COPPER)[0];
      const { mean, cov } = denseAnswer([cable], [sound], tools());
      const at = joint.cables[0].components.findIndex((c) => c.supposition.fault === null);
      const got = lnFigure(joint.cables[0], figure as Direction)[at];
      const along = a[figure];
      expectClose(
        got.mean,
        along.reduce((s, v, k) => s + v * mean[k], 0),
        { absolute: 1e-9 },
      );
      const variance = along.reduce((s, v, k) => s + along.reduce((t, w, l) => t + v * w * cov[k][l], 0), 0);
      expectClose(got.sd ** 2, variance, { relative: 1e-6, because: 'the wide prior of ln A cancels ten digits' });
    },
  );

  it('knows a mass per metre as well as scale and rule do, whatever the lay', () => {
    const truth = copperOf(33, { lay: 1.06 });
    const joint = jointAssay([cableOf('one', truth, { weighed: [0.3] })], tools(), COPPER);
    const [sound] = [...lnFigure(joint.cables[0], 'massPerMetre')].sort((a, b) => b.weight - a.weight);
    const scale = 3e-5 / Math.sqrt(3) / (truth.area * truth.lay * truth.density * 0.3);
    const rule = 5e-4 / Math.sqrt(3) / 0.3;
    expectClose(sound.sd, Math.hypot(scale, rule, 0.002), { relative: 1e-3 });
  });
});

describe('two cables, every supposition of both', () => {
  const pairs = [
    { what: 'both honest', a: copperOf(33.6), b: copperOf(32.9) },
    { what: 'laid differently', a: copperOf(33.6, { lay: 1.015 }), b: copperOf(26.6, { lay: 1.06 }) },
    { what: 'one clad', a: copperOf(33.6), b: copperOf(33, { density: 3480, resistivity: 2.7e-8 }) },
    { what: 'one tinned', a: copperOf(33.6), b: copperOf(53, { density: 8860, resistivity: 1.7241e-8 / 0.95 }) },
  ];

  it.each(pairs)('$what, mass and ohms: beliefs and intervals are those of the full enumeration', ({ a, b }) => {
    const cables = [cableOf('a', a, MASS_AND_OHMS), cableOf('b', b, MASS_AND_OHMS)];
    const joint = jointAssay(cables, tools(), METALS);
    const exact = exactMixture(cables, tools(), METALS);
    joint.cables.forEach((assay, c) => {
      const because = `cable ${c}: what is lost by collapsing the other cable to one Gaussian`;
      const got = weightsOf(assay, cables[c]);
      exact.weights[c].forEach((w, h) => {
        expectClose(got[h], w, { absolute: 0.03, because });
      });
      const wanted = mixtureInterval(exact.lnAreas[c], 0.95);
      const half = (wanted[1] - wanted[0]) / 2;
      mixtureInterval(lnFigure(assay, 'area'), 0.95).forEach((end, i) => {
        expectClose(end, wanted[i], { absolute: 0.05 * half, because });
      });
      expectClose(areasOf(joint)[c].mean, exact.mean[c], { absolute: 0.05 * half, because });
    });
  });

  it.each(pairs)(
    '$what, all readings: the collapse only ever understates what one cable tells of the other',
    ({ a, b }) => {
      const cables = [cableOf('a', a, EVERYTHING), cableOf('b', b, EVERYTHING)];
      const joint = jointAssay(cables, tools(), METALS);
      const exact = exactMixture(cables, tools(), METALS);
      const width = ([low, high]: [number, number]) => high - low;
      joint.cables.forEach((assay, c) => {
        const alone = jointAssay([cables[c]], tools(), METALS).cables[0];
        const got = width(mixtureInterval(lnFigure(assay, 'area'), 0.95));
        expect(got, `cable ${c}, exact`).toBeGreaterThan(0.99 * width(mixtureInterval(exact.lnAreas[c], 0.95)));
        expect(got, `cable ${c}, on its own`).toBeLessThan(
          1.02 * width(mixtureInterval(lnFigure(alone, 'area'), 0.95)),
        );
        weightsOf(assay, cables[c]).forEach((w, h) => {
          expectClose(w, exact.weights[c][h], { absolute: 0.2, because: `cable ${c}, supposition ${h}` });
        });
      });
    },
  );

  it('finds the covariance that common tools put between two areas', () => {
    const cables = [cableOf('a', copperOf(33.6), MASS_AND_OHMS), cableOf('b', copperOf(32.9), MASS_AND_OHMS)];
    for (const metals of [COPPER, METALS]) {
      const joint = jointAssay(cables, tools(), metals);
      const got = sharedCovarianceOfAreas(joint, joint.cables[0], joint.cables[1]);
      const wanted = exactMixture(cables, tools(), metals).cov[0][1];
      expectClose(got, wanted, { relative: 0.03, because: `${metals.length} suppositions on the metal` });
      expect(wanted).toBeGreaterThan(5e-6);
    }
  });
});

describe('two cables, by drawing the errors of the tools', () => {
  it('given the errors the cables know nothing of each other; averaged over draws they are as enumerated', () => {
    const cables = [cableOf('a', copperOf(33.6), EVERYTHING), cableOf('b', copperOf(31, { lay: 1.05 }), EVERYTHING)];
    const exact = exactMixture(cables, tools(), METALS);
    const drawn = drawnMixture(cables, tools(), METALS, { seed: '5ca1ab1e5ca1ab1e', draws: 40_000 });
    expect(drawn.effective, 'draws that count').toBeGreaterThan(5000);
    const fourErrors = 4 / Math.sqrt(drawn.effective);
    cables.forEach((_, c) => {
      drawn.weights[c].forEach((w, h) => {
        const wanted = exact.weights[c][h];
        const spread = Math.sqrt(wanted * (1 - wanted));
        expectClose(w, wanted, { absolute: fourErrors * spread + 1e-6, because: `cable ${c}, supposition ${h}` });
      });
      expectClose(drawn.mean[c], exact.mean[c], { absolute: fourErrors * Math.sqrt(exact.cov[c][c]) });
    });
    // The program answers for one cable of many what the draws say, as far as the collapse lets it.
    const joint = jointAssay(cables, tools(), METALS);
    areasOf(joint).forEach(({ mean }, c) => {
      expectClose(mean, drawn.mean[c], { absolute: 0.5 * Math.sqrt(exact.cov[c][c]) });
    });
  });
});
