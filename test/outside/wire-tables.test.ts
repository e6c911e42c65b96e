/**
 * Printed wire tables as if somebody had read them off very good tools: the assay must find the area that the table gives to
 * the wire, and name it copper.
 */
import { describe, expect, it } from 'vitest';
import { iec60228Class5Maximum } from '../../src/units/standardSizes.ts';
import { Bench, claimOf } from '../findings/bench.ts';
import { expectClose } from '../tolerance.ts';

const FOOT = 0.3048;
const POUND = 453.59237;

/** A bench of tools far better than anybody's, and a cable read over 1000 ft as the tables are. */
function perfect(size: string, role = ''): Bench {
  return new Bench()
    .tool('scale', 'balance', '0.001', 'g', { max_error: '0.001' })
    .tool('rule', 'tape', '0.01', 'mm', { max_error: '0.01' })
    .tool('meter', 'four-wire meter', '0.000001', 'mohm', { max_error_percent: '0.01' })
    .tool('thermometer', 'thermometer', '0.01', 'C', { max_error: '0.01' })
    .cable('x', size, 'copper', role ? { role } : {})
    .piece('p', 'x');
}

function withReadings(bench: Bench, metres: number, grams: number, milliohms: number): Bench {
  const mm = (metres * 1000).toFixed(2);
  return bench
    .read('p', 'conductor_length', mm, 'mm', { instrument: 'rule' })
    .read('p', 'conductor_mass', grams.toFixed(3), 'g', { instrument: 'scale' })
    .read('p', 'resistance', milliohms.toFixed(6), 'mohm', {
      instrument: 'meter',
      at_length: mm,
      at_length_unit: 'mm',
      temperature: '20.00',
    });
}

describe('NBS Handbook 100, solid annealed copper at 20 °C', () => {
  // AWG, Ω per 1000 ft (NBS Handbook 100, from memory, agrees with computation to 5e-4), lb per 1000 ft (the same, from
  // diameters rounded to 0.1 mil; computed independently), mm² by ASTM B258 (computed independently).
  const TABLE: readonly (readonly [name: string, ohms: number, pounds: number, mm2: number])[] = [
    ['8 AWG', 0.6281, 49.98, 8.365564],
    ['6 AWG', 0.3952, 79.44, 13.301768],
    ['4 AWG', 0.2485, 126.34, 21.150639],
    ['2 AWG', 0.1563, 200.86, 33.630834],
    ['1 AWG', 0.1239, 253.34, 42.407699],
    ['1/0 AWG', 0.09825, 319.53, 53.475121],
    ['2/0 AWG', 0.07793, 402.82, 67.430882],
    ['3/0 AWG', 0.06182, 507.84, 85.028773],
    ['4/0 AWG', 0.04901, 640.51, 107.219303],
  ];

  it.each(TABLE)('%s as a solid wire: its area to 0.3 %%, and copper', (name, ohms, pounds, mm2) => {
    const bench = withReadings(perfect(name, 'control'), 1000 * FOOT, pounds * POUND, ohms * 1000);
    const { cables, control } = bench.findings();
    expectClose(cables[0].conductor_area!.value, mm2, { relative: 0.003 });
    expectClose(cables[0].mass_per_metre!.value, (pounds * POUND) / (1000 * FOOT), { relative: 0.003 });
    expectClose(control[0].mass_resistivity.value, 0.15328, { relative: 0.002, because: 'ASTM B193, from memory' });
    expect(control[0].agrees).toBe(true);
  });

  // The same metal laid with 4 % more strand than cable: mass and ohms both 4 % more (ASTM B172 explanatory note, rope of
  // seven bunches, from memory, uncertain). The area is that of the metal all the same.
  it.each(TABLE)('%s as a rope with a lay of 4 %%: the same area', (name, ohms, pounds, mm2) => {
    const bench = withReadings(perfect(name), 1000 * FOOT, 1.04 * pounds * POUND, 1.04 * ohms * 1000);
    const c = bench.seen('x', 'red through', 'scraped_strand', { count: '20' }).of('x');
    expectClose(c.conductor_area!.value, mm2, { relative: 0.003 });
    const [low, high] = c.conductor_area!.interval;
    expect(low < mm2 && mm2 < high).toBe(true);
    expect(c.metal_found).toBe('copper');
    expectClose(c.lay_factor!.value, 1.04, { absolute: 0.006 });
    expectClose(c.resistance_20C!.value, (1.04 * ohms) / FOOT, { relative: 1e-3 });
    expect(claimOf(c, 'AWG by area')!.outcome).toBe('meets');
    expect(claimOf(c, 'metal')!.outcome).toBe('meets');
  });
});

describe('IEC 60228 class 5, plain copper at its highest resistance', () => {
  // IEC 60228 (third edition), Table 3, Ω/km at 20 °C (read in reproductions of the table); area that 100 % IACS copper without
  // lay needs for it, mm² (computed independently).
  const TABLE: readonly (readonly [mm2: number, ohmPerKm: number, area: number])[] = [
    [10, 1.91, 9.027],
    [16, 1.21, 14.249],
    [25, 0.78, 22.104],
    [35, 0.554, 31.121],
    [50, 0.386, 44.666],
    [70, 0.272, 63.386],
    [95, 0.206, 83.694],
    [120, 0.161, 107.087],
  ];

  it.each(TABLE)('%s mm²: a conductor at the limit holds %s Ω/km over its lay', (mm2, ohmPerKm, implied) => {
    expectClose(iec60228Class5Maximum(mm2, false)!.value, ohmPerKm / 1000, { relative: 1e-12 });
    // Copper of 100.4 % IACS laid 3.4 %: the area that gives just this resistance.
    const area = (implied * 1.034) / 1.004;
    const grams = area * 1.034 * 8.89 * 100;
    const at = (times: number) => {
      const bench = withReadings(perfect(`${mm2} mm2`), 100, grams, ohmPerKm * 100 * times);
      return bench.seen('x', 'red through', 'scraped_strand', { count: '20' }).of('x');
    };
    const c = at(1);
    expectClose(c.conductor_area!.value, area, { relative: 0.004 });
    expectClose(claimOf(c, 'copper held')!.required!, implied, { relative: 2e-4 });
    expect(claimOf(at(0.99), 'IEC 60228')!.outcome).toBe('meets');
    expect(claimOf(at(1.01), 'IEC 60228')!.outcome).toBe('falls short');
  });
});
