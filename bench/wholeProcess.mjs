/** Wall time of the whole process `assay --json` without draws, on 300 cables with 5,400 readings. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { importTypescript, root } from '../scripts/runTypescript.mjs';

const CABLES = 300;
const RUNS = 5;
/** Seconds; the aim that the design sets. */
const AIM = 3;

export async function writePackage(cables, folder) {
  const { packageOf } = await importTypescript('bench/bigPackage.ts');
  const { files, readings } = packageOf(cables);
  await mkdir(folder, { recursive: true });
  for (const [name, text] of files) await writeFile(join(folder, name), text);
  return readings;
}

/** Seconds of one run; throws with what the program said when it fails. */
function timeOne(folder) {
  const started = performance.now();
  const run = spawnSync(process.execPath, [join(root, 'dist/cli.js'), 'assay', folder, '--json', '--draws', '0'], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  const seconds = (performance.now() - started) / 1000;
  if (run.status !== 0) throw new Error(`assay ended with ${run.status}: ${run.stderr}`);
  const found = JSON.parse(run.stdout).cables.length;
  if (found !== CABLES) throw new Error(`assay found ${found} cables, wanted ${CABLES}`);
  return seconds;
}

export async function wholeProcess() {
  if (!existsSync(join(root, 'dist/cli.js')))
    return 'whole process: not measured, dist/cli.js is missing (npm run build)';
  const folder = await mkdtemp(join(tmpdir(), 'cupel-bench-'));
  try {
    const readings = await writePackage(CABLES, folder);
    const seconds = Array.from({ length: RUNS }, () => timeOne(folder)).sort((a, b) => a - b);
    const middle = seconds[RUNS >> 1];
    return `whole process, ${CABLES} cables, ${readings} readings, no draws: median ${middle.toFixed(2)} s of ${RUNS} (${seconds[0].toFixed(2)} to ${seconds.at(-1).toFixed(2)}), aim under ${AIM} s`;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
