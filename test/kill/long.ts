/** What `scripts/kill.mjs` needs, in one bundle. */
export { openPostgresStore } from '../../src/edge/store/postgres/open.ts';
export { openSqliteStore } from '../../src/edge/store/sqlite/open.ts';
export { throwawayPostgres } from '../support/postgres.ts';
export { killRounds } from './rounds.ts';
