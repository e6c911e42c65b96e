import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { idTime } from '../../src/journal/idTime.ts';
import { fold } from '../../src/trial/fold.ts';
import { lookBackTo, lookBackToEntry } from '../../src/trial/lookBack.ts';
import { entry, onePiece, reading } from './entries.ts';

const JOURNAL = [
  ...onePiece(),
  reading('r1', 'conductor_mass', '93.1', 'g'),
  reading('r2', 'conductor_mass', '39.1', 'g', { replaces: 'r1', why: 'digits swapped' }),
  entry('strike', { reading: 'r2', why: 'wrong piece' }),
];
const standings = (entries: typeof JOURNAL) => fold(entries).readings.map(({ standing }) => standing);
const idOf = (place: number) => JOURNAL.at(place)!.id;

describe('looking back', () => {
  it.each([
    [-3, ['counted']],
    [-2, ['replaced', 'counted']],
    [-1, ['replaced', 'struck']],
  ])('shows the trial as it stood after entry %i', (place, wanted) => {
    expect(standings(lookBackToEntry(JOURNAL, idOf(place)))).toEqual(wanted);
    expect(standings(lookBackTo(JOURNAL, idTime(idOf(place))))).toEqual(wanted);
  });

  it('shows nothing before the beginning, and everything at the end', () => {
    expect(lookBackTo(JOURNAL, idTime(idOf(0)) - 1)).toEqual([]);
    expect(lookBackTo(JOURNAL, Number.POSITIVE_INFINITY)).toEqual(JOURNAL);
    expect(lookBackToEntry(JOURNAL, '')).toEqual([]);
  });

  it('is the same whatever the order in which entries are held, and changes nothing', () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray(JOURNAL, { minLength: JOURNAL.length }),
        fc.nat(JOURNAL.length - 1),
        (held, n) => {
          const copy = [...held];
          expect(fold(lookBackToEntry(held, idOf(n)))).toEqual(fold(JOURNAL.slice(0, n + 1)));
          expect(held).toEqual(copy);
        },
      ),
      { seed: 20261125, numRuns: 100 },
    );
  });
});
