import { backupList, type ShelfPlace, shelfPlace } from './place.ts';
import type { Store } from './store.ts';

/** Opens this user's shelf. The database driver is loaded only now, so commands that need no shelf start faster. */
export async function openShelf(place: ShelfPlace = shelfPlace(), backups = backupList()): Promise<Store> {
  if (place.kind === 'postgres') {
    const { openPostgresStore } = await import('./postgres/open.ts');
    return openPostgresStore(place.url);
  }
  const { openSqliteStore } = await import('./sqlite/open.ts');
  try {
    return openSqliteStore(place.path);
  } catch (error) {
    const { withLastBackup } = await import('./backup/damagedShelf.ts');
    throw await withLastBackup(error, backups);
  }
}
