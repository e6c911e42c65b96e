import { describe, expect, it } from 'vitest';
import { probabilityCopperHeld } from '../../../src/methods/assay/copperHeld.ts';
import { lnFigure } from '../../../src/methods/assay/figures.ts';
import { type JointAssay, jointAssay } from '../../../src/methods/assay/joint.ts';
import { monteCarloAssay } from '../../../src/methods/assay/monteCarlo.ts';
import type { SharedInput } from '../../../src/methods/assay/row.ts';
import { lnLikelihoodOfSight } from '../../../src/methods/metal/eye.ts';
import { metalHypotheses } from '../../../src/methods/metal/hypotheses.ts';
import { mixtureInterval, mixtureMean, mixtureSd } from '../../../src/numerics/mixture.ts';
import { expectClose } from '../../tolerance.ts';
import { cableOf, copperOf, EVERYTHING, MASS_AND_OHMS, tools } from './bench.ts';

const SEED = 'c0ffee00c0ffee00';
const COPPER = metalHypotheses().filter((m) => m.metal === 'copper');
const RED = lnLikelihoodOfSight([{ look: 'scraped_strand', seen: 'red through', count: 10, seenIn: 10 }]);
const draw = (joint: JointAssay, more: Partial<Parameters<typeof monteCarloAssay>[1]> = {}) =>
  monteCarloAssay(joint, { seed: SEED, level: 0.95, draws: 20_000, copperRequired: [], ...more });

const gaussian = (inputs: readonly SharedInput[]): SharedInput[] => inputs.map((i) => ({ ...i, shape: 'normal' }));

describe('draws beside the closed form', () => {
  const cables = [
    { ...cableOf('a', copperOf(33.6), EVERYTHING), sight: RED },
    { ...cableOf('b', copperOf(28), MASS_AND_OHMS), sight: RED },
    { ...cableOf('c', copperOf(33, { density: 3480, resistivity: 2.7e-8 }), EVERYTHING) },
  ];

  it.each([
    { what: 'one cable', list: cables.slice(2), interval: 0.01, spread: 0.03 },
    // What other cables tell of the tools comes, once in a while, from a cable whose reading is wrong: the closed form takes a
    // Gaussian of the same spread for that, so its ends lie a little further out than most draws.
    // Suppositions believed once in a hundred thousand draws, but far off, make a fifth of the variance of the second cable:
    // so few draws fall on them that the drawn spread itself scatters by several per cent.
    { what: 'three cables', list: cables, interval: 0.1, spread: 0.15 },
  ])('are the closed form where everything is Gaussian and straight: $what', ({ list, interval, spread }) => {
    const joint = jointAssay(list, gaussian(tools()));
    const n = 400_000;
    const required = 32.96e-6;
    const drawn = draw(joint, { draws: n, copperRequired: list.map(() => required) });
    joint.cables.forEach((assay, i) => {
      const ln = lnFigure(assay, 'area');
      const sd = mixtureSd(ln);
      const got = drawn.cables[i];
      const because = `cable ${i}, ${n} draws`;
      expectClose(Math.log(got.mean), mixtureMean(ln), { absolute: (5 * sd) / Math.sqrt(n), because });
      expectClose(got.u / got.mean, sd, { relative: spread, because });
      const ends = mixtureInterval(ln, 0.95);
      const half = (ends[1] - ends[0]) / 2;
      got.interval.forEach((end, k) => {
        expectClose(Math.log(end), ends[k], { absolute: interval * half, because: `${because}, end ${k}` });
      });
      const held = probabilityCopperHeld(assay, required);
      const scatter = Math.sqrt(Math.max(held * (1 - held), 1e-6) / n);
      expectClose(got.copperHeld!, held, { absolute: 5 * scatter + interval / 10, because });
    });
  });

  it('know that a limit of error is uniform: where one limit rules, the interval has no Gaussian tails', () => {
    const inputs = tools(1e-3).map((i) =>
      i.input === 'meter gain' ? { ...i, limit: 0.08, sd: 0.08 / Math.sqrt(3) } : i,
    );
    const joint = jointAssay([{ ...cableOf('x', copperOf(33.6), { ohmed: { over: 1 } }), sight: RED }], inputs, COPPER);
    const [low, high] = draw(joint, { draws: 100_000 }).cables[0].interval;
    const [lowest, highest] = mixtureInterval(lnFigure(joint.cables[0], 'area'), 0.95);
    const narrower = Math.log(high / low) / (highest - lowest);
    // 0.95 a against 1.96 a/√3 is 0.84 for the limit alone; the lay and a possible fault take the edge off.
    expect(narrower).toBeLessThan(0.97);
    expect(narrower).toBeGreaterThan(0.8);
  });

  it('leave copper held open where the label asks for none', () => {
    const joint = jointAssay(cables, tools());
    const drawn = draw(joint, { copperRequired: [null, 32e-6, null] });
    expect(drawn.cables.map((c) => c.copperHeld === null)).toEqual([true, false, true]);
  });
});

describe('seed and stopping', () => {
  const joint = jointAssay([{ ...cableOf('a', copperOf(33.6), EVERYTHING), sight: RED }], tools());

  it('the same seed gives the same digits, another one others', () => {
    expect(draw(joint)).toEqual(draw(joint));
    expect(draw(joint, { seed: 'c0ffee00c0ffee01' }).cables[0].mean).not.toBe(draw(joint).cables[0].mean);
  });

  it('auto stops when two digits of u stand still, and says so', () => {
    const drawn = draw(joint, { draws: 'auto' });
    expect(drawn.stable).toBe(true);
    expect(drawn.draws).toBeGreaterThanOrEqual(20_000);
    expect(drawn.draws).toBeLessThan(1_000_000);
    // What it stopped on is within a few hundredths of u of many more draws.
    const many = draw(joint, { draws: 600_000, seed: 'feed5eedfeed5eed' }).cables[0];
    expectClose(drawn.cables[0].mean, many.mean, { absolute: 0.1 * many.u });
    expectClose(drawn.cables[0].interval[1], many.interval[1], { absolute: 0.1 * many.u });
  });

  it('auto gives up where it is told to, and says that it has not settled', () => {
    const drawn = draw(joint, { draws: 'auto', maximumDraws: 15_000 });
    expect(drawn.draws).toBe(15_000);
    expect(drawn.stable).toBe(false);
  });

  it('a number of draws is kept to exactly', () => {
    expect(draw(joint, { draws: 12_345 }).draws).toBe(12_345);
    for (const draws of [0, -1, 1.5, Number.NaN]) expect(() => draw(joint, { draws })).toThrow(RangeError);
  });

  it('whoever waits can stop after any block', () => {
    const seen: number[] = [];
    const drawn = draw(joint, {
      draws: 'auto',
      onBlock: (n) => {
        seen.push(n);
        return seen.length === 2;
      },
    });
    expect(seen).toEqual([10_000, 20_000]);
    expect(drawn.draws).toBe(20_000);
    expect(draw(joint, { draws: 30_000, onBlock: () => false }).draws).toBe(30_000);
  });
});
