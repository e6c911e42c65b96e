import { describe, expect, it } from 'vitest';
import { awgArea, awgAreaFromRoundedDiameter, awgDiameter, effectiveAwg } from '../../src/units/gauge.ts';
import { expectClose } from '../tolerance.ts';

const INCH = 0.0254;
const CMIL = (Math.PI / 4) * (INCH / 1000) ** 2;

describe('ASTM B258, the gauge itself', () => {
  // ASTM B258, explanatory note: 4/0 = 0.4600 in, No. 36 = 0.0050 in, 39 steps in geometric progression.
  // Read in two public reproductions of the rule.
  it('has the two defining diameters', () => {
    expectClose(awgDiameter(-3) / INCH, 0.46, { relative: 1e-13 });
    expectClose(awgDiameter(36) / INCH, 0.005, { relative: 1e-13 });
  });

  // Ratio of successive diameters 92^(1/39) = 1.1229322 (ASTM B258; computed independently, mpmath).
  it('steps by the 39th root of 92', () => {
    for (let n = -2; n <= 36; n += 1) expectClose(awgDiameter(n - 1) / awgDiameter(n), 1.1229322, { absolute: 1e-7 });
  });

  // Unrounded diameters and areas: computed independently (mpmath) from the rule of ASTM B258.
  // AWG, diameter in, diameter mm, area mm², circular mils.
  const RULE: readonly (readonly [n: number, inch: number, mm: number, mm2: number, cmil: number])[] = [
    [-3, 0.46, 11.684, 107.219303, 211600.0],
    [-2, 0.4096418, 10.404902, 85.028773, 167806.429],
    [-1, 0.3647966, 9.265833, 67.430882, 133076.548],
    [0, 0.3248607, 8.251463, 53.475121, 105534.501],
    [1, 0.2892968, 7.34814, 42.407699, 83692.664],
    [2, 0.2576263, 6.543707, 33.630834, 66371.3],
    [3, 0.2294228, 5.82734, 26.670464, 52634.834],
    [4, 0.2043069, 5.189396, 21.150639, 41741.321],
    [6, 0.1620228, 4.115378, 13.301768, 26251.375],
    [8, 0.1284899, 3.263643, 8.365564, 16509.652],
    [10, 0.1018971, 2.588187, 5.261155, 10383.022],
    [12, 0.0808081, 2.052525, 3.308773, 6529.947],
    [16, 0.0508207, 1.290846, 1.308696, 2582.744],
    [20, 0.0319615, 0.811821, 0.517619, 1021.535],
    [24, 0.0201008, 0.510559, 0.20473, 404.04],
    [30, 0.0100252, 0.254639, 0.050926, 100.504],
    [36, 0.005, 0.127, 0.012668, 25.0],
  ];
  it.each(RULE)('AWG %s', (n, inch, mm, mm2, cmil) => {
    // The printed digits carry the tolerance: half a unit of the last one.
    expectClose(awgDiameter(n) / INCH, inch, { absolute: 5.1e-8 });
    expectClose(awgDiameter(n) * 1000, mm, { absolute: 5.1e-7 });
    expectClose(awgArea(n) * 1e6, mm2, { absolute: 5.1e-7 });
    expectClose(awgArea(n) / CMIL, cmil, { absolute: 5.1e-4 });
    expectClose(effectiveAwg(mm2 * 1e-6), n, { absolute: 2e-4, because: 'six decimals of mm² at No. 36' });
  });
});

describe('ASTM B33-04 Table 1, areas from diameters rounded to 0.1 mil', () => {
  // ASTM B33-04, Table 1 (read in a reproduction): AWG, diameter in, diameter mm, cmil, mm².
  const TABLE: readonly (readonly [n: number, inch: number, mm: number, cmil: number, mm2: number])[] = [
    [-3, 0.46, 11.684, 211600.0, 107.2193],
    [-2, 0.4096, 10.4038, 167772.16, 85.0114],
    [-1, 0.3648, 9.2659, 133079.04, 67.4321],
    [0, 0.3249, 8.2525, 105560.01, 53.488],
  ];
  it.each(TABLE)('AWG %s', (n, inch, mm, cmil, mm2) => {
    const area = awgAreaFromRoundedDiameter(n);
    expectClose(Math.sqrt((4 * area) / Math.PI) / INCH, inch, { relative: 1e-12 });
    expectClose(Math.sqrt((4 * area) / Math.PI) * 1000, mm, { absolute: 6e-5 });
    expectClose(area / CMIL, cmil, { absolute: 0.005 });
    expectClose(area * 1e6, mm2, { absolute: 6e-5 });
  });

  // The trap: rounded and unrounded areas part in the fourth digit at 3/0 and 1/0, by rounding in opposite directions.
  it('parts from the rule at 3/0 and 1/0', () => {
    expectClose(awgArea(-2) / CMIL - awgAreaFromRoundedDiameter(-2) / CMIL, 167806.429 - 167772.16, { absolute: 0.01 });
    expectClose(awgArea(0) / CMIL - awgAreaFromRoundedDiameter(0) / CMIL, 105534.501 - 105560.01, { absolute: 0.01 });
  });
});

