/** Heat from horizontal cylinders, conduction through a wall and warming, against textbooks and analytic solutions. */
import { describe, expect, it } from 'vitest';
import { conductorMetal, STEFAN_BOLTZMANN, USUAL_JACKET } from '../../src/methods/current/materials.ts';
import { airAt, emptyAir } from '../../src/methods/current/thermal/air.ts';
import { convectedPerMetre, nusseltOfHorizontalCylinder } from '../../src/methods/current/thermal/convection.ts';
import { March } from '../../src/methods/current/thermal/march.ts';
import { ringsOf } from '../../src/methods/current/thermal/rings.ts';
import { inOpenAir } from '../../src/methods/current/thermal/run.ts';
import { heatPathOf } from '../../src/methods/current/thermal/shape.ts';
import { carryingCurrent } from '../../src/methods/current/thermal/steady.ts';
import { expectClose, expectDigits } from '../tolerance.ts';

describe('Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975) 1049', () => {
  /** The correlation computed independently (mpmath, 30 digits) for Pr 0.71. */
  it.each([
    [1e-4, 0.44785151],
    [1e-2, 0.56118631],
    [1, 0.8487518],
    [1e2, 1.66970561],
    [1e3, 2.61135234],
    [1e4, 4.3732721],
    [1e5, 7.77760927],
    [1e6, 14.53723549],
    [1e8, 56.57610488],
    [1e10, 240.6336163],
  ])('Ra %f: Nu %f', (rayleigh, nusselt) => {
    expectDigits(nusseltOfHorizontalCylinder(rayleigh, 0.71), nusselt, 7.5);
  });

  /** Morgan (1975), as tabled by Incropera, Table 9.1, from memory: 0.48 Ra^0.25 from 1e4 on. Another fit of the same case; at 1e3
   * the two differ by 16 %, which is how far measurements lie apart. */
  it.each([
    [1e4, 0.48 * 1e4 ** 0.25],
    [1e5, 0.48 * 1e5 ** 0.25],
    [1e6, 0.48 * 1e6 ** 0.25],
  ])('Ra %f lies within 10 %% of another correlation for the same case', (rayleigh, other) => {
    expectClose(nusseltOfHorizontalCylinder(rayleigh, 0.71), other, { relative: 0.1 });
  });

  /**
   * Horizontal steam pipe: F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, Example 9.4: D 0.1 m, surface
   * 165 °C, air 23 °C, ε 0.85; at 367 K k 0.0313, ν 22.8e-6, α 32.8e-6, Pr 0.697. Printed: Ra 5.073e6, Nu 23.3, h 7.29 W/m²K,
   * 325 W/m by convection and 441 W/m by radiation. From memory; computed independently from those properties: Nu 23.088.
   */
  it('the worked example of a steam pipe', () => {
    const rayleigh = (9.8 * (1 / 367) * 142 * 0.1 ** 3) / (22.8e-6 * 32.8e-6);
    expectClose(rayleigh, 5.073e6, { relative: 2e-3 });
    const nusselt = nusseltOfHorizontalCylinder(rayleigh, 0.697);
    expectClose(nusselt, 23.088064, { relative: 1e-4, because: 'computed independently, g 9.8 against 9.80665' });
    expectClose((nusselt * 0.0313) / 0.1, 7.29, { relative: 0.015, because: 'printed h' });
    const radiated = 0.85 * Math.PI * 0.1 * STEFAN_BOLTZMANN * (438.15 ** 4 - 296.15 ** 4);
    expectClose(radiated, 441, { relative: 2e-3, because: 'printed' });
    // With our own properties of air instead of the book's rounded ones.
    expectClose(convectedPerMetre(0.1, 438.15, 296.15), 325, { relative: 0.02 });
  });

  /**
   * Fixed properties k 0.0271, ν 1.79e-5, α 2.53e-5, Pr 0.7075, β 1/320; D 16 mm, 65 °C in 25 °C, computed independently: Ra
   * 11087.07752777, Nu 4.4803795964, convection 15.2578719459 W/m, radiation 13.2694442497 W/m at ε 0.9.
   */
  it('a cable-sized case: radiation is nearly half', () => {
    const rayleigh = ((9.80665 / 320) * 40 * 0.016 ** 3) / (1.79e-5 * 2.53e-5);
    expectDigits(rayleigh, 11087.07752777, 11);
    const nusselt = nusseltOfHorizontalCylinder(rayleigh, 0.7075);
    expectDigits(nusselt, 4.4803795964, 10);
    expectDigits(Math.PI * nusselt * 0.0271 * 40, 15.2578719459, 10);
    expectDigits(0.9 * Math.PI * 0.016 * STEFAN_BOLTZMANN * (338.15 ** 4 - 298.15 ** 4), 13.2694442497, 10);
    expectClose(convectedPerMetre(0.016, 338.15, 298.15), 15.2578719459, {
      relative: 0.04,
      because: 'that case conducts a little less than air does at 45 °C',
    });
  });
});

