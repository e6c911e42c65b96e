import { numberRanges } from '../store/numberRanges.ts';
import type { Readable, Store } from '../store/store.ts';

/** What is told of entries that the disk damaged, beside those that can be read. */
export interface DamageTold {
  /** Arrival numbers. */
  numbers: number[];
  found: string;
  advice: string;
}

interface Looked {
  /** Looked through up to this arrival number. */
  upTo: number;
  damaged: Set<number>;
  advice: string;
}

/** Damaged entries that are looked at again with each reading, whether they have been mended. */
const MOST_LOOKED_AT_AGAIN = 200;
/** Entries that are looked through at a time. */
const PAGE = 1000;

/**
 * Remembers which entries of which trial are damaged, so that everybody who reads of a trial is told, from wherever they
 * read on. Whenever more are found the store takes another name: devices then send again what they hold, and what was
 * damaged is mended by whoever has it.
 */
export function damageBook(store: Store) {
  const trials = new Map<string, Looked>();
  const of = (trial: string): Looked => {
    const known = trials.get(trial) ?? { upTo: 0, damaged: new Set<number>(), advice: '' };
    trials.set(trial, known);
    return known;
  };

  /** Notes what a reading from `seq` on has shown. */
  const note = async (looked: Looked, seq: number, { next, damaged, advice }: Readable) => {
    const more = damaged.filter((number) => !looked.damaged.has(number));
    for (const number of more) looked.damaged.add(number);
    if (damaged.length > 0) looked.advice = advice;
    if (seq <= looked.upTo) looked.upTo = Math.max(looked.upTo, next);
    if (more.length > 0) await store.rename();
  };

  return {
    /** A stretch of a journal as far as it can be read, and what of the whole trial is damaged; null when nothing is. */
    async read(trial: string, seq: number, limit: number): Promise<Readable & { told: DamageTold | null }> {
      const looked = of(trial);
      for (const number of [...looked.damaged].slice(0, MOST_LOOKED_AT_AGAIN))
        if ((await store.readable(trial, number - 1, 1)).entries.length > 0) looked.damaged.delete(number);
      while (looked.upTo < seq) {
        const before = looked.upTo;
        await note(looked, before, await store.readable(trial, before, PAGE));
        if (looked.upTo === before) break;
      }
      const page = await store.readable(trial, seq, limit);
      await note(looked, seq, page);
      return { ...page, told: toldOf(looked) };
    },
  };
}

function toldOf({ damaged, advice }: Looked): DamageTold | null {
  if (damaged.size === 0) return null;
  const numbers = [...damaged].sort((a, b) => a - b);
  const which = `number ${numberRanges(numbers)}`;
  const found =
    numbers.length === 1
      ? `One entry of this trial (${which}) can no longer be read: the disk damaged the shelf.`
      : `${numbers.length} entries of this trial (${which}) can no longer be read: the disk damaged the shelf.`;
  return { numbers, found, advice };
}
