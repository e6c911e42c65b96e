import { describe, expect, it } from 'vitest';
import { carriesUnits, splitTyped, typedText, unitText } from '../../src/units/typedText.ts';

describe('a typed value with its unit, once', () => {
  it.each([
    ['39.27', 'g', '39.27 g'],
    ['.948 mohm', 'mohm', '.948 mΩ'],
    ['.948', 'mohm', '.948 mΩ'],
    ['12 oz', 'g', '12 oz'],
    ['29.5in', 'mm', '29.5 in'],
    ['1 3/8 in', 'mm', '1 3/8 in'],
    ['1 3/8', 'in', '1 3/8 in'],
    ['1-3/8', 'in', '1-3/8 in'],
    ['1½', 'in', '1½ in'],
    ['12,5', 'mm', '12,5 mm'],
    ['1.2e3', 'g', '1.2e3 g'],
    ['5 ft 6 in', 'mm', '5 ft 6 in'],
    ['5\' 3 1/2"', 'mm', '5\' 3 1/2"'],
    ['665', '', '665'],
    ['665 strands', '', '665'],
    ['about 3', 'g', 'about 3 g'],
    ['', '', ''],
  ])('%s with %s: %s', (value, unit, shown) => {
    expect(typedText(value, unit)).toBe(shown);
  });
});

describe('taking apart', () => {
  it.each([
    ['29.5in', '29.5', 'in'],
    [' 1 3/8 " ', '1 3/8', '"'],
    ['5 ft 6 in', '5 ft 6 in', ''],
    ['48 bananas', '48 bananas', ''],
    ['48', '48', ''],
    ['', '', ''],
  ])('%s', (text, number, unit) => {
    expect(splitTyped(text)).toEqual({ number, unit });
  });
});

it('prints units as a label does', () => {
  expect(['mohm', '', 'strands', 'Shore A'].map(unitText)).toEqual(['mΩ', '', '', 'Shore A']);
});

describe('units within a text', () => {
  it.each([
    ['5 ft 6 in', true],
    ['5\' 6"', true],
    ['2 lb 3 oz', true],
    ['1e9', false],
    ['1.2E-3', false],
    ['1 3/8', false],
    ['1½', false],
    ['12,5', false],
    ['-7', false],
    ['', false],
  ])('%s: %s', (text, wanted) => {
    expect(carriesUnits(text)).toBe(wanted);
  });
});
