/** The shape that everybody outside the program sees, for every subset of what can be read. */
import { describe, expect, it } from 'vitest';
import { findingsOf } from '../../src/findings/findings.ts';
import { Findings } from '../../src/findings/schema.ts';
import { readPackage } from '../../src/report/package/readPackage.ts';
import { writePackage } from '../../src/report/package/writePackage.ts';
import { fold } from '../../src/trial/fold.ts';
import { expectClose } from '../tolerance.ts';
import { Bench, CLAD, oneCable, SOLID } from './bench.ts';

const PARTS: Readonly<Record<string, (b: Bench) => Bench>> = {
  mass: (b) => b.weigh('p', 33.6),
  ohms: (b) => b.ohm('p', 33.6),
  strands: (b) => b.strands('p', 33.6, 665),
  jacket: (b) =>
    b
      .read('p', 'outer_diameter', '12.10', 'mm')
      .read('p', 'conductor_diameter', '8.30', 'mm')
      .read('p', 'wall_thickness', '1.85', 'mm'),
};
const SUBSETS = Array.from({ length: 16 }, (_, bits) => Object.keys(PARTS).filter((_part, i) => bits & (1 << i)));

/** Every number in the findings, with where it stands. */
function numbersIn(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, v]) => numbersIn(v, `${path}.${key}`));
}

describe('every subset of readings', () => {
  it.each(SUBSETS.map((s) => ({ name: s.join(' + ') || 'nothing', subset: s })))(
    '$name: valid, finite, plain',
    ({ subset }) => {
      const bench = subset.reduce((b, part) => PARTS[part](b), oneCable());
      const findings = bench.findings();
      expect(Findings.safeParse(findings).error).toBeUndefined();
      expect(JSON.parse(JSON.stringify(findings))).toEqual(findings);
      for (const [path, n] of numbersIn(findings)) expect(Number.isFinite(n), `${path} is ${n}`).toBe(true);
      const [x] = findings.cables;
      const tells = subset.some((part) => part !== 'jacket');
      expect(x.conductor_area === null).toBe(!tells);
      expect(x.mass_per_metre === null).toBe(!subset.includes('mass'));
      expect(x.resistance_20C === null).toBe(!subset.includes('ohms'));
      expect(x.mass_resistivity === null).toBe(!(subset.includes('ohms') && subset.includes('mass')));
      expect(x.strand_count === null).toBe(!subset.includes('strands'));
      const belief = Object.values(x.metal).reduce((a, b) => a + b, 0);
      expectClose(belief, tells ? 1 : 0, { absolute: 1e-9 });
      expect(x.sentence.length).toBeGreaterThan(20);
      for (const m of [x.conductor_area, x.density, x.lay_factor, x.copper_of_claim])
        if (m) {
          expect(m.interval[0]).toBeLessThanOrEqual(m.value);
          expect(m.interval[1]).toBeGreaterThanOrEqual(m.value);
        }
    },
  );

  it('an empty trial has findings too', () => {
    const findings = new Bench().findings();
    expect(Findings.safeParse(findings).error).toBeUndefined();
    expect(findings.sentence).toBe('No cable has been entered yet.');
  });

  it('says "if copper" of mass alone, and of nothing more', () => {
    expect(PARTS.mass(oneCable()).of('x').conductor_area?.condition).toBe('if copper');
    expect(PARTS.ohms(PARTS.mass(oneCable())).of('x').conductor_area?.condition).toBeUndefined();
  });

  it('levels outside 0 to 1 are refused', () => {
    for (const level of [0, 1, -0.5, Number.NaN]) expect(() => oneCable().findings({ level })).toThrow(RangeError);
  });

  it('a higher level widens every interval', () => {
    const bench = PARTS.ohms(PARTS.mass(oneCable()));
    const width = (level: number) => {
      const [low, high] = bench.findings({ level }).cables[0].conductor_area!.interval;
      return high - low;
    };
    expect(width(0.8)).toBeLessThan(width(0.95));
    expect(width(0.95)).toBeLessThan(width(0.99));
  });
});

