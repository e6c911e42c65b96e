import { existsSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { FileRefusal, fileTrouble } from './fileRefusal.ts';
import { refuseWithoutFolder } from './refuseWithoutFolder.ts';

/**
 * Writes one file whole or not at all: beside its place first, then moved there. An existing file is replaced only when
 * `replace` is set, and no folder is made for it. Throws FileRefusal with a sentence.
 */
export function writeWholeFile(path: string, content: Uint8Array | string, replace: boolean): void {
  if (existsSync(path) && !replace)
    throw new FileRefusal(`${path} is there already; add --replace to write over it, or name another file.`);
  refuseWithoutFolder(path);
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  try {
    writeFileSync(beside, content);
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw fileTrouble(path, error);
  }
}
