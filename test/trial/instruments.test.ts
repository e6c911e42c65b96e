import { describe, expect, it } from 'vitest';
import { fold } from '../../src/trial/fold.ts';
import { isOrdinaryMultimeter, usualInstrumentFor, usualLimit, usualStep } from '../../src/trial/usualLimits.ts';
import { expectClose } from '../tolerance.ts';
import { entry, onePiece, reading } from './entries.ts';

const toolOf = (row: Record<string, string>) =>
  fold([entry('instrument', { instrument: 'tool', resolution: '0.01', ...row })]).instruments[0]!;

describe('limits as the box prints them', () => {
  it('adds the absolute part, the share and the counts', () => {
    const { limit, resolution } = toolOf({
      kind: 'four-wire meter',
      unit: 'mohm',
      resolution: '0.001',
      max_error: '0.002',
      max_error_percent: '0.5 %',
      max_error_counts: '3',
    });
    expectClose(resolution, 1e-6, { relative: 1e-12 });
    expectClose(limit.absolute, 2e-6 + 3e-6, { relative: 1e-12 });
    expectClose(limit.fraction, 0.005, { relative: 1e-12 });
    expect(limit.assumed).toBe(false);
  });

  it.each([
    ['0.02', 'mm', 2e-5, 0],
    ['±0.02 mm', 'mm', 2e-5, 0],
    ['+/- 0.001 in', 'mm', 2.54e-5, 0],
    ['0.5 % + 3 counts', 'mm', 3e-5, 0.005],
    ['±(1% + 5 digits)', 'mm', 5e-5, 0.01],
    ['1 % of reading + 0,02 mm', 'mm', 2e-5, 0.01],
  ])('reads "%s" for a tool in %s', (max_error, unit, absolute, fraction) => {
    const { limit } = toolOf({ unit, resolution: '0.01', max_error });
    expectClose(limit.absolute, absolute, { relative: 1e-12 });
    expectClose(limit.fraction, fraction, { relative: 1e-12, absolute: 1e-18 });
    expect(limit.assumed).toBe(false);
  });

  it.each(['good', '0.02 g', '5 %%', '-0.02', '3 counts +'])('does not read "%s", and says so', (max_error) => {
    const trial = fold([
      entry('instrument', { instrument: 'tool', kind: 'rule', resolution: '1', unit: 'mm', max_error }),
    ]);
    expect(trial.instruments[0]!.limit.assumed).toBe(true);
    expect(trial.remarks[0]!.code).toBe('cannot-be-read');
  });

  it('reads inches, and a thermometer’s step without the offset of its scale', () => {
    expectClose(toolOf({ unit: 'in', max_error: '0.001' }).limit.absolute, 2.54e-5, { relative: 1e-12 });
    const thermometer = toolOf({ unit: 'F', resolution: '0.1', max_error: '1.8', valid_from_C: '0', valid_to_C: '50' });
    expectClose(thermometer.resolution, 0.1 / 1.8, { relative: 1e-12 });
    expectClose(thermometer.limit.absolute, 1, { relative: 1e-12 });
    expectClose(thermometer.validFrom!, 273.15, { relative: 1e-12 });
    expectClose(thermometer.validTo!, 323.15, { relative: 1e-12 });
  });

  it('takes a stated limit of nothing at its word', () => {
    expect(toolOf({ unit: 'g', max_error: '0' }).limit).toEqual({ absolute: 0, fraction: 0, assumed: false });
  });
});

