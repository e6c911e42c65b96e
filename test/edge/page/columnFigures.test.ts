import { describe, expect, it } from 'vitest';
import { columnFigures } from '../../../src/edge/page/parts/columnFigures.ts';
import type { Measured } from '../../../src/findings/schema.ts';
import { defaultDisplayUnits } from '../../../src/units/display.ts';

const figure = (value: number, half: number, unit = 'mm2'): Measured => ({
  value,
  unit,
  u: half / 2,
  interval: [value - half, value + half],
  level: 0.95,
  from: [],
});
const shown = (figures: (Measured | null)[], percent = false) =>
  columnFigures(figures, defaultDisplayUnits, percent).map((text) =>
    text === null ? null : `${text.value} ± ${text.plusMinus}`,
  );

describe('columnFigures', () => {
  it('writes all figures of a column to the same decimals', () => {
    expect(shown([figure(34.8, 0.31), figure(33.3, 0.52), figure(26.9, 0.96)])).toEqual([
      '34.8 ± 0.3',
      '33.3 ± 0.5',
      '26.9 ± 1.0',
    ]);
  });

  it('leaves the smallest ± a digit', () => {
    expect(shown([figure(34.812, 0.04), figure(33.3, 5.2)])).toEqual(['34.81 ± 0.04', '33.30 ± 5.20']);
  });

  it('leaves a figure that is told by both ends of its interval as it is', () => {
    const [range, ...rest] = columnFigures(
      [figure(56, 23), figure(34.8, 0.31), figure(26.9, 0.96)],
      defaultDisplayUnits,
    );
    expect(range).toMatchObject({ value: '33 to 79', plusMinus: '', unit: 'mm²' });
    expect(rest.map((text) => `${text!.value} ± ${text!.plusMinus}`)).toEqual(['34.8 ± 0.3', '26.9 ± 1.0']);
  });

  it('keeps gaps where nothing was found', () => {
    expect(shown([null, figure(1.9, 0.05, 'mm')])).toEqual([null, '1.90 ± 0.05']);
  });

  it('writes ratios in per cent', () => {
    expect(shown([figure(1.035, 0.009, '1'), figure(0.149, 0.018, '1')], true)).toEqual(['103.5 ± 0.9', '14.9 ± 1.8']);
  });

  it('takes the larger side of an uneven interval', () => {
    expect(shown([{ ...figure(10, 1), interval: [9.5, 10.8] }])).toEqual(['10.0 ± 0.8']);
  });
});
