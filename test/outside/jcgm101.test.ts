/**
 * Source: JCGM 101:2008, Propagation of distributions using a Monte Carlo method, the worked examples of clause 9. Exact values where
 * they exist in closed form; the others computed independently (numpy) with the number of draws named. Printed values marked
 * "from memory" where the document was not at hand.
 *
 * With 10⁶ seeded draws the standard error of u is 0.07 % of u, that of an end of a 95 % interval about 0.3 % of u: tolerances are
 * four of these, unless the printed value is coarser.
 */
import { describe, expect, it } from 'vitest';
import { equalTailedInterval, shortestInterval } from '../../src/numerics/coverage.ts';
import { mean, sampleStandardDeviation } from '../../src/numerics/describe.ts';
import { adaptive } from '../../src/numerics/monteCarlo.ts';
import { SeededDraws } from '../../src/numerics/random.ts';
import { expectClose } from '../tolerance.ts';

const DRAWS = 1_000_000;
const ROOT3 = Math.sqrt(3);

interface Summary {
  mean: number;
  u: number;
  sorted: Float64Array;
}

function simulate(seed: string, draw: (draws: SeededDraws) => number): Summary {
  const draws = new SeededDraws(seed);
  const y = new Float64Array(DRAWS);
  for (let i = 0; i < DRAWS; i++) y[i] = draw(draws);
  return { mean: mean(y), u: sampleStandardDeviation(y), sorted: y.sort() };
}

/** Rectangular with standard deviation 1. */
const rectangular = (draws: SeededDraws) => ROOT3 * (2 * draws.uniform() - 1);
const between = (draws: SeededDraws, low: number, high: number) => low + (high - low) * draws.uniform();

function expectInterval(got: [number, number], wanted: [number, number], absolute: number, because: string): void {
  expectClose(got[0], wanted[0], { absolute, because: `lower end, ${because}` });
  expectClose(got[1], wanted[1], { absolute, because: `upper end, ${because}` });
}

describe('JCGM 101, 9.2: sums of four inputs', () => {
  it('9.2.2 four normals', () => {
    const y = simulate('4a43474d31303131', (d) => d.normal() + d.normal() + d.normal() + d.normal());
    expectClose(y.mean, 0, { absolute: 0.008, because: 'exact 0' });
    expectClose(y.u, 2, { relative: 0.003, because: 'exact 2; printed 2.0' });
    expectInterval(equalTailedInterval(y.sorted, 0.95), [-3.919928, 3.919928], 0.022, 'exact; printed ±3.92');
    expect(Math.abs(1.01 * y.u - 2)).toBeGreaterThan(0.006);
  });

  it('9.2.3 four equal rectangles: a narrower interval than the normal one', () => {
    const y = simulate('4a43474d31303132', (d) => rectangular(d) + rectangular(d) + rectangular(d) + rectangular(d));
    expectClose(y.u, 2, { relative: 0.003, because: 'exact 2' });
    const end = 2 * ROOT3 * (2 - 0.6 ** 0.25);
    expectClose(end, 3.879406741, { absolute: 1e-9, because: 'closed form' });
    expectInterval(equalTailedInterval(y.sorted, 0.95), [-end, end], 0.02, 'exact; printed ±3.88');
  });

  it('9.2.4 three rectangles and one ten times as wide', () => {
    const y = simulate(
      '4a43474d31303133',
      (d) => rectangular(d) + rectangular(d) + rectangular(d) + 10 * rectangular(d),
    );
    expectClose(y.u, Math.sqrt(103), { relative: 0.002, because: 'exact; printed 10.1' });
    expectInterval(equalTailedInterval(y.sorted, 0.95), [-17.015814, 17.015814], 0.03, 'exact; printed ±17.0');
  });
});

