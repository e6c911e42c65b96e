import { describe, expect, it } from 'vitest';
import { earlierOutcomes, earlierSentence } from '../../../src/findings/bench/earlierOutcomes.ts';
import { exposureQuestion } from '../../../src/findings/bench/exposureQuestion.ts';
import { fold } from '../../../src/trial/fold.ts';
import { Bench, codes } from '../bench.ts';

function bench(): Bench {
  return new Bench().carefulTools().cable('a', '2 AWG', 'OFC').piece('a1', 'a', { kind: 'abuse' });
}

const scrape = (b: Bench, amount: string, outcome: string, more: Readonly<Record<string, string>> = {}) =>
  b.say('endurance', { specimen: 'a1', test: 'scrape', amount, unit: 'strokes', outcome, ...more });
const hand = { test: 'Scrape', stress: '', exposure: '' };

describe('a piece that was through the test before', () => {
  it('failed: the words at the counter are the rule of the findings', () => {
    const b = bench();
    scrape(b, '120', 'failed', { endurance: 'e1' });
    const earlier = earlierOutcomes(fold(b.entries), 'a1', hand);
    expect(earlierSentence(earlier)).toBe(
      'It failed in this test before, at 120 strokes. A piece fails once: that one counts, and what is kept now does not.',
    );
    scrape(b, '300', 'failed');
    const found = b.findings();
    expect(found.jacket!.endurance[0].cables[0].pieces).toMatchObject([{ specimen: 'a1', amount: 120 }]);
    expect(found.warnings.find((w) => w.code === 'endurance-failed-twice')!.text).toContain(
      '“The earlier one was a slip”',
    );
    // Once the earlier one is put aside as a slip, the later one counts.
    b.say('withdrawal', {
      withdrawal: 'w1',
      act: 'put aside',
      about: 'endurance',
      which: earlier[0].which,
      why: 'slip',
    });
    expect(b.findings().jacket!.endurance[0].cables[0].pieces).toMatchObject([{ amount: 300 }]);
    expect(codes(b.findings())).not.toContain('endurance-failed-twice');
  });

  it('survived: it goes on', () => {
    const b = bench();
    scrape(b, '200', 'survived');
    expect(earlierSentence(earlierOutcomes(fold(b.entries), 'a1', hand))).toMatch(
      /^It survived 200 strokes of this test before\./,
    );
  });

  it('under another load, or corrected since: nothing stands', () => {
    const b = bench();
    scrape(b, '120', 'failed', { endurance: 'e1', stress: '7', stress_unit: 'N' });
    expect(earlierOutcomes(fold(b.entries), 'a1', { ...hand, stress: '10' })).toEqual([]);
    expect(earlierOutcomes(fold(b.entries), 'a1', { ...hand, test: 'pinch' })).toEqual([]);
    scrape(b, '130', 'failed', { endurance: 'e2', replaces: 'e1', stress: '7', stress_unit: 'N' });
    expect(earlierOutcomes(fold(b.entries), 'a1', hand).map((e) => e.amount)).toEqual([130]);
  });
});

describe('masses before and after', () => {
  const soaked = (b: Bench, quantity: string, value: string, unit = 'g') =>
    b.read('a1', quantity, value, unit, { set: 'fluid: diesel', instrument: 'scale' });
  const ask = (b: Bench, quantity: string, value: string, unit = 'g') =>
    exposureQuestion(fold(b.entries), {
      ...{ specimen: 'a1', quantity, value, unit, set: 'fluid: diesel' },
      ...{ words: quantity === 'mass_before' ? 'Mass before' : 'Mass after', like: 'specimen_mass' },
    });

  it('are asked about where they stand far from each other', () => {
    const b = soaked(bench(), 'mass_before', '22', 'lb');
    expect(ask(b, 'mass_before', '30.10')).toMatch(/^Mass before, 30\.10 g, is far from 22 lb read of this piece/);
    expect(ask(b, 'mass_after', '31.00')).toMatch(/^Mass after, 31\.00 g, beside 22 lb before: a piece seldom changes/);
    const sound = soaked(bench(), 'mass_before', '30.10');
    expect(ask(sound, 'mass_before', '30.12')).toBe('');
    expect(ask(sound, 'mass_after', '33.00')).toBe('');
    expect(ask(sound, 'mass_after', '330.0')).toMatch(/a piece seldom changes so much/);
  });

  it('averaged over a slip give no change, and a reason', () => {
    const b = soaked(soaked(soaked(bench(), 'mass_before', '22', 'lb'), 'mass_before', '30.10'), 'mass_after', '31.00');
    const found = b.findings();
    expect(found.jacket?.exposures.every((e) => e.mass === null)).toBe(true);
    expect(codes(found, 'a')).toContain('exposure-readings-apart');
  });

  it('never fall by more than all', () => {
    const b = bench().piece('a2', 'a', { kind: 'abuse' });
    soaked(soaked(b, 'mass_before', '30.00'), 'mass_after', '2.00');
    b.read('a2', 'mass_before', '30.00', 'g', { set: 'fluid: diesel', instrument: 'scale' });
    b.read('a2', 'mass_after', '25.00', 'g', { set: 'fluid: diesel', instrument: 'scale' });
    expect(b.findings().jacket!.exposures[0].mass!.interval[0]).toBeGreaterThanOrEqual(-1);
  });
});
