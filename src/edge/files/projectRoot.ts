import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder that holds package.json: above the sources, and above dist/ once built. */
export function projectRoot(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'package.json'))) {
    const above = dirname(folder);
    if (above === folder) throw new Error('The folder that Cupel was installed in is not complete.');
    folder = above;
  }
  return folder;
}

export function demoFolder(): string {
  return join(projectRoot(), 'demo');
}

export function pageFolder(): string {
  return join(projectRoot(), 'dist', 'page');
}
