import { mkdirSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { FileRefusal } from './fileRefusal.ts';
import { lookedAt } from './lookedAt.ts';

/** Only for whoever made it: what people record is nobody else's business on a computer that several use. */
export const OWN_FOLDER = 0o700;

/**
 * Makes a folder, and those above it that are missing; one that is there already is left as it is. One step at a time:
 * Node.js's own making of several at once never ends where a folder takes nothing in and says that it is not there, as
 * /proc does on Linux.
 *
 * @throws FileRefusal with a sentence.
 */
export function makeFolder(path: string, mode?: number): void {
  const folder = resolve(path);
  const above = dirname(folder);
  if (isFolder(folder)) return;
  if (above === folder) throw new FileRefusal(`There is no disk at ${folder}.`);
  makeFolder(above, mode);
  try {
    mkdirSync(folder, { mode });
  } catch (error) {
    // Another process may have been quicker.
    if (!isFolder(folder)) throw cannotBeMade(folder, above, error);
  }
}

function isFolder(path: string): boolean {
  return lookedAt(path)?.isDirectory() ?? false;
}

function cannotBeMade(folder: string, above: string, error: unknown): FileRefusal {
  const reasons: Readonly<Record<string, string>> = {
    EACCES: `you may not write in ${above}`,
    EPERM: `you may not write in ${above}`,
    EEXIST: 'there is a file of that name',
    ENOTDIR: `${above} is not a folder`,
    ENOSPC: 'the disk is full',
    EROFS: 'the disk cannot be written to',
    ENAMETOOLONG: 'the name is too long',
  };
  const reason = reasons[(error as NodeJS.ErrnoException).code ?? ''] ?? `${above} takes no folders`;
  return new FileRefusal(`The folder ${folder} cannot be made: ${reason}.`, { cause: error });
}
