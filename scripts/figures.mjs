/** Runs the simulated lots and writes docs/figures.md. `--lots N` for a quick look: prints, writes nothing. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { importTypescript, root } from './runTypescript.mjs';

const { figuresPage, FULL_EFFORT } = await importTypescript('test/simulate/figures.ts');
const quick = process.argv.indexOf('--lots');
if (quick > 0) {
  const lots = Number(process.argv[quick + 1]);
  console.log(figuresPage({ ...FULL_EFFORT, plainLots: lots, complicatedLots: lots }));
} else {
  await writeFile(join(root, 'docs', 'figures.md'), figuresPage(FULL_EFFORT));
  console.log('docs/figures.md');
}
