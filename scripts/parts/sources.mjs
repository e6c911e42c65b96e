import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { inProject, ROOT } from './root.mjs';

/** What the built files depend on. */
const FOLDERS = ['src', 'scripts/parts'];
const FILES = ['package.json', 'package-lock.json', 'tsconfig.json', 'vite.config.ts'];

/** One hash over the name and content of everything that is built from. Content, not dates: a checkout changes dates. */
export function sourceHash() {
  const hash = createHash('sha256');
  for (const path of [...FOLDERS.flatMap(filesUnder), ...FILES.map((file) => inProject(file))].sort()) {
    if (!existsSync(path)) continue;
    hash.update(relative(ROOT, path)).update('\0').update(readFileSync(path)).update('\0');
  }
  return hash.digest('hex');
}

function filesUnder(folder) {
  return readdirSync(inProject(folder), { recursive: true, withFileTypes: true })
    .filter((item) => item.isFile())
    .map((item) => join(item.parentPath ?? item.path, item.name));
}
