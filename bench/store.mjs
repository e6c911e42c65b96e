/**
 * The shelf in a file: how long from Enter to "kept on disk" with ten writing at once, over HTTP to a bench of its own
 * process; and how long one trial takes to open when the shelf is small and when it holds 5,000,000 entries.
 *
 *     node bench/store.mjs               both
 *     node bench/store.mjs --entries N   with another size of the large shelf
 */
import { existsSync, statSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { importTypescript, root } from '../scripts/runTypescript.mjs';

const WRITERS = 10;
const POSTS_EACH = 400;
/** Milliseconds; the aims that the design sets. */
const AIM_MEDIAN = 10;
const AIM_P99 = 50;
const AIM_OPEN = 100;

const IN_TRIAL = 5000;
const OPENED = 25;

const sorted = (numbers) => [...numbers].sort((a, b) => a - b);
const at = (numbers, share) => sorted(numbers)[Math.min(numbers.length - 1, Math.floor(share * numbers.length))];
const ms = (number) => number.toFixed(1);

async function inFolder(work) {
  const folder = await mkdtemp(join(tmpdir(), 'cupel-bench-'));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Time of each request, ms. A writer sends its next reading as soon as the last one was acknowledged: no person is so fast. */
async function writerTimes(address, writer, readingOf) {
  const times = [];
  for (let n = 0; n < POSTS_EACH; n += 1) {
    const body = JSON.stringify({ trial: 'latency', entries: [readingOf('latency', n * WRITERS + writer)] });
    const started = performance.now();
    const answer = await fetch(`${address}/api/entries`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body,
    });
    await answer.arrayBuffer();
    if (!answer.ok) throw new Error(`the bench answered ${answer.status}`);
    times.push(performance.now() - started);
  }
  return times;
}

export async function acknowledgedLatency() {
  const cli = join(root, 'dist', 'cli.js');
  if (!existsSync(cli)) return 'Enter to kept on disk: not measured, dist/cli.js is missing (npm run build)';
  const { readingOf, startedBench } = await importTypescript('bench/storeCase.ts');
  return inFolder(async (home) => {
    const bench = await startedBench(cli, ['--port', '0', '--no-open'], { home });
    try {
      await writerTimes(bench.address, WRITERS, readingOf);
      const writers = Array.from({ length: WRITERS }, (_, writer) => writerTimes(bench.address, writer, readingOf));
      const times = (await Promise.all(writers)).flat();
      return `Enter to kept on disk, ${WRITERS} writers without a pause, ${times.length} readings: median ${ms(at(times, 0.5))} ms, 99 % within ${ms(at(times, 0.99))} ms (aims ${AIM_MEDIAN} and ${AIM_P99})`;
    } finally {
      bench.child.kill('SIGTERM');
      await bench.ended;
    }
  });
}

async function filled(openSqliteStore, journalOf, path, trials) {
  const store = openSqliteStore(path);
  for (let n = 0; n < trials; n += 1) await store.append(`trial-${n}`, journalOf(`trial-${n}`, IN_TRIAL));
  await store.close();
}

/** Opens the file anew, then reads trials spread over it, each once. */
async function openingTimes(openSqliteStore, path, trials) {
  const started = performance.now();
  const store = openSqliteStore(path);
  const opened = performance.now() - started;
  const times = [];
  for (let n = 0; n < OPENED; n += 1) {
    const trial = `trial-${Math.floor((n * trials) / OPENED)}`;
    const began = performance.now();
    const { entries } = await store.entriesSince(trial, 0);
    times.push(performance.now() - began);
    if (entries.length !== IN_TRIAL) throw new Error(`${trial} holds ${entries.length} entries, wanted ${IN_TRIAL}`);
  }
  const began = performance.now();
  const lines = await store.trials();
  const listed = performance.now() - began;
  if (lines.length !== trials) throw new Error(`${lines.length} trials are listed, wanted ${trials}`);
  await store.close();
  return { opened, times, listed };
}

export async function openingOneTrial(entries = 5_000_000) {
  const { journalOf, openSqliteStore } = await importTypescript('bench/storeCase.ts');
  const lines = [];
  for (const trials of [1, Math.max(1, Math.round(entries / IN_TRIAL))]) {
    lines.push(
      await inFolder(async (folder) => {
        const path = join(folder, 'shelf.sqlite');
        const began = performance.now();
        await filled(openSqliteStore, journalOf, path, trials);
        const seconds = (performance.now() - began) / 1000;
        const { opened, times, listed } = await openingTimes(openSqliteStore, path, trials);
        const size = statSync(path).size / 1e6;
        return (
          `one trial of ${IN_TRIAL} entries out of ${trials * IN_TRIAL} (${size.toFixed(0)} MB, written in ${seconds.toFixed(0)} s): ` +
          `median ${ms(at(times, 0.5))} ms, slowest ${ms(at(times, 1))} ms of ${OPENED} (aim ${AIM_OPEN}); ` +
          `start with its check ${ms(opened)} ms, list of trials ${ms(listed)} ms`
        );
      }),
    );
  }
  return lines.join('\n');
}

if (process.argv[1] === import.meta.filename) {
  const asked = process.argv.indexOf('--entries');
  console.log(await acknowledgedLatency());
  console.log(await openingOneTrial(asked < 0 ? undefined : Number(process.argv[asked + 1])));
}
