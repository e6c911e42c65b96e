import { describe, expect, it } from 'vitest';
import { awgArea } from '../../src/units/gauge.ts';
import { layIncrement, STRANDINGS } from '../../src/units/layIncrements.ts';
import {
  iec60228Class5Maximum,
  iso6722LeastWall,
  iso6722Maximum,
  METRIC_SIZES,
  saeMinimumArea,
  tinnedResistivityMaximum,
} from '../../src/units/standardSizes.ts';
import { expectClose } from '../tolerance.ts';

/** IACS annealed copper at 20 °C, Ω·m: 1/58 Ω·mm²/m (IEC 60028:1925, from memory). */
const IACS = 1e-6 / 58;

describe('printed limits', () => {
  it('fall as the size grows', () => {
    const sizes = METRIC_SIZES.filter((mm2) => mm2 >= 6);
    for (const limit of [
      (mm2: number) => iec60228Class5Maximum(mm2, false)!.value,
      (mm2: number) => iec60228Class5Maximum(mm2, true)!.value,
      (mm2: number) => iso6722Maximum(mm2, false)!.value,
    ]) {
      const values = sizes.map(limit);
      expect(values).toEqual([...values].sort((a, b) => b - a));
    }
  });

  it('allow coated strands more than plain ones', () => {
    for (const mm2 of METRIC_SIZES) {
      expect(iec60228Class5Maximum(mm2, true)!.value).toBeGreaterThan(iec60228Class5Maximum(mm2, false)!.value);
    }
    for (const mm2 of [10, 16, 25, 35, 50, 70, 95, 120]) {
      expect(iso6722Maximum(mm2, true)!.value).toBeGreaterThan(iso6722Maximum(mm2, false)!.value);
    }
  });

  it('are looser for class 5 than the same name as an area would be', () => {
    for (const mm2 of METRIC_SIZES) {
      const impliedArea = IACS / iec60228Class5Maximum(mm2, false)!.value;
      expect(impliedArea).toBeLessThan((mm2 / 1e6) * 0.92);
    }
  });

  it('mark what comes from uncertain memory', () => {
    expect(iec60228Class5Maximum(35, false)!.source.verified).toBe(true);
    expect(iso6722Maximum(35, false)!.source).toMatchObject({ verified: true, known: 'from memory' });
    for (const limit of [iso6722Maximum(35, true), iso6722LeastWall(35, 'thin'), saeMinimumArea(2)]) {
      expect(limit!.source).toMatchObject({ verified: false, known: 'from memory, uncertain' });
    }
  });

  it('hold the SAE area below the AWG area of the same name by 2 to 11 %', () => {
    for (const awg of [6, 4, 2, 1, 0, -1, -2, -3]) {
      const share = saeMinimumArea(awg)!.value / awgArea(awg);
      expect(share).toBeGreaterThan(0.89);
      expect(share).toBeLessThan(0.98);
    }
  });

  it('are null where no row is known', () => {
    expect(iec60228Class5Maximum(33, false)).toBeNull();
    expect(iso6722Maximum(6, true)).toBeNull();
    expect(iso6722Maximum(7, false)).toBeNull();
    expect(iso6722LeastWall(7, 'thick')).toBeNull();
    expect(saeMinimumArea(8)).toBeNull();
    expect(tinnedResistivityMaximum(0.0001 * 0.0254)).toBeNull();
    expect(tinnedResistivityMaximum(0.5 * 0.0254)).toBeNull();
  });

  it('take the thick wall as the thicker', () => {
    for (const mm2 of [6, 10, 16, 25, 35, 50, 70, 95, 120]) {
      expect(iso6722LeastWall(mm2, 'thick')!.value).toBeGreaterThan(iso6722LeastWall(mm2, 'thin')!.value);
    }
    expectClose(iso6722LeastWall(35, 'thick')!.value, 1.04e-3, { relative: 1e-12 });
  });

  it.each([
    [0.46, 0.15695],
    [0.29, 0.15695],
    [0.2899, 0.15776],
    [0.103, 0.15776],
    [0.1029, 0.1594],
    [0.0201, 0.1594],
    [0.02, 0.16279],
    [0.0111, 0.16279],
    [0.01, 0.16454],
    [0.003, 0.16454],
  ])('allow a tinned wire of %s in %s Ω·g/m²', (inches, ohmGram) => {
    expectClose(tinnedResistivityMaximum(inches * 0.0254)!.value, ohmGram / 1000, { relative: 1e-12 });
  });
});

describe('layIncrement', () => {
  it('is nothing for a solid wire and grows with the number of twists', () => {
    const twists = [
      'solid',
      'bunched',
      'rope of 7 bunches',
      'rope of 19 bunches',
      'rope of 19 ropes of 7 bunches',
    ] as const;
    const values = twists.map((stranding) => layIncrement(stranding).value);
    expect(values).toEqual([0, 0.02, 0.04, 0.05, 0.07]);
  });

  it('names a source for each', () => {
    for (const stranding of STRANDINGS) {
      const { value, source } = layIncrement(stranding);
      expect(value).toBeLessThanOrEqual(0.07);
      expect(source.standard).not.toBe('');
      if (/rope/.test(stranding)) expect(source.verified).toBe(false);
    }
  });
});
