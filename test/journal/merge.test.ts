import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mergeEntries } from '../../src/journal/merge.ts';
import { entry } from '../trial/entries.ts';

const SEED = 20261125;
const MADE = Array.from({ length: 12 }, (_, i) => entry('cable', { cable: `c${i % 4}`, claimed_size: `${i} AWG` }));
/** The same id with something else in it: only a broken writer makes these. */
const CLASHES = MADE.slice(0, 4).map((one, i) => ({ ...one, body: { cable: 'clash', claimed_size: `${i}` } }));
const journal = fc.shuffledSubarray([...MADE, ...CLASHES]);

describe('mergeEntries', () => {
  it('is the union by id, in id order', () => {
    const [a, b, c] = MADE as [(typeof MADE)[0], (typeof MADE)[0], (typeof MADE)[0]];
    expect(mergeEntries([c, a], [b, a])).toEqual([a, b, c]);
    expect(mergeEntries()).toEqual([]);
  });

  it('is commutative, associative and idempotent, clashes included', () => {
    fc.assert(
      fc.property(journal, journal, journal, (a, b, c) => {
        expect(mergeEntries(a, b)).toEqual(mergeEntries(b, a));
        expect(mergeEntries(mergeEntries(a, b), c)).toEqual(mergeEntries(a, mergeEntries(b, c)));
        expect(mergeEntries(a, a)).toEqual(mergeEntries(a));
        expect(mergeEntries(mergeEntries(a))).toEqual(mergeEntries(a));
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});
