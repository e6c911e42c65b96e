import { describe, expect, it } from 'vitest';
import {
  ALUMINIUM_ALPHA,
  ALUMINIUM_DENSITY,
  ALUMINIUM_RESISTIVITY,
  COPPER_ALPHA,
  COPPER_DENSITY,
  COPPER_RESISTIVITY,
  MASS_RESISTIVITY_OF_COPPER,
} from '../../src/methods/metal/constants.ts';
import { type MetalHypothesis, metalHypotheses } from '../../src/methods/metal/hypotheses.ts';
import { expectClose } from '../tolerance.ts';

const list = metalHypotheses();
const density = (h: MetalHypothesis) => Math.exp(h.lnDensity.mean);
const resistivity = (h: MetalHypothesis) => Math.exp(h.lnResistivity.mean);
const clad = (share: number) =>
  list.find((h) => h.metal === 'copper-clad aluminium' && Math.abs(h.copperShare - share) < 1e-9)!;
const copper = list.find((h) => h.metal === 'copper')!;
const aluminium = list.find((h) => h.metal === 'aluminium')!;

describe('copper and aluminium', () => {
  // IEC 60028 (1925) and NBS Handbook 100, 1.1: 1/58 Ω·mm²/m at 20 °C, from memory.
  it('resistivity of annealed copper', () => {
    expectClose(COPPER_RESISTIVITY, 1e-6 / 58, { relative: 1e-4, because: 'printed as 1.7241' });
  });

  // ASTM B193, NBS Handbook 100: 0.15328 Ω·g/m², 875.20 Ω·lb/mile²; from memory, and computed independently.
  it('mass resistivity of copper in three ways', () => {
    expectClose(MASS_RESISTIVITY_OF_COPPER, 0.15328e-3, { relative: 1e-9 });
    expectClose(COPPER_DENSITY * COPPER_RESISTIVITY, MASS_RESISTIVITY_OF_COPPER, { relative: 1e-4 });
    const POUND = 0.45359237;
    const MILE = 1609.344;
    expectClose((MASS_RESISTIVITY_OF_COPPER * MILE ** 2) / POUND, 875.2, { relative: 1e-4 });
  });

  // ASTM B496-04 gives 0.32117 lb/in³ for 8.89 g/cm³ (read in a reproduction of the standard).
  it('density of copper', () => {
    expectClose((0.32117 * 0.45359237) / 0.0254 ** 3, COPPER_DENSITY, { relative: 1e-4 });
  });

  // IEC 60889, ASTM B233: 2.8264 µΩ·cm at 61.0 % IACS; density 2.703; from memory.
  it('aluminium', () => {
    expectClose(COPPER_RESISTIVITY / ALUMINIUM_RESISTIVITY, 0.61, { relative: 1e-4 });
    expectClose(ALUMINIUM_DENSITY, 2703, { relative: 1e-9 });
    // ρe·ρm = 0.07645 Ω·g/m² with 2.705 g/cm³: computed independently.
    expectClose(1000 * ALUMINIUM_DENSITY * ALUMINIUM_RESISTIVITY, 0.07645, { relative: 1e-3 });
  });

  // Resistance at other temperatures over that at 20 °C: computed independently from 0.00393 and 0.00403 per kelvin
  // (IEC 60028, NBS Handbook 100, IEC 60287-1-1 Table 1, from memory).
  it.each([
    [0, 0.9214, null],
    [25, 1.01965, 1.02015],
    [40, 1.0786, null],
    [75, 1.21615, 1.22165],
    [90, 1.2751, 1.2821],
  ])('at %s °C copper has %s and aluminium %s times its resistance', (celsius, ofCopper, ofAluminium) => {
    expectClose(1 + COPPER_ALPHA * (celsius - 20), ofCopper, { absolute: 5e-6 });
    if (ofAluminium !== null) expectClose(1 + ALUMINIUM_ALPHA * (celsius - 20), ofAluminium, { absolute: 5e-6 });
  });

  it('copper as drawn today conducts between 100 and 101.5 % of the standard: common practice, no source', () => {
    const iacs = COPPER_RESISTIVITY / resistivity(copper);
    expect(iacs).toBeGreaterThan(1);
    expect(iacs).toBeLessThan(1.015);
    expect(Math.log(1.015 / iacs)).toBeLessThan(2 * copper.lnResistivity.sd);
  });
});

