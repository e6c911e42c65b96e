/** Writes the parts of the documents that come out of the program: tables, limits, printed findings, the JSON schema. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { importTypescript, root } from './runTypescript.mjs';

const { madePages } = await importTypescript('docs/make/pages.ts');
for (const [path, text] of madePages((path) => readFileSync(join(root, path), 'utf8'))) {
  const file = join(root, path);
  if (existsSync(file) && readFileSync(file, 'utf8') === text) continue;
  writeFileSync(file, text);
  console.log(path);
}
