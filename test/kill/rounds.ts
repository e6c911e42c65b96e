/**
 * Kills the bench without warning while two clients write to it, starts it again, and looks whether everything that was
 * acknowledged is there. `test/kill/kill.test.ts` does a few rounds, `scripts/kill.mjs` as many as one likes.
 */
import { setTimeout as sleep } from 'node:timers/promises';
import type { Store } from '../../src/edge/store/store.ts';
import { type Bench, startedBench } from '../support/builtProgram.ts';
import type { ThrowawayPostgres } from '../support/postgres.ts';
import { type Client, startClient } from './client.ts';

export interface KillRounds {
  rounds: number;
  /** The built command line. */
  cli: string;
  /** Folder of the shelf. */
  home: string;
  /** Opens the same shelf beside the bench, to look what is in it. */
  openShelf: () => Promise<Store>;
  /** The shelf is in this database; it is ended at once as well, every few rounds. */
  postgres?: ThrowawayPostgres;
  /** Seed of the moments at which it is killed. */
  seed: number;
  onRound?: (round: number, outcome: KillOutcome) => void;
}

export interface KillOutcome {
  rounds: number;
  /** Entries that the bench said are kept. */
  acknowledged: number;
  /** Entries that were under way when it was killed: they may be there or not. */
  unanswered: number;
  /** What was acknowledged and is not there. */
  lost: string[];
  /** Starts after a kill at which the bench did not come up, with what it said. */
  refusedToOpen: string[];
  /** Trials whose arrival numbers have a gap. */
  gaps: string[];
  /** Rounds in which the database was ended, too. */
  databaseEnded: number;
}

/** Longest time from the first entries to the kill, ms. */
const LONGEST_MS = 250;
/** The database is ended in every so-manieth round. */
const DATABASE_EVERY = 3;

export async function killRounds(options: KillRounds): Promise<KillOutcome> {
  const outcome: KillOutcome = {
    rounds: 0,
    acknowledged: 0,
    unanswered: 0,
    lost: [],
    refusedToOpen: [],
    gaps: [],
    databaseEnded: 0,
  };
  const chance = seeded(options.seed);
  const acknowledged = new Map<string, string[]>();
  for (let round = 0; round < options.rounds; round += 1) {
    const bench = await start(options).catch((error: unknown) => {
      outcome.refusedToOpen.push(String(error));
      return null;
    });
    if (bench === null) return outcome;
    const trial = `round-${round}`;
    const clients = [0, 1].map((n) => startClient(bench.address, trial, n * 1_000_000));
    await sleep(chance() * LONGEST_MS);
    if (await end(bench, options.postgres, round)) outcome.databaseEnded += 1;
    await Promise.all(clients.map((client) => client.ended));
    acknowledged.set(trial, told(clients));
    count(outcome, clients);
    await look(options, [[trial, told(clients)]], outcome);
    options.onRound?.(round, outcome);
  }
  // Once more, all of them: a later kill must not take what an earlier one left.
  const bench = await start(options);
  await look(options, acknowledged, outcome);
  bench.child.kill('SIGTERM');
  await bench.ended;
  return outcome;
}

function start({ cli, home, postgres }: KillRounds): Promise<Bench> {
  const env: Record<string, string> = postgres === undefined ? {} : { DATABASE_URL: postgres.url };
  return startedBench(cli, ['--port', '0', '--no-open'], { home, env });
}

/** Kills the bench, and every few rounds its database a moment before or after. True when the database was ended. */
async function end(bench: Bench, postgres: ThrowawayPostgres | undefined, round: number): Promise<boolean> {
  const database = postgres !== undefined && round % DATABASE_EVERY === DATABASE_EVERY - 1;
  if (database && round % 2 === 0) await postgres.crash();
  bench.child.kill('SIGKILL');
  if (database) {
    await postgres.crash();
    await postgres.start();
  }
  await bench.ended;
  return database;
}

function told(clients: readonly Client[]): string[] {
  return clients.flatMap((client) => client.acknowledged);
}

function count(outcome: KillOutcome, clients: readonly Client[]): void {
  outcome.rounds += 1;
  outcome.acknowledged += told(clients).length;
  outcome.unanswered += clients.reduce((sum, client) => sum + client.sent - client.acknowledged.length, 0);
}

/** Opens the shelf as the next start of the bench would, and compares. */
async function look(
  { openShelf }: KillRounds,
  acknowledged: Iterable<[string, string[]]>,
  outcome: KillOutcome,
): Promise<void> {
  let store: Store;
  try {
    store = await openShelf();
  } catch (error) {
    outcome.refusedToOpen.push(String(error));
    return;
  }
  try {
    for (const [trial, ids] of acknowledged) {
      const { entries, next } = await store.entriesSince(trial, 0);
      const there = new Set(entries.map((entry) => entry.id));
      outcome.lost.push(...ids.filter((id) => !there.has(id)).map((id) => `${trial} ${id}`));
      if (next !== entries.length || there.size !== entries.length) outcome.gaps.push(trial);
    }
  } finally {
    await store.close();
  }
}

/** Numbers from 0 to 1 that a seed determines: the linear congruential generator of POSIX `rand` (from memory). */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
    return state / 2 ** 32;
  };
}
