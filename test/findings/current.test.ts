/** Four wires, heating and carrying current, from rows as they are typed to the part of the findings that speaks of them. */
import { describe, expect, it } from 'vitest';
import { currentRowsOf, MOST_ROWS } from '../../src/findings/current/logRows.ts';
import { runCandidates } from '../../src/findings/current/runCables.ts';
import { rowsOfTrial } from '../../src/findings/rows/rowsOfTrial.ts';
import { Findings } from '../../src/findings/schema.ts';
import type { CurrentCable } from '../../src/findings/shapes/current.ts';
import { previewLog } from '../../src/methods/current/log/columns.ts';
import { readLog } from '../../src/methods/current/log/readLog.ts';
import { inOpenAir } from '../../src/methods/current/thermal/run.ts';
import { steadyTemperature } from '../../src/methods/current/thermal/steady.ts';
import { fold } from '../../src/trial/fold.ts';
import { expectClose } from '../tolerance.ts';
import { Bench, CLAD, COPPER, codes, milliohmsPerMm, oneCable } from './bench.ts';

const AT = { at_length: '1000', at_length_unit: 'mm', temperature: '20.0', temperature_unit: 'C' };
const MM2 = 33.6;
/** mΩ over a metre at 20 °C. */
const OHMS = 1000 * milliohmsPerMm(MM2, COPPER);

function sized(b: Bench, piece = 'p'): Bench {
  return b
    .read(piece, 'outer_diameter', '12.30', 'mm', { instrument: 'caliper' })
    .read(piece, 'conductor_diameter', '8.40', 'mm', { instrument: 'caliper' });
}
const bench = (more = {}) =>
  oneCable('2 AWG', 'OFC', more).tool('caliper', 'digital caliper', '0.01', 'mm', { max_error: '0.03' });

/** Voltages at currents both ways round, with a thermal voltage e and a wire that warms by c I². */
function fourWire(b: Bench, ohms = OHMS, e = 8e-6, c = 0, more = AT, piece = 'p'): Bench {
  b.tool('shunt', 'shunt', '0.001', 'A', { max_error_percent: '0.2' }).tool('mv', 'multimeter', '0.0001', 'mV', {
    max_error_percent: '0.1',
  });
  [10, -10, 20, -20, 40, -40].forEach((amps, i) => {
    const volts = e + ohms * 1e-3 * amps * (1 + c * amps ** 2);
    b.read(piece, 'test_voltage', (volts * 1000).toFixed(4), 'mV', { instrument: 'mv', set: `s${i}`, ...more });
    b.read(piece, 'test_current', amps.toFixed(3), 'A', { instrument: 'shunt', set: `s${i}`, ...more });
  });
  return b;
}

const currentOf = (f: Findings, id = 'x'): CurrentCable => f.current!.cables.find((c) => c.cable === id)!;

