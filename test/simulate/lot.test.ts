import { describe, expect, it } from 'vitest';
import { expectClose } from '../tolerance.ts';
import { nominalArea } from './cables.ts';
import { COMPLICATIONS } from './complications.ts';
import { drawLot } from './lot.ts';
import { cladAluminium, cladSteel, densityOf, resistivityOf, tinnedCopper } from './metals.ts';
import { drawsFrom } from './random.ts';
import { entriesOf, filesOf, type Row } from './tables.ts';
import { BENCHES } from './tools.ts';

const valuesOf = (rows: readonly Row[], specimen: string, quantity: string) =>
  rows.filter((each) => each.specimen === specimen && each.quantity === quantity).map((each) => Number(each.value));
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

describe('seeded draws', () => {
  it('repeat from the same seed and differ from another', () => {
    const ten = (seed: number) => Array.from({ length: 10 }, drawsFrom(seed).unit);
    expect(ten(7)).toEqual(ten(7));
    expect(ten(7)).not.toEqual(ten(8));
  });

  it('are uniform in mean and variance, and scatter with the asked spread', () => {
    const draws = drawsFrom(5);
    const uniform = Array.from({ length: 40_000 }, draws.unit);
    expectClose(mean(uniform), 0.5, { absolute: 0.006, because: 'four standard errors of 40 000 draws' });
    expectClose(mean(uniform.map((u) => (u - 0.5) ** 2)), 1 / 12, { relative: 0.02 });
    const scatter = Array.from({ length: 20_000 }, () => draws.scatter(3));
    expectClose(mean(scatter.map((s) => s * s)), 9, { relative: 0.04 });
  });
});

describe('metals of the simulation', () => {
  it('agree with published figures of clad metals and tin', () => {
    // ASTM B566: 10 % copper by volume, 3.32 g/cm³, at least about 62.9 % IACS (from memory).
    const ten = cladAluminium(drawsFrom(1), 0.1, 0.1);
    expectClose(densityOf(ten), 3320, { relative: 0.005 });
    expectClose(1 / resistivityOf(ten, 20) / 58e6, 0.64, { relative: 0.03 });
    // ASTM B910: about 8.15 and 8.24 g/cm³ for 30 and 40 % IACS (from memory).
    const steel = cladSteel(drawsFrom(2));
    expectClose(densityOf(steel), 8200, { relative: 0.02 });
    // Copper warms by 0.393 % per kelvin at full conductivity (IEC 60028).
    const tinned = tinnedCopper(drawsFrom(3), 0.96, 0.96);
    expectClose(1 / resistivityOf(tinned, 20) / 58e6, 0.96, { relative: 1e-9 });
    expectClose(resistivityOf(tinned, 30) / resistivityOf(tinned, 20), 1 + 0.0393 * 0.96, { relative: 0.001 });
  });

  it('have the nominal areas of ASTM B258', () => {
    expectClose(nominalArea('2') * 1e6, 33.63, { relative: 2e-4 });
    expectClose(nominalArea('4/0') * 1e6, 107.22, { relative: 2e-4 });
    expectClose(nominalArea('1/0') * 1e6, 53.49, { relative: 5e-4 });
  });
});

describe('a simulated lot', () => {
  it.each(['A', 'B'] as const)('is read on bench %s within the limits of its tools', (bench) => {
    for (const seed of [11, 12, 13]) {
      const { cables, tables } = drawLot({ seed, bench });
      const { meter, 'strand-gauge': gauge } = BENCHES[bench];
      for (const cable of cables) {
        const ohms = tables.readings!.filter((each) => each.specimen === `${cable.id}-whole`);
        const { at_length, temperature } = ohms[0]!;
        const exact =
          (resistivityOf(cable.metal, Number(temperature)) * cable.layFactor * Number(at_length)) / cable.area;
        const got = mean(valuesOf(tables.readings!, `${cable.id}-whole`, 'resistance'));
        const allowed =
          meter.offsetLimit + meter.resolution + exact * (meter.gainLimit + 0.0041 * 2.5 + 2.5 / Number(at_length));
        expectClose(got, exact, { absolute: allowed, because: 'all limits of error at once' });
        const strand = mean(valuesOf(tables.readings!, `${cable.id}-apart-1`, 'strand_diameter'));
        const room = gauge.offsetLimit + gauge.resolution + 0.004 * cable.strandDiameter * 1000;
        expectClose(strand, cable.strandDiameter * 1000, { absolute: room, because: 'limit, step and variation' });
      }
    }
  });

  it('carries one steady error per tool through the whole lot', () => {
    const { cables, tables } = drawLot({ seed: 21, bench: 'A' });
    const errors = cables.map(
      (cable) =>
        mean(valuesOf(tables.readings!, `${cable.id}-apart-1`, 'strand_diameter')) - cable.strandDiameter * 1000,
    );
    const spread = Math.sqrt(mean(errors.map((error) => (error - mean(errors)) ** 2)));
    expect(spread, 'mm, scatter between cables').toBeLessThan(0.0015);
  });

  it('is the same from the same seed, as entries and as files', () => {
    const lot = drawLot({ seed: 3, bench: 'A' });
    expect(drawLot({ seed: 3, bench: 'A' }).tables).toEqual(lot.tables);
    const entries = entriesOf(lot.name, lot.tables);
    expect(new Set(entries.map((entry) => entry.id)).size).toBe(entries.length);
    const readings = filesOf(lot.name, '', '', lot.tables).get('readings.csv')!;
    expect(readings.split('\n').length).toBe(lot.tables.readings!.length + 2);
  });

  it.each(COMPLICATIONS.map((each) => [each.name, each] as const))('changes something for: %s', (_, complication) => {
    const plain = drawLot({ seed: 31, bench: 'A', complication: { name: 'plain', of: 'bench', pieceLength: 300 } });
    const changed = drawLot({ seed: 31, bench: 'A', complication: { ...complication, pieceLength: 300 } });
    expect(changed.tables.readings).not.toEqual(plain.tables.readings);
  });

  it('can hold a complication in some of its cables only', () => {
    const complication = COMPLICATIONS.find((each) => each.name === 'copper-clad steel')!;
    const { cables } = drawLot({ seed: 8, bench: 'A', cables: 200, complication, prevalence: 0.2 });
    const concerned = cables.filter((each) => each.concerned);
    expect(concerned.length).toBeGreaterThan(20);
    expect(concerned.length).toBeLessThan(65);
    expect(new Set(concerned.map((each) => each.metal.name))).toEqual(new Set(['clad steel']));
  });
});
