import { describe, expect, it } from 'vitest';
import { whatWasSaid } from '../../../src/edge/page/places/history/whatWasSaid.ts';
import { pieceDetail, pieceWords, signOf, valueWords } from '../../../src/edge/page/store/bench/names.ts';
import { pieceSoFar } from '../../../src/edge/page/store/bench/repeats.ts';
import type { Entry } from '../../../src/journal/entry.ts';
import { fold } from '../../../src/trial/fold.ts';
import { plannedTrial, said } from '../../browser/support/benchTrial.ts';

const reading = (name: string, value: string, place: number, more: Record<string, string> = {}): Entry =>
  said(
    't',
    'reading',
    { reading: name, specimen: 'cable-1-apart', quantity: 'conductor_mass', value, unit: 'g', ...more },
    place,
  );
const trialWith = (...more: Entry[]) => fold([...plannedTrial('t', ['KR', '']), ...more]);
const blind = said('t', 'blinding', { act: 'blind' }, 900);

describe('what things are called at the bench', () => {
  it('goes by code, and by name where there is none', () => {
    const trial = trialWith();
    expect(signOf(trial, 'cable-1-apart')).toBe('KR');
    expect(signOf(trial, 'cable-2-apart')).toBe('cable-2-apart');
    expect(pieceWords(trial, 'cable-1-apart')).toBe('KR, piece to take apart');
    expect(pieceDetail(trial, 'cable-1-apart')).toBe('Piece to take apart, 300 mm, Maker 1');
  });

  it('hides every name while the trial is blind', () => {
    const trial = trialWith(blind);
    for (const { specimen } of trial.specimens)
      for (const words of [signOf(trial, specimen), pieceWords(trial, specimen), pieceDetail(trial, specimen)])
        expect(words).not.toMatch(/Maker|cable-/);
    for (const entry of [...plannedTrial('t', ['KR', '']), reading('r1', '91.2', 901)])
      expect(JSON.stringify(whatWasSaid(entry, trial))).not.toMatch(/Maker|cable-/);
  });

  it('shows a value as typed with its unit as printed', () => {
    expect(valueWords('0.971', 'mohm')).toBe('0.971 mΩ');
    expect(valueWords('665', '')).toBe('665');
    expect(valueWords('1 3/8', 'furlong')).toBe('1 3/8 furlong');
  });
});

describe('the readings of a piece so far', () => {
  it('are shown as typed, with the mean of those that count in the unit of the field', () => {
    const trial = trialWith(
      reading('r1', '91.20', 500),
      reading('r2', '91.23', 501),
      reading('r3', '3.218', 502, { unit: 'oz' }),
      said('t', 'strike', { reading: 'r1', why: 'scale was not at zero' }, 503),
    );
    const soFar = pieceSoFar(trial, 'cable-1-apart', 'conductor_mass', 'g');
    expect(soFar.readings.map(({ text, standing }) => [text, standing])).toEqual([
      ['91.20', 'struck'],
      ['91.23', 'counted'],
      ['3.218 oz', 'counted'],
    ]);
    // 3.218 oz × 28.349523125 g = 91.22877 g, exact by the definition of the ounce.
    expect(soFar.values[1]).toBeCloseTo(91.22877, 4);
    expect(soFar.mean).toBe('91.229');
  });

  it('tell which stands far off, from three readings on', () => {
    const readings = ['44.82', '44.79', '44.81', '44.80', '46.18'];
    const trial = trialWith(...readings.map((value, place) => reading(`r${place}`, value, 500 + place)));
    expect(pieceSoFar(trial, 'cable-1-apart', 'conductor_mass', 'g').farOff).toEqual([4]);
  });
});

describe('the figure beside the readings so far', () => {
  const meanOf = (quantity: string, unit: string, ...values: string[]) =>
    pieceSoFar(
      trialWith(...values.map((value, i) => reading(`m${i}`, value, 800 + i, { quantity, unit }))),
      'cable-1-apart',
      quantity,
      unit,
    ).mean;

  it.each([
    ['resistance', 'mohm', ['.948 mohm'], '.948'],
    ['resistance', 'mohm', ['.948', '0.000001'], '0.474'],
    ['conductor_length', 'in', ['1 3/8'], '1 3/8'],
    ['conductor_length', 'in', ['14 3/8 in'], '14 3/8'],
    ['conductor_length', 'in', ['14 3/8', '14 1/4'], '14.31'],
    ['conductor_length', 'mm', ['14 3/8 in'], '365.1'],
    ['conductor_mass', 'g', ['39.27', '39.3'], '39.3'],
    ['strand_count', '', ['665'], '665'],
  ])('%s in %s of %s: %s', (quantity, unit, values, shown) => {
    expect(meanOf(quantity, unit, ...values)).toBe(shown);
  });
});