describe('JCGM 101, 9.3: mass calibration', () => {
  /** Deviation of the mass from 100 g, in mg. */
  const deviation = (d: SeededDraws) => {
    const reference = 100_000 + 0.05 * d.normal();
    const added = 1.234 + 0.02 * d.normal();
    const air = between(d, 1.1, 1.3);
    const weight = between(d, 7000, 9000);
    const standard = between(d, 7950, 8050);
    return (reference + added) * (1 + (air - 1.2) * (1 / weight - 1 / standard)) - 100_000;
  };

  it('10⁶ draws', () => {
    const y = simulate('4a43474d31303134', deviation);
    expectClose(y.mean, 1.234, { absolute: 4e-4, because: 'computed with 2·10⁷ draws; printed 1.2341' });
    expectClose(y.u, 0.07548, { absolute: 2.5e-4, because: 'computed with 2·10⁷ draws; printed 0.0754' });
    const wanted: [number, number] = [1.0842, 1.3833];
    expectInterval(shortestInterval(y.sorted, 0.95), wanted, 3e-3, 'computed; printed [1.0834, 1.3825]');
    // First-order propagation finds 0.0539: the test would see it.
    expect(Math.abs(y.u - 0.0539)).toBeGreaterThan(0.02);
  });

  it('by the adaptive procedure, settled to two digits of u', () => {
    const origin = new SeededDraws('4a43474d31303135');
    const found = adaptive(
      (block, size) => {
        const draws = origin.stream(block);
        return Float64Array.from({ length: size }, () => deviation(draws));
      },
      { significantDigits: 2, level: 0.95 },
    );
    expect(found.stable).toBe(true);
    expect(found.tolerance).toBe(0.0005);
    expect(found.draws).toBe(found.blocks * 10_000);
    expect(found.draws).toBeLessThan(2_000_000);
    expectClose(found.mean, 1.234, { absolute: 2 * found.tolerance, because: 'computed with 2·10⁷ draws' });
    expectClose(found.u, 0.07548, { absolute: 2 * found.tolerance, because: 'computed with 2·10⁷ draws' });
  });
});

describe('JCGM 101, 9.4: δY = X1² + X2² with u = 0.005', () => {
  // Exact: a scaled non-central χ² with 2 degrees of freedom. Shortest 95 % intervals. First-order propagation at x1 = 0 gives u = 0.
  it.each([
    {
      x1: 0,
      mean: 50e-6,
      u: 50e-6,
      interval: [0, 149.787e-6],
      tolerance: 1e-6,
      printed: '50, 50, [0, 150] (from memory)',
    },
    {
      x1: 0.01,
      mean: 150e-6,
      u: 111.803e-6,
      interval: [0, 366.005e-6],
      tolerance: 3e-6,
      printed: '150, 112, [0, 367] (from memory)',
    },
    {
      x1: 0.05,
      mean: 2550e-6,
      u: 502.494e-6,
      interval: [1593.57e-6, 3548.57e-6],
      tolerance: 20e-6,
      printed: '2551, 502, [1590, 3543] (from memory)',
    },
  ])('x1 = $x1', ({ x1, mean: wantedMean, u, interval, tolerance, printed }) => {
    const y = simulate('4a43474d31303136', (d) => (x1 + 0.005 * d.normal()) ** 2 + (0.005 * d.normal()) ** 2);
    expectClose(y.mean, wantedMean, { absolute: 0.004 * u, because: printed });
    expectClose(y.u, u, { relative: 0.006, because: printed });
    expectInterval(shortestInterval(y.sorted, 0.95), interval as [number, number], tolerance, printed);
  });
});

describe('JCGM 101, 9.5: gauge block', () => {
  it('heavy tails and an arcsine: 99 % interval', () => {
    const y = simulate('4a43474d31303137', (d) => {
      const ls = 50_000_623 + 25 * d.studentT(18);
      const difference = 215 + 6 * d.studentT(24) + 4 * d.studentT(5) + 7 * d.studentT(8);
      const alpha = between(d, 9.5e-6, 13.5e-6);
      const theta = -0.1 + 0.2 * d.normal() + 0.5 * Math.sin(2 * Math.PI * d.uniform());
      const deltaAlpha = curvilinear(d, 1e-6, 0.1e-6);
      const deltaTheta = curvilinear(d, 0.05, 0.025);
      return ls + difference - ls * (deltaAlpha * theta + alpha * deltaTheta) - 50_000_000;
    });
    expectClose(y.mean, 838, { absolute: 0.2, because: 'printed 838 nm (from memory)' });
    expectClose(y.u, 35.66, { relative: 0.006, because: 'computed with 8·10⁶ draws; printed 36 nm (from memory)' });
    const wanted: [number, number] = [744.8, 931.5];
    expectInterval(equalTailedInterval(y.sorted, 0.99), wanted, 1.5, 'computed with 8·10⁶ draws; printed [745, 932]');
  });
});

/** Rectangular of half-width a whose half-width is itself only known to ±d (JCGM 101, 6.4.3). */
function curvilinear(draws: SeededDraws, a: number, d: number): number {
  const halfWidth = a - d + 2 * d * draws.uniform();
  return halfWidth * (2 * draws.uniform() - 1);
}
