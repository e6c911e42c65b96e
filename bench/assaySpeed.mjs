/** Closed form and a million draws of a twelve-cable trial, beside the same model in vectorised numpy, in one run. */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { importTypescript, root } from '../scripts/runTypescript.mjs';

const DRAWS = 1_000_000;
/** Draws that numpy handles at once; the faster size counts, so that the yardstick is at its best. */
const NUMPY_BLOCKS = [10_000, 50_000];
const CLOSED_REPEATS = 21;

function median(values) {
  return [...values].sort((a, b) => a - b)[values.length >> 1];
}

function seconds(run) {
  const started = performance.now();
  const result = run();
  return [(performance.now() - started) / 1000, result];
}

function timeOurs(bench, trial) {
  for (let warm = 0; warm < 20; warm++) bench.closedForm(trial);
  const closed = Array.from({ length: CLOSED_REPEATS }, () => seconds(() => bench.closedForm(trial)));
  bench.byDraws(trial, 50_000);
  const [drawSeconds, drawn] = seconds(() => bench.byDraws(trial, DRAWS));
  return { closedSeconds: median(closed.map(([time]) => time)), closed: closed[0][1], drawSeconds, drawn };
}

/** null, with the reason, where Python or numpy is not there. */
function timeNumpy(model) {
  const run = spawnSync('python3', [join(root, 'bench/assay_numpy.py')], {
    input: JSON.stringify({ model, draws: DRAWS, blocks: NUMPY_BLOCKS }),
    encoding: 'utf8',
    maxBuffer: 1 << 26,
    env: { ...process.env, OPENBLAS_NUM_THREADS: '1', OMP_NUM_THREADS: '1' },
  });
  if (run.error) return { reason: run.error.message };
  if (run.status !== 0) return { reason: run.stderr.trim().split('\n').at(-1) };
  return JSON.parse(run.stdout);
}

/** Largest difference over the cables, in standard uncertainties: small only when both compute the same model. */
function largestDifference(ours, theirs) {
  return Math.max(...ours.map((each, at) => Math.abs(each.value - theirs[at][0]) / each.u));
}

export async function assaySpeed() {
  const bench = await importTypescript('bench/assayCase.ts');
  const trial = bench.assayCase();
  const ours = timeOurs(bench, trial);
  const numpy = timeNumpy(bench.modelAsNumbers(trial));
  const lines = [
    `closed form, ${trial.cables.length} cables: ${(ours.closedSeconds * 1000).toFixed(1)} ms`,
    `10⁶ draws, ${trial.cables.length} cables: ${ours.drawSeconds.toFixed(2)} s`,
  ];
  if (numpy.reason) return [...lines, `numpy: not measured (${numpy.reason})`].join('\n');
  const ratio = (theirs, mine) => `${(theirs / mine).toFixed(1)} times ours`;
  return [
    ...lines,
    `numpy ${numpy.numpy}, one thread, closed form: ${(numpy.closedSeconds * 1000).toFixed(1)} ms, ${ratio(numpy.closedSeconds, ours.closedSeconds)}`,
    `numpy, 10⁶ draws in blocks of ${numpy.block}: ${numpy.drawSeconds.toFixed(2)} s, ${ratio(numpy.drawSeconds, ours.drawSeconds)}`,
    `largest difference of an area: closed form ${largestDifference(ours.closed, numpy.closed).toExponential(1)} u, draws ${largestDifference(ours.drawn, numpy.drawn).toExponential(1)} u`,
  ].join('\n');
}