describe('copper-clad aluminium', () => {
  // Density by the rule of mixtures from 8.89 and 2.705: computed independently; ASTM B566 prints 3.32 and 3.63 (from memory).
  it.each([
    [0.1, 3323.5],
    [0.15, 3632.75],
  ])('%s copper by volume: %s kg/m³', (share, wanted) => {
    expectClose(density(clad(share)), wanted, { relative: 1e-3, because: 'aluminium of 2.703 here' });
  });

  // Skin and core side by side, annealed copper and 61 % aluminium: the least resistivity that is possible, computed
  // independently. ASTM B566 maxima 2.743 and 2.676 µΩ·cm: from memory, uncertain, so only a bound with room.
  it.each([
    [0.1, 2.65655e-8, 2.743e-8],
    [0.15, 2.57906e-8, 2.676e-8],
  ])('%s copper by volume: no less than %s Ω·m', (share, ideal, maximum) => {
    const got = resistivity(clad(share));
    expect(got).toBeGreaterThan(ideal);
    expect(got).toBeLessThan(maximum * 1.01);
    expectClose(got, ideal, { relative: 0.02, because: 'a drawn core conducts a little worse' });
  });

  // Copper's share of the mass, 26.8 and 36.7 %: computed independently; commonly quoted so (from memory).
  it.each([
    [0.1, 0.267489],
    [0.15, 0.367077],
  ])('%s of the volume is %s of the mass', (share, ofMass) => {
    expectClose((share * COPPER_DENSITY) / density(clad(share)), ofMass, { relative: 1e-3 });
  });

  // Against copper of equal area, 10 % clad weighs 0.3738 times as much and has 1.541 (ideal) to 1.591 (maximum) times the
  // resistance: computed independently.
  it('weighs and resists so many times what copper does', () => {
    expectClose(density(clad(0.1)) / COPPER_DENSITY, 0.3738, { relative: 1e-3 });
    const ratio = resistivity(clad(0.1)) / COPPER_RESISTIVITY;
    expect(ratio).toBeGreaterThan(1.541);
    expect(ratio).toBeLessThan(1.591);
  });

  // Mass times ohms, free of the area, Ω·g/m²: copper 0.15327, 10 % clad 0.0883, 15 % clad 0.0937, aluminium 0.07645:
  // computed independently for ideal metals. Lay enters squared, at most 15 %, so the metals stay apart.
  it('mass times ohms keeps the metals apart at any lay', () => {
    const product = (h: MetalHypothesis) => 1000 * density(h) * resistivity(h);
    expectClose(product(copper), 0.15327, { relative: 0.006 });
    expectClose(product(clad(0.1)), 0.0883, { relative: 0.02 });
    expectClose(product(clad(0.15)), 0.0937, { relative: 0.02 });
    expectClose(product(aluminium), 0.07645, { relative: 0.005 });
    const most = Math.max(
      ...list.filter((h) => h.metal === 'copper-clad aluminium' && h.copperShare <= 0.15).map(product),
    );
    expect(most * 1.15).toBeLessThan(product(copper));
  });
});

describe('tinned copper', () => {
  // ASTM B33-04 Table 2, maximum resistivity at 20 °C (read in reproductions of the table), Ω·g/m² and % IACS = 875.20/x:
  // computed independently.
  const B33 = [
    [0.15695, 97.66],
    [0.15776, 97.16],
    [0.1594, 96.16],
    [0.16279, 94.16],
    [0.16454, 93.15],
  ] as const;
  const conductivities = list
    .filter((h) => h.metal === 'tinned copper')
    .map((h) => (100 * COPPER_RESISTIVITY) / resistivity(h))
    .sort((a, b) => a - b);

  it.each(B33)('%s Ω·g/m² is %s %% IACS', (maximum, iacs) => {
    expectClose((100 * MASS_RESISTIVITY_OF_COPPER * 1000) / maximum, iacs, { absolute: 0.01 });
  });

  it('classes reach from the worst that the standard allows to all but bare', () => {
    const spread = 0.4; // one standard deviation of a class, % IACS
    for (const [, iacs] of B33) {
      const nearest = Math.min(...conductivities.map((c) => Math.abs(c - iacs)));
      expect(nearest, `${iacs} % IACS`).toBeLessThan(2 * spread);
    }
    expect(conductivities[0] - 2 * spread).toBeLessThan(93.15);
    expect(conductivities.at(-1)!).toBeGreaterThan(99);
  });

  // Tin 7.29 g/cm³ (CRC Handbook, from memory): 1 µm on a strand of 0.25 mm is 1.6 % of its area, 1.3 % of its mass.
  it('weighs a little less than copper, as far as the tin replaces it', () => {
    const heaviest = list.filter((h) => h.metal === 'tinned copper').sort((a, b) => density(a) - density(b))[0];
    expect(density(heaviest)).toBeGreaterThan(0.06 * 7290 + 0.94 * COPPER_DENSITY);
    expect(density(heaviest)).toBeLessThan(COPPER_DENSITY);
  });
});
