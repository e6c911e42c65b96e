import { shelfFile } from './place.ts';
import type { Store } from './store.ts';

/** Opens this user's shelf. The database driver is loaded only now, so commands that need no shelf start faster. */
export async function openShelf(path: string = shelfFile()): Promise<Store> {
  const { openSqliteStore } = await import('./sqlite/open.ts');
  return openSqliteStore(path);
}
