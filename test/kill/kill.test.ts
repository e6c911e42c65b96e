import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPostgresStore } from '../../src/edge/store/postgres/open.ts';
import { openSqliteStore } from '../../src/edge/store/sqlite/open.ts';
import { builtProgramIn } from '../support/builtProgram.ts';
import { type ThrowawayPostgres, throwawayPostgres, whyNoPostgres } from '../support/postgres.ts';
import { tempFolder } from '../support/tempFolder.ts';
import { type KillOutcome, killRounds } from './rounds.ts';

const ROUNDS = 12;
const ROUNDS_POSTGRES = 4;
const folder = tempFolder();
const reason = whyNoPostgres();
let cli = '';

beforeAll(() => {
  cli = join(builtProgramIn(folder), 'dist', 'cli.js');
}, 120_000);

function expectNothingLost(outcome: KillOutcome, rounds: number): void {
  expect(outcome).toMatchObject({ rounds, lost: [], refusedToOpen: [], gaps: [] });
  // Something must have been acknowledged, or there was nothing to lose.
  expect(outcome.acknowledged).toBeGreaterThan(rounds);
}

describe('killed while two clients write', () => {
  it('a shelf in a file keeps everything that it acknowledged, and opens', async () => {
    const home = join(folder, 'killed');
    const openShelf = async () => openSqliteStore(join(home, 'shelf.sqlite'));
    expectNothingLost(await killRounds({ rounds: ROUNDS, cli, home, openShelf, seed: 1 }), ROUNDS);
  });

  describe.skipIf(reason !== null)(`with PostgreSQL${reason === null ? '' : ` (${reason})`}`, () => {
    let postgres: ThrowawayPostgres;
    beforeAll(async () => {
      postgres = await throwawayPostgres();
    }, 60_000);
    afterAll(() => postgres.remove());

    it('a shelf in a database does, also when the database is ended at once', async () => {
      const openShelf = () => openPostgresStore(postgres.url);
      const home = join(folder, 'unused');
      const outcome = await killRounds({ rounds: ROUNDS_POSTGRES, cli, home, openShelf, postgres, seed: 2 });
      expectNothingLost(outcome, ROUNDS_POSTGRES);
      expect(outcome.databaseEnded).toBe(1);
    });
  });

  it('would be noticed: what was acknowledged and is taken away counts as lost', async () => {
    const home = join(folder, 'robbed');
    const openShelf = async () => {
      const store = openSqliteStore(join(home, 'shelf.sqlite'));
      return {
        ...store,
        async entriesSince(trial: string, seq: number) {
          const { entries, next } = await store.entriesSince(trial, seq);
          return { entries: entries.slice(1), next };
        },
      };
    };
    // On a busy machine a round may end before anything was acknowledged.
    const outcome = await killRounds({ rounds: 5, cli, home, openShelf, seed: 3 });
    expect(outcome.lost.length).toBeGreaterThan(0);
    expect(outcome.gaps.length).toBeGreaterThan(0);
  });
});
