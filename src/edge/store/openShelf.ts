import { statSync } from 'node:fs';
import { backupList, type ShelfPlace, shelfPlace } from './place.ts';
import type { Store } from './store.ts';

/** Opens this user's shelf. The database driver is loaded only now, so commands that need no shelf start faster. */
export async function openShelf(
  place: ShelfPlace = shelfPlace(),
  backups = backupList(),
  tell = onTerminal,
): Promise<Store> {
  if (place.kind === 'postgres') {
    const { openPostgresStore } = await import('./postgres/open.ts');
    return openPostgresStore(place.url);
  }
  const { openSqliteStore } = await import('./sqlite/open.ts');
  const { tellingDamage, withLastBackup } = await import('./backup/damagedShelf.ts');
  const { addRemains, remainsOfLog } = await import('./sqlite/remainsOfLog.ts');
  const remains = remainsOfLog(place.path);
  try {
    const store = openSqliteStore(place.path);
    const saved = await addRemains(remains, store);
    if (saved.entries + saved.blobs > 0) tell(savedSentence(saved, place.path));
    return tellingDamage(store, place.path, backups);
  } catch (error) {
    throw await withLastBackup(error, backups);
  }
}

const onTerminal = (sentence: string): void => {
  process.stderr.write(`${sentence}\n`);
};

/** What a damaged log held: it is back, and there may have been more. */
function savedSentence({ entries, blobs }: { entries: number; blobs: number }, path: string): string {
  const what = [
    ...(entries === 0 ? [] : [`${entries} ${entries === 1 ? 'entry' : 'entries'}`]),
    ...(blobs === 0 ? [] : [`${blobs} ${blobs === 1 ? 'photo or log' : 'photos or logs'}`]),
  ].join(' and ');
  return `The disk damaged ${path}-wal, in which the newest entries were: ${what} could still be read there and are kept. Phones and browsers send again what they hold.`;
}

/**
 * The same for the bench, which devices send to. After an end without a stop (the power, a crash) the store takes another name,
 * so that devices send again all that they hold: a disk that had said "written" before it was true is found out, and made up for.
 */
export async function openBenchShelf(
  place: ShelfPlace = shelfPlace(),
  backups = backupList(),
  tell = onTerminal,
): Promise<Store> {
  const cutOff = place.kind === 'sqlite' && logIsLeft(place.path);
  const store = await openShelf(place, backups, tell);
  if (cutOff) await store.rename();
  return store;
}

/** After a proper stop the log is folded into the file and empty. Another program that has the shelf open leaves one, too. */
function logIsLeft(path: string): boolean {
  return (statSync(`${path}-wal`, { throwIfNoEntry: false })?.size ?? 0) > 0;
}