describe('properties of dry air, from memory of textbook tables (Incropera, Table A.4)', () => {
  it.each([
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: a Prandtl number of the table, not 1/√2
    [300, 0.0263, 15.89e-6, 0.707],
    [350, 0.03, 20.92e-6, 0.7],
    [400, 0.0338, 26.41e-6, 0.69],
  ])('%f K', (kelvin, conductivity, viscosity, prandtl) => {
    const air = airAt(kelvin, emptyAir());
    expectClose(air.conductivity, conductivity, { relative: 0.01 });
    expectClose(air.viscosity, viscosity, { relative: 0.025 });
    expectClose(air.prandtl, prandtl, { relative: 0.01 });
  });
});

describe('conduction', () => {
  const cable = {
    metal: conductorMetal('copper'),
    resistance20: 5e-4,
    metalVolume: 35e-6,
    bundleDiameter: 8e-3,
    outerDiameter: 13e-3,
    jacket: USUAL_JACKET,
  };

  it('through a wall is ln(D/d)/(2πk), analytic', () => {
    expectClose(heatPathOf(cable, inOpenAir(300)).resistance, Math.log(13 / 8) / (2 * Math.PI * 0.2), {
      relative: 1e-12,
    });
    const layered = heatPathOf(cable, { ...inOpenAir(300), layer: { thickness: 5e-3, conductivity: 0.05 } });
    expectClose(layered.resistance, Math.log(13 / 8) / (0.4 * Math.PI) + Math.log(23 / 13) / (0.1 * Math.PI), {
      relative: 1e-12,
    });
    // The rings carry the same, whatever their number.
    const { conductance } = ringsOf(cable, inOpenAir(300));
    const inRow = conductance.reduce((sum, g) => sum + 1 / g, 0);
    expectClose(inRow, Math.log(13 / 8) / (0.4 * Math.PI), { relative: 1e-10 });
  });

  it('across a body that makes heat evenly is q/(4πk), analytic', () => {
    const around = { ...inOpenAir(300), bundle: 7 };
    const { conductance, made } = ringsOf(cable, around);
    let [flux, drop] = [0, 0];
    for (let i = 0; i < conductance.length; i++) {
      flux += made[i];
      drop += flux / conductance[i];
    }
    const wall = Math.log(13 / 8) / (0.4 * Math.PI) / 7;
    expectClose(drop, heatPathOf(cable, around).resistance - wall, { relative: 1e-10 });
  });
});

