import { existsSync, readdirSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { install, mayInstall } from './apt.mjs';

/** Where Debian keeps each version's programs. */
const DEBIAN = '/usr/lib/postgresql';

/** Folder with PostgreSQL's `initdb` and `postgres`, or null; the tests look in the same places. */
export function findPostgres(env = process.env) {
  const versions = existsSync(DEBIAN) ? readdirSync(DEBIAN).map((version) => join(DEBIAN, version, 'bin')) : [];
  const folders = [env.CUPEL_POSTGRES_BIN ?? '', ...versions, ...(env.PATH ?? '').split(delimiter), '/usr/local/bin'];
  const has = (folder) => folder !== '' && ['initdb', 'postgres'].every((name) => existsSync(join(folder, name)));
  return folders.find(has) ?? null;
}

/** Finds PostgreSQL, installing it where that can be done unasked. Null when it cannot. */
export function findOrInstallPostgres() {
  const found = findPostgres();
  if (found !== null || !mayInstall()) return found;
  process.stderr.write('Installing PostgreSQL for the tests of the shared shelf …\n');
  install('postgresql');
  return findPostgres();
}
