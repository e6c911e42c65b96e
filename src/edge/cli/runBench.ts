import { demoFolder } from '../files/projectRoot.ts';
import type { OpenCode } from '../server/share/sharing.ts';
import { openBenchShelf } from '../store/openShelf.ts';
import type { Store } from '../store/store.ts';
import type { BenchOptions } from './commands/bench.ts';
import { openBrowser, wantsBrowser } from './openBrowser.ts';
import { broughtFrom, isPath, readBrought } from './packageAt.ts';
import { type Served, serveBench, servingFailure } from './serveBench.ts';
import { newCodeOnEnter, sharingText } from './tellSharing.ts';
import { untilStopped } from './untilStopped.ts';

/** Serves the bench until the process is told to stop. */
export async function runBench({ open, ...options }: BenchOptions): Promise<void> {
  const store = await openBenchShelf();
  const tell = (code: OpenCode) => tellCode(code, options.tlsCert !== undefined);
  const bench = await served(store, options, tell);
  // Listened for before the address is told: whoever reads it may stop the bench at once.
  const stopped = untilStopped();
  process.stdout.write(`Cupel is at ${bench.address}
Stop it with Ctrl+C; what was recorded is kept.
`);
  if (bench.code !== null) tell(bench.code);
  const deafen = bench.code === null ? () => {} : newCodeOnEnter(bench.sharing, tell, bench.code.role);
  if (open && wantsBrowser(process.env, process.platform)) openBrowser(bench.address, process.platform);
  await stopped;
  deafen();
  await bench.stop();
  await store.close();
}

function tellCode(code: OpenCode, secure: boolean): void {
  process.stdout.write(sharingText(code, secure, process.stdout.isTTY === true));
}

async function served(
  store: Store,
  options: Omit<BenchOptions, 'open'>,
  onRenewed: (code: OpenCode) => void,
): Promise<Served> {
  try {
    await showDemoOnEmptyShelf(store);
    return await serveBench(store, options, onRenewed);
  } catch (error) {
    await store.close();
    throw servingFailure(error);
  }
}

/** A shelf with nothing on it gets the invented trial, so that there is something to look at. */
async function showDemoOnEmptyShelf(store: Store): Promise<void> {
  if ((await store.trials()).length > 0 || !isPath(demoFolder())) return;
  const { trial, entries } = readBrought(broughtFrom(demoFolder()));
  await store.append(trial, entries);
}
