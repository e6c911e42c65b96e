import { pageFolder } from '../files/projectRoot.ts';
import { benchApp } from '../server/app.ts';
import { listen, listenAt, PortTaken } from '../server/listen.ts';
import { liveHub } from '../server/live/liveHub.ts';
import { localAddresses } from '../server/share/localAddresses.ts';
import { type OpenCode, type Sharing, SharingRefusal, sharing } from '../server/share/sharing.ts';
import { readTls, type Tls, TlsRefusal } from '../server/share/tls.ts';
import { linesFile, rememberedIn } from '../shelf/rememberedLines.ts';
import type { DeviceRole } from '../store/devices.ts';
import type { Store } from '../store/store.ts';
import type { BenchOptions } from './commands/bench.ts';
import { debugging } from './debugging.ts';
import { EXIT, Failure } from './failure.ts';

const USUAL_PORT = 4870;

export interface Served {
  address: string;
  sharing: Sharing;
  /** The code that was asked for with --share. */
  code: OpenCode | null;
  stop(): Promise<void>;
}

/** Serves the bench to this computer, and to the local network where that was asked for. `onRenewed` hears of new codes. */
export async function serveBench(
  store: Store,
  options: Omit<BenchOptions, 'open'>,
  onRenewed: (code: OpenCode) => void,
): Promise<Served> {
  const tls = givenTls(options);
  const live = liveHub(store, undefined, tellWhenDebugging);
  let port = 0;
  const network = sharing({
    port: () => port,
    listenAt: (address) => listenAt(app, address, port, tls),
    addresses: localAddresses,
    given: options.host,
    secure: tls !== undefined,
    onRenewed,
  });
  const app = benchApp({
    store,
    pageFolder: pageFolder(),
    port: () => port,
    sharing: network,
    live,
    remembered: rememberedIn(linesFile()),
    onTrouble: tellWhenDebugging,
  });
  const bench = await listen(app, options.port ?? USUAL_PORT, options.port !== undefined);
  port = bench.port;
  const stop = async () => {
    live.close();
    await Promise.all([network.end(), bench.stop()]);
  };
  const code = options.share ? await openOrStop(network, options.role, stop) : null;
  return { address: bench.address, sharing: network, code, stop };
}

async function openOrStop(network: Sharing, role: DeviceRole, stop: () => Promise<void>): Promise<OpenCode> {
  try {
    return await network.open(role);
  } catch (error) {
    await stop();
    throw error;
  }
}

function givenTls({ tlsCert, tlsKey }: Pick<BenchOptions, 'tlsCert' | 'tlsKey'>): Tls | undefined {
  if (tlsCert === undefined && tlsKey === undefined) return undefined;
  if (tlsCert === undefined || tlsKey === undefined)
    throw new Failure('--tls-cert and --tls-key go together; name both files.', EXIT.wrongUse);
  return readTls(tlsCert, tlsKey);
}

/** Errors of serving, as the sentence and exit code that a person gets. */
export function servingFailure(error: unknown): unknown {
  const kinds = [PortTaken, SharingRefusal, TlsRefusal];
  return kinds.some((kind) => error instanceof kind) ? new Failure((error as Error).message, EXIT.wrongUse) : error;
}

function tellWhenDebugging(error: unknown): void {
  if (debugging()) process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
}
