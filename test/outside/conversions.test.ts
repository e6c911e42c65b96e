import { describe, expect, it } from 'vitest';
import { CIRCULAR_MIL } from '../../src/units/exactFactors.ts';
import { findUnit } from '../../src/units/unit.ts';
import { expectClose } from '../tolerance.ts';

/** One of a unit in SI. */
function one(text: string): number {
  return findUnit(text)!.stepToSI(1);
}

describe('exact by definition', () => {
  // 1959 international yard and pound agreement; NIST Special Publication 811 (2008), Appendix B (from memory, exact).
  it.each([
    ['in', 0.0254],
    ['ft', 0.3048],
    ['yd', 0.9144],
    ['mil', 0.0000254],
    ['lb', 0.45359237],
    ['oz', 0.028349523125],
  ])('%s is %s', (text, si) => {
    expect(one(text)).toBe(si);
  });

  // 1 cmil = π/4 · 0.0254² mm² = 5.067 074 790 975e-4 mm²; 1 kcmil = 0.506 707 479 097 5 mm²; 1 mm² = 1.973 525 241 390 kcmil.
  // Definition; digits computed independently (mpmath).
  it('circular mils', () => {
    expectClose(CIRCULAR_MIL * 1e6, 5.067074790975e-4, { relative: 1e-12 });
    expectClose(one('cmil') * 1e6, 5.067074790975e-4, { relative: 1e-12 });
    expectClose(one('kcmil') * 1e6, 0.5067074790975, { relative: 1e-12 });
    expectClose(findUnit('kcmil')!.fromSI(1e-6), 1.97352524139, { relative: 1e-12 });
  });

  // Standard acceleration of free fall 9.806 65 m/s²: 3rd CGPM (1901), exact.
  // Pound-force 4.448 221 615 260 5 N: NIST SP 811 (2008), Appendix B.8 (from memory), the product of two exact numbers.
  it('weights', () => {
    expect(one('kgf')).toBe(9.80665);
    expectClose(one('lbf'), 4.4482216152605, { relative: 1e-15 });
  });

  // Fixed points of the Fahrenheit scale: °C = (°F − 32) · 5/9; NIST SP 811 (2008), Appendix B.8. −40 is common to both.
  it.each([
    [32, 273.15],
    [212, 373.15],
    [-40, 233.15],
    [68, 293.15],
    [-459.67, 0],
  ])('%s °F is %s K', (fahrenheit, kelvin) => {
    expectClose(findUnit('F')!.toSI(fahrenheit), kelvin, { relative: 1e-14, absolute: 1e-12 });
  });
});

describe('per length', () => {
  // Ω/kft · 3.280 840 = Ω/km; oz/ft · 93.010 2 = g/m; lb/kft · 1.488 164 = kg/km; mΩ/ft = Ω/kft.
  // Computed independently from the exact definitions (mpmath).
  it('agrees with the factors that tables print', () => {
    expectClose(one('ohm/kft') / one('ohm/km'), 3.28084, { relative: 1e-7 });
    expectClose(one('oz/ft') / one('g/m'), 93.0102, { relative: 1e-6 });
    expectClose(one('lb/kft') / one('kg/km'), 1.488164, { relative: 5e-7 });
    expectClose(one('mohm/ft'), one('ohm/kft'), { relative: 1e-15 });
    expectClose(one('mohm/m'), one('ohm/km'), { relative: 1e-15 });
  });

  // Density of annealed copper, 8.89 g/cm³ = 0.321 17 lb/in³: ASTM B496-04 (read in a reproduction).
  it('agrees with copper in both systems', () => {
    expectClose(8.89 * one('g/cm3'), 0.32117 * one('lb/in3'), { relative: 2e-5 });
  });
});
