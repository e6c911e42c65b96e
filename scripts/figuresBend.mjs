/** Runs the simulated droops and judged fields and writes docs/figures-bend.md. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { importTypescript, root } from './runTypescript.mjs';

const { bendFiguresPage, FULL_BEND_EFFORT } = await importTypescript('test/simulate/flexFigures.ts');
await writeFile(join(root, 'docs', 'figures-bend.md'), bendFiguresPage(FULL_BEND_EFFORT));
console.log('docs/figures-bend.md');
