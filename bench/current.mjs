/** Speed of what the page asks of current, against the aims that were set. */
import { importTypescript } from '../scripts/runTypescript.mjs';

const SOLVES = 100_000;
const ROWS = 1_000_000;
const RUNS = 31;

const sorted = (values) => [...values].sort((a, b) => a - b);
const median = (values) => sorted(values)[values.length >> 1];

function milliseconds(run) {
  const started = performance.now();
  run();
  return performance.now() - started;
}

export async function currentSpeed() {
  const bench = await importTypescript('bench/currentCase.ts');
  bench.steadySolves(20_000);
  const solve =
    median(Array.from({ length: 7 }, () => milliseconds(() => bench.steadySolves(SOLVES)))) * (1000 / SOLVES);
  const hours = Array.from({ length: RUNS }, () => milliseconds(bench.hourOfSeven));
  for (let i = 0; i < 20; i++) bench.redraw(3 + i / 10);
  const redraws = Array.from({ length: RUNS }, (_, i) => milliseconds(() => bench.redraw(2 + i / 8)));
  const text = bench.logText(ROWS);
  let told = 0;
  const log = milliseconds(() => bench.readAndFit(text, () => told++));
  return [
    `steady temperature: ${solve.toFixed(2)} µs, aim at most 20 µs`,
    `an hour of seven cables: median ${median(hours).toFixed(1)} ms of ${RUNS} (first ${hours[0].toFixed(1)}), aim at most 50 ms`,
    `run check with 12 cables, 9 nominal sizes and their curves: median ${median(redraws).toFixed(1)} ms of ${RUNS} (fastest ${sorted(redraws)[0].toFixed(1)}, slowest ${Math.max(...redraws).toFixed(1)}), aim at most 16 ms`,
    `log of ${ROWS} rows read and fitted: ${(log / 1000).toFixed(2)} s, told ${told} times how far, aim at most 5 s`,
  ].join('\n');
}

if (process.argv[1] === import.meta.filename) console.log(await currentSpeed());
