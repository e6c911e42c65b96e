import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry } from '../../src/journal/entry.ts';
import { contentHash } from '../../src/trial/content.ts';
import { fold } from '../../src/trial/fold.ts';
import { expectClose } from '../tolerance.ts';
import { entry, onePiece, reading } from './entries.ts';

const SEED = 20261125;

describe('fold', () => {
  it('gives an empty trial for no entries', () => {
    const trial = fold([]);
    expect(trial.cables).toEqual([]);
    expect(trial.described).toBeNull();
  });

  it('reads names, labels and SI values', () => {
    const trial = fold([
      entry('trial', { trial: 'club', title: ' Club ', target_temperature: '68', temperature_unit: 'F' }),
      entry('cable', {
        cable: 'c',
        claimed_size: '1/0 true spec',
        claimed_strands: '1,064',
        claimed_strand_diameter: '0.2',
        claimed_temperature: '105',
        claimed_ohms: '0.32 ohm/km',
        claimed_mass: '0.6 kg/m',
        claimed_outer_diameter: '0.5 in',
        bought_length: '10',
        bought_length_unit: 'ft',
      }),
    ]);
    expect(trial.title).toBe('Club');
    expectClose(trial.targetTemperature!, 293.15, { relative: 1e-12 });
    const [cable] = trial.cables;
    expect(cable!.name).toBe('c');
    expect(cable!.role).toBe('compared');
    expect(cable!.label.size).toBe('1/0 true spec');
    expect(cable!.label.strands).toBe(1064);
    expectClose(cable!.label.strandDiameter!, 2e-4, { relative: 1e-12 });
    expectClose(cable!.label.temperature!, 378.15, { relative: 1e-12 });
    expectClose(cable!.label.ohmsPerMetre!, 3.2e-4, { relative: 1e-12 });
    expectClose(cable!.label.massPerMetre!, 0.6, { relative: 1e-12 });
    expectClose(cable!.label.outerDiameter!, 0.0127, { relative: 1e-12 });
    expectClose(cable!.boughtLength!, 3.048, { relative: 1e-12 });
  });

  it('reads a reading with its step, temperature and contact distance', () => {
    const trial = fold([
      ...onePiece(),
      reading('r1', 'resistance', '0.971', 'mohm', {
        temperature: '17.7',
        at_length: '1912',
        at_length_unit: 'mm',
        instrument: 'scale',
        set: 'a',
        position: 'forward',
      }),
    ]);
    const [r1] = trial.readings;
    expectClose(r1!.value, 9.71e-4, { relative: 1e-12 });
    expectClose(r1!.step, 1e-6, { relative: 1e-12 });
    expectClose(r1!.temperature!, 290.85, { relative: 1e-12 });
    expectClose(r1!.atLength!, 1.912, { relative: 1e-12 });
    expectClose(r1!.atLengthStep, 1e-3, { relative: 1e-12 });
    expect(r1!.cable).toBe('quill');
    expect(r1!.instrument).toBe('scale');
    expect([r1!.set, r1!.position, r1!.standing, r1!.why]).toEqual(['a', 'forward', 'counted', '']);
  });

  it('lets the last entry of a key stand, in the place of the first', () => {
    const trial = fold([
      entry('cable', { cable: 'a', claimed_size: '2 AWG' }),
      entry('cable', { cable: 'b', claimed_size: '2 AWG' }),
      entry('cable', { cable: 'a', claimed_size: '4 AWG' }),
    ]);
    expect(trial.cables.map((cable) => `${cable.cable} ${cable.label.size}`)).toEqual(['a 4 AWG', 'b 2 AWG']);
  });

  it('reads a cut length with its step', () => {
    const [piece] = fold([entry('specimen', { specimen: 's', cable: 'c', cut_length: '11 13/16 in' })]).specimens;
    expectClose(piece!.cutLength!, 11.8125 * 0.0254, { relative: 1e-12 });
    expectClose(piece!.cutLengthStep, 0.0254 / 16, { relative: 1e-12 });
  });

  it('keeps a fitting apart for each cable tried in it', () => {
    const fitting = (tried_with: string, tried: string) =>
      entry('fitting', { fitting: 'lug', kind: 'lug', bore: '9', unit: 'mm', tried_with, tried });
    const trial = fold([fitting('a', 'goes in'), fitting('b', 'will not go'), fitting('a', 'too loose')]);
    expect(trial.fittings.map((one) => [one.triedWith, one.tried])).toEqual([
      ['a', 'too loose'],
      ['b', 'will not go'],
    ]);
  });

  it('marks replaced and struck readings and says why; nothing comes back by itself', () => {
    const trial = fold([
      ...onePiece(),
      reading('r1', 'conductor_mass', '93.1', 'g'),
      reading('r2', 'conductor_mass', '39.1', 'g', { replaces: 'r1', why: 'digits swapped' }),
      reading('r3', 'conductor_mass', '39.2', 'g'),
      entry('strike', { reading: 'r3', why: 'scale not level' }),
      entry('strike', { reading: 'r2', why: 'wrong piece' }),
    ]);
    expect(trial.readings.map((one) => [one.reading, one.standing, one.why])).toEqual([
      ['r1', 'replaced', 'digits swapped'],
      ['r2', 'struck', 'wrong piece'],
      ['r3', 'struck', 'scale not level'],
    ]);
    expect(trial.strikes).toHaveLength(2);
  });

  it('skips kinds that it does not know', () => {
    const known = onePiece();
    expect(fold([...known, entry('hologram', { shape: 'x' })])).toEqual(fold(known));
  });

  it('leaves out what it cannot read, and says so', () => {
    const trial = fold([
      ...onePiece(),
      reading('r1', 'conductor_mass', 'heavy', 'g'),
      reading('r2', 'conductor_mass', '12', 'mm'),
      reading('r3', 'brightness', '12', 'mm'),
      reading('r4', 'conductor_mass', '39.1', 'g', { temperature: 'warm' }),
      entry('instrument', { instrument: 'i', resolution: '1', unit: 'furlong' }),
    ]);
    expect(trial.readings.map((one) => one.reading)).toEqual(['r4']);
    expect(trial.readings[0]!.temperature).toBeNull();
    expect(trial.remarks.filter((one) => one.code === 'cannot-be-read')).toHaveLength(5);
    expect(trial.remarks.map((one) => one.text).join('\n')).toContain('"12 mm" (a length)');
  });

  it('leaves out what cannot be, had it come past the doors', () => {
    const trial = fold([
      ...onePiece(),
      entry('specimen', { specimen: 'q1', cable: 'quill', cut_length: '-300' }),
      reading('r1', 'conductor_mass', '-93.1', 'g'),
      reading('r2', 'conductor_mass', '0', 'g'),
      reading('r3', 'resistance', '0.97', 'mohm', { at_length: '0', temperature: '500' }),
      reading('r4', 'tip_drop', '-12', 'mm'),
    ]);
    expect(trial.readings.map((one) => one.reading)).toEqual(['r3', 'r4']);
    expect([trial.readings[0]!.atLength, trial.readings[0]!.temperature]).toEqual([null, null]);
    expect(trial.specimens[0]!.cutLength).toBeNull();
    expect(trial.remarks.map(({ code }) => code)).toEqual(Array(5).fill('cannot-be-read'));
  });

  it('refuses to mix two trials', () => {
    expect(() => fold([entry('trial', { trial: 'a' }), entry('trial', { trial: 'b' }, { trial: 'b' })])).toThrow(
      'entries of two trials, "club" and "b", cannot be folded into one',
    );
  });

  it('orders readings by their own time, whatever the order in which they were sent', () => {
    const trial = fold([
      ...onePiece(),
      reading('late', 'conductor_mass', '39.1', 'g', { at: '2026-10-03 11:00' }),
      reading('early', 'conductor_mass', '39.2', 'g', { at: '2026-10-03 10:59' }),
      reading('untimed', 'conductor_mass', '39.3', 'g'),
    ]);
    expect(trial.readings.map((one) => one.reading)).toEqual(['untimed', 'early', 'late']);
  });
});

