import { describe, expect, it } from 'vitest';
import { readRanking, readScale, readWeights, scaleText } from '../../../src/findings/standing/settings.ts';

describe('weights as typed', () => {
  const cases: [string, Record<string, number> | null][] = [
    ['copper 40, price 30', { copper: 40, price: 30 }],
    ['Copper 40 %; endurance:hot iron 12,5', null],
    ['copper 40 %; endurance:hot iron 12.5', { copper: 40, 'endurance:hot iron': 12.5 }],
    ['copper 0, price 0', null],
    ['copper -3', null],
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
