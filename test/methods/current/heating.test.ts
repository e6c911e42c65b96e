import { describe, expect, it } from 'vitest';
import { fitHeating, type Heating } from '../../../src/methods/current/heating/fitHeating.ts';
import { type CurrentLog, heatingsOf, impossibleInLog } from '../../../src/methods/current/heating/heatings.ts';
import { NOISES } from '../../../src/methods/current/heating/noise.ts';
import { conductorMetal } from '../../../src/methods/current/materials.ts';
import { drawsFrom } from '../../simulate/random.ts';
import { expectClose } from '../../tolerance.ts';

const COPPER = conductorMetal('copper');

function log(seconds: number, rise: (t: number) => number, every = 10, scatter = 0.05) {
  const draws = drawsFrom(9);
  const time = Array.from({ length: Math.floor(seconds / every) }, (_, i) => (i + 1) * every);
  return { time, rise: time.map((t) => rise(t) + draws.scatter(scatter)) };
}
const one = (steady: number, tau: number) => (t: number) => steady * (1 - Math.exp(-t / tau));
const answered = (found: ReturnType<typeof fitHeating>): Heating => {
  if ('refused' in found) throw new Error(`refused: ${found.refused}`);
  return found;
};

describe('a heating log', () => {
  it('of one time constant: steady rise and time', () => {
    const found = answered(fitHeating(log(3000, one(40, 600))));
    expectClose(found.steadyRise, 40, { relative: 0.005 });
    expectClose(found.slowest, 600, { relative: 0.05 });
    expect(found.interval[0]).toBeLessThan(40);
    expect(found.interval[1]).toBeGreaterThan(40);
    expectClose(found.lengths, 5, { relative: 0.06 });
  });

  it('of two is never answered by one', () => {
    const two = (t: number) => one(30, 600)(t) + one(10, 70)(t);
    const found = answered(fitHeating(log(3000, two)));
    expect(found.twoBelief).toBeGreaterThan(0.99);
    expect(found.timeConstants).toHaveLength(2);
    expectClose(found.steadyRise, 40, { relative: 0.01 });
    expectClose(found.timeConstants[1], 600, { relative: 0.1 });
  });

  it.each([
    ['too short', log(500, one(40, 600))],
    ['no rise', log(3000, one(0.4, 600))],
    ['too few readings', { time: [10, 20, 30], rise: [1, 2, 3] }],
  ] as const)('is refused as %s', (word, l) => {
    const found = fitHeating(l);
    expect('refused' in found && found.refused).toBe(word);
  });

  it('is refused as too wide where scatter hides the end', () => {
    const found = fitHeating(log(1500, one(6, 500), 30, 3));
    expect('refused' in found && ['too wide', 'too short'].includes(found.refused)).toBe(true);
  });

  it('names a log that runs backwards and a figure that is none', () => {
    expect(() => fitHeating({ time: [1, 3, 2], rise: [0, 1, 2] })).toThrow(/backwards at row 3/);
    expect(() => fitHeating({ time: [1, 2], rise: [0, Number.NaN] })).toThrow(/row 2/);
  });

  it('scales: twice the rise is twice the answer', () => {
    const l = log(2400, one(20, 500));
    const a = answered(fitHeating(l));
    const b = answered(fitHeating({ time: l.time, rise: l.rise.map((r) => 2 * r) }));
    expectClose(b.steadyRise, 2 * a.steadyRise, { relative: 1e-6 });
    const c = answered(fitHeating({ time: l.time.map((t) => 3 * t), rise: l.rise }));
    expectClose(c.slowest, 3 * a.slowest, { relative: 1e-4 });
  });
});

describe('suppositions about drift', () => {
  it('are believed to one altogether, and one in five beforehand that nothing drifts', () => {
    expectClose(
      NOISES.reduce((sum, { belief }) => sum + belief, 0),
      1,
      { relative: 1e-12 },
    );
    expectClose(
      NOISES.filter(({ share }) => share === 0).reduce((sum, n) => sum + n.belief, 0),
      0.2,
      { relative: 1e-12 },
    );
  });

  it('are believed as their size in kelvin, whatever their duration', () => {
    const drifting = NOISES.filter(({ share }) => share > 0);
    const [first] = drifting;
    for (const n of drifting)
      expectClose(n.belief / first.belief, Math.sqrt(n.share / first.share), { relative: 1e-12 });
  });

  it('widen the interval where a log drifts, and hardly where it does not', () => {
    const still = log(3000, one(40, 600));
    const draws = drawsFrom(3);
    let wandering = 0;
    const drifting = {
      time: still.time,
      rise: still.rise.map((r) => {
        wandering = 0.97 * wandering + draws.scatter(0.07);
        return r + wandering;
      }),
    };
    const half = (l: { time: number[]; rise: number[] }) => {
      const { interval } = answered(fitHeating(l));
      return (interval[1] - interval[0]) / 2;
    };
    expect(half(still)).toBeLessThan(0.04);
    expect(half(drifting)).toBeGreaterThan(5 * half(still));
  });
});