/** Three cables, a control piece, evidence, a correction and a struck reading. */
function wholeTrial(): Bench {
  return new Bench({ target_temperature: '20' })
    .carefulTools()
    .cable('kestrel', '2 AWG', 'OFC')
    .cable('plover', '2 AWG', 'copper', { claimed_strands: '665' })
    .cable('heron', '35 mm2', 'tinned OFC')
    .cable('wire', '12 AWG', 'copper', { role: 'control' })
    .piece('k', 'kestrel', { cut_length: '300' })
    .piece('q', 'plover')
    .piece('h', 'heron')
    .piece('w', 'wire')
    .everything('k', 33.4)
    .seen('kestrel', 'red through')
    .everything('q', 33, CLAD)
    .weigh('h', 30.5)
    .ohm('h', 30.5)
    .weigh('w', 3.31, SOLID, 900)
    .ohm('w', 3.31, SOLID)
    .read('k', 'conductor_mass', '9.212', 'g', { instrument: 'scale' })
    .say('strike', { reading: 'r25', why: 'wrong piece' });
}

describe('the same content', () => {
  it('gives the same digits again, draws included', () => {
    const options = { draws: 20_000 } as const;
    expect(wholeTrial().findings(options)).toEqual(wholeTrial().findings(options));
  });

  it('gives the same digits whatever order the entries arrive in', () => {
    const { entries } = wholeTrial();
    const again = findingsOf(fold([...entries].reverse()), { draws: 0 });
    expect(again).toEqual(findingsOf(fold(entries), { draws: 0 }));
  });

  it('gives the same digits after export and import', () => {
    const before = fold(wholeTrial().entries);
    const files = new Map([...writePackage(before)].map(([name, text]) => [name, new TextEncoder().encode(text)]));
    const { entries, refusals } = readPackage(files, { now: '2026-11-25T12:00:00Z' });
    expect(refusals).toEqual([]);
    const options = { draws: 10_000 } as const;
    expect(findingsOf(fold(entries), options)).toEqual(findingsOf(before, options));
  });

  it('and any change in it another seed', () => {
    const seed = (b: Bench) => b.findings().engine.seed;
    expect(seed(wholeTrial())).toBe(seed(wholeTrial()));
    expect(seed(wholeTrial().read('q', 'outer_diameter', '12.1', 'mm'))).not.toBe(seed(wholeTrial()));
  });
});

describe('draws beside the closed form', () => {
  it('agree on a trial as it is made, and say how many they were', () => {
    const findings = wholeTrial().findings({ draws: 50_000 });
    expect(findings.engine.draws).toBe(50_000);
    expect(findings.engine.method).toContain('Monte Carlo');
    for (const c of findings.cables) {
      expect(c.monte_carlo?.draws).toBe(50_000);
      expect(c.monte_carlo?.difference_in_u, c.cable).toBeLessThan(0.3);
    }
    expect(findings.cables[0].monte_carlo?.copper_held_probability).toBeGreaterThan(0.5);
    expect(wholeTrial().findings().cables[0].monte_carlo).toBeNull();
  });
});

describe('differences between cables', () => {
  it('are of the areas found, sharper than two single figures, without the control piece', () => {
    const findings = new Bench()
      .carefulTools()
      .cable('a', '2 AWG', 'OFC')
      .cable('b', '2 AWG', 'OFC')
      .piece('p', 'a')
      .piece('q', 'b')
      .everything('p', 33.6)
      .everything('q', 32.9)
      .seen('a', 'red through')
      .seen('b', 'red through')
      .findings();
    const [d, ...none] = findings.comparisons;
    expect(none).toEqual([]);
    const [a, b] = findings.cables.map((c) => c.conductor_area!);
    expectClose(d.difference.value, a.value - b.value, { absolute: 1e-9 });
    // The u of a difference is that of the intervals; the single u also holds the rare gross error, so it is no smaller.
    expect(d.u_if_independent).toBeLessThanOrEqual(Math.hypot(a.u, b.u));
    expect(d.u_if_independent).toBeGreaterThan(0.8 * Math.hypot(a.u, b.u));
    expect(d.difference.u).toBeLessThan(0.95 * d.u_if_independent);
    expect(d.probability_a_larger).toBeGreaterThan(0.9);
    expect(
      wholeTrial()
        .findings()
        .comparisons.every((c) => c.a !== 'wire' && c.b !== 'wire'),
    ).toBe(true);
  });
});
