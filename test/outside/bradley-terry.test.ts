/** Judged pairs against published and independently computed answers (R 4.2.2 BradleyTerry2; scipy for ties), prior switched off. */
import { describe, expect, it } from 'vitest';
import { connectedGroups, separation } from '../../src/methods/flex/pairs/connection.ts';
import type { JudgedPair } from '../../src/methods/flex/pairs/judgement.ts';
import { fitPairs, NO_PRIOR, WEAK_PRIOR } from '../../src/methods/flex/pairs/tiedPreference.ts';
import { expectClose } from '../tolerance.ts';
import { readTable } from './readTable.ts';

const PLAIN = { prior: NO_PRIOR, side: false, ties: 'when there are any' } as const;
const times = (n: number, left: number, right: number, result: JudgedPair['result']): JudgedPair[] =>
  Array.from({ length: n }, () => ({ left, right, result, judge: 0 }));
const seOf = (covariance: Float64Array, count: number, i: number) => Math.sqrt(covariance[i * count + i]);

describe('citations between four journals', () => {
  // S. M. Stigler, Statistical Science 9 (1994) 94; in A. Agresti, Categorical Data Analysis. Biometrika, Communications in
  // Statistics, JASA, JRSS-B: wins of the first and of the second of each pair.
  const CITED = [
    [0, 1, 730, 33],
    [0, 2, 498, 320],
    [0, 3, 221, 284],
    [1, 2, 68, 813],
    [1, 3, 17, 276],
    [2, 3, 142, 325],
  ];
  const pairs = CITED.flatMap(([i, j, won, lost]) => [...times(won, i, j, 'left'), ...times(lost, i, j, 'right')]);
  const fit = fitPairs(pairs, 4, PLAIN);

  it('abilities and standard errors', () => {
    const wanted = [
      [-2.9490724968, 0.1025453354],
      [-0.4795697698, 0.0605887292],
      [0.2689540558, 0.0708299701],
    ];
    wanted.forEach(([ability, se], i) => {
      expectClose(fit.abilities[i + 1], ability, { absolute: 1e-7, because: 'published −2.949, −0.480, 0.269' });
      expectClose(seOf(fit.covariance, 4, i + 1), se, { absolute: 1e-7 });
    });
  });

  it('deviance', () => {
    const saturated = CITED.reduce((sum, [, , a, b]) => sum + a * Math.log(a / (a + b)) + b * Math.log(b / (a + b)), 0);
    expectClose(2 * (saturated - fit.logLikelihood), 4.29338396989, { relative: 1e-7 });
  });

  it('doubling every judgement divides the standard errors by √2', () => {
    const twice = fitPairs([...pairs, ...pairs], 4, PLAIN);
    expectClose(seOf(twice.covariance, 4, 1) * Math.SQRT2, seOf(fit.covariance, 4, 1), { relative: 1e-9 });
  });
});

describe('baseball, with and without an advantage at home', () => {
  const { home, away, won, lost } = readTable('baseball-1987.csv');
  const pairs = home.flatMap((h, i) => [...times(won[i], h, away[i], 'left'), ...times(lost[i], h, away[i], 'right')]);

  it('without', () => {
    const fit = fitPairs(pairs, 7, PLAIN);
    const wanted = [1.1076977054, 0.6838527692, 1.4364084318, 1.5813558767, 1.2476178451, 1.2944851239];
    wanted.forEach((a, i) => {
      expectClose(fit.abilities[i + 1], a, { absolute: 1e-7 });
    });
    expect(fit.side).toBeNull();
  });

  it('with: as the hand in which a piece lies', () => {
    const fit = fitPairs(pairs, 7, { ...PLAIN, side: true });
    const wanted = [1.1438026533, 0.7046944569, 1.4753572136, 1.6195549936, 1.2813404033, 1.3271103981];
    wanted.forEach((a, i) => {
      expectClose(fit.abilities[i + 1], a, { absolute: 1e-7 });
    });
    expectClose(fit.side!.value, 0.3022606555, { absolute: 1e-7 });
    expectClose(fit.side!.se, 0.1309436425, { absolute: 1e-7 });
    // Deviances 44.0534612286 and 38.642852144: their difference is twice that of the log-likelihoods.
    const gain = 2 * (fit.logLikelihood - fitPairs(pairs, 7, PLAIN).logLikelihood);
    expectClose(gain, 44.0534612286 - 38.642852144, { absolute: 1e-8 });
  });
});