const BIG: Entry[] = [
  ...onePiece(),
  reading('r1', 'conductor_mass', '93.1', 'g'),
  reading('r2', 'conductor_mass', '39.1', 'g', { replaces: 'r1', why: 'digits swapped' }),
  reading('r3', 'conductor_mass', '1.38', 'oz', { at: '2026-10-03T09:00Z' }),
  entry('cable', { cable: 'quill', claimed_size: '4 AWG', colour_of_thread: 'blue' }),
  entry('strike', { reading: 'r3', why: 'wrong piece' }),
  entry('evidence', { cable: 'quill', look: 'scraped_strand', count: '3 of 10', seen: 'white core' }),
  entry('judgement', { judgement: 'j1', left: 'q1', right: 'q1', result: 'same' }),
  entry('endurance', { specimen: 'q1', test: 'scrape', amount: '12', unit: 'strokes', outcome: 'failed' }),
  entry('current', { specimen: 'q1', time_s: '0', current_A: '100' }),
  entry('hologram', { shape: 'x' }),
];

describe('fold, for all journals', () => {
  it('does not depend on the order or on repeats', () => {
    const wanted = fold(BIG);
    fc.assert(
      fc.property(fc.shuffledSubarray(BIG, { minLength: BIG.length }), fc.subarray(BIG), (shuffled, again) => {
        expect(fold([...shuffled, ...again])).toEqual(wanted);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it('reads one mass typed in two units as one value', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999 }), (hundredths) => {
        const grams = hundredths / 100;
        const typed = (value: string, unit: string) =>
          fold([...onePiece(), reading('r', 'conductor_mass', value, unit)]).readings[0]!;
        const inGrams = typed(String(grams), 'g');
        const inOunces = typed(String(grams / 28.349523125), 'oz');
        const inKilograms = typed(`${hundredths}e-5`, 'kg');
        expectClose(inOunces.value, inGrams.value, { relative: 1e-12 });
        expectClose(inKilograms.value, inGrams.value, { relative: 1e-12 });
        expectClose(inKilograms.step, 1e-5, { relative: 1e-12 });
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  it('has a content that changes with what is said and not with who says it', () => {
    const content = contentHash(fold(BIG));
    const others = BIG.map((one) => ({ ...one, by: 'somebody else', device: 'phone' }));
    expect(contentHash(fold(others))).toBe(content);
    expect(contentHash(fold([...BIG, reading('r9', 'conductor_mass', '39.1', 'g')]))).not.toBe(content);
    expect(contentHash(fold(BIG.slice(0, -3)))).not.toBe(content);
    expect(content).toMatch(/^[0-9a-f]{64}$/);
  });
});

describe('fold, in time', () => {
  it('folds 5,400 readings in well under a second', () => {
    const many = Array.from({ length: 5400 }, (_, i) =>
      reading(`r${i}`, 'conductor_mass', (39 + (i % 7) / 100).toFixed(2), 'g', { at: '2026-10-03T10:00:00Z' }),
    );
    const journal = [...onePiece(), ...many];
    fold(journal);
    const began = performance.now();
    expect(fold(journal).readings).toHaveLength(5400);
    const took = performance.now() - began;
    expect(took).toBeLessThan(1000);
  });
});
