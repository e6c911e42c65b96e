import { Hono } from 'hono';
import type { Remembered } from '../shelf/rememberedLines.ts';
import type { Store } from '../store/store.ts';
import { api, storeTrouble } from './api.ts';
import type { BenchEnv } from './bench.ts';
import { securityHeaders } from './headers.ts';
import { onlyOwnHost, onlyOwnOrigin } from './hosts.ts';
import { type LiveHub, liveHub } from './live/liveHub.ts';
import { pageFiles } from './pageFiles.ts';
import { notTooOften, REQUEST_RATE } from './rates.ts';
import { refuse } from './refusal.ts';
import type { Sharing } from './share/sharing.ts';

export interface BenchParts {
  store: Store;
  /** Folder of the built page. */
  pageFolder: string;
  /** The port that is listened on, once it is known. */
  port: () => number;
  /** Opens the local network to phones; left out where only this computer is served. */
  sharing?: Sharing;
  /** Whoever stops the server closes it first, so that no stream stays open. */
  live?: LiveHub;
  /** Where the lines of the shelf outlive this program. */
  remembered?: Remembered;
  /** ms since 1970 */
  now?: () => number;
  /** Hears of errors that are nobody's input. */
  onTrouble?: (error: unknown) => void;
}

/** The whole bench as one request handler: the API, the page, and who may ask. It listens to nothing by itself. */
export function benchApp({
  store,
  pageFolder,
  port,
  sharing,
  live,
  remembered,
  now = Date.now,
  onTrouble,
}: BenchParts): Hono<BenchEnv> {
  const names = () => sharing?.names() ?? { port: port(), addresses: [], secure: false, given: [] };
  const app = new Hono<BenchEnv>();
  app.use(securityHeaders(), onlyOwnHost(names), onlyOwnOrigin(names), notTooOften(REQUEST_RATE, now, true));
  app.route('/api', api({ store, live: live ?? liveHub(store), sharing: sharing ?? null, now, remembered }));
  app.get('*', pageFiles(pageFolder));
  app.notFound((c) =>
    refuse(c, 405, {
      found: `${c.req.method} ${c.req.path.slice(0, 200)}`,
      expected: 'GET',
      advice: 'Look at the address.',
    }),
  );
  app.onError((error, c) => {
    onTrouble?.(error);
    return refuse(c, 503, storeTrouble(error));
  });
  return app;
}