/** Rest, then a current, then none: rows every 20 s. */
function currentLog({ current = 120, steady = 30, tau = 400, rest = 5, rows = 150 } = {}): CurrentLog {
  const n = rest + rows;
  const t = (i: number) => (i - rest + 1) * 20;
  const rise = (i: number) => (i < rest ? 0 : one(steady, tau)(t(i)));
  const ambient = Float64Array.from({ length: n }, (_, i) => 293.15 + 0.001 * i);
  const conductor = Float64Array.from({ length: n }, (_, i) => ambient[i] + rise(i) + 0.02 * Math.sin(i * 12.9));
  return {
    time: Float64Array.from({ length: n }, (_, i) => t(i) + 300),
    current: Float64Array.from({ length: n }, (_, i) => (i < rest ? 0 : current)),
    conductor,
    surface: null,
    ambient,
    drop: Float64Array.from({ length: n }, (_, i) =>
      i < rest ? Number.NaN : current * 2.1e-4 * (1 + COPPER.alpha * (conductor[i] - 293.15)),
    ),
  };
}

describe('heatings of a current log', () => {
  it('are found with their start, current and the copper’s own word', () => {
    const [found, ...more] = heatingsOf(currentLog(), COPPER);
    expect(more).toEqual([]);
    expectClose(found.segment.current, 120, { relative: 1e-9 });
    expectClose(found.segment.start, 310, { absolute: 1e-9, because: 'half a step before the first row' });
    expect(found.copper?.apart).toBe(false);
    expectClose(found.copper!.byResistance, found.copper!.byThermometer, { relative: 0.01 });
    const heating = answered(found.result as Heating);
    expectClose(heating.steadyRise, 30, { relative: 0.03 });
  });

  it('a thermometer that does not sit on the copper is seen', () => {
    const l = currentLog();
    const lying = {
      ...l,
      conductor: Float64Array.from(l.conductor!, (k, i) => l.ambient![i] + 0.6 * (k - l.ambient![i])),
    };
    expect(heatingsOf(lying, COPPER)[0].copper?.apart).toBe(true);
  });

  it('not from rest is refused', () => {
    const l = currentLog({ rest: 0 });
    const warm = { ...l, conductor: Float64Array.from(l.conductor!, (k) => k + 12) };
    expect(heatingsOf(warm, COPPER)[0].result).toMatchObject({ refused: 'not from rest' });
  });

  it('two currents are two heatings', () => {
    const [a, b] = [currentLog(), currentLog({ current: 160, steady: 50 })];
    const joined = Object.fromEntries(
      (['time', 'current', 'conductor', 'ambient', 'drop'] as const).map((k) => [
        k,
        Float64Array.from([...Array.from(a[k]!), ...Array.from(b[k]!, (x) => (k === 'time' ? x + 20_000 : x))]),
      ]),
    ) as unknown as CurrentLog;
    const found = heatingsOf({ ...joined, surface: null }, COPPER);
    expect(found.map((f) => Math.round(f.segment.current))).toEqual([120, 160]);
  });
});

describe('what cannot be in a log', () => {
  const l = currentLog();
  const swapped = { ...l, conductor: l.ambient, ambient: l.conductor };
  const cases: [string, CurrentLog, RegExp][] = [
    ['running backwards', { ...l, time: Float64Array.from(l.time, (t, i) => (i === 40 ? 0 : t)) }, /backwards/],
    ['a current of 0 throughout', { ...l, current: new Float64Array(l.time.length) }, /0 A in every row/],
    ['above melting', { ...l, conductor: Float64Array.from(l.conductor!, (k) => k + 1200) }, /melting point/],
    ['below absolute zero', { ...l, conductor: Float64Array.from(l.conductor!, (k) => k - 300) }, /absolute zero/],
    ['columns swapped', swapped, /swapped/],
  ];
  it.each(cases)('%s is named', (_name, bad, words) => {
    expect(impossibleInLog(bad, COPPER)).toMatch(words);
  });
  it('and nothing is said of a sound one', () => {
    expect(impossibleInLog(l, COPPER)).toBeNull();
    // Names right, cells swapped: amps where the copper's degrees should stand.
    const creeping = Float64Array.from({ length: 60 }, (_, i) =>
      i < 4 ? 20 : 20 + 35 * (1 - Math.exp(-(i - 3) / 18)),
    );
    const switched = Float64Array.from({ length: 60 }, (_, i) => (i < 4 ? 0 : 140));
    const time = Float64Array.from({ length: 60 }, (_, i) => 30 * i);
    const kelvin = (column: Float64Array) => column.map((x) => x + 273.15);
    const of = (current: Float64Array, conductor: Float64Array): CurrentLog => ({
      time,
      current,
      conductor: kelvin(conductor),
      surface: null,
      ambient: null,
      drop: null,
    });
    expect(impossibleInLog(of(creeping, switched), COPPER)).toMatch(/jumps in one step .* swapped/);
    expect(impossibleInLog(of(switched, creeping), COPPER)).toBeNull();
  });
});
