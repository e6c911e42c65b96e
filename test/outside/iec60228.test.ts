import { describe, expect, it } from 'vitest';
import {
  iec60228Class5Maximum,
  iso6722Maximum,
  saeMinimumArea,
  tinnedResistivityMaximum,
} from '../../src/units/standardSizes.ts';
import { expectClose } from '../tolerance.ts';

/** 17.241 Ω·mm²/km: annealed copper at 100 % IACS, 20 °C (IEC 60028:1925, from memory). */
const IACS_OHM_MM2_PER_KM = 17.241;

describe('IEC 60228:2004 Table 3, class 5 flexible copper, maximum Ω/km at 20 °C', () => {
  // Plain and metal-coated: read in two independent reproductions of DIN VDE 0295 / IEC 60228, which agree.
  // Implied area at 100 % IACS without lay, its share of the name, and coated over plain: computed independently (mpmath).
  const TABLE: readonly (readonly [
    mm2: number,
    plain: number,
    coated: number,
    area: number,
    share: number,
    ratio: number,
  ])[] = [
    [4, 4.95, 5.09, 3.483, 0.8708, 1.0283],
    [6, 3.3, 3.39, 5.225, 0.8708, 1.0273],
    [10, 1.91, 1.95, 9.027, 0.9027, 1.0209],
    [16, 1.21, 1.24, 14.249, 0.8905, 1.0248],
    [25, 0.78, 0.795, 22.104, 0.8842, 1.0192],
    [35, 0.554, 0.565, 31.121, 0.8892, 1.0199],
    [50, 0.386, 0.393, 44.666, 0.8933, 1.0181],
    [70, 0.272, 0.277, 63.386, 0.9055, 1.0184],
    [95, 0.206, 0.21, 83.694, 0.881, 1.0194],
    [120, 0.161, 0.164, 107.087, 0.8924, 1.0186],
  ];
  it.each(TABLE)('%s mm²', (mm2, plain, coated, area, share, ratio) => {
    const gotPlain = iec60228Class5Maximum(mm2, false)!.value * 1000;
    const gotCoated = iec60228Class5Maximum(mm2, true)!.value * 1000;
    expectClose(gotPlain, plain, { relative: 1e-14 });
    expectClose(gotCoated, coated, { relative: 1e-14 });
    expectClose(IACS_OHM_MM2_PER_KM / gotPlain, area, { absolute: 6e-4 });
    expectClose(IACS_OHM_MM2_PER_KM / gotPlain / mm2, share, { absolute: 6e-5 });
    expectClose(gotCoated / gotPlain, ratio, { absolute: 6e-5 });
  });

  // IEC 60228:2004 Table 2, class 2 plain copper, 50 mm²: 0.387 Ω/km (read). Class 5 is the lower one there: so it is printed.
  it('keeps the oddity of 50 mm²', () => {
    expect(iec60228Class5Maximum(50, false)!.value).toBeLessThan(0.387e-3);
  });
});

describe('ISO 6722-1:2011 / ISO 19642-3:2019, bare copper, maximum mΩ/m at 20 °C', () => {
  // Resistances from memory; share of the nominal area implied with 2 % of lay: computed independently (mpmath).
  it.each([
    [10, 1.82, 0.9663],
    [16, 1.16, 0.9475],
    [25, 0.743, 0.9467],
    [35, 0.527, 0.9534],
    [50, 0.368, 0.9558],
    [70, 0.259, 0.97],
    [95, 0.196, 0.9445],
    [120, 0.153, 0.9578],
  ])('%s mm²', (mm2, ohmPerKm, share) => {
    const got = iso6722Maximum(mm2, false)!.value * 1000;
    expectClose(got, ohmPerKm, { relative: 1e-14 });
    expectClose((IACS_OHM_MM2_PER_KM * 1.02) / got / mm2, share, { absolute: 4e-4, because: 'four printed digits' });
  });
});

describe('ASTM B33-04 Table 2, tinned copper, maximum resistivity at 20 °C', () => {
  // Ω·lb/mile² and Ω·g/m²: read in a reproduction of the table. % IACS = 875.20 / (Ω·lb/mile²): computed independently (mpmath).
  // Ω·lb/mile² → Ω·kg/m²: 0.45359237 / 1609.344², both exact (NIST SP 811).
  it.each([
    [0.3, 896.15, 0.15695, 97.66],
    [0.2, 900.77, 0.15776, 97.16],
    [0.05, 910.15, 0.1594, 96.16],
    [0.0126, 929.52, 0.16279, 94.16],
    [0.01, 939.51, 0.16454, 93.15],
  ])('a wire of %s in', (inches, ohmPoundPerMile2, ohmGramPerMetre2, iacs) => {
    const got = tinnedResistivityMaximum(inches * 0.0254)!.value;
    expectClose(got * 1000, ohmGramPerMetre2, { relative: 1e-14 });
    expectClose(got, (ohmPoundPerMile2 * 0.45359237) / 1609.344 ** 2, {
      relative: 3.5e-5,
      because: 'five printed digits',
    });
    expectClose((0.1532852 / (got * 1000)) * 100, iacs, { absolute: 0.011, because: '875.20 Ω·lb/mile² for IACS' });
  });
});

describe('SAE J1127, least area of battery cable', () => {
  // From memory and uncertain; share of the AWG circular mils as independently computed from the rule of ASTM B258 (mpmath).
  it.each([
    [6, 24538, 26251.375, 0.935],
    [4, 37360, 41741.321, 0.895],
    [2, 62450, 66371.3, 0.941],
    [1, 77790, 83692.664, 0.929],
    [0, 98980, 105534.501, 0.938],
    [-1, 125100, 133076.548, 0.94],
    [-2, 158600, 167806.429, 0.945],
    [-3, 205500, 211600, 0.971],
  ])('size %s', (awg, cmil, awgCmil, share) => {
    const limit = saeMinimumArea(awg)!;
    expectClose(limit.value, cmil * 5.067074790975e-10, { relative: 1e-12 });
    expectClose(limit.value / (awgCmil * 5.067074790975e-10), share, { absolute: 6e-4 });
    expect(limit.source.verified).toBe(false);
  });
});
