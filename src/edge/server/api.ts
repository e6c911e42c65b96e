import { Hono } from 'hono';
import type { Remembered } from '../shelf/rememberedLines.ts';
import { DamagedData, type Store, StoreRefusal } from '../store/store.ts';
import { mayOnly, onlyKnownAskers } from './asker.ts';
import type { BenchEnv } from './bench.ts';
import { blobsApi } from './blobsApi.ts';
import { cablesApi } from './cablesApi.ts';
import { entriesApi } from './entriesApi.ts';
import { journalBook } from './journalBook.ts';
import { liveApi } from './live/liveApi.ts';
import type { LiveHub } from './live/liveHub.ts';
import { partsApi } from './publish/partsApi.ts';
import { publishApi } from './publish/publishApi.ts';
import { readersShelf } from './publish/readersShelf.ts';
import { refuse } from './refusal.ts';
import { devicesApi } from './share/devicesApi.ts';
import { pairApi } from './share/pairApi.ts';
import { shareApi } from './share/shareApi.ts';
import type { Sharing } from './share/sharing.ts';

export interface ApiParts {
  store: Store;
  live: LiveHub;
  /** Null where there is no local network to open, as in a test. */
  sharing: Sharing | null;
  now: () => number;
  /** Where the lines of the shelf outlive this program; nowhere when left out. */
  remembered?: Remembered;
}

/** Everything under /api: journals, photos, news, and who may ask. Answers are never kept by a browser unless they say so. */
export function api({ store, live, sharing, now, remembered }: ApiParts): Hono<BenchEnv> {
  const app = new Hono<BenchEnv>();
  const journals = journalBook(store);
  const sealedShelf = readersShelf(store);
  app.use(async (c, next) => {
    await next();
    if (!c.res.headers.has('cache-control')) c.res.headers.set('cache-control', 'no-store');
  });
  app.route('/pair', pairApi(store, sharing, now));
  app.use(onlyKnownAskers(store, now));

  app.get('/me', (c) => {
    const { role, device } = c.get('asker');
    return c.json({ role, device: device === null ? null : { id: device.id, name: device.name } });
  });
  app.get('/trials', mayOnly('read'), async (c) =>
    c.json(await (c.get('asker').role === 'reader' ? sealedShelf() : store.trials())),
  );
  app.route('/cables', cablesApi({ store, sealedShelf, remembered }));
  app.route('/entries', entriesApi({ store, live, journals, now }));
  app.route('/live', liveApi({ store, live, journals }));
  app.route('/blobs', blobsApi(store, journals));
  app.route('/', publishApi({ store, journals, now }));
  app.route('/', partsApi({ store, journals, now }));
  app.route('/devices', devicesApi(store, live, now));
  app.route('/share', shareApi(sharing));

  app.all('*', (c) =>
    refuse(c, 404, {
      found: `${c.req.method} ${c.req.path.slice(0, 200)}`,
      expected: 'an address that docs/server.md lists, such as GET /api/trials',
      advice: 'Look at the address.',
    }),
  );
  return app;
}

/** What a store that cannot go on is said to the page as. */
export function storeTrouble(error: unknown): { found: string; expected: string; advice: string } {
  const expected = 'a shelf that can be read and written';
  if (error instanceof DamagedData) return { found: withinSentence(error.found), expected, advice: error.advice };
  return {
    found: error instanceof StoreRefusal ? error.message : 'trouble with the file of the shelf',
    expected,
    advice: 'Look whether the disk has room, and start Cupel again; what was said to be kept is kept.',
  };
}

/** A sentence as it stands after "found". */
function withinSentence(sentence: string): string {
  return `${sentence.charAt(0).toLowerCase()}${sentence.slice(1).replace(/\.$/, '')}`;
}
