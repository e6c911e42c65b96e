import { dirname, resolve } from 'node:path';
import { FileRefusal } from './fileRefusal.ts';
import { lookedAt } from './lookedAt.ts';

/**
 * Refuses a place whose folder is not there: a slip of the finger in a path would otherwise make a row of folders and
 * hide the file in them.
 *
 * @throws FileRefusal with a sentence.
 */
export function refuseWithoutFolder(path: string): void {
  const above = dirname(resolve(path));
  const found = lookedAt(above);
  if (found?.isDirectory()) return;
  const what = found === null ? 'is not there' : 'is not a folder';
  throw new FileRefusal(`Nothing was written: the folder ${above} ${what}; make it first, or name another place.`);
}
