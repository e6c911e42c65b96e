import { homedir } from 'node:os';
import { join, resolve } from 'node:path';
import { StoreRefusal } from './store.ts';

/** The folder in which Cupel keeps its shelf: CUPEL_HOME, else where each platform keeps a user's data. */
export function dataFolder(
  env: NodeJS.ProcessEnv = process.env,
  platform: string = process.platform,
  home: string = homedir(),
): string {
  if (env.CUPEL_HOME) return env.CUPEL_HOME;
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'cupel');
  if (platform === 'win32') return join(env.APPDATA || join(home, 'AppData', 'Roaming'), 'cupel');
  // XDG Base Directory Specification 0.8: an unset or relative XDG_DATA_HOME means ~/.local/share.
  const stated = env.XDG_DATA_HOME;
  return join(stated?.startsWith('/') ? stated : join(home, '.local', 'share'), 'cupel');
}

/** The file of the shelf. */
export function shelfFile(folder: string = dataFolder()): string {
  return join(folder, 'shelf.sqlite');
}

/** The list of backups, beside the shelf. */
export function backupList(folder: string = dataFolder()): string {
  return join(folder, 'backups.jsonl');
}

/** Where this user's shelf is: in a file of their own, or in a database that several share. */
export type ShelfPlace = { kind: 'sqlite'; path: string } | { kind: 'postgres'; url: string };

/**
 * DATABASE_URL names a PostgreSQL database; without it the shelf is a file.
 *
 * @throws StoreRefusal when DATABASE_URL names anything else, rather than recording somewhere unexpected.
 */
export function shelfPlace(env: NodeJS.ProcessEnv = process.env): ShelfPlace {
  const url = env.DATABASE_URL ?? '';
  if (url === '') return { kind: 'sqlite', path: resolve(shelfFile(dataFolder(env))) };
  if (/^postgres(ql)?:\/\//.test(url)) return { kind: 'postgres', url };
  throw new StoreRefusal(
    'DATABASE_URL names no PostgreSQL database (postgres://user@host/name); unset it to keep the shelf in a file.',
  );
}
