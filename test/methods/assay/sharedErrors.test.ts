/**
 * What two cables' areas owe to the same scale, rule, meter and thermometer. The wanted figures are the project's design
 * calculation for mass and ohms together (closed form, given copper): the set-up that reproduces its figures for single cables is
 * 150 mm weighed at ±0.03 g and ±0.5 mm, 1 m ohmed at ±(0.5 % + 2 µΩ), copper at ±1 K, density ±0.25 % (one standard deviation).
 */
import { describe, expect, it } from 'vitest';
import { sharedCovarianceOfAreas } from '../../../src/methods/assay/figures.ts';
import { jointAssay } from '../../../src/methods/assay/joint.ts';
import { type MetalHypothesis, metalHypotheses } from '../../../src/methods/metal/hypotheses.ts';
import { expectClose } from '../../tolerance.ts';
import { cableOf, copperOf, MASS_AND_OHMS, tools } from './bench.ts';
import { denseAnswer, supposedOf } from './denseReference.ts';

/** Bare copper whose constants are each cable's own. */
function copperKnownTo(resistivity: number, density: number): MetalHypothesis[] {
  const copper = metalHypotheses().find((m) => m.metal === 'copper')!;
  return [
    {
      ...copper,
      prior: 1,
      sharesCopperConstants: false,
      lnDensity: { ...copper.lnDensity, sd: density },
      lnResistivity: { ...copper.lnResistivity, sd: resistivity },
    },
  ];
}

/** Readings without any scatter of their own, as in the calculation; a trace of it keeps the equations solvable. */
function withoutOwnScatter(cable: string, mm2: number) {
  const { rows, ...rest } = cableOf(cable, copperOf(mm2), MASS_AND_OHMS);
  return { ...rest, rows: rows.map((row) => ({ ...row, own: row.own.map((o) => ({ ...o, variance: 1e-10 })) })) };
}

function pair(a: number, b: number, metals: MetalHypothesis[]) {
  const cables = [withoutOwnScatter('a', a), withoutOwnScatter('b', b)];
  const joint = jointAssay(cables, tools(), metals);
  const [va, vb] = joint.cables.map((assay) => assay.sound!.answer.cov[0]);
  const shared = sharedCovarianceOfAreas(joint, joint.cables[0], joint.cables[1]);
  const { cov } = denseAnswer(
    cables,
    cables.map((c) => supposedOf(c, metals)[0]),
    tools(),
  );
  return {
    single: Math.sqrt(va),
    independent: Math.sqrt(va + vb),
    joint: Math.sqrt(va + vb - 2 * shared),
    exact: Math.sqrt(cov[0][0] + cov[4][4] - 2 * cov[0][4]),
  };
}

describe('the difference of two areas', () => {
  it.each([
    { pair: '2 AWG', a: 33.6, b: 32.9, single: 0.00402, independent: 0.00569, joint: 0.00467 },
    { pair: '4/0', a: 107, b: 104, single: 0.0052, independent: 0.00736, joint: 0.00505 },
  ])('$pair, resistivity ±0.6 % each on its own', ({ a, b, single, independent, joint }) => {
    const got = pair(a, b, copperKnownTo(0.006, 0.0025));
    // Where ohms are poor the usual lay lets mass count for a little more here, which narrows 4/0 by 3 %.
    expectClose(got.single, single, { relative: 0.04 });
    expectClose(got.independent, independent, { relative: 0.04 });
    // The calculation let each meter reading scatter by about half a microhm, which is felt at 4/0 only.
    expectClose(got.joint, joint, { relative: 0.1, because: 'scatter of single readings is left out here' });
    expect(got.joint).toBeLessThan(0.85 * got.independent);
  });

  it.each([
    { pair: '2 AWG', a: 33.6, b: 32.9, sharper: 2.2 },
    { pair: '4/0', a: 107, b: 104, sharper: 2.2 },
  ])('$pair, constants settled: the tools are nearly all of the doubt, and they cancel', ({ a, b, sharper }) => {
    // How far the density was settled in the calculation is not on record, so only the gain is held, not the figure.
    const got = pair(a, b, copperKnownTo(0.001, 0.0015));
    expect(got.independent / got.joint).toBeGreaterThan(sharper);
  });

  it('is as the exact Gaussian says, or a little wider', () => {
    for (const [a, b] of [
      [33.6, 32.9],
      [107, 104],
      [33.6, 8.4],
    ]) {
      const got = pair(a, b, copperKnownTo(0.006, 0.0025));
      expectClose(got.joint, got.exact, { relative: 0.03, because: `${a} and ${b} mm²` });
    }
  });

  it('is no sharper where the tools are perfect', () => {
    const metals = copperKnownTo(0.006, 0.0025);
    const cables = [withoutOwnScatter('a', 33.6), withoutOwnScatter('b', 32.9)];
    const joint = jointAssay(cables, tools(1e-6), metals);
    const [a, b] = joint.cables;
    // What is left in common is how cable is usually laid, and mass with ohms is blind to the lay.
    const share = sharedCovarianceOfAreas(joint, a, b) / a.sound!.answer.cov[0];
    expectClose(share, 0, { absolute: 0.01 });
  });
});
