/** Time to fold a journal of 100,000 entries, as it comes out of a store: parsed from JSON, in the order of the ids. */
import { importTypescript } from '../scripts/runTypescript.mjs';

const ENTRIES = 100_000;
const RUNS = 15;
/** Milliseconds; the aim that the design sets. */
const AIM = 150;

export async function foldSpeed() {
  const { fold, journalOf } = await importTypescript('bench/foldCase.ts');
  const stored = JSON.stringify(journalOf(ENTRIES));
  const times = Array.from({ length: RUNS }, () => {
    const journal = JSON.parse(stored);
    const started = performance.now();
    const trial = fold(journal);
    const time = performance.now() - started;
    if (trial.readings.length < ENTRIES / 2) throw new Error(`only ${trial.readings.length} readings were folded`);
    return time;
  });
  const [first] = times;
  const sorted = [...times].sort((a, b) => a - b);
  const median = sorted[RUNS >> 1];
  return `fold of ${ENTRIES} entries: median ${median.toFixed(0)} ms of ${RUNS} (first ${first.toFixed(0)}, fastest ${sorted[0].toFixed(0)}), aim at most ${AIM} ms`;
}

if (process.argv[1] === import.meta.filename) console.log(await foldSpeed());
