import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Root folder of the project, with a trailing separator. */
export const PROJECT_ROOT = fileURLToPath(new URL('../../', import.meta.url));

export interface SourceFile {
  /** Path from the project's root, with forward slashes on every platform. */
  path: string;
  text: string;
}

/** Every file under `folder` (named from the project's root) whose name ends in one of `endings`. */
export function sourceFilesUnder(folder: string, endings: readonly string[]): SourceFile[] {
  const top = join(PROJECT_ROOT, folder);
  return readdirSync(top, { recursive: true, withFileTypes: true })
    .filter((item) => item.isFile() && endings.some((ending) => item.name.endsWith(ending)))
    .map((item) => join(item.parentPath, item.name))
    .map((full) => ({ path: relative(PROJECT_ROOT, full).split(sep).join('/'), text: readFileSync(full, 'utf8') }))
    .sort((a, b) => (a.path < b.path ? -1 : 1));
}
