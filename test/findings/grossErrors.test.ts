/** Readings that are grossly wrong: which one is named, and what is still said of the cable. */
import { describe, expect, it } from 'vitest';
import { claimOf, codes, oneCable } from './bench.ts';

describe('one reading is wrong', () => {
  it('a bundle of seven left out of the count: the strand count is to be taken again', () => {
    const bench = oneCable().weigh('p', 33.6).ohm('p', 33.6).strands('p', 33.6, 665, 570);
    const c = bench.of('x');
    expect(c.consistency?.recheck).toBe('strand_count');
    expect(c.consistency?.sentence).toMatch(/^The strand count with its diameter stands 1[2-6] % below .*count again/);
    expect(codes(bench.findings(), 'x')).toContain('recheck');
    expect(claimOf(c, 'copper held')!.outcome).not.toBe('falls short');
  });

  it('two wires instead of four, 0.3 mΩ too much on a metre: the resistance is to be taken again', () => {
    const c = oneCable().weigh('p', 33.6).strands('p', 33.6, 665).ohm('p', 33.6, undefined, 1000, 0.3).of('x');
    expect(c.consistency?.recheck).toBe('resistance');
    expect(c.consistency?.sentence).toMatch(/above .*four wires/);
    expect(claimOf(c, 'copper held')!.outcome).not.toBe('falls short');
  });

  it('a mass typed with its digits changed about: the mass is to be taken again', () => {
    const c = oneCable().weigh('p', 33.6, undefined, 300, 0.62).ohm('p', 33.6).strands('p', 33.6, 665).of('x');
    expect(c.consistency?.recheck).toBe('conductor_mass');
    expect(c.consistency?.sentence).toMatch(/below .*weigh it again/);
    expect(c.conductor_area!.interval[1]).toBeGreaterThan(33.6);
  });

  it('one piece of three a tenth too heavy: it is named, and the interval widened', () => {
    const bench = (slip: number) =>
      oneCable()
        .piece('q', 'x')
        .piece('r', 'x')
        .weigh('p', 33.6)
        .weigh('q', 33.6, undefined, 300, slip)
        .weigh('r', 33.6)
        .ohm('p', 33.6);
    const right = bench(1).findings();
    const wrong = bench(1.1).findings();
    expect(codes(right)).not.toContain('specimens-disagree');
    const said = wrong.warnings.find((w) => w.code === 'specimens-disagree')!;
    expect(said.text).toContain('q stands apart');
    expect(said.text).toContain('10.0 %');
    const width = (f: typeof right) =>
      f.cables[0].conductor_area!.interval[1] - f.cables[0].conductor_area!.interval[0];
    expect(width(wrong)).toBeGreaterThan(width(right));
  });

  it('of two pieces nobody can tell which', () => {
    const { warnings } = oneCable().piece('q', 'x').weigh('p', 33.6).weigh('q', 33.6, undefined, 300, 1.1).findings();
    expect(warnings.find((w) => w.code === 'specimens-disagree')?.text).toContain('two pieces cannot tell which');
  });

  it('everything in order: nothing is to be taken again', () => {
    const bench = oneCable().everything('p', 33.6);
    expect(bench.of('x').consistency).toMatchObject({
      recheck: null,
      sentence: 'The readings agree with one another.',
    });
    expect(codes(bench.findings())).toEqual([]);
  });

  it('an ordinary multimeter is left out, and so are ohms without a contact distance', () => {
    const bench = oneCable()
      .tool('dmm', 'digital multimeter', '0.1', 'ohm')
      .weigh('p', 33.6)
      .read('p', 'resistance', '0.3', 'ohm', { instrument: 'dmm', at_length: '1000', temperature: '20' })
      .read('p', 'resistance', '0.530', 'mohm', { instrument: 'meter', temperature: '20' });
    expect(codes(bench.findings(), 'x')).toEqual(expect.arrayContaining(['two-wire-meter', 'no-contact-distance']));
    expect(bench.of('x').resistance_20C).toBeNull();
  });
});

describe('tools and temperature', () => {
  it('a tool used outside its span is taken to be twice as wrong, and it is said', () => {
    const bench = (from: string) =>
      oneCable()
        .tool('cold', 'four-wire meter', '0.001', 'mohm', {
          max_error_percent: '2',
          valid_from_C: from,
          valid_to_C: '30',
        })
        .weigh('p', 33.6)
        .ohm('p', 33.6, undefined, 1000, 0, { instrument: 'cold', temperature: '12.0' })
        .seen('x', 'red through');
    const inside = bench('5').findings();
    const outside = bench('18').findings();
    expect(codes(inside)).not.toContain('tool-outside-its-span');
    expect(codes(outside)).toContain('tool-outside-its-span');
    const limit = (f: typeof inside) => {
      const m = f.cables[0].conductor_area!;
      return (m.interval[1] - m.interval[0]) / m.value;
    };
    expect(limit(outside)).toBeGreaterThan(1.2 * limit(inside));
    const share = outside.cables[0].spread_from.find((s) => s.input === 'cold gain')!;
    expect(share.share).toBeGreaterThan(inside.cables[0].spread_from.find((s) => s.input === 'cold gain')!.share);
  });

  it('a temperature that nobody took widens the area, and it is asked for', () => {
    const bench = (temperature: string) =>
      oneCable().weigh('p', 33.6).ohm('p', 33.6, undefined, 1000, 0, { temperature }).seen('x', 'red through').of('x');
    const taken = bench('20.0');
    const untaken = bench('');
    const width = (c: typeof taken) => c.conductor_area!.interval[1] - c.conductor_area!.interval[0];
    expect(width(untaken)).toBeGreaterThan(1.5 * width(taken));
    expect(untaken.missing.join(' ')).toContain('Tape a thermometer to the copper');
    expect(taken.missing.join(' ')).not.toContain('thermometer');
    expect(untaken.assumed.join(' ')).toContain('± 17.5 °C');
  });

  it('warm copper is brought back to 20 °C', () => {
    const factor = 1 + 0.00393 * 15;
    const ohms = (0.53 * factor).toFixed(4);
    const warm = oneCable().weigh('p', 33.6).read('p', 'resistance', ohms, 'mohm', {
      instrument: 'meter',
      at_length: '1000',
      temperature: '35.0',
    });
    const [low, high] = warm.of('x').resistance_20C!.interval;
    expect(low < 0.53 && 0.53 < high).toBe(true);
    expect(high - low).toBeLessThan(0.02);
  });

  it('limits that nobody stated are named as assumed, stated ones are not', () => {
    const bare = oneCable().read('p', 'conductor_length', '300', 'mm').read('p', 'conductor_mass', '92.1', 'g').of('x');
    expect(bare.assumed.length).toBeGreaterThanOrEqual(2);
    for (const text of bare.assumed)
      expect(text).toMatch(/± [\d.]+ (g|mm|%|K|mΩ), assumed because nothing was stated\.$/);
    expect(bare.spread_from.some((s) => s.label.endsWith('(assumed)'))).toBe(true);
    expect(oneCable().everything('p', 33.6).of('x').assumed).toEqual([]);
  });
});
