import { describe, expect, it } from 'vitest';
import type { CriterionFound } from '../../../src/findings/shapes/decide.ts';
import { carriedText } from '../../../src/report/standing/carriedWords.ts';
import { endRange, endTrouble } from '../../../src/report/standing/endRange.ts';
import { looseScales, looseSentence } from '../../../src/report/standing/looseScales.ts';
import { shareTyped } from '../../../src/report/standing/shareTyped.ts';

const criterion = (id: string, more: Partial<CriterionFound> = {}): CriterionFound => ({
  id,
  name: id,
  unit: '1',
  better: 'more',
  shape: 'linear',
  worst: 0.7,
  best: 1,
  fixed: false,
  weight: 0.25,
  ...more,
});
const COPPER = criterion('copper', { name: 'Copper, of what the label claims' });
const PRICE = criterion('price', { name: 'Price', unit: 'EUR/m' });
const CURRENT = criterion('current', { name: 'Current it carries', unit: 'A', worst: 120, best: 240 });

describe('an end of a scale that was typed', () => {
  it.each([
    ['copper below nothing', COPPER, '-5', -0.05, 'Found "-5"; expected 0 to 200 %.'],
    ['copper beyond twice the label', COPPER, '1000000000', 1e7, 'Found "1000000000"; expected 0 to 200 %.'],
    ['copper of 70 %', COPPER, '70', 0.7, ''],
    ['a price below nothing', PRICE, '-1', -1, 'Found "-1"; expected 0 to 10000000 EUR/m.'],
    ['a price', PRICE, '25', 25, ''],
    ['no number', PRICE, 'dear', Number.NaN, 'Found "dear"; expected a number of EUR/m.'],
    ['judged ease below the mean', criterion('judged'), '-2', -2, ''],
  ])('is taken, or turned away in one sentence: %s', (_what, of, typed, end, wanted) => {
    expect(endTrouble(of, typed, end)).toBe(wanted);
  });

  it.each(['copper', 'area', 'resistance', 'mass', 'outer_diameter', 'stiffness', 'judged', 'cold', 'coil', 'wall'])(
    'leaves room for what is usual: %s',
    (id) => {
      const [least, most] = endRange({ id });
      expect(least).toBeLessThanOrEqual(0);
      expect(most).toBeGreaterThan(1);
    },
  );
});

describe('a share that was typed', () => {
  it.each([['0'], ['100'], ['30'], ['30 %']])('takes %s', (typed) => {
    expect(shareTyped(typed)).toEqual({ share: Number.parseInt(typed, 10) });
  });
  it.each([['500'], ['-5'], ['30.5'], [''], ['much']])('turns %j away, and changes nothing silently', (typed) => {
    expect(shareTyped(typed)).toEqual({ trouble: `Found "${typed}"; expected a whole number from 0 to 100.` });
  });
});

describe('scales that nobody fixed', () => {
  it('are named, those alone that other cables or labels would move', () => {
    const all = [COPPER, PRICE, criterion('resistance', { name: 'Resistance' })];
    expect(looseScales(all)).toEqual(['price', 'resistance']);
    expect(looseScales([COPPER, { ...PRICE, fixed: true }, { ...CURRENT, weight: 0 }])).toEqual([]);
    expect(looseSentence(['price', 'resistance'])).toMatch(/^The scales of price and resistance follow from /);
    expect(looseSentence(['price'])).toMatch(/^The scale of price follows from /);
  });
});

describe('the job that speaks of carrying', () => {
  it('says the amperes that it takes and where they are changed', () => {
    expect(carriedText([PRICE, CURRENT])).toMatch(
      /^No least current is asked for\. What a cable carries is worth nothing at 120 A, everything at 240 A.*under Criteria and type the amperes\.$/,
    );
    expect(carriedText([{ ...CURRENT, shape: 'threshold', best: 150 }])).toMatch(
      /^Current: worth everything from 150 A up/,
    );
    expect(carriedText([PRICE])).toMatch(/^No current is known that these cables carry/);
  });
});
