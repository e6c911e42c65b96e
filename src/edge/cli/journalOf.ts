import type { Entry } from '../../journal/entry.ts';
import { EXIT, Failure } from './failure.ts';

/** The journal of a package (a folder or a .zip) or, when there is no such path, of a trial on the shelf. */
export async function journalOf(named: string): Promise<{ trial: string; entries: Entry[] }> {
  const { isPath, soundPackage } = await import('./packageAt.ts');
  if (isPath(named)) return soundPackage(named);
  return { trial: named, entries: await entriesOnShelf(named) };
}

async function entriesOnShelf(trial: string): Promise<Entry[]> {
  const { openShelf } = await import('../store/openShelf.ts');
  const shelf = await openShelf();
  try {
    if (await shelf.has(trial)) return await shelf.entries(trial);
  } finally {
    await shelf.close();
  }
  throw new Failure(`"${trial}" is neither a folder, nor a .zip, nor a trial on the shelf.`, EXIT.wrongUse);
}
