/**
 * Kills the bench again and again while two clients write, and tells whether anything acknowledged was lost.
 *
 *     node scripts/kill.mjs --rounds 500
 *     node scripts/kill.mjs --rounds 50 --postgres
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { inProject, stopWith } from './parts/root.mjs';
import { setUp } from './parts/setUp.mjs';

const { values } = parseArgs({
  options: {
    rounds: { type: 'string', default: '500' },
    postgres: { type: 'boolean', default: false },
    seed: { type: 'string', default: '1' },
  },
});
const rounds = Number(values.rounds);
if (!Number.isInteger(rounds) || rounds < 1) stopWith('--rounds wants a whole number of 1 or more.');

await setUp();
const { importTypescript } = await import('./runTypescript.mjs');
const { killRounds, openPostgresStore, openSqliteStore, throwawayPostgres } =
  await importTypescript('test/kill/long.ts');
const home = await mkdtemp(join(tmpdir(), 'cupel-kill-'));
const postgres = values.postgres ? await throwawayPostgres() : undefined;
const started = performance.now();
try {
  const outcome = await killRounds({
    rounds,
    cli: inProject('dist', 'cli.js'),
    home,
    openShelf: async () =>
      postgres === undefined ? openSqliteStore(join(home, 'shelf.sqlite')) : openPostgresStore(postgres.url),
    postgres,
    seed: Number(values.seed),
    onRound: (round, { acknowledged }) => {
      if ((round + 1) % 10 === 0) process.stderr.write(`${round + 1} rounds, ${acknowledged} acknowledged\n`);
    },
  });
  const seconds = (performance.now() - started) / 1000;
  for (const line of [...outcome.lost, ...outcome.refusedToOpen, ...outcome.gaps]) process.stdout.write(`${line}\n`);
  process.stdout.write(
    `${postgres === undefined ? 'SQLite' : 'PostgreSQL'}: ${outcome.rounds} kills in ${seconds.toFixed(0)} s` +
      `${postgres === undefined ? '' : `, in ${outcome.databaseEnded} of them the database ended at once as well`}; ` +
      `${outcome.acknowledged} entries acknowledged, ${outcome.lost.length} lost; ` +
      `${outcome.unanswered} under way; ${outcome.refusedToOpen.length} refused to open; ${outcome.gaps.length} with gaps\n`,
  );
  const sound = outcome.lost.length + outcome.refusedToOpen.length + outcome.gaps.length === 0;
  process.exitCode = sound && outcome.rounds === rounds ? 0 : 1;
} finally {
  await postgres?.remove();
  await rm(home, { recursive: true, force: true });
}
