/** Runs the simulated heating logs and writes docs/figures-current.md. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { importTypescript, root } from './runTypescript.mjs';

const { currentFiguresPage, FULL_CURRENT_EFFORT } = await importTypescript('test/simulate/currentFigures.ts');
await writeFile(join(root, 'docs', 'figures-current.md'), currentFiguresPage(FULL_CURRENT_EFFORT));
console.log('docs/figures-current.md');
