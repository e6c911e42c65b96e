/** Writes the invented trial of demo/ anew from its generator. */
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { importTypescript, root } from './runTypescript.mjs';

const { demoFiles } = await importTypescript('demo/make/demoTrial.ts');
await rm(join(root, 'demo', 'sealed'), { recursive: true, force: true });
for (const [name, text] of demoFiles()) {
  await mkdir(dirname(join(root, 'demo', name)), { recursive: true });
  await writeFile(join(root, 'demo', name), text);
  console.log(`demo/${name}`);
}
