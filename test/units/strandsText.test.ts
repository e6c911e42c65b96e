import { describe, expect, it } from 'vitest';
import { readStrandsText, strandsWords, withoutStrands } from '../../src/units/strandsText.ts';

describe('strands as a label prints them', () => {
  it.each([
    ['665 x 0.25', '665 strands of 0.25 mm'],
    ['665x0.25mm', '665 strands of 0.25 mm'],
    ['665 × 0,25 mm', '665 strands of 0,25 mm'],
    ['665/0.25', '665 strands of 0.25 mm'],
    ['665 * .25', '665 strands of .25 mm'],
    ['665/.010"', '665 strands of .010 in'],
    ['665 x 10.0 mil', '665 strands of 10.0 mil'],
    ['665 strands of 0.25 mm', '665 strands of 0.25 mm'],
    ['7 x 95 x 0.25 mm', '665 strands of 0.25 mm'],
    ['2 AWG OFC 665 x 0.25', '665 strands of 0.25 mm'],
  ])('%s', (text, words) => {
    expect(strandsWords(readStrandsText(text)!)).toBe(words);
  });

  it.each([
    '665',
    '2 AWG',
    '1/0 AWG',
    '4/0',
    '35 mm2',
    '2 x 25 mm2',
    '5 x 10',
    '2 x 2.5 mm²',
    '1 x 4.5',
    '2 x 2.5',
    '250 kcmil',
  ])('are not in %s', (text) => {
    expect(readStrandsText(text)).toBeNull();
    expect(withoutStrands(text)).toBe(text);
  });

  it('are taken out of a label', () => {
    expect(withoutStrands('2 AWG, 665 x 0.25 mm, OFC')).toBe('2 AWG, , OFC');
    expect(withoutStrands('665 x 0.25')).toBe('');
  });
});
