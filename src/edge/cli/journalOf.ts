import type { Entry } from '../../journal/entry.ts';
import { EXIT, Failure } from './failure.ts';

/** The journal of a package (a folder or a .zip) or, when there is no such path, of a trial on the shelf. */
export async function journalOf(named: string): Promise<{ trial: string; entries: Entry[] }> {
  const { isPath, soundPackage } = await import('./packageAt.ts');
  if (isPath(named)) return soundPackage(named);
  return { trial: named, entries: await entriesOnShelf(named) };
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
