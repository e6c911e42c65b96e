import type { Entry } from '../../journal/entry.ts';
import { EXIT, Failure } from './failure.ts';

/** A trial's journal, and the way to its photos. */
export interface FoundJournal {
  trial: string;
  entries: Entry[];
  /** The photos of these names that are there; the others are left out. */
  photos: (names: readonly string[]) => Promise<Map<string, Uint8Array>>;
  /** The sealed parts that a package brought along, by their number; none from the shelf, which computes them. */
  sealed: Map<number, Map<string, Uint8Array>>;
}

/** The journal of a package (a folder or a .zip) or, when there is no such path, of a trial on the shelf. */
export async function journalOf(named: string): Promise<FoundJournal> {
  const { isPath, soundPackage } = await import('./packageAt.ts');
  if (!isPath(named))
    return {
      trial: named,
      entries: await entriesOnShelf(named),
      photos: (names) => photosOnShelf(named, names),
      sealed: new Map(),
    };
  const { trial, entries, photos, sealed } = soundPackage(named);
  const brought = new Map(photos.map(({ name, bytes }) => [name, bytes]));
  return {
    trial,
    entries,
    sealed,
    photos: async (names) => new Map([...brought].filter(([name]) => names.includes(name))),
  };
}

async function photosOnShelf(trial: string, names: readonly string[]): Promise<Map<string, Uint8Array>> {
  const { openShelf } = await import('../store/openShelf.ts');
  const shelf = await openShelf();
  try {
    const found = new Map<string, Uint8Array>();
    for (const name of names) {
      const bytes = await shelf.getBlob(trial, name);
      if (bytes !== null) found.set(name, bytes);
    }
    return found;
  } finally {
    await shelf.close();
  }
}

/** The most trials that a sentence names. */
const MOST_NAMED = 20;

async function entriesOnShelf(trial: string): Promise<Entry[]> {
  const { openShelf } = await import('../store/openShelf.ts');
  const shelf = await openShelf();
  try {
    if (await shelf.has(trial)) return await shelf.entries(trial);
    throw new Failure(notThere(trial, await shelf.trialNames()), EXIT.wrongUse);
  } finally {
    await shelf.close();
  }
}

/** What was meant by `named` is neither a path that is there nor one of `trials`. */
function notThere(named: string, trials: readonly string[]): string {
  if (/[\\/]|\.zip$/i.test(named)) return `${named} is not there; name the folder or the .zip of a data package.`;
  const none = `No trial called "${named}" is on the shelf`;
  if (trials.length === 0) return `${none}, which is empty, and no folder or .zip of that name is here.`;
  const more = trials.length > MOST_NAMED ? ` and ${trials.length - MOST_NAMED} more` : '';
  return `${none}; it holds: ${trials.slice(0, MOST_NAMED).join(', ')}${more}.`;
}
