import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  rankingText,
  readRanking,
  readScale,
  readWeights,
  scaleText,
  weightsText,
} from '../../../src/findings/standing/settings.ts';

describe('weights as typed', () => {
  const cases: [string, Record<string, number> | null][] = [
    ['copper 40, price 30', { copper: 40, price: 30 }],
    ['Copper 40 %; endurance:hot iron 12,5', null],
    ['copper 40 %; endurance:hot iron 12.5', { copper: 40, 'endurance:hot iron': 12.5 }],
    ['copper 0, price 0', null],
    ['copper -3', null],
    ['"endurance:hot iron, dry" 20, Copper 80', { 'endurance:hot iron, dry': 20, copper: 80 }],
    ['"Endurance:the ""old"" way; 5 % = x" 20 %', { 'endurance:the "old" way; 5 % = x': 20 }],
    ['endurance:rub over 1/2" edge 20, copper 80', { 'endurance:rub over 1/2" edge': 20, copper: 80 }],
    ['"endurance:hot iron, dry 20', null],
    ['"endurance:hot iron, dry"', null],
    ['"endurance:hot iron, dry" dear', null],
    ['copper', null],
    ['', null],
  ];
  it.each(cases)('%s', (text, wanted) => {
    const got = readWeights(text);
    expect(got && Object.fromEntries(got)).toEqual(wanted);
  });
});

describe('an order of importance as typed', () => {
  const cases: [string, string[][] | null][] = [
    ['copper > price', [['copper'], ['price']]],
    ['copper, judged = wall, price', [['copper'], ['judged', 'wall'], ['price']]],
    ['copper, copper', null],
    ['"endurance:hot, dry" = wall > copper', [['endurance:hot, dry', 'wall'], ['copper']]],
    ['"endurance:hot, dry" wall, copper', null],
    ['"endurance:hot, dry', null],
    [' , ', null],
  ];
  it.each(cases)('%s', (text, wanted) => {
    expect(readRanking(text)).toEqual(wanted);
  });
});

describe('a scale as typed', () => {
  const cases: [string, ReturnType<typeof readScale>][] = [
    ['0.7 to 1 flat', { shape: 'flat', worst: 0.7, best: 1 }],
    ['40 to 4', { shape: 'linear', worst: 40, best: 4 }],
    ['40 to 4 linear', { shape: 'linear', worst: 40, best: 4 }],
    ['threshold 12', { shape: 'threshold', worst: 0, best: 12 }],
    ['threshold at most 12', { shape: 'threshold', worst: 24, best: 12 }],
    ['5 to 5', null],
    ['cheap', null],
    ['', null],
  ];
  it.each(cases)('%s', (text, wanted) => {
    expect(readScale(text)).toEqual(wanted);
    if (wanted) expect(readScale(scaleText(wanted))).toEqual(wanted);
  });
});

describe('names of tests that people gave', () => {
  /** Everything that a separator, a mark, a number or a script of its own could upset. */
  const signs = fc.constantFrom(
    ...'ab zß,;=>%"\n\t 0123.5-\u00a0',
    'ω',
    '試',
    '🔥',
    'م',
    'standing_',
    '""',
    ' 20',
    '" 20, ',
  );
  const name = fc
    .array(signs, { minLength: 1, maxLength: 12 })
    .map((list) => list.join('').trim().toLowerCase())
    .filter((text) => text !== '')
    .map((text) => `endurance:${text}`);
  const names = fc.uniqueArray(fc.oneof(name, fc.constantFrom('copper', 'price', 'wall')), {
    minLength: 1,
    maxLength: 6,
  });

  it('come back as they were, whatever they hold', () => {
    fc.assert(
      fc.property(names, fc.array(fc.integer({ min: 1, max: 100 }), { minLength: 6, maxLength: 6 }), (ids, shares) => {
        const weights = new Map(ids.map((id, at) => [id, shares[at]!]));
        const text = weightsText(weights);
        expect([...(readWeights(text) ?? [])], text).toEqual([...weights]);
        const ranking = ids.map((id) => [id]);
        if (ids.length > 2) ranking.splice(0, 2, [ids[0]!, ids[1]!]);
        expect(readRanking(rankingText(ranking)), rankingText(ranking)).toEqual(ranking);
      }),
      { seed: 20261125, numRuns: 2000 },
    );
  });

  it('stand bare where nothing in them can be mistaken', () => {
    expect(
      weightsText(
        new Map([
          ['endurance:hot iron', 35],
          ['copper', 65],
          ['wall', 0],
        ]),
      ),
    ).toBe('endurance:hot iron 35, copper 65');
    expect(weightsText(new Map([['endurance:hot iron, dry', 35]]))).toBe('"endurance:hot iron, dry" 35');
  });
});
