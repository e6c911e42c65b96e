import { homedir } from 'node:os';
import { join } from 'node:path';

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
