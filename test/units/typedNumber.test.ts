import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Dimension } from '../../src/units/dimension.ts';
import { readTypedNumber } from '../../src/units/typedNumber.ts';
import { expectClose } from '../tolerance.ts';

function read(text: string, expected?: Dimension) {
  const outcome = readTypedNumber(text, expected);
  if (!outcome.ok) throw new Error(`"${text}" was refused: found ${outcome.found}`);
  return outcome.value;
}

const READ: readonly (readonly [text: string, value: number, step: number])[] = [
  ['39.27', 39.27, 0.01],
  ['39,27', 39.27, 0.01],
  ['12,5', 12.5, 0.1],
  ['312', 312, 1],
  ['0', 0, 1],
  ['0.0', 0, 0.1],
  ['-0', 0, 1],
  ['.5', 0.5, 0.1],
  [',5', 0.5, 0.1],
  ['5.', 5, 1],
  ['007', 7, 1],
  ['+3.20', 3.2, 0.01],
  ['-5', -5, 1],
  ['−5,5', -5.5, 0.1],
  ['–5', -5, 1],
  ['- 5', -5, 1],
  ['1.2e3', 1200, 100],
  ['1,2E3', 1200, 100],
  ['2.5e-3', 0.0025, 0.0001],
  ['1e0', 1, 1],
  ['1.064', 1.064, 0.001],
  ['0,064', 0.064, 0.001],
  ['1234,567', 1234.567, 0.001],
  ['1,06', 1.06, 0.01],
  ['1,0640', 1.064, 0.0001],
  ['1,234.5', 1234.5, 0.1],
  ['1.234,5', 1234.5, 0.1],
  ['1,234,567', 1234567, 1],
  ['1.234.567', 1234567, 1],
  ['1,234,567.89', 1234567.89, 0.01],
  ['1\u00a0234', 1234, 1],
  ['1\u202f234\u202f567,5', 1234567.5, 0.1],
  ['12\u2009345.6', 12345.6, 0.1],
  ['\u00a0 12.5\u00a0', 12.5, 0.1],
  ['3/8', 0.375, 0.125],
  ['3 / 8', 0.375, 0.125],
  ['1 3/8', 1.375, 0.125],
  ['1-3/8', 1.375, 0.125],
  ['1–3/8', 1.375, 0.125],
  ['1\u00a03/8', 1.375, 0.125],
  ['11/8', 1.375, 0.125],
  ['-1 3/8', -1.375, 0.125],
  ['½', 0.5, 0.5],
  ['⅜', 0.375, 0.125],
  ['1½', 1.5, 0.5],
  ['2 ¾', 2.75, 0.25],
  ['3⁄8', 0.375, 0.125],
  ['0 1/64', 0.015625, 0.015625],
];

/** Text, and a word that its refusal must contain. */
const REFUSED: readonly (readonly [text: string, says: RegExp])[] = [
  ['', /nothing/],
  ['   ', /nothing/],
  ['NaN', /NaN/],
  ['Infinity', /Infinity/],
  ['-∞', /∞/],
  ['1e999', /range/],
  ['1e-999', /range/],
  ['abc', /abc/],
  ['12a', /12a/],
  ['0x10', /0x10/],
  ['1,064', /1\.064 or 1064/],
  ['-12,500', /12\.500 or 12500/],
  ['12 13', /two numbers/],
  ['12-13', /two numbers/],
  ['12 - 13', /two numbers/],
  ['1 064', /two numbers/],
  ['1 2 3', /1 2 3/],
  ['1,23,456', /1,23,456/],
  ['1.2.3', /1\.2\.3/],
  ['1,2.3,4', /1,2\.3,4/],
  ['1.234,567.8', /1\.234,567\.8/],
  ['1,2345.6', /1,2345\.6/],
  ['1,234.', /1,234\./],
  ['3/0', /zero/],
  ['1 9/8', /below one/],
  ['1.5/8', /1\.5\/8/],
  ['3/', /3\//],
  ['/8', /\/8/],
  ['--5', /--5/],
  ['+-5', /\+-5/],
  ['.', /"\."/],
  [',', /","/],
  ['10²', /10²/],
  ["1'064", /1'064/],
  ['1e', /1e/],
  ['5 %', /5 %/],
  ['٣', /٣/],
  ['9'.repeat(41), /41 characters/],
];

describe('readTypedNumber', () => {
  it.each(READ)('%s', (text, value, step) => {
    const got = read(text);
    expect(Object.is(got.value, value) || got.value === value, `value of "${text}": ${got.value}`).toBe(true);
    expect(Object.is(got.value, -0)).toBe(false);
    expectClose(got.step, step, { relative: 1e-15 });
  });

  it.each(REFUSED)('refuses "%s"', (text, says) => {
    const outcome = readTypedNumber(text);
    expect(outcome).toMatchObject({ ok: false, expected: expect.stringContaining('a number') });
    expect(outcome.ok ? '' : outcome.found).toMatch(says);
  });

  it('reads a comma before three digits as thousands only where a count is expected', () => {
    expect(read('1,064', 'count')).toEqual({ value: 1064, step: 1 });
    expect(readTypedNumber('1,064', 'length').ok).toBe(false);
    expect(read('12,5', 'count').value).toBe(12.5);
  });

  it('reads comma and point alike', () => {
    const typed = fc.tuple(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 0, max: 99 }), fc.boolean());
    fc.assert(
      fc.property(typed, ([whole, hundredths, negative]) => {
        const text = `${negative ? '-' : ''}${whole}.${String(hundredths).padStart(2, '0')}`;
        const point = read(text);
        expect(read(text.replace('.', ','))).toEqual(point);
        expect(point.value).toBe(Number(text) + 0);
        expect(point.step).toBe(0.01);
      }),
      { seed: 21, numRuns: 300 },
    );
  });

  it('reads a fraction as its quotient, with one part as its step', () => {
    const parts = fc.tuple(fc.nat(99), fc.constantFrom(2, 4, 8, 16, 32, 64), fc.nat(63));
    fc.assert(
      fc.property(parts, ([whole, below, n]) => {
        const above = n % below;
        const got = read(`${whole} ${above}/${below}`);
        expect(got).toEqual({ value: whole + above / below, step: 1 / below });
        expect(read(`${whole}-${above}/${below}`)).toEqual(got);
      }),
      { seed: 22, numRuns: 200 },
    );
  });

  it('never throws and never reads anything but a finite number', () => {
    const digitsAndMarks = fc.string({ unit: fc.constantFrom(...'0123456789.,/-+ e½\u00a0−'), maxLength: 14 });
    fc.assert(
      fc.property(fc.oneof(digitsAndMarks, fc.string()), (text) => {
        const outcome = readTypedNumber(text);
        if (outcome.ok) {
          expect(Number.isFinite(outcome.value.value)).toBe(true);
          expect(outcome.value.step).toBeGreaterThan(0);
        } else expect(outcome.found).not.toBe('');
      }),
      { seed: 23, numRuns: 2000 },
    );
  });
});