describe('limits that nobody states', () => {
  // Common practice, no source: what such tools usually promise.
  it.each([
    ['kitchen scale', 'g', '1', 1e-3, 0.005],
    ['Pocket scale', 'g', '0.01', 3e-5, 0.001],
    ['steel digital caliper', 'mm', '0.01', 3e-5, 0],
    ['plastic caliper', 'mm', '0.1', 2e-4, 0],
    ['micrometer', 'mm', '0.001', 4e-6, 0],
    ['steel rule', 'mm', '0.5', 5e-4, 0],
    ['tape measure', 'mm', '1', 1e-3, 0.001],
    ['4-wire milliohm meter', 'mohm', '0.001', 5e-6, 0.01],
    ['shunt and millivoltmeter', 'mohm', '0.001', 0, 0.01],
    ['clamp ammeter', 'A', '0.1', 0.5, 0.03],
    ['thermometer', 'C', '0.1', 1, 0],
    ['infrared thermometer', 'C', '0.1', 3, 0],
  ])('%s', (kind, unit, resolution, absolute, fraction) => {
    const { limit } = toolOf({ kind, unit, resolution });
    expectClose(limit.absolute, absolute, { relative: 1e-9, absolute: 1e-18 });
    expectClose(limit.fraction, fraction, { relative: 1e-9, absolute: 1e-18 });
    expect(limit.assumed).toBe(true);
  });

  it('goes by what the unit measures where the kind says nothing', () => {
    expectClose(toolOf({ kind: 'the old one', unit: 'g', resolution: '1' }).limit.absolute, 1e-3, { relative: 1e-9 });
    expectClose(toolOf({ kind: 'gauge', unit: 'N', resolution: '0.5' }).limit.absolute, 0.5, { relative: 1e-9 });
  });
});

describe('the tool of a reading that names none', () => {
  it.each([
    ['conductor_mass', 1e-3, 0.09, 'kitchen scale'],
    ['conductor_mass', 5e-4, 0.09, 'kitchen scale'],
    ['conductor_mass', 1e-4, 0.09, 'pocket scale'],
    ['conductor_mass', 1e-5, 0.09, 'pocket scale'],
    ['specimen_length', 5e-4, 0.3, 'steel rule'],
    ['specimen_length', 1e-3, 2, 'tape'],
    ['outer_diameter', 1e-5, 0.011, 'digital caliper'],
    ['strand_diameter', 1e-5, 2e-4, 'digital caliper'],
    ['strand_diameter', 1e-6, 2e-4, 'micrometer'],
    ['resistance', 1e-6, 1e-3, 'four-wire meter'],
    ['temperature', 0.1, 293, 'thermometer'],
    ['strand_count', 1, 665, null],
    ['hardness', 1, 62, null],
  ])('%s in steps of %f: %s', (quantity, step, value, kind) => {
    expect(usualInstrumentFor(quantity, step, value)?.kind ?? null).toBe(kind);
  });

  it('counts its limit in the steps that were typed', () => {
    const usual = usualInstrumentFor('resistance', 1e-5)!;
    expect(usual.limit).toEqual({ absolute: 5e-5, fraction: 0.01, assumed: true });
  });

  it('knows the usual step of a tool', () => {
    expect(usualStep('kitchen scale')).toBe(1e-3);
    expect(usualStep('four-wire meter')).toBeNull();
    expect(usualLimit('sundial', 1)).toBeNull();
  });
});

describe('an ordinary multimeter', () => {
  it.each([
    ['multimeter', true],
    ['Digital multi-meter', true],
    ['DMM', true],
    ['four-wire multimeter', false],
    ['milliohm meter', false],
  ])('"%s": %s', (kind, ordinary) => {
    expect(isOrdinaryMultimeter(kind)).toBe(ordinary);
  });

  it('is remarked on where it read a resistance', () => {
    const trial = fold([
      ...onePiece(),
      entry('instrument', { instrument: 'dmm', kind: 'multimeter', resolution: '0.1', unit: 'ohm' }),
      reading('r1', 'resistance', '0.3', 'ohm', { instrument: 'dmm' }),
      reading('r2', 'resistance', '0.3', 'ohm', { instrument: 'dmm' }),
    ]);
    expect(trial.remarks).toMatchObject([{ code: 'two-wire-meter', cable: 'quill', readings: ['r1', 'r2'] }]);
  });
});
