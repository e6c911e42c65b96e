import type { Entry } from '../../journal/entry.ts';
import type { Store } from '../store/store.ts';
import type { Asker } from './asker.ts';
import { keepLast } from './keepLast.ts';
import { sealedForReaders } from './publish/sealedForReaders.ts';

/** A trial's journal as it stands, as far as somebody may see it, and what was worked out from it. */
export interface JournalNow {
  trial: string;
  entries: readonly Entry[];
  /** Works something out, or gives it again: the same journal says the same. The last few are kept. */
  once<T>(what: string, compute: (entries: readonly Entry[]) => T): T;
}

export interface JournalBook {
  /** The journal of a trial that is on the shelf, as far as they may see it who ask. */
  seenBy(asker: Pick<Asker, 'role'>, trial: string): Promise<JournalNow>;
}

/** Journals that are kept until they grow: a few trials, each as all see it and as readers do. Ours. */
const MOST_JOURNALS = 6;
/** Things worked out of one journal that are kept: a batch of cards asks for the same findings sixty times. Ours. */
const MOST_RESULTS = 6;

/** Reads a journal and works things out of it once for each state of it, told by the store's name and the last arrival number. */
export function journalBook(store: Store, most = MOST_JOURNALS): JournalBook {
  const kept = new Map<string, { state: string; journal: Promise<JournalNow> }>();
  return {
    async seenBy({ role }, trial) {
      const readers = role === 'reader';
      const { last } = await store.append(trial, []);
      const state = `${await store.name()} ${last}`;
      const key = JSON.stringify([trial, readers]);
      const found = kept.get(key);
      if (found?.state === state) {
        keepLast(kept, key, found, most);
        return found.journal;
      }
      // What is read now may hold more than `last` told: then the next question reads it once more.
      const journal = store.entries(trial).then((all) => journalNow(trial, readers ? sealedForReaders(all) : all));
      const reading = { state, journal };
      keepLast(kept, key, reading, most);
      journal.catch(() => {
        if (kept.get(key) === reading) kept.delete(key);
      });
      return journal;
    },
  };
}

function journalNow(trial: string, entries: readonly Entry[]): JournalNow {
  const results = new Map<string, unknown>();
  return {
    trial,
    entries,
    once<T>(what: string, compute: (entries: readonly Entry[]) => T): T {
      const result = results.has(what) ? (results.get(what) as T) : compute(entries);
      keepLast(results, what, result, MOST_RESULTS);
      return result;
    },
  };
}