describe('voltages and currents', () => {
  it('give a resistance that a thermal voltage does not move, at 20 °C and per 1000 ft', () => {
    const f = fourWire(bench()).findings();
    const [r] = currentOf(f).four_wire;
    expect(r).toMatchObject({ way: 'line', points: 6, plausible: 'plausible', warmed: null });
    expectClose(r.resistance!.value, OHMS, { relative: 1e-3 });
    expectClose(r.at_20C!.value, OHMS, { relative: 1e-3 });
    expectClose(r.emf_uV!.value, 8, { relative: 0.02 });
    expectClose(r.per_1000_ft!.value, r.per_metre!.value * 0.3048, { relative: 1e-9 });
    expect(r.resistance!.interval[0]).toBeLessThan(OHMS);
    expect(r.resistance!.interval[1]).toBeGreaterThan(OHMS);
    expect(Findings.safeParse(f).error).toBeUndefined();
  });

  it('feed the assay as a resistance reading would, although the voltmeter is a multimeter', () => {
    const byPairs = fourWire(bench().weigh('p', MM2)).of('x');
    const byMeter = bench().weigh('p', MM2).ohm('p', MM2).of('x');
    expect(byPairs.metal_found).toBe(byMeter.metal_found);
    expectClose(byPairs.conductor_area!.value, byMeter.conductor_area!.value, { relative: 5e-3 });
    expectClose(byPairs.resistance_20C!.value, OHMS, { relative: 5e-3 });
    const [low, high] = byPairs.resistance_20C!.interval;
    expect((high - low) / 2 / OHMS).toBeLessThan(0.01);
  });

  it('at a temperature are brought to 20 °C by the metal found', () => {
    const hot = OHMS * (1 + 0.00393 * 20);
    const [r] = currentOf(
      fourWire(bench().weigh('p', MM2), hot, 0, 0, { ...AT, temperature: '40.0' }).findings(),
    ).four_wire;
    expectClose(r.per_metre!.value, hot, { relative: 1e-3 });
    expectClose(r.at_20C!.value, OHMS, { relative: 1.5e-3 });
  });

  it('that warmed the wire say so', () => {
    const [r] = currentOf(fourWire(bench(), OHMS, 0, 1e-5).findings()).four_wire;
    expect(r.way).toBe('line with heating');
    expectClose(r.warmed!, 0.016, { relative: 0.05 });
    expect(r.text).toContain('warmed the wire');
  });

  it('of two wires, or of half the current, are told apart from any metal', () => {
    expect(codes(fourWire(bench(), OHMS * 4).findings(), 'x')).toContain('four-wire-too-high');
    expect(codes(fourWire(bench(), OHMS * 0.4).findings(), 'x')).toContain('four-wire-too-low');
    expect(
      codes(fourWire(bench(), 1000 * milliohmsPerMm(MM2, CLAD)).findings(), 'x').filter((c) => c.startsWith('four')),
    ).toEqual([]);
  });

  it('turned round or without a distance are named', () => {
    const turned = bench();
    [10, 20, 30].forEach((a, i) => {
      turned.read('p', 'test_voltage', String(9 - a / 10), 'mV', { set: `s${i}`, ...AT });
      turned.read('p', 'test_current', String(a), 'A', { set: `s${i}`, ...AT });
    });
    expect(codes(turned.findings(), 'x')).toContain('four-wire-gives-nothing');
    const f = fourWire(bench(), OHMS, 0, 0, { temperature: '20' } as never).findings();
    expect(currentOf(f).four_wire[0].text).toContain('how far apart');
    expect(codes(f, 'x')).toContain('no-contact-distance');
  });

  it('one current, one way round, is told', () => {
    const b = bench()
      .read('p', 'test_voltage', (OHMS * 20).toFixed(4), 'mV', { set: 'a', ...AT })
      .read('p', 'test_current', '20', 'A', { set: 'a', ...AT });
    expect(codes(b.findings(), 'x')).toContain('four-wire-one-level');
  });
});

/** The cable of these tests as heat sees it. */
const HEATED = (() => {
  const b = sized(bench().weigh('p', MM2).ohm('p', MM2));
  const trial = fold(b.entries);
  return runCandidates(trial, rowsOfTrial(trial), b.findings()).cables[0].heated;
})();

/** A log of a piece at a steady current: what the model gives at a loss factor, by one time constant, in still air at 20 °C. */
function heated(
  b: Bench,
  { current = 150, factor = 1, minutes = 50, piece = 'p', tau = 500, ambient = 20, column = 'conductor_C' } = {},
): Bench {
  const rise = steadyTemperature(HEATED, current, { ...inOpenAir(293.15), lossFactor: factor })!.conductor - 293.15;
  for (let i = -3; i <= (minutes * 60) / 30; i++) {
    const t = i * 30;
    const k = t <= 0 ? 0 : rise * (1 - Math.exp(-t / tau));
    const jitter = 0.05 * Math.sin(i * 37.7);
    b.say('current', {
      specimen: piece,
      time_s: String(t),
      current_A: t <= 0 ? '0' : String(current),
      [column]: (ambient + k + jitter).toFixed(2),
      ambient_C: ambient.toFixed(2),
    });
  }
  return b;
}
const whole = (more = {}) => sized(bench(more).weigh('p', MM2).ohm('p', MM2));

