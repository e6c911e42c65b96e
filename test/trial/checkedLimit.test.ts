import { describe, expect, it } from 'vitest';
import { checkDoubt } from '../../src/trial/checkDoubt.ts';
import { type CheckFigures, checkedLimit } from '../../src/trial/checkedLimit.ts';
import { fold } from '../../src/trial/fold.ts';
import type { ErrorLimit } from '../../src/trial/trial.ts';
import { expectClose } from '../tolerance.ts';
import { entry, onePiece, reading } from './entries.ts';

const stated = (absolute: number, fraction = 0): ErrorLimit => ({ absolute, fraction, assumed: false });
const assumed = (absolute: number, fraction = 0): ErrorLimit => ({ absolute, fraction, assumed: true });
const on = (known: number, read: number, knownError = 0): CheckFigures => ({
  check: `of ${known}`,
  zero: false,
  known,
  knownError,
  read,
});
const zero = (read: number): CheckFigures => ({ check: 'zero', zero: true, known: 0, knownError: 0, read });

/** Figures in grams for the eye; a step of 0.01. Worked by hand. */
const CASES: readonly [string, ErrorLimit, CheckFigures[], number, number, number, boolean][] = [
  // what, limit, checks, largest reading, wanted absolute, wanted fraction, checked
  ['nothing without checks', assumed(0.03, 0.001), [], 90, 0.03, 0.001, false],
  [
    '|read − known| + error + step for an assumed limit',
    assumed(0.03, 0.001),
    [on(100, 100.02, 0.005)],
    90,
    0.035,
    0,
    true,
  ],
  ['the same when it is wider than what was assumed', assumed(0.01), [on(100, 100.004, 0.05)], 90, 0.064, 0, true],
  ['a stated limit that is wider gives way', stated(0.1, 0.01), [on(100, 100.02)], 90, 0.03, 0, true],
  ['a stated limit that is narrower stands', stated(0.02), [on(100, 100.015, 0.01)], 90, 0.02, 0, false],
  ['a stated limit is compared where the tool was used', stated(0, 0.001), [on(100, 100.02)], 10, 0, 0.001, false],
  ['without readings, where it was checked', stated(0, 0.001), [on(100, 100.02)], 0, 0.03, 0, true],
  ['the worst of several checks', assumed(1), [on(50, 50.01), on(100, 99.94), on(200, 200)], 90, 0.07, 0, true],
  ['beyond the largest value checked it grows in proportion', stated(10), [on(100, 100.02)], 300, 0.09, 0, true],
  ['only the largest check is stretched', stated(10), [on(1, 1.02), on(100, 100)], 300, 0.03, 0, true],
  ['a check too small to say anything changes nothing', assumed(0.03, 0.001), [on(1, 1.01)], 100, 0.03, 0.001, false],
  ['a tool further off than its limit gets what was seen', stated(0.02), [on(100, 100.5)], 90, 0.51, 0, true],
  ['also one whose limit was assumed and whose check was small', assumed(0.03), [on(1, 1.5)], 2, 1.02, 0, true],
  ['a sign does not matter', assumed(1), [on(100, 99.98)], -90, 0.03, 0, true],
  ['one zero shows no drift', stated(0.02), [zero(0.5)], 90, 0.02, 0, false],
  [
    'half the spread of zeros is added when it is larger',
    stated(0.02),
    [zero(-0.05), zero(0.03), zero(0)],
    90,
    0.06,
    0,
    false,
  ],
  ['and left out when it is not', stated(0.04), [zero(-0.05), zero(0.03)], 90, 0.04, 0, false],
  ['drift comes on top of a check', assumed(1), [on(100, 100.01), zero(-0.1), zero(0.1)], 90, 0.12, 0, true],
];

describe('checkedLimit', () => {
  it.each(CASES)('%s', (_what, limit, checks, largest, absolute, fraction, checked) => {
    const outcome = checkedLimit(limit, 0.01, checks, largest).limit;
    const because = 'worked by hand';
    expectClose(outcome.absolute, absolute, { relative: 1e-9, absolute: 1e-12, because });
    expectClose(outcome.fraction, fraction, { relative: 1e-9, absolute: 1e-12, because });
    expect(outcome.checked ?? false).toBe(checked);
    expect(outcome.assumed).toBe(limit.assumed && !checked);
  });

  it('names the checks in which the tool was too far off', () => {
    const { outside } = checkedLimit(stated(0.02), 0.01, [on(50, 50.01), on(100, 100.5), on(200, 200.4, 0.5)]);
    expect(outside).toEqual(['of 100']);
  });
});

