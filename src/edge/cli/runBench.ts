import { demoFolder, pageFolder } from '../files/projectRoot.ts';
import { benchApp } from '../server/app.ts';
import { type Listening, listen, PortTaken } from '../server/listen.ts';
import { openShelf } from '../store/openShelf.ts';
import type { Store } from '../store/store.ts';
import type { BenchOptions } from './commands/bench.ts';
import { debugging } from './debugging.ts';
import { EXIT, Failure } from './failure.ts';
import { openBrowser, wantsBrowser } from './openBrowser.ts';
import { broughtFrom, isPath, readBrought } from './packageAt.ts';
import { untilStopped } from './untilStopped.ts';

const USUAL_PORT = 4870;

/** Serves the bench until the process is told to stop. */
export async function runBench({ port, open }: BenchOptions): Promise<void> {
  const store = await openShelf();
  await showDemoOnEmptyShelf(store);
  const bench = await serve(store, port);
  // Listened for before the address is told: whoever reads it may stop the bench at once.
  const stopped = untilStopped();
  process.stdout.write(`Cupel is at ${bench.address}\nStop it with Ctrl+C; what was recorded is kept.\n`);
  if (open && wantsBrowser(process.env, process.platform)) openBrowser(bench.address, process.platform);
  await stopped;
  await bench.stop();
  await store.close();
}

async function serve(store: Store, asked: number | undefined): Promise<Listening> {
  let port = 0;
  const app = benchApp({ store, pageFolder: pageFolder(), port: () => port, onTrouble: tellWhenDebugging });
  try {
    const bench = await listen(app, asked ?? USUAL_PORT, asked !== undefined);
    port = bench.port;
    return bench;
  } catch (error) {
    await store.close();
    if (error instanceof PortTaken) throw new Failure(error.message, EXIT.wrongUse);
    throw error;
  }
}

/** A shelf with nothing on it gets the invented trial, so that there is something to look at. */
async function showDemoOnEmptyShelf(store: Store): Promise<void> {
  if ((await store.trials()).length > 0 || !isPath(demoFolder())) return;
  const { trial, entries } = readBrought(broughtFrom(demoFolder()));
  await store.append(trial, entries);
}

function tellWhenDebugging(error: unknown): void {
  if (debugging()) process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
}
