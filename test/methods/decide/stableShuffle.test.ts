import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stableShuffle } from '../../../src/methods/decide/stableShuffle.ts';
import { expectClose } from '../../tolerance.ts';

const names = fc.uniqueArray(fc.string({ maxLength: 8 }), { maxLength: 20 });
const RUNS = { seed: 20261125, numRuns: 200 };

describe('a stable shuffle', () => {
  it('is a permutation, whatever the names and the seed', () => {
    fc.assert(
      fc.property(names, fc.string(), (list, seed) => {
        expect([...stableShuffle(list, seed)].sort()).toEqual([...list].sort());
      }),
      RUNS,
    );
  });

  it('does not hang on the order in which the names come', () => {
    fc.assert(
      fc.property(names, fc.string(), (list, seed) => {
        expect(stableShuffle([...list].reverse(), seed)).toEqual(stableShuffle(list, seed));
      }),
      RUNS,
    );
  });

  it('keeps the order of the others when a name joins', () => {
    fc.assert(
      fc.property(names, fc.string(), (list, seed) => {
        const [joins, ...before] = list;
        expect(stableShuffle(list, seed).filter((name) => name !== joins)).toEqual(stableShuffle(before, seed));
      }),
      RUNS,
    );
  });

  it('puts each name in each place equally often', () => {
    const list = ['a', 'b', 'c', 'd'];
    const trials = 4000;
    const firsts = Array.from({ length: trials }, (_, i) => stableShuffle(list, `seed ${i}`)[0]);
    for (const name of list)
      expectClose(firsts.filter((first) => first === name).length / trials, 0.25, {
        absolute: 4 * Math.sqrt((0.25 * 0.75) / trials),
        because: 'four standard errors of a share',
      });
  });
});