/** IACS: 17.241 Ω·mm²/km and 8.89 g/cm³ at 20 °C (IEC 60028:1925; density read in ASTM B496-04, resistivity from memory). */
const RESISTIVITY = 1.7241e-8;
const DENSITY = 8890;
const THOUSAND_FEET = 304.8;
const POUND = 0.45359237;

describe('resistance of solid copper wire at 20 °C, Ω per 1000 ft', () => {
  // NBS Handbook 100, Copper Wire Tables (1966), from memory; agrees with an independent computation (mpmath).
  // "rounded" marks sizes whose printed figure follows the diameter rounded to 0.1 mil.
  const TABLE: readonly (readonly [n: number, ohm: number, basis: 'rule' | 'rounded'])[] = [
    [-3, 0.04901, 'rule'],
    [-2, 0.06182, 'rounded'],
    [-1, 0.07793, 'rule'],
    [0, 0.09825, 'rounded'],
    [1, 0.1239, 'rule'],
    [2, 0.1563, 'rule'],
    [4, 0.2485, 'rule'],
    [6, 0.3952, 'rounded'],
    [8, 0.6281, 'rounded'],
    [10, 0.9988, 'rule'],
    [24, 25.67, 'rule'],
    [30, 103.7, 'rounded'],
    [36, 414.8, 'rule'],
  ];
  it.each(TABLE)('AWG %s', (n, ohm, basis) => {
    const area = basis === 'rule' ? awgArea(n) : awgAreaFromRoundedDiameter(n);
    expectClose((RESISTIVITY * THOUSAND_FEET) / area, ohm, { relative: 5e-4, because: 'four printed digits' });
  });

  it('tells the two bases apart where they differ by more than the printed digits', () => {
    const byRule = (RESISTIVITY * THOUSAND_FEET) / awgArea(30);
    expect(Math.abs(byRule - 103.7) / 103.7).toBeGreaterThan(4e-3);
  });
});

describe('mass of solid copper wire, lb per 1000 ft', () => {
  // T. R. Kuphaldt, Lessons in Electric Circuits, Reference volume, chapter 3 (read), on the basis of unrounded diameters.
  // Its figures for No. 1 (253.5) and No. 24 (1.233) are misprints; 253.3 and 1.223 are computed independently (mpmath).
  const TABLE: readonly (readonly [n: number, pounds: number])[] = [
    [-3, 640.5],
    [-2, 507.9],
    [-1, 402.8],
    [0, 319.5],
    [1, 253.3],
    [2, 200.9],
    [3, 159.3],
    [4, 126.4],
    [6, 79.46],
    [8, 49.97],
    [10, 31.43],
    [24, 1.223],
    [30, 0.3042],
    [36, 0.07567],
  ];
  const pounds = (area: number) => (area * DENSITY * THOUSAND_FEET) / POUND;

  it.each(TABLE)('AWG %s', (n, printed) => {
    expectClose(pounds(awgArea(n)), printed, { relative: 5e-4, because: 'four printed digits' });
  });

  it('does not agree with the misprints', () => {
    expect(Math.abs(pounds(awgArea(1)) / 253.5 - 1)).toBeGreaterThan(5e-4);
    expect(Math.abs(pounds(awgArea(24)) / 1.233 - 1)).toBeGreaterThan(5e-4);
  });

  // NBS Handbook 100 (1966) basis, diameters rounded to 0.1 mil: computed independently (mpmath).
  it.each([
    [-2, 507.84],
    [0, 319.53],
    [1, 253.34],
    [2, 200.86],
    [4, 126.34],
    [6, 79.44],
    [8, 49.98],
  ])('AWG %s from the rounded diameter', (n, printed) => {
    expectClose(pounds(awgAreaFromRoundedDiameter(n)), printed, { absolute: 0.0051 });
  });
});

describe('strands of 30 AWG in flexible cable', () => {
  // Counts as in ASTM B172 class K (from memory); ratios of total to nominal area computed independently (mpmath).
  it.each([
    [168, 8, 1.02271],
    [266, 6, 1.01839],
    [413, 4, 0.99441],
    [665, 2, 1.00699],
    [836, 1, 1.00393],
    [1064, 0, 1.01328],
    [1323, -1, 0.99917],
    [1665, -2, 0.99721],
    [2107, -3, 1.00076],
  ])('%s strands make gauge %s times %s', (count, n, ratio) => {
    expectClose((count * awgArea(30)) / awgArea(n), ratio, { absolute: 6e-6 });
  });
});
