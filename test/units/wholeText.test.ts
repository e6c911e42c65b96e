import { describe, expect, it } from 'vitest';
import { readTypedNumber } from '../../src/units/typedNumber.ts';
import { wholeText } from '../../src/units/wholeText.ts';

const CASES: [number, string][] = [
  [0, '0'],
  [7, '7'],
  [1064, '1064'],
  [9999.4, '9999'],
  [9999.5, '10\u202f000'],
  [12345, '12\u202f345'],
  [1234567, '1\u202f234\u202f567'],
  [-1064, '\u22121064'],
  [-12345, '\u221212\u202f345'],
  [-0.3, '0'],
];

describe('a whole number', () => {
  it.each(CASES)('%d is %j', (n, text) => {
    expect(wholeText(n)).toBe(text);
  });

  it('can be typed back as it is printed', () => {
    for (const [n, text] of CASES)
      expect(readTypedNumber(text)).toMatchObject({
        ok: true,
        value: { value: n < 0 ? -Math.round(-n) + 0 : Math.round(n) },
      });
  });
});
