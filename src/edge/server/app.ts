import { Hono } from 'hono';
import type { Store } from '../store/store.ts';
import { api, storeTrouble } from './api.ts';
import { securityHeaders } from './headers.ts';
import { onlyOwnHost, onlyOwnOrigin } from './hosts.ts';
import { pageFiles } from './pageFiles.ts';
import { refuse } from './refusal.ts';

export interface BenchParts {
  store: Store;
  /** Folder of the built page. */
  pageFolder: string;
  /** The port that is listened on, once it is known. */
  port: () => number;
  /** Hears of errors that are nobody's input. */
  onTrouble?: (error: unknown) => void;
}

/** The whole bench as one request handler: the API, the page, and who may ask. It listens to nothing by itself. */
export function benchApp({ store, pageFolder, port, onTrouble }: BenchParts): Hono {
  const app = new Hono();
  app.use(securityHeaders(), onlyOwnHost(port), onlyOwnOrigin(port));
  app.route('/api', api(store));
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
