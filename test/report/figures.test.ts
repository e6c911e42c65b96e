import { describe, expect, it } from 'vitest';
import { plusMinus as halfWidth } from '../../src/findings/measured.ts';
import type { Measured } from '../../src/findings/schema.ts';
import { figureColumn } from '../../src/report/figureColumn.ts';
import { countText, type FigureUnits, measuredText, percentText, plainText } from '../../src/report/figures.ts';
import { measured } from '../fixtures/findings/build.ts';

const cases: [string, Measured | null, FigureUnits, string][] = [
  ['an area', measured(33.1, 0.4, 'mm2', []), {}, '33.1 ± 0.4 mm²'],
  ['the same with the sign in the unit', measured(33.1, 0.4, 'mm²', []), { area: 'kcmil' }, '65.3 ± 0.8 kcmil'],
  ['a condition', measured(26.9, 0.96, 'mm2', [], 'if copper'), {}, '26.9 ± 1.0 mm² if copper'],
  ['kcmil', measured(33.6, 0.4, 'mm2', []), { area: 'kcmil' }, '66.3 ± 0.8 kcmil'],
  ['gauge', measured(33.63, 0.4, 'mm2', []), { area: 'awg' }, '2.00 ± 0.05 AWG'],
  ['no gauge above size 1', measured(107.2, 1.2, 'mm2', []), { area: 'awg' }, '107.2 ± 1.2 mm²'],
  ['inches', measured(25.4, 0.13, 'mm', []), { length: 'in' }, '1.000 ± 0.005 in'],
  ['per foot', measured(0.5, 0.004, 'mohm/m', []), { perLength: 'ft' }, '0.1524 ± 0.0012 mΩ/ft'],
  ['grams per foot', measured(318.7, 0.6, 'g/m', []), { perLength: 'ft' }, '97.14 ± 0.18 g/ft'],
  ['an exact figure', measured(1, 0, '1', []), {}, '1'],
  ['a negative one', measured(-2.5, 0.4, 'mm', []), {}, '−2.5 ± 0.4 mm'],
  ['a wide one by both its ends', measured(56, 22.7, 'mm2', []), {}, '33 to 79 mm²'],
  ['the same if copper', measured(56, 22.7, 'mm2', [], 'if copper'), {}, '33 to 79 mm² if copper'],
  ['a wide one in kcmil', measured(56, 22.7, 'mm2', []), { area: 'kcmil' }, '65 to 160 kcmil'],
  ['a wide one in gauge', measured(5, 2, 'mm2', []), { area: 'awg' }, '8.7 to 13 AWG'],
  ['a gauge below 1 that is not wide', measured(41, 5, 'mm2', []), { area: 'awg' }, '1.1 ± 0.6 AWG'],
  ['one that is just not wide', measured(10, 2.9, 'mm2', []), {}, '10.0 ± 2.9 mm²'],
  ['one that is just wide', measured(10, 3.1, 'mm2', []), {}, '6.9 to 14 mm²'],
  ['a difference about nothing', measured(0.1, 0.5, 'mm2', []), {}, '−0.40 to 0.60 mm²'],
  ['a tiny area without a power of ten', measured(1.24e-5, 3e-7, 'mm2', []), {}, '0.00001240 ± 0.00000030 mm²'],
  ['a huge area without a power of ten', measured(2.5e7, 4e5, 'mm2', []), {}, '25000000 ± 400000 mm²'],
  ['a wide huge one', { ...measured(2.5e7, 0, 'mm2', []), interval: [3, 4.4e8] }, {}, '0 to 440000000 mm²'],
  ['tiny ohms per metre', measured(2.5e-6, 4e-8, 'mohm/m', []), {}, '0.00000250 ± 0.00000004 mΩ/m'],
  ['what a metre at one milliohm costs', measured(8.1, 0.7, 'EUR mohm/m2', []), {}, '8.1 ± 0.7 EUR'],
  ['nothing', null, {}, '—'],
];

describe('a finding as text', () => {
  it.each(cases)('%s', (_name, figure, units, text) => {
    expect(measuredText(figure, units)).toBe(text);
  });

  it('shows the larger side of a lopsided interval', () => {
    expect(halfWidth({ value: 10, interval: [9.5, 10.8] })).toBeCloseTo(0.8, 12);
    expect(measuredText({ ...measured(10, 0.5, 'mm', []), interval: [9.5, 10.8] })).toBe('10.0 ± 0.8 mm');
  });

  it.each([
    [measured(0.85, 0.009, '1', []), '85.0 ± 0.9 %'],
    [measured(0.8, 0.029, '1', [], 'if copper'), '80.0 ± 2.9 % if copper'],
    [measured(0.79, 0.31, '1', []), '48 to 110 %'],
    [measured(0.79, 0.31, '1', [], 'if copper'), '48 to 110 % if copper'],
    [measured(2e-7, 3e-9, '1', []), '0.00002000 ± 0.00000030 %'],
    [null, '—'],
  ])('a ratio in per cent: %#', (ratio, text) => {
    expect(percentText(ratio)).toBe(text);
  });

  it.each([
    [measured(665, 2, '1', []), '665 ± 2'],
    [measured(1050.4, 0.3, '1', []), '1050'],
    [measured(12_345, 1200, '1', []), '12\u202f345 ± 1200'],
    [measured(7, 3.2, '1', []), '3 to 11'],
    [measured(700, 300, '1', []), '400 to 1000'],
    [measured(1, 2, '1', []), '0 to 3'],
    [null, '—'],
  ])('a count in whole numbers: %#', (count, text) => {
    expect(countText(count)).toBe(text);
  });

  it.each([
    [33.63, 'mm2', '33.63 mm²'],
    [0.523, 'mohm/m', '0.523 mΩ/m'],
    [35, 'mm2', '35 mm²'],
    [100, '1', '100'],
  ])('an amount without ±: %d', (value, unit, text) => {
    expect(plainText(value, unit)).toBe(text);
  });
});

describe('a column of figures', () => {
  const texts = (halves: number[]): string[] =>
    figureColumn(
      halves.map((half) => measured(34.8, half, 'mm2', [])),
      {},
    ).map(({ value, plusMinus }) => `${value} ± ${plusMinus}`);

  it('has the same decimals where every ± keeps a digit', () => {
    expect(texts([0.31, 0.4, 0.96])).toEqual(['34.8 ± 0.3', '34.8 ± 0.4', '34.8 ± 1.0']);
  });

  it('does not round a ± away, nor lend a figure digits', () => {
    expect(texts([0.03, 4])).toEqual(['34.80 ± 0.03', '35 ± 4']);
  });

  it('rounds once, from the figure itself', () => {
    expect(texts([3.46, 4])).toEqual(['35 ± 3', '35 ± 4']);
    const shares = figureColumn([measured(0.146, 0.0346, '1', []), measured(0.99, 0.04, '1', [])], {}, 'percent');
    expect(shares.map(({ value, plusMinus }) => `${value} ± ${plusMinus}`)).toEqual(['15 ± 3', '99 ± 4']);
  });

  it('leaves what is not known', () => {
    expect(figureColumn([null, measured(0.85, 0.009, '1', [])], {}, 'percent').map(({ value }) => value)).toEqual([
      '—',
      '85',
    ]);
  });
});
