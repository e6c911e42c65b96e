import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { chownSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import pg from 'pg';

/** A PostgreSQL server of our own in a folder that is thrown away. */
export interface ThrowawayPostgres {
  /** Address of its database. */
  url: string;
  /** Ends it at once, as `pg_ctl stop -m immediate` does: it recovers from its log at the next start. */
  crash(): Promise<void>;
  /** Starts it again after a crash. */
  start(): Promise<void>;
  /** Ends it and removes its folder. */
  remove(): Promise<void>;
}

/** Longest time that a start may take, ms. */
const PATIENCE_MS = 30_000;
const USER = 'cupel';

/** Folder with `initdb` and `postgres`; null when there is none. */
export function postgresPrograms(env: NodeJS.ProcessEnv = process.env): string | null {
  const debian = '/usr/lib/postgresql';
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : [];
  const folders = [
    env.CUPEL_POSTGRES_BIN ?? '',
    ...versions.map((version) => join(debian, version, 'bin')),
    ...(env.PATH ?? '').split(delimiter),
    '/usr/local/bin',
  ];
  const has = (folder: string) =>
    folder !== '' && ['initdb', 'postgres'].every((name) => existsSync(join(folder, name)));
  return folders.find(has) ?? null;
}

/** Why no PostgreSQL can be started here; null when one can. Under CI there is no such reason: the tests then fail. */
export function whyNoPostgres(env: NodeJS.ProcessEnv = process.env): string | null {
  if (postgresPrograms(env) !== null || (env.CI ?? '') !== '') return null;
  return 'skipped: no PostgreSQL (initdb, postgres) was found; install it, or name its folder in CUPEL_POSTGRES_BIN';
}

/** PostgreSQL refuses to run as root; then it runs as one of these. */
function otherUser(): { uid: number; gid: number } | undefined {
  if (process.getuid?.() !== 0) return undefined;
  const lines = readFileSync('/etc/passwd', 'utf8').split('\n');
  for (const name of ['postgres', 'nobody']) {
    const [, , uid, gid] = lines.find((line) => line.startsWith(`${name}:`))?.split(':') ?? [];
    if (uid !== undefined && gid !== undefined) return { uid: Number(uid), gid: Number(gid) };
  }
  throw new Error('PostgreSQL does not run as root, and there is neither a user postgres nor nobody to run it as.');
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address() as { port: number };
      server.close(() => resolve(port));
    });
  });
}

/** Makes a fresh server and starts it. `settings` go into its command line, as `name=value`. */
export async function throwawayPostgres(settings: readonly string[] = []): Promise<ThrowawayPostgres> {
  const programs = postgresPrograms();
  if (programs === null) throw new Error('No PostgreSQL (initdb, postgres) was found for the tests.');
  const user = otherUser();
  const folder = mkdtempSync(join(tmpdir(), 'cupel-postgres-'));
  if (user !== undefined) chownSync(folder, user.uid, user.gid);
  const data = join(folder, 'data');
  const made = spawnSync(
    join(programs, 'initdb'),
    ['-D', data, '-U', USER, '-A', 'trust', '-E', 'UTF8', '--locale=C', '--no-sync'],
    { ...user, cwd: folder, encoding: 'utf8' },
  );
  if (made.status !== 0) throw new Error(`initdb did not work: ${made.stderr}${made.error ?? ''}`);
  const port = await freePort();
  const url = `postgres://${USER}@127.0.0.1:${port}/postgres`;
  const args = ['-D', data, '-p', String(port), '-k', folder, '-c', 'listen_addresses=127.0.0.1'];
  let server: ChildProcess | null = null;

  const start = async () => {
    server = spawn(join(programs, 'postgres'), [...args, ...settings.flatMap((setting) => ['-c', setting])], {
      ...user,
      cwd: folder,
      stdio: 'ignore',
    });
    await answers(url, server);
  };
  // A test that stops half way must leave no server running.
  const atExit = () => {
    server?.kill('SIGQUIT');
  };
  process.once('exit', atExit);
  const end = (signal: NodeJS.Signals) =>
    new Promise<void>((resolve) => {
      if (server === null || server.exitCode !== null || server.signalCode !== null) return resolve();
      server.once('exit', () => resolve());
      server.kill(signal);
    });
  await start();
  return {
    url,
    start,
    // PostgreSQL manual, "Shutting Down the Server": SIGQUIT is the immediate shutdown.
    crash: () => end('SIGQUIT'),
    async remove() {
      await end('SIGQUIT');
      process.off('exit', atExit);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function answers(url: string, server: ChildProcess): Promise<void> {
  for (const until = Date.now() + PATIENCE_MS; ; ) {
    const client = new pg.Client({ connectionString: url });
    // A server that is still starting may break the connection a second time while it is being closed.
    client.on('error', () => {});
    try {
      await client.connect();
      await client.query('SELECT 1');
      return;
    } catch (error) {
      if (server.exitCode !== null || Date.now() > until) throw error;
      await new Promise((resume) => setTimeout(resume, 50));
    } finally {
      await client.end().catch(() => {});
    }
  }
}
