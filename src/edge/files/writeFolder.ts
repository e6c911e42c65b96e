import { existsSync, readdirSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { FileRefusal, fileTrouble } from './fileRefusal.ts';
import { makeFolder } from './makeFolder.ts';
import { refuseWithoutFolder } from './refuseWithoutFolder.ts';
import { writeWholeFile } from './writeFile.ts';

/**
 * Writes files into a folder. A folder that holds anything is left alone unless `replace` is set; then the files are
 * written over, those of `ours` that are no longer written are removed, and whatever else lies there stays. The
 * folder is made when it is not there, and those that the files name within it; those above it are not.
 *
 * @throws FileRefusal with a sentence.
 */
export function writeFolder(
  path: string,
  files: ReadonlyMap<string, Uint8Array | string>,
  ours: readonly string[],
  replace: boolean,
): void {
  if (existsSync(path) && !statSync(path).isDirectory())
    throw new FileRefusal(`${path} is a file; name a folder, or a file that ends in .zip.`);
  if (existsSync(path) && readdirSync(path).length > 0 && !replace)
    throw new FileRefusal(
      `${path} is not empty; add --replace to write over the package in it, or name another folder.`,
    );
  refuseWithoutFolder(path);
  try {
    makeFolder(path);
    for (const [name, content] of files) {
      makeFolder(dirname(join(path, name)));
      writeWholeFile(join(path, name), content, true);
    }
    for (const name of ours) if (!files.has(name)) rmSync(join(path, name), { force: true });
  } catch (error) {
    throw fileTrouble(path, error);
  }
}
