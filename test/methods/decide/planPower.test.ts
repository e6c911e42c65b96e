import { describe, expect, it } from 'vitest';
import { drawCable, drawReadings, drawToolErrors } from '../../../src/methods/decide/drawReadings.ts';
import { outlookOf } from '../../../src/methods/decide/planPower.ts';
import { metalHypotheses } from '../../../src/methods/metal/hypotheses.ts';
import { mean, sampleStandardDeviation } from '../../../src/numerics/describe.ts';
import { SeededDraws } from '../../../src/numerics/random.ts';
import { expectClose } from '../../tolerance.ts';
import { cableOf, copperOf, MASS_AND_OHMS, type Readings, tools } from '../assay/bench.ts';

const NOMINAL = 33.6;
const OPTIONS = {
  required: 0.98 * NOMINAL * 1e-6,
  metal: 'either' as const,
  draws: 400,
  seed: '0123456789abcdef',
};

function outlook(share: number, factor = 1, readings: Readings = MASS_AND_OHMS, more = {}) {
  const truth = copperOf(NOMINAL * share);
  const planned = { area: truth.area, cable: cableOf('one', truth, readings), scatter: {} };
  return outlookOf(planned, tools(factor), { ...OPTIONS, ...more });
}

describe('drawn readings', () => {
  const cable = cableOf('one', copperOf(NOMINAL), MASS_AND_OHMS);
  const copper = metalHypotheses().filter((m) => m.metal === 'copper');

  it('stand where such a cable reads, in the mean', () => {
    const draws = new SeededDraws('00112233aabbccdd');
    const n = 2000;
    const ys = Array.from({ length: n }, () =>
      drawReadings(cable.rows, drawCable(NOMINAL * 1e-6, copper, draws), drawToolErrors(tools(), draws), {}, draws),
    );
    cable.rows.forEach((row, i) => {
      const read = ys.map((y) => y[i]!);
      expectClose(mean(read), row.y, {
        absolute: 4 * (sampleStandardDeviation(read) / Math.sqrt(n)),
        because: 'four standard errors of the mean',
      });
    });
  });

  it('scatter by what is said to be true where that is not what the rows believe', () => {
    const draws = new SeededDraws('00112233aabbccdd');
    const known = { x: [0, 0, 0, 0] as const, alpha: 0 };
    const scatter = { 'one-1 itself': 0.05 };
    const read = Array.from({ length: 2000 }, () => drawReadings(cable.rows, known, new Map(), scatter, draws)[0]!);
    expectClose(sampleStandardDeviation(read), 0.05, { relative: 0.08, because: 'four standard errors at n = 2000' });
  });
});

describe('what a plan would show', () => {
  it('adds up to one, and is the same for the same seed', () => {
    const o = outlook(0.95);
    expectClose(o.fallsShort + o.meets + o.notSettled, 1, { relative: 1e-12 });
    expect(outlook(0.95)).toEqual(o);
    expect(outlook(0.95, 1, MASS_AND_OHMS, { seed: 'fedcba9876543210' })).not.toEqual(o);
  });

  it('rises with the shortfall', () => {
    const shown = [1, 0.97, 0.95, 0.92, 0.88].map((share) => outlook(share).fallsShort);
    for (let i = 1; i < shown.length; i++) expect(shown[i], shown.join()).toBeGreaterThanOrEqual(shown[i - 1]!);
    expect(shown[0]).toBeLessThan(0.02);
    expect(shown[4]).toBeGreaterThan(0.98);
  });

  it('falls as the tools get worse', () => {
    const shown = [0.5, 1, 3, 8].map((factor) => outlook(0.95, factor).fallsShort);
    // Four of 400 draws may fall the other way where the tools hardly matter.
    for (let i = 1; i < shown.length; i++) expect(shown[i], shown.join()).toBeLessThanOrEqual(shown[i - 1]! + 0.01);
    expect(shown[3]).toBeLessThan(shown[0]! - 0.3);
  });

  it('is better with ohms beside the mass than with mass alone', () => {
    const alone = outlook(0.95, 1, { weighed: [0.3] });
    const both = outlook(0.95);
    expect(both.fallsShort).toBeGreaterThan(alone.fallsShort + 0.1);
    expect(both.halfWidth!).toBeLessThan(alone.halfWidth!);
  });

  it('seldom accuses an honest cable', () => {
    expect(outlook(1, 1, MASS_AND_OHMS, { draws: 1000 }).fallsShort).toBeLessThanOrEqual(0.005);
  });

  it('has nothing to say without draws', () => {
    expect(outlook(1, 1, MASS_AND_OHMS, { draws: 0 })).toMatchObject({ draws: 0, fallsShort: 0, halfWidth: null });
  });

  it('answers a thousand draws within a second on a quiet machine', () => {
    outlook(0.95);
    const before = performance.now();
    outlook(0.95, 1, MASS_AND_OHMS, { draws: 1000 });
    // Four times the wanted second, because tests share the machine.
    expect(performance.now() - before).toBeLessThan(4000);
  });
});
