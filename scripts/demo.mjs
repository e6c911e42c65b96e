/** Writes the invented trial of demo/ anew from its generator. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { importTypescript, root } from './runTypescript.mjs';

const { demoFiles } = await importTypescript('demo/make/demoTrial.ts');
for (const [name, text] of demoFiles()) {
  await writeFile(join(root, 'demo', name), text);
  console.log(`demo/${name}`);
}