describe('checks in a trial', () => {
  const check = (row: Record<string, string>) =>
    entry('check', { check: 'k', instrument: 'scale', unit: 'g', against: 'check weight', ...row });
  const limitOf = (...checks: ReturnType<typeof entry>[]) => {
    const trial = fold([...onePiece(), reading('r1', 'conductor_mass', '90', 'g', { instrument: 'scale' }), ...checks]);
    return { limit: trial.instruments[0]!.limit, trial };
  };

  it('give the tool the limit that was seen, in SI', () => {
    const { limit, trial } = limitOf(check({ known_value: '100', known_error: '0.005', read_value: '100.02' }));
    expectClose(limit.absolute, 0.035e-3, { relative: 1e-9 });
    expect([limit.assumed, limit.checked]).toEqual([false, true]);
    expect(trial.checks.map(({ check, known, read }) => [check, known, read])).toEqual([['k', 0.1, 0.10002]]);
    expect(trial.remarks).toEqual([]);
  });

  it('read a thermometer in ice water, whose kelvins are no measure of its error', () => {
    const trial = fold([
      entry('instrument', { instrument: 'probe', kind: 'thermometer', resolution: '0.1', unit: 'C' }),
      entry('check', {
        check: 'k',
        instrument: 'probe',
        against: 'water',
        known_value: '0',
        known_error: '0.1',
        unit: 'C',
        read_value: '-0.3',
      }),
    ]);
    expectClose(trial.instruments[0]!.limit.absolute, 0.5, { relative: 1e-9 });
  });

  it('keep what was corrected: the last row of a check counts', () => {
    const { limit } = limitOf(
      check({ known_value: '100', read_value: '140' }),
      check({ known_value: '100', read_value: '100.01' }),
    );
    expectClose(limit.absolute, 0.02e-3, { relative: 1e-9 });
  });

  it('of the same thing count from the latest on, so that a second look puts a slip right', () => {
    const slip = check({ check: 'k1', known_value: '100', read_value: '3.7 oz' });
    const again = check({ check: 'k2', known_value: '100.0', read_value: '100.01' });
    const other = check({ check: 'k3', known_value: '50', read_value: '50.02' });
    expectClose(limitOf(slip).limit.absolute, 3.7 * 0.028349523125 - 0.1 + 0.01e-3, { relative: 1e-9 });
    const { limit, trial } = limitOf(slip, again, other);
    expectClose(limit.absolute, 0.03e-3, { relative: 1e-9 });
    expect(trial.remarks).toEqual([]);
  });

  it('put aside leave the limit to the check before them', () => {
    const good = check({ check: 'k1', known_value: '100', read_value: '100.01' });
    const slip = check({ check: 'k2', known_value: '100', read_value: '3.7 oz' });
    const taken = entry('withdrawal', { withdrawal: 'w', about: 'check', which: 'k2', why: 'typed wrong' });
    expectClose(limitOf(good, slip, taken).limit.absolute, 0.02e-3, { relative: 1e-9 });
    expect(limitOf(good, slip).limit.absolute).toBeGreaterThan(4e-3);
  });

  it('stretch only to readings that count', () => {
    const heavy = reading('r2', 'conductor_mass', '900', 'g', { instrument: 'scale' });
    const known = check({ known_value: '100', read_value: '100.00' });
    expectClose(limitOf(heavy, known).limit.absolute, 0.09e-3, { relative: 1e-9 });
    const struck = entry('strike', { reading: 'r2', why: 'two pieces on the scale' });
    expectClose(limitOf(heavy, known, struck).limit.absolute, 0.01e-3, { relative: 1e-9 });
  });

  it.each([
    ['tool-outside-its-limit', { known_value: '100', read_value: '103' }, 'read 103 g on a check weight of 100 g'],
    ['check-of-another-kind', { known_value: '10', unit: 'mm', read_value: '10' }, 'Check k of tool scale is in mm'],
    ['not-yet-described', { instrument: 'ghost', known_value: '1', read_value: '1' }, 'of tool ghost'],
    ['cannot-be-read', { known_value: 'a lot', read_value: '1' }, 'known value'],
  ])('are remarked on: %s', (code, row, words) => {
    const { remarks } = limitOf(check(row)).trial;
    expect(remarks.map((one) => one.code)).toEqual([code]);
    expect(remarks[0]!.text).toContain(words);
  });
});

describe('a check about to be kept', () => {
  const tool = { limit: assumed(0.03, 0.001), resolution: 0.01 };
  it.each([
    [100.02, null],
    [100.35, null],
    [104.9, { off: 4.9, allowed: 0.13 }],
    [10, { off: -90, allowed: 0.13 }],
  ])("of 100 that reads %s is asked about only far outside the tool's own limit", (read, wanted) => {
    const doubt = checkDoubt(tool, { known: 100, knownError: 0, read });
    if (wanted === null) return expect(doubt).toBeNull();
    expectClose(doubt!.off, wanted.off, { relative: 1e-9 });
    expectClose(doubt!.allowed, wanted.allowed, { relative: 1e-9 });
  });

  it('is held against what was stated, not against an earlier slip', () => {
    const slipped = { ...tool, limit: stated(4.9), ownLimit: tool.limit };
    expect(checkDoubt(slipped, { known: 100, knownError: 0, read: 104.9 })).not.toBeNull();
  });
});
