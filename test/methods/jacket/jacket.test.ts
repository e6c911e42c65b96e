import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meanChange } from '../../../src/methods/jacket/change.ts';
import { crossCheck } from '../../../src/methods/jacket/crossCheck.ts';
import { materialsOfDensity } from '../../../src/methods/jacket/density.ts';
import { PROTOCOLS, protocolOf } from '../../../src/methods/jacket/protocols/protocols.ts';
import { sectionShares } from '../../../src/methods/jacket/shares.ts';
import { angleOfPosition, outOfRound, wallOfFace } from '../../../src/methods/jacket/wall.ts';
import { expectClose } from '../../tolerance.ts';

const SEED = 20261125;

describe('the place of a reading round the face', () => {
  it.each([
    ['60 degrees', 60],
    ['60', 60],
    ['90°', 90],
    ["12 o'clock", 0],
    ["4 o'clock", 120],
    ['4 o’clock', 120],
    ['10h', 300],
    ['360', 0],
    ['up', null],
    ['13 o’clock', null],
    ['', null],
  ])('%s', (typed, degrees) => {
    expect(angleOfPosition(typed)).toBe(degrees);
  });
});

describe('a face', () => {
  it('an even wall has no offset; one reading has no evenness to speak of', () => {
    const even = wallOfFace([0, 60, 120, 180, 240, 300].map((angle) => ({ thickness: 2e-3, angle })));
    expectClose(even.offset!, 0, { absolute: 1e-15 });
    expect(even.concentricity).toBe(1);
    expect(wallOfFace([{ thickness: 2e-3, angle: null }]).offset).toBeNull();
    expect(() => wallOfFace([])).toThrow(RangeError);
  });

  it('finds a cosine wherever it stands, for any places', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 359, noNaN: true }),
        fc.double({ min: 0.01, max: 0.4, noNaN: true }),
        (at, e) => {
          const places = [0, 50, 110, 170, 200, 290];
          const face = wallOfFace(
            places.map((angle) => ({ thickness: 2 - e * Math.cos(((angle - at) * Math.PI) / 180), angle })),
          );
          expectClose(face.offset!, e, { relative: 1e-9 });
          const off = Math.abs(((face.thinnestAt! - at + 540) % 360) - 180);
          expect(off, `thinnest at ${at}, found ${face.thinnestAt}`).toBeLessThan(1e-6);
        },
      ),
      { seed: SEED, numRuns: 100 },
    );
  });

  it('out-of-round of 12.0 and 12.6 is 4.9 %', () => {
    expectClose(outOfRound([12, 12.6])!, 0.6 / 12.3, { relative: 1e-12 });
    expect(outOfRound([12])).toBeNull();
  });
});

describe('diameters against the wall', () => {
  const u = 1e-5;
  it.each([
    ['agree', 12.2, 8.2, 2.0, null],
    ['an outer diameter squeezed by 0.5 mm', 11.7, 8.2, 2.0, 'outer diameter'],
    ['a wall squeezed by 0.3 mm', 12.2, 8.2, 1.7, 'wall'],
  ])('%s', (_, outer, bundle, wall, squeezed) => {
    const check = crossCheck({ value: outer / 1e3, u }, { value: bundle / 1e3, u }, { value: wall / 1e3, u });
    expect(check.squeezed).toBe(squeezed);
    expect(check.agrees).toBe(squeezed === null);
  });

  it('lets a bundle spread by two per cent', () => {
    const check = crossCheck({ value: 12.2e-3, u: 0 }, { value: 8.2e-3 * 1.019, u: 0 }, { value: 2e-3, u: 0 });
    expect(check.agrees).toBe(true);
  });
});

