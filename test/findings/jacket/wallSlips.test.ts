import { describe, expect, it } from 'vitest';
import type { Findings } from '../../../src/findings/schema.ts';
import { jacketHeading } from '../../../src/report/jacket/jacketHeading.ts';
import { traceReach, wallTrace } from '../../../src/report/jacket/wallTrace.ts';
import { lightTheme } from '../../../src/report/theme.ts';
import { Bench } from '../bench.ts';

const SOUND = ['1.60', '1.55', '1.48', '1.52', '1.61', '1.66'];
const AT = ["12 o'clock", "2 o'clock", "4 o'clock", "6 o'clock", "8 o'clock", "10 o'clock"];

/** Three cables with walls round the face; the first with a reading of one's own at 2 o'clock. */
function bench(slip: readonly [value: string, unit: string], outer = '11.60'): Bench {
  const b = new Bench().carefulTools();
  for (const cable of ['x', 'y', 'z']) {
    b.cable(cable, '2 AWG', 'OFC').piece(`${cable}-p`, cable);
    SOUND.forEach((mm, i) => {
      const [value, unit] = cable === 'x' && i === 1 ? slip : [mm, 'mm'];
      b.read(`${cable}-p`, 'wall_thickness', value, unit, { position: AT[i] });
    });
    b.read(`${cable}-p`, 'outer_diameter', cable === 'x' ? outer : '11.60', 'mm')
      .read(`${cable}-p`, 'conductor_diameter', '8.40', 'mm')
      .everything(`${cable}-p`, 33.6)
      .read(`${cable}-p`, 'specimen_length', '300.0', 'mm', { instrument: 'rule' })
      .read(`${cable}-p`, 'jacket_mass', '20.00', 'g', { instrument: 'scale' });
  }
  return b;
}

const of = ({ jacket }: Findings, cable: string) => jacket!.cables.find((c) => c.cable === cable)!;

describe('one wrong reading of the wall', () => {
  const sound = bench(['1.55', 'mm']).findings();
  const slips = [
    ['19', 'mm', '19.0 mm'],
    ['1.9', 'in', '48.3 mm'],
  ] as const;

  for (const [value, unit, said] of slips)
    it(`of ${value} ${unit} is named, and what leans on it held back`, () => {
      const found = bench([value, unit]).findings();
      const x = of(found, 'x');
      expect(x.wall_doubt).toMatch(new RegExp(`^A wall of ${said} at 2 o'clock is more than half of the 11.6 mm over`));
      expect([x.wall, x.shares, x.density, x.stated, x.concentricity]).toEqual([null, null, null, null, null]);
      expect(found.cables.find((c) => c.cable === 'x')!.wall).toBeNull();
      expect(x.round).toHaveLength(6);
      expect(found.warnings.filter((w) => w.code === 'wall-doubtful').map((w) => w.cable)).toEqual(['x']);
    });

  it('leaves the walls, shares and densities of the other cables as they were', () => {
    for (const [value, unit] of slips) {
      const found = bench([value, unit]).findings();
      for (const cable of ['y', 'z']) {
        const [was, is] = [of(sound, cable), of(found, cable)];
        for (const figure of [is.wall!.mean, is.shares!.jacket, is.density!])
          expect(figure.interval[0]).toBeGreaterThan(0);
        expect(is.wall!.mean.u).toBeLessThan(1.5 * was.wall!.mean.u);
        expect(is.density!.u).toBeLessThan(1.5 * was.density!.u);
      }
    }
  });

  it('typed to whole millimetres does not make the other cable’s readings as coarse', () => {
    const two = (slip: string, unit: string) => {
      const b = new Bench().say('instrument', {
        instrument: 'caliper',
        kind: 'digital caliper',
        resolution: '0.01',
        unit: 'mm',
      });
      for (const cable of ['x', 'y']) {
        b.cable(cable, '2 AWG', 'OFC').piece(`${cable}-p`, cable);
        SOUND.forEach((mm, i) => {
          const [value, of] = cable === 'x' && i === 1 ? [slip, unit] : [mm, 'mm'];
          b.read(`${cable}-p`, 'wall_thickness', value, of, { instrument: 'caliper', position: AT[i] });
        });
      }
      return of(b.findings(), 'y').wall!.mean.u;
    };
    for (const [value, unit] of slips) expect(two(value, unit)).toBeLessThan(1.5 * two('1.55', 'mm'));
  });

  it('keeps its cable out of the headline and off the scale of the clocks', () => {
    const { jacket } = bench(['19', 'mm']).findings();
    expect(jacketHeading(jacket!)).toBe(
      `The walls are alike, 1.57 mm on average. The wall of ${of({ jacket } as Findings, 'x').name} is held back until a reading is checked.`,
    );
    expect(traceReach(jacket!.cables)).toBe(traceReach(sound.jacket!.cables));
    expect(wallTrace(jacket!.cables[0], { size: 200, theme: lightTheme, most: 2 })).toBe('');
  });

  it('that would still fit in is found among its fellows, a really thin place is not', () => {
    expect(of(bench(['5.2', 'mm']).findings(), 'x').wall_doubt).toMatch(/does not go with the others, 1\.60 mm/);
    expect(of(bench(['0.15', 'mm']).findings(), 'x').wall_doubt).toMatch(/does not go with the others/);
    expect(of(bench(['0.60', 'mm']).findings(), 'x').wall_doubt).toBe('');
    expect(of(bench(['2.60', 'mm']).findings(), 'x').wall_doubt).toBe('');
  });

  it('shares never leave nothing and the whole', () => {
    // A face too small for its metal, by much and by next to nothing.
    for (const outer of ['9.00', '9.60', '9.90', '11.60']) {
      const x = of(bench(['1.55', 'mm'], outer).findings(), 'x');
      if (x.shares === null) expect(x.shares_doubt).toMatch(/take up more than the whole face/);
      else {
        const all = [x.shares.metal, x.shares.air, x.shares.jacket];
        for (const share of all) {
          expect(share.interval[0]).toBeGreaterThanOrEqual(0);
          expect(share.interval[1]).toBeLessThanOrEqual(1);
          expect(share.value).toBeGreaterThanOrEqual(share.interval[0]);
        }
        expect(all.reduce((sum, s) => sum + s.value, 0)).toBeCloseTo(1, 9);
      }
    }
    expect(of(bench(['1.55', 'mm'], '9.00').findings(), 'x').shares).toBeNull();
  });
});
