import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { sealedAt } from '../../report/package/sealedFiles.ts';

/** Paths of the sealed parts that an earlier export left in a folder, to be removed where they are no longer written. */
export function sealedInFolder(folder: string): string[] {
  const sealed = join(folder, 'sealed');
  if (!existsSync(sealed)) return [];
  return readdirSync(sealed)
    .filter((part) => statSync(join(sealed, part)).isDirectory())
    .flatMap((part) => readdirSync(join(sealed, part)).map((name) => `sealed/${part}/${name}`))
    .filter((path) => sealedAt(path) !== null);
}
