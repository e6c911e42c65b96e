import { statSync } from 'node:fs';
import { backupList, type ShelfPlace, shelfPlace } from './place.ts';
import type { Store } from './store.ts';

/** Opens this user's shelf. The database driver is loaded only now, so commands that need no shelf start faster. */
export async function openShelf(place: ShelfPlace = shelfPlace(), backups = backupList()): Promise<Store> {
  if (place.kind === 'postgres') {
    const { openPostgresStore } = await import('./postgres/open.ts');
    return openPostgresStore(place.url);
  }
  const { openSqliteStore } = await import('./sqlite/open.ts');
  const { tellingDamage, withLastBackup } = await import('./backup/damagedShelf.ts');
  try {
    return tellingDamage(openSqliteStore(place.path), place.path, backups);
  } catch (error) {
    throw await withLastBackup(error, backups);
  }
}

/**
 * The same for the bench, which devices send to. After an end without a stop (the power, a crash) the store takes another name,
 * so that devices send again all that they hold: a disk that had said "written" before it was true is found out, and made up for.
 */
export async function openBenchShelf(place: ShelfPlace = shelfPlace(), backups = backupList()): Promise<Store> {
  const cutOff = place.kind === 'sqlite' && logIsLeft(place.path);
  const store = await openShelf(place, backups);
  if (cutOff) await store.rename();
  return store;
}

/** After a proper stop the log is folded into the file and empty. Another program that has the shelf open leaves one, too. */
function logIsLeft(path: string): boolean {
  return (statSync(`${path}-wal`, { throwIfNoEntry: false })?.size ?? 0) > 0;
}
