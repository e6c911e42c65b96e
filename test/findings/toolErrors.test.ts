/** "How wrong would we have to be?", and what the figures of one piece are made of. */
import { describe, expect, it } from 'vitest';
import type { Measured } from '../../src/findings/schema.ts';
import { expectClose } from '../tolerance.ts';
import { CLAD, claimOf, gramsPerMm, milliohmsPerMm, oneCable } from './bench.ts';

/** The ± that is shown: the larger distance from the estimate to an end of its interval. */
const largerSide = ({ value, interval }: Measured) => Math.max(interval[1] - value, value - interval[0]);

/** A short cable weighed and ohmed, seen to be bare copper, its scale and meter off by so much. */
function short(offGrams = 0, offPercent = 0) {
  return oneCable()
    .read('p', 'conductor_length', '300.0', 'mm', { instrument: 'rule' })
    .read('p', 'conductor_mass', (gramsPerMm(32.2) * 300 - offGrams).toFixed(3), 'g', { instrument: 'scale' })
    .read('p', 'resistance', ((milliohmsPerMm(32.2) * 1000) / (1 + offPercent / 100)).toFixed(5), 'mohm', {
      instrument: 'meter',
      at_length: '1000',
      temperature: '20.0',
    })
    .seen('x', 'red through')
    .of('x');
}

describe('how wrong a tool would have to be', () => {
  const c = short();
  const asked = claimOf(c, 'copper held')!;

  it('is said for a piece that falls short, a tool once, the least unlikely first', () => {
    expect(asked.outcome).toBe('falls short');
    expect(c.tool_errors.length).toBeGreaterThan(2);
    const times = c.tool_errors.map((e) => e.needed / e.limit);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    for (const e of c.tool_errors)
      expect(e.text).toMatch(
        /^[A-Z].* would have to read [\d.]+ (g|mm|mΩ|°C|%) too (high|low) \(its limit is .* times that\) for this piece to reach the limit\.$/,
      );
    const tools = c.tool_errors.map((e) => e.text.split(' would have')[0]);
    expect(new Set(tools).size).toBe(tools.length);
  });

  it('a scale or meter that was wrong by so much: the piece stands at the limit', () => {
    const scale = c.tool_errors.find((e) => e.input === 'scale zero');
    const meter = c.tool_errors.find((e) => e.input === 'meter gain');
    // Taken by the most believed supposition; the whole mixture is nearly that where the strands were seen.
    const because = 'other suppositions have a say in the answer, none in the needed error';
    if (scale) expectClose(short(-scale.needed).conductor_area!.value, asked.required!, { relative: 0.015, because });
    expectClose(short(0, meter!.needed).conductor_area!.value, asked.required!, { relative: 0.015, because });
  });

  it('speaks of the metal where the metal is what falls short', () => {
    const clad = oneCable().everything('p', 35, CLAD).of('x');
    expect(clad.tool_errors.length).toBeGreaterThan(0);
    for (const e of clad.tool_errors) {
      expect(e.claim).toBe('metal');
      expect(e.text).toMatch(/for this metal to be taken for copper\.$/);
      expect(e.needed / e.limit).toBeGreaterThan(5);
    }
  });

  it('has nothing to say while nothing is settled', () => {
    expect(
      oneCable()
        .everything('p', 33)
        .of('x')
        .tool_errors.every((e) => e.claim !== 'AWG by resistance'),
    ).toBe(true);
    expect(oneCable('heavy', '').everything('p', 33).of('x').tool_errors).toEqual([]);
  });
});

describe('what the ± is made of', () => {
  it('sums to 1, largest first, in words', () => {
    const { spread_from } = short();
    expectClose(
      spread_from.reduce((s, e) => s + e.share, 0),
      1,
      { absolute: 0.005 },
    );
    const shares = spread_from.map((e) => e.share);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    expect(spread_from.map((e) => e.label).join(' ')).toMatch(/Four-wire meter/);
  });
});

describe('the next reading', () => {
  it('would narrow the area, says by how much, and is not one that was taken', () => {
    const c = oneCable().weigh('p', 33.6).ohm('p', 33.6).of('x');
    expect(c.next_reading).not.toBeNull();
    expect(c.next_reading!.half_width_then!).toBeLessThan(c.next_reading!.half_width_now!);
    expect(['resistance', 'conductor_mass']).not.toContain(c.next_reading!.reading);
    expect(c.next_reading!.text).toMatch(/: ± [\d.]+ mm² would become about ± [\d.]+ mm²\.$/);
    expectClose(c.next_reading!.half_width_now!, largerSide(c.conductor_area!), { relative: 1e-6 });
  });

  it('when the strands are what is told to be looked at, looking keeps the promise', () => {
    const before = oneCable().weigh('p', 33.6).ohm('p', 33.6);
    const promise = before.of('x').next_reading!;
    expect(promise.reading).toBe('scraped_strand');
    const after = before.seen('x', 'red through').of('x').conductor_area!;
    expectClose(largerSide(after), promise.half_width_then!, { relative: 0.02 });
  });
});
