import { describe, expect, it } from 'vitest';
import { lengthWords } from '../../../src/report/words/lengthWords.ts';
import { limitSource, limitWords } from '../../../src/report/words/limitWords.ts';
import { minutesWords } from '../../../src/report/words/minutesWords.ts';

/** No-break spaces as plain ones, so that the tables can be read. */
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('a limit of error in words', () => {
  it.each([
    [{ absolute: 3e-5, fraction: 0.001 }, 'g', '±(0.03 g + 0.1 %)'],
    [{ absolute: 3e-5, fraction: 0 }, 'mm', '±0.03 mm'],
    [{ absolute: 0, fraction: 0.01 }, 'mohm', '±1 %'],
    [{ absolute: 5e-6, fraction: 0.01 }, 'mohm', '±(0.005 mΩ + 1 %)'],
    [{ absolute: 1, fraction: 0 }, 'F', '±1.8 °F'],
    [{ absolute: 1, fraction: 0 }, 'C', '±1 °C'],
    [{ absolute: 0, fraction: 0 }, 'g', ''],
    [{ absolute: 1, fraction: 0 }, 'cubit', ''],
  ])('%j in %s is %s', (limit, unit, words) => {
    expect(plain(limitWords(limit, unit))).toBe(words);
  });

  it('says where it comes from', () => {
    expect(limitSource({ assumed: true })).toBe('assumed');
    expect(limitSource({ assumed: false })).toBe('as stated');
    expect(limitSource({ assumed: false, checked: true })).toBe('as checked');
  });
});

describe('a length to cut or to buy', () => {
  it.each([
    [0.3, 'm', '300 mm'],
    [0.0004, 'm', '0 mm'],
    [1, 'm', '1.00 m'],
    [3.048, 'm', '3.05 m'],
    [0.3, 'ft', '11 13/16 in'],
    [0.75, 'ft', '29 1/2 in'],
    [0.762, 'ft', '30 in'],
    [0.0095, 'ft', '3/8 in'],
    [3.048, 'ft', '10 ft'],
    [1.6764, 'ft', '5 ft 6 in'],
    [3, 'ft', '9 ft 10 1/8 in'],
    [12, 'ft', '39.37 ft'],
  ] as const)('%f m by the %s is %s', (length, perLength, words) => {
    expect(plain(lengthWords(length, { perLength }))).toBe(words);
  });
});

describe('minutes', () => {
  it.each([
    [0, '0 min'],
    [0.2, '1 min'],
    [40, '40 min'],
    [60, '1 h'],
    [394.25, '6 h 34 min'],
    [119.6, '2 h'],
  ])('%f is %s', (minutes, words) => {
    expect(plain(minutesWords(minutes))).toBe(words);
  });
});