describe('warming', () => {
  const rings = (capacity: number[], conductance: number[]) => ({
    capacity: Float64Array.from(capacity),
    conductance: Float64Array.from(conductance),
    made: Float64Array.from(capacity, (_, i) => (i === 0 ? 1 : 0)),
    ownWall: Number.POSITIVE_INFINITY,
  });
  const linear = (G: number, ambient: number) => (kelvin: number, into: { loss: number; slope: number }) => {
    into.loss = G * (kelvin - ambient);
    into.slope = G;
  };
  const run = (
    march: March,
    seconds: number,
    step: number,
    source: { watts: number; alpha: number; reference: number },
  ) => {
    for (let i = 0; i < Math.round(seconds / step); i++) march.step(step, source);
  };

  it('of one body: (P/G)(1 − e^(−Gt/C)), analytic, to 1e-4', () => {
    const [C, G, P] = [150, 0.4, 10];
    for (const t of [60, 200, 376, 1000, 3000]) {
      const march = new March(rings([C], []), linear(G, 300), 300);
      run(march, t, 4, { watts: P, alpha: 0, reference: 293.15 });
      expectClose(march.temperatures[0] - 300, (P / G) * -Math.expm1((-G * t) / C), { relative: 1e-4 });
    }
  });

  it('of one body whose resistance rises: the same with G less I²Rα, analytic, to 1e-4', () => {
    const [C, G, W, alpha] = [150, 0.4, 10, 0.00393];
    const less = G - W * alpha;
    const end = (W * (1 + alpha * (300 - 293.15))) / less;
    for (const t of [100, 400, 1500]) {
      const march = new March(rings([C], []), linear(G, 300), 300);
      run(march, t, 4, { watts: W, alpha, reference: 293.15 });
      expectClose(march.temperatures[0] - 300, end * -Math.expm1((-less * t) / C), { relative: 1e-4 });
    }
  });

  it('of two bodies: by the eigenvalues of the pair, analytic, to 1e-4', () => {
    const [C1, C2, K, G, P] = [120, 90, 1.5, 0.45, 8];
    // dT/dt = A T + b, closed by the two rates of A.
    const [a, b, c, d] = [-K / C1, K / C1, K / C2, -(K + G) / C2];
    const root = Math.sqrt((a - d) ** 2 / 4 + b * c);
    const [fast, slow] = [(a + d) / 2 - root, (a + d) / 2 + root];
    const [s1, s2] = [P / G + P / K, P / G];
    for (const t of [30, 150, 600]) {
      const march = new March(rings([C1, C2], [K]), linear(G, 300), 300);
      run(march, t, 2, { watts: P, alpha: 0, reference: 293.15 });
      // T₁ = s₁ + α e^(fast t) + β e^(slow t), from T(0) = 0 in both.
      const rate = P / C1;
      const beta = (rate - fast * -s1) / (slow - fast);
      const alpha = -s1 - beta;
      const exact = s1 + alpha * Math.exp(fast * t) + beta * Math.exp(slow * t);
      expectClose(march.temperatures[0] - 300, exact, { relative: 1e-4 });
      expect(s2).toBeLessThan(s1);
    }
  });
});

/**
 * Reduction factors for cables bunched in air: IEC 60364-5-52, Table B.52.17, item 1. From memory. The model has no wall or
 * tray beside it, and takes the middle cable as the one that counts.
 */
describe('bundles against the factors of IEC 60364-5-52 (from memory)', () => {
  const cable = {
    metal: conductorMetal('copper'),
    resistance20: 0.53e-3,
    metalVolume: 35e-6,
    bundleDiameter: 8.4e-3,
    outerDiameter: 12.3e-3,
    jacket: USUAL_JACKET,
  };
  it.each([
    [2, 0.8],
    [3, 0.7],
    [4, 0.65],
    [5, 0.6],
    [6, 0.57],
    [7, 0.54],
    [9, 0.5],
    [12, 0.45],
  ])('%i cables carry about %f of one', (bundle, factor) => {
    const at = (n: number) => carryingCurrent(cable, 343.15, { ...inOpenAir(303.15), bundle: n }).current;
    expectClose(at(bundle) / at(1), factor, { relative: 0.06 });
  });
});