describe('a heating test', () => {
  it('sets the carrying current, and narrows it', () => {
    const cold = currentOf(whole({ claimed_temperature: '80', claimed_temperature_unit: 'C' }).findings());
    const f = heated(whole({ claimed_temperature: '80', claimed_temperature_unit: 'C' }), { factor: 0.8 }).findings();
    const c = currentOf(f);
    expect(Findings.safeParse(f).error).toBeUndefined();
    expect(c.heating_tests).toHaveLength(1);
    expect(c.heating_tests[0].refused).toBeNull();
    expectClose(c.carrying!.loss_factor, 0.8, { relative: 0.03 });
    expect(c.carrying).toMatchObject({ calibrated_by: 'own test', rating_C: 80, rating_assumed: false, ambient_C: 30 });
    expectClose(c.carrying!.current_A.value / cold.carrying!.current_A.value, Math.sqrt(0.8), {
      relative: 0.03,
      because: 'the drop through the wall does not change with the loss',
    });
    const width = (m: { interval: [number, number] }) => m.interval[1] - m.interval[0];
    expect(width(c.carrying!.current_A)).toBeLessThan(0.7 * width(cold.carrying!.current_A));
    expect(cold.carrying!.calibrated_by).toBe('nothing');
    expect(f.current!.sentence).toContain('ends');
  });

  it('speaks for its fellows too, less surely', () => {
    const b = heated(whole().cable('y', '2 AWG', 'OFC').piece('q', 'y'), { factor: 0.8 });
    sized(b.weigh('q', MM2).ohm('q', MM2), 'q');
    const f = b.findings();
    const [x, y] = [currentOf(f), currentOf(f, 'y')];
    expect(y.carrying).toMatchObject({ calibrated_by: 'tests of the trial' });
    expectClose(y.carrying!.loss_factor, x.carrying!.loss_factor, { relative: 1e-9 });
    expect(y.carrying!.loss_u).toBeGreaterThan(x.carrying!.loss_u);
  });

  it('too short is refused with how long it should be; nothing leans on it', () => {
    const f = heated(whole(), { minutes: 6 }).findings();
    const c = currentOf(f);
    expect(c.heating).toBeNull();
    expect(c.heating_tests[0]).toMatchObject({ refused: 'too short', steady_rise: null });
    expect(c.heating_tests[0].text).toMatch(/Let it run for about \d+ minutes/);
    expect(codes(f, 'x')).toContain('heating-settles-nothing');
    expect(c.carrying!.calibrated_by).toBe('nothing');
  });

  it('on the jacket does not set the carrying current', () => {
    const c = currentOf(heated(whole(), { column: 'surface_C' }).findings());
    expect(c.heating_tests[0]).toMatchObject({ where: 'surface', refused: null });
    expect(c.carrying!.calibrated_by).toBe('nothing');
    expect(c.heating_tests[0].text).toContain('on the jacket');
  });

  it.each([
    ['0 A', (row: Record<string, string>) => ({ ...row, current_A: '0' }), /0 A in every row/],
    [
      'above melting',
      (row: Record<string, string>) => ({ ...row, conductor_C: String(Number(row.conductor_C) + 1200) }),
      /melting/,
    ],
    [
      'swapped',
      (row: Record<string, string>) => ({ ...row, conductor_C: row.ambient_C, ambient_C: row.conductor_C }),
      /swapped/,
    ],
  ])('%s is named', (_name, change, words) => {
    const b = heated(whole());
    b.entries.forEach((e, i) => {
      if (e.kind === 'current') b.entries[i] = { ...e, body: change(e.body as Record<string, string>) };
    });
    const f = b.findings();
    expect(f.warnings.find((w) => w.code === 'log-impossible')?.text).toMatch(words);
    expect(Findings.safeParse(f).error).toBeUndefined();
  });
});