it('shares of the section sum to 1, and their uncertainties match differences taken by hand', () => {
  const area = { value: 33.6e-6, u: 0.3e-6 };
  const outer = { value: 12.3e-3, u: 0.02e-3 };
  const wall = { value: 1.95e-3, u: 0.03e-3 };
  const at = (a: number, D: number, w: number) => {
    const s = sectionShares({ value: a, u: 0 }, { value: D, u: 0 }, { value: w, u: 0 });
    return [s.metal.value, s.air.value, s.jacket.value];
  };
  const found = sectionShares(area, outer, wall);
  const h = 1e-4;
  const parts = [
    [area.u, at(area.value * (1 + h), outer.value, wall.value), area.value * h],
    [outer.u, at(area.value, outer.value * (1 + h), wall.value), outer.value * h],
    [wall.u, at(area.value, outer.value, wall.value * (1 + h)), wall.value * h],
  ] as const;
  const middle = at(area.value, outer.value, wall.value);
  [found.metal, found.air, found.jacket].forEach((share, i) => {
    expectClose(share.u, Math.hypot(...parts.map(([du, moved, step]) => (du * (moved[i] - middle[i])) / step)), {
      relative: 1e-3,
    });
  });
  expectClose(found.metal.value + found.air.value + found.jacket.value, 1, { relative: 1e-12 });
});

describe('hints by density', () => {
  it.each([
    [920, 925, ['thermoplastic elastomer (styrene or vulcanisate)', 'polyethylene without filler']],
    [1540, 1545, ['chlorinated rubber compound']],
    [2000, 2100, []],
  ])('%i to %i kg/m³', (low, high, names) => {
    expect(
      materialsOfDensity(low, high)
        .map((m) => m.name)
        .sort(),
    ).toEqual([...names].sort());
  });
});

describe('change over an exposure', () => {
  it('three pieces: Student over the pieces', () => {
    const pairs = [
      { before: 20, after: 20.3 },
      { before: 20, after: 20.4 },
      { before: 20, after: 20.5 },
    ];
    const change = meanChange(pairs, 0.001, 0.95);
    expectClose(change.mean, 0.02, { relative: 1e-12 });
    // t(0.975, 2) = 4.302653; standard deviation of the changes 0.005.
    expectClose(change.interval[1] - change.mean, (4.302653 * 0.005) / Math.sqrt(3), { relative: 1e-6 });
  });

  it('equal pieces keep the doubt of the tool; one piece has it alone', () => {
    const same = meanChange(
      [
        { before: 10, after: 10 },
        { before: 10, after: 10 },
      ],
      0.01,
      0.95,
    );
    expect(same.interval[1]).toBeGreaterThan(0);
    expect(meanChange([{ before: 10, after: 11 }], 0.01, 0.95).interval[0]).toBeLessThan(0.1);
    expect(() => meanChange([], 0.01, 0.95)).toThrow(RangeError);
  });
});

describe('described tests', () => {
  it.each([
    ['Scrape', 'scrape'],
    ['sand-paper', 'sandpaper'],
    ['Sandpaper 150 grit', 'sandpaper'],
    ['cut through', 'cut-through'],
    ['Fluid: diesel', 'fluid'],
    ['cold_bend', 'cold bend'],
    ['cold winding', 'cold bend'],
    ['dragging over gravel', null],
    ['scraper', null],
  ])('%s', (typed, name) => {
    expect(protocolOf(typed)?.name ?? null).toBe(name);
  });

  it('each can be built, run, stopped and written down, with its cautions', () => {
    for (const p of PROTOCOLS) {
      expect(p.apparatus.length, p.name).toBeGreaterThan(1);
      expect(p.steps.length, p.name).toBeGreaterThan(2);
      expect(p.stop && p.record && p.unit && p.asks, p.name).toBeTruthy();
      expect(p.steps.flatMap(({ cautions }) => cautions).length, p.name).toBeGreaterThan(0);
    }
  });

  it('shows copper by a coin cell wherever it may show, burns nothing and uses no kitchen oven', () => {
    const text = ({ apparatus, steps, stop }: (typeof PROTOCOLS)[number]) =>
      [...apparatus, ...steps.flatMap((each) => [each.text, ...each.cautions]), stop].join(' ');
    for (const p of PROTOCOLS.filter((x) => x.kind === 'amount')) {
      expect(text(p), p.name).toContain('coin cell');
      expect(text(p), p.name).toContain('never from a vehicle battery');
    }
    expect(PROTOCOLS.some((p) => /burn|flame/.test(p.name))).toBe(false);
    const heat = PROTOCOLS.find((p) => p.name === 'heat ageing')!;
    expect(text(heat)).toContain('No kitchen oven');
    for (const name of ['heat ageing', 'fluid'])
      expect(text(PROTOCOLS.find((p) => p.name === name)!)).toContain('Fluids and heat never');
  });
});
