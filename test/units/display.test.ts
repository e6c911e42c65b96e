import { describe, expect, it } from 'vitest';
import {
  areaText,
  type DisplayUnits,
  defaultDisplayUnits,
  showArea,
  showLength,
  showMass,
  showMassPerLength,
  shownText,
  showResistancePerLength,
  showTemperature,
  showTemperatureDifference,
  toCelsius,
} from '../../src/units/display.ts';
import { awgArea, effectiveAwg } from '../../src/units/gauge.ts';
import { expectClose } from '../tolerance.ts';

const METRIC = defaultDisplayUnits;
const CUSTOMARY: DisplayUnits = { area: 'kcmil', length: 'in', mass: 'oz', temperature: 'F', perLength: 'ft' };
const GAUGE: DisplayUnits = { ...METRIC, area: 'awg' };

const SHOWN = [
  ['area', showArea(33.6e-6, 1e-7, METRIC), 33.6, 0.1, 'mm²'],
  ['area', showArea(107.219303e-6, 1.07219303e-6, CUSTOMARY), 211.6, 2.116, 'kcmil'],
  ['length', showLength(0.0127, 0.00254, METRIC), 12.7, 2.54, 'mm'],
  ['length', showLength(0.0127, 0.00254, CUSTOMARY), 0.5, 0.1, 'in'],
  ['mass', showMass(0.312, 0.001, METRIC), 312, 1, 'g'],
  ['mass', showMass(0.45359237, 0.028349523125, CUSTOMARY), 16, 1, 'oz'],
  ['temperature', showTemperature(293.15, 1, METRIC), 20, 1, '°C'],
  ['temperature', showTemperature(293.15, 1, CUSTOMARY), 68, 1.8, '°F'],
  ['difference', showTemperatureDifference(10, 1, METRIC), 10, 1, '°C'],
  ['difference', showTemperatureDifference(10, 1, CUSTOMARY), 18, 1.8, '°F'],
  ['resistance', showResistancePerLength(0.527e-3, 1e-6, METRIC), 0.527, 0.001, 'mΩ/m'],
  ['resistance', showResistancePerLength(1e-3, 1e-5, CUSTOMARY), 0.3048, 0.003048, 'mΩ/ft'],
  ['mass per length', showMassPerLength(0.299, 0.001, METRIC), 299, 1, 'g/m'],
  ['mass per length', showMassPerLength(0.299, 0.001, { ...METRIC, perLength: 'ft' }), 91.1352, 0.3048, 'g/ft'],
  ['mass per length', showMassPerLength(0.0930102, 0.0930102, CUSTOMARY), 1, 1, 'oz/ft'],
  ['mass per length', showMassPerLength(0.299, 0.001, { ...METRIC, mass: 'oz' }), 299, 1, 'g/m'],
] as const;

describe('display', () => {
  it.each(SHOWN)('%s %#', (_what, shown, value, u, unit) => {
    expectClose(shown.value, value, { relative: 1e-6 });
    expectClose(shown.u, u, { relative: 1e-6 });
    expect(shown.unit).toBe(unit);
  });

  it('carries an uncertainty of area into gauge', () => {
    const shown = showArea(awgArea(2), awgArea(2) * 0.01, GAUGE);
    expectClose(shown.value, 2, { relative: 1e-12 });
    const byDifference = (effectiveAwg(awgArea(2) * 0.99) - effectiveAwg(awgArea(2) * 1.01)) / 2;
    expectClose(shown.u, byDifference, { relative: 1e-4 });
  });

  it('prints value, ± and unit with no-break spaces', () => {
    expect(shownText(showArea(33.149e-6, 0.4e-6, METRIC))).toBe('33.1\u00a0±\u00a00.4\u00a0mm²');
    expect(shownText(showArea(33.149e-6, 0.2e-6, METRIC), 2)).toBe('33.1\u00a0±\u00a00.4\u00a0mm²');
  });

  it('prints a gauge with ± only where gauge numbers are written', () => {
    expect(areaText(awgArea(2.3), awgArea(2.3) * 0.01, GAUGE)).toBe('2.30\u00a0±\u00a00.04\u00a0AWG');
    expect(areaText(awgArea(-0.4), 1e-7, GAUGE)).toBe('between 1/0 and 2/0, 40 % of the way');
    expect(areaText(awgArea(1), 1e-7, GAUGE)).toBe('1.0 AWG');
    expect(areaText(awgArea(1.2), awgArea(1.2) * 0.03, GAUGE, 1)).toBe('1.20\u00a0±\u00a00.13\u00a0AWG');
    expect(areaText(awgArea(1.2), awgArea(1.2) * 0.03, GAUGE, 2)).toBe('1.2 AWG');
    expect(areaText(33.149e-6, 0.4e-6, METRIC)).toBe('33.1\u00a0±\u00a00.4\u00a0mm²');
  });

  it('gives Celsius for fixed sentences', () => {
    expectClose(toCelsius(293.15), 20, { relative: 1e-14 });
  });
});
