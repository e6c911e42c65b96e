/** Runs the simulated jackets and writes docs/figures-jacket.md. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { importTypescript, root } from './runTypescript.mjs';

const { jacketFiguresPage, FULL_JACKET_EFFORT } = await importTypescript('test/simulate/jacketFigures.ts');
await writeFile(join(root, 'docs', 'figures-jacket.md'), jacketFiguresPage(FULL_JACKET_EFFORT));
console.log('docs/figures-jacket.md');
