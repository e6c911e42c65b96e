/** Sends made-up input at every door: `node scripts/fuzz.mjs --bodies 1000000 --seed 7`. Ends with 1 when anything broke. */
import { parseArgs } from 'node:util';
import { importTypescript } from './runTypescript.mjs';

const { values } = parseArgs({ options: { bodies: { type: 'string' }, seed: { type: 'string' } } });
const bodies = Number(values.bodies ?? 100_000);
const seed = Number(values.seed ?? Date.now() % 1_000_000_000);
/** Reported on after so many. */
const ROUND = 20_000;

const { fuzzRound, together, nothingYet } = await importTypescript('test/fuzz/fuzzRound.ts');

const began = performance.now();
let sum = nothingYet();
for (let round = 0; sum.bodies < bodies && sum.troubles.length === 0; round += 1) {
  sum = together(sum, await fuzzRound(Math.min(ROUND, bodies - sum.bodies), seed + round));
  process.stderr.write(`${sum.bodies} bodies, ${Math.round((performance.now() - began) / 1000)} s\n`);
}
const { troubles, ...counts } = sum;
console.log(
  JSON.stringify({
    seed,
    ...counts,
    troubles: troubles.length,
    seconds: Math.round((performance.now() - began) / 1000),
  }),
);
for (const trouble of troubles) console.log(trouble);
process.exitCode = troubles.length === 0 ? 0 : 1;
