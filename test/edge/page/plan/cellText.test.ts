import { describe, expect, it } from 'vitest';
import { cellChanges, cellText, takenApart } from '../../../../src/edge/page/store/plan/cellText.ts';
import { cellDoubt } from '../../../../src/findings/plan/cellDoubts.ts';
import { readLimitText } from '../../../../src/journal/limitText.ts';
import { findUnit } from '../../../../src/units/unit.ts';

describe('the text of a cell', () => {
  it.each([
    [{ bought_length: '10', bought_length_unit: 'ft' }, '10 ft'],
    [{ bought_length: '10 ft' }, '10 ft'],
    [{ bought_length: '10' }, '10'],
    [{ bought_length_unit: 'ft' }, ''],
    [{}, ''],
  ])('of %j is %s', (row: Record<string, string>, shown) => {
    expect(cellText('cable', row, 'bought_length')).toBe(shown);
  });

  it('leaves columns without a unit as they are', () => {
    expect(cellText('cable', { maker: ' Fen ' }, 'maker')).toBe(' Fen ');
    expect(cellText('cable', { claimed_strands: '665' }, 'claimed_strands')).toBe('665');
  });
});

describe('what typing in a cell changes', () => {
  it.each([
    ['a unit of its own', { bought_length: '10', bought_length_unit: 'ft' }, '3 m', '3 m', ''],
    ['no unit: the one beside it stays', { bought_length: '10', bought_length_unit: 'ft' }, '12', '12', 'ft'],
    ['no unit: the one in the cell stays', { bought_length: '10 ft' }, '12', '12', 'ft'],
    ['no unit: fractions too', { bought_length: '1 3/8 in' }, '1 1/2', '1 1/2', 'in'],
    ['no unit and none before', { bought_length: '10' }, '12,5', '12,5', ''],
    ['two units', { bought_length: '10 ft' }, `5' 3 1/2"`, `5' 3 1/2"`, ''],
    ['nothing', { bought_length: '10', bought_length_unit: 'ft' }, '', '', ''],
  ])('with %s', (_what, row: Record<string, string>, typed, value, unit) => {
    expect(cellChanges('cable', row, 'bought_length', typed)).toEqual({
      bought_length: value,
      bought_length_unit: unit,
    });
  });

  it('with strands as a label prints them: count and diameter, and it is said', () => {
    expect(cellChanges('cable', { claimed_strands: '7' }, 'claimed_strands', '665 x 0.25')).toEqual({
      claimed_strands: '665',
      claimed_strand_diameter: '0.25',
      claimed_strand_unit: 'mm',
    });
    expect(takenApart('cable', 'claimed_strands', '665 x 0.25')).toContain('Read as 665 strands of 0.25 mm');
    expect(cellChanges('cable', {}, 'claimed_strands', '665')).toEqual({ claimed_strands: '665' });
    expect(takenApart('cable', 'claimed_strands', '665')).toBe('');
  });

  it.each([
    ['claimed_size', 'banana', 'No size can be read from it'],
    ['claimed_size', '40 000 mm2', 'No size can be read from it, so nothing is judged by it. Is it so much?'],
    ['claimed_size', '2 AWG', ''],
    ['price', 'cheap', 'No price can be read from it'],
    ['price', '3,75 USD', ''],
    ['price', '€4', 'The price says EUR, the column of currencies USD'],
    ['price', '$4', ''],
  ])('keeps %s “%s” with its mark, where there is something to say', (column, typed, words) => {
    const doubt = cellDoubt({ currency: 'USD', [column]: typed }, column);
    if (words === '') expect(doubt).toBe('');
    else expect(doubt).toContain(words);
  });

  it('touches one cell where there is no unit', () => {
    expect(cellChanges('cable', {}, 'maker', '12 ft of nothing')).toEqual({ maker: '12 ft of nothing' });
  });
});

describe('a limit of error', () => {
  it.each([
    [{ max_error: '0.03' }, '0.03'],
    [{ max_error: '0.03', max_error_percent: '0.1' }, '0.03 + 0.1 %'],
    [{ max_error_percent: '0.5 %', max_error_counts: '2' }, '0.5 % + 2 counts'],
    [{ max_error_counts: '1' }, '1 count'],
    [{}, ''],
  ])('of %j is shown as one text', (row: Record<string, string>, shown) => {
    expect(cellText('instrument', row, 'max_error')).toBe(shown);
  });

  it('takes the place of all its parts, and can be read as it is shown', () => {
    const row = { max_error: '0.03', max_error_percent: '0.1', max_error_counts: '' };
    expect(cellChanges('instrument', row, 'max_error', '±0.05 g')).toEqual({
      max_error: '±0.05 g',
      max_error_percent: '',
      max_error_counts: '',
    });
    const read = readLimitText(cellText('instrument', row, 'max_error'), findUnit('g')!);
    expect(read.ok && read.value).toMatchObject({ absolute: expect.closeTo(3e-5, 12), percent: 0.1, counts: 0 });
  });
});
