import { pagesOf } from '../backup/seal.ts';
import type { Store } from '../store.ts';

/** Entries of one trial that could be read nowhere, by the numbers that they had. */
export interface LostEntries {
  trial: string;
  numbers: number[];
}

/** Tells what is lost with a damaged shelf from what a backup of it holds. */
export interface Before {
  /** Notes that the damaged shelf has this entry under this number. */
  compare(trial: string, seq: number, id: string): void;
  /** Notes numbers that could not be read, and others that could after all. */
  missing(trial: string, numbers: readonly number[], found: ReadonlySet<number>): void;
  /** What neither holds. */
  lost(): LostEntries[];
}

interface OfTrial {
  /** Ids that the backup holds, in the order of arrival. */
  ids: string[];
  /** As far as was seen, the shelf numbers its entries as the backup does: it is a backup of this very shelf. */
  descends: boolean;
  missing: Set<number>;
}

/** What a store holds, before anything is added to it. */
export async function heldBefore(store: Store): Promise<Before> {
  const trials = new Map<string, OfTrial>();
  const of = (trial: string): OfTrial => {
    const known = trials.get(trial) ?? { ids: [], descends: true, missing: new Set<number>() };
    trials.set(trial, known);
    return known;
  };
  for (const trial of await store.trialNames())
    for await (const page of pagesOf(store, trial)) for (const { id } of page) of(trial).ids.push(id);

  return {
    compare(trial, seq, id) {
      const known = of(trial);
      const there = known.ids[seq - 1];
      if (there !== undefined && there !== id) known.descends = false;
    },
    missing(trial, numbers, found) {
      const known = of(trial);
      for (const number of numbers) known.missing.add(number);
      for (const number of found) known.missing.delete(number);
    },
    lost: () =>
      [...trials]
        .map(([trial, { ids, descends, missing }]) => ({
          trial,
          // Numbered as in the backup, what is damaged here is whole there.
          numbers: [...missing].filter((number) => !descends || number > ids.length).sort((a, b) => a - b),
        }))
        .filter(({ numbers }) => numbers.length > 0),
  };
}