describe('the carrying current', () => {
  it('takes the lowest usual rating where none is stated, and says so', () => {
    const c = currentOf(whole().findings());
    expect(c.carrying).toMatchObject({ rating_C: 60, rating_assumed: true });
    expect(c.carrying!.current_A.condition).toBe('if its jacket bears 60 °C');
  });

  it('says what is missing', () => {
    expect(currentOf(bench().weigh('p', MM2).ohm('p', MM2).findings())).toMatchObject({
      carrying: null,
      missing: 'its outer diameter was not measured',
    });
  });

  it('follows the surroundings of the plan', () => {
    const hot = currentOf(whole().say('setting', { setting: 'amps_ambient_C', value: '50' }).findings());
    expect(hot.carrying!.ambient_C).toBe(50);
    expect(hot.carrying!.current_A.value).toBeLessThan(currentOf(whole().findings()).carrying!.current_A.value);
  });

  it('nothing recorded of this kind is null', () => {
    expect(bench().weigh('p', MM2).findings().current).toBeNull();
    expect(new Bench().findings().current).toBeNull();
  });

  it('leaves every figure of the other parts as it was', () => {
    const without = whole().findings();
    const f = heated(whole()).findings();
    expect(f.cables).toEqual(without.cables);
    expect(f.comparisons).toEqual(without.comparisons);
  });
});

describe('candidates for a run', () => {
  it('carry their own resistance, rating and price, not their label', () => {
    const b = whole({
      claimed_temperature: '105',
      claimed_temperature_unit: 'C',
      price: '30',
      currency: 'EUR',
      bought_length: '5',
      bought_length_unit: 'm',
    });
    b.read('p', 'specimen_length', '300.0', 'mm', { instrument: 'rule' }).read('p', 'specimen_mass', '140.00', 'g', {
      instrument: 'scale',
    });
    const trial = fold(b.entries);
    const { cables, missing } = runCandidates(trial, rowsOfTrial(trial), b.findings());
    expect(missing).toEqual([]);
    const [x] = cables;
    expect(x.measured).toBe(true);
    expectClose(x.rating, 378.15, { absolute: 1e-6 });
    expectClose(x.ohmsPerMetre.value, OHMS * 1e-3, { relative: 0.01 });
    expect(x.ohmsPerMetre.low).toBeLessThan(x.ohmsPerMetre.value);
    expect(x.price).toEqual({ perMetre: 6, currency: 'EUR' });
    expectClose(x.massPerMetre!, 0.14 / 0.3, { relative: 0.01 });
  });

  it('without a size are left out with the reason', () => {
    const b = bench().weigh('p', MM2).ohm('p', MM2);
    const trial = fold(b.entries);
    expect(runCandidates(trial, rowsOfTrial(trial), b.findings())).toMatchObject({
      cables: [],
      missing: [{ cable: 'x', text: 'its outer diameter was not measured' }],
    });
  });
});

describe('a logger’s file as rows', () => {
  const text = `s,A,C,Room C\n${Array.from({ length: 5000 }, (_, i) => {
    const t = i - 600;
    return `${i},${t < 0 ? 0 : 140},${(20 + (t < 0 ? 0 : 30 * (1 - Math.exp(-t / 600)))).toFixed(2)},20`;
  }).join('\n')}\n`;
  const preview = previewLog(text)!;
  const log = readLog([text], preview.layout, preview.columns);

  it('is brought down to some hundred, the switching kept to the row', () => {
    const rows = currentRowsOf(log, { specimen: 'p', current: null, ambient: null });
    expect(rows.length).toBeGreaterThan(MOST_ROWS - 20);
    expect(rows.length).toBeLessThan(MOST_ROWS + 20);
    expect(new Set(rows.map((r) => r.current_A))).toEqual(new Set(['0', '140']));
    const b = whole();
    for (const r of rows) b.say('current', r);
    const [t] = currentOf(b.findings()).heating_tests;
    expectClose(t.steady_rise!.value, 30, { relative: 0.01 });
    expectClose(t.slowest_s!.value, 600, { relative: 0.05 });
  });

  it('needs the current from somewhere', () => {
    const without = { ...log, current: null };
    expect(() => currentRowsOf(without, { specimen: 'p', current: null, ambient: null })).toThrow(/how many amps/);
    const [first] = currentRowsOf({ ...without, ambient: null }, { specimen: 'p', current: 120, ambient: 294.15 });
    expect(first).toMatchObject({ specimen: 'p', current_A: '120', ambient_C: '21' });
  });
});