describe('ties', () => {
  it('nine flavours (Davidson model, two optimisers agree)', () => {
    const { first, second, won, lost, same } = readTable('springall-1973.csv');
    const pairs = first.flatMap((f, i) => [
      ...times(won[i], f - 1, second[i] - 1, 'left'),
      ...times(lost[i], f - 1, second[i] - 1, 'right'),
      ...times(same[i], f - 1, second[i] - 1, 'same'),
    ]);
    const fit = fitPairs(pairs, 9, PLAIN);
    const wanted = [2.2732296, 3.29075, 0.3976105, 1.8947894, 2.8428473, -1.2814667, -0.0048979, 0.6074384];
    wanted.forEach((a, i) => {
      expectClose(fit.abilities[i + 1], a, { absolute: 1e-5 });
    });
    expectClose(fit.tie, 0.8655487, { absolute: 1e-5 });
    expectClose(fit.logLikelihood, -732.0672554, { absolute: 1e-6 });
    expect(Math.abs(fit.abilities[1] - 1.5397848429), 'half a win for a tie is another model').toBeGreaterThan(0.5);
  });

  it('a small case with standard errors', () => {
    const rows = [
      [0, 1, 6, 3, 3],
      [0, 2, 8, 1, 3],
      [0, 3, 9, 1, 2],
      [1, 2, 5, 4, 3],
      [1, 3, 7, 2, 3],
      [2, 3, 6, 3, 3],
    ];
    const pairs = rows.flatMap(([i, j, w, t, l]) => [
      ...times(w, i, j, 'left'),
      ...times(t, i, j, 'same'),
      ...times(l, i, j, 'right'),
    ]);
    const fit = fitPairs(pairs, 4, PLAIN);
    const wanted = [
      [-0.705384275, 0.496662955],
      [-1.099961203, 0.507556739],
      [-1.685675634, 0.538645104],
    ];
    wanted.forEach(([ability, se], i) => {
      expectClose(fit.abilities[i + 1], ability, {
        absolute: 1e-6,
        because: 'the optimiser behind the figure stopped there',
      });
      expectClose(seOf(fit.covariance, 4, i + 1), se, { absolute: 1e-6 });
    });
    expectClose(fit.tie, 0.541033196, { absolute: 1e-6 });
    expectClose(fit.logLikelihood, -69.570011899, { absolute: 1e-8 });
  });
});

describe('where there is no finite answer', () => {
  const pairs = [
    ...times(3, 0, 1, 'left'),
    ...times(3, 0, 2, 'left'),
    ...times(2, 1, 2, 'left'),
    ...times(1, 1, 2, 'right'),
  ];

  it('it is found, and without a prior refused', () => {
    expect(separation(pairs, 3)).toEqual([[0], [1, 2]]);
    expect(() => fitPairs(pairs, 3, PLAIN)).toThrow(/no finite answer/);
  });

  it('one win the other way, or a tie, makes it finite', () => {
    const more = [...pairs, ...times(1, 0, 2, 'same')];
    expect(separation(more, 3)).toEqual([]);
    expect(fitPairs(more, 3, PLAIN).abilities[1]).toBeLessThan(0);
  });

  it('the weak prior gives a finite figure', () => {
    const fit = fitPairs(pairs, 3, { prior: WEAK_PRIOR, side: false, ties: 'always' });
    expect(fit.abilities[0]).toBeGreaterThan(1);
    expect(fit.abilities[0]).toBeLessThan(3);
    expect(connectedGroups(pairs, 3)).toEqual([[0, 1, 2]]);
  });
});
