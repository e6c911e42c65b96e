import { Hono } from 'hono';
import { z } from 'zod';
import type { LineBook } from '../shelf/lineBook.ts';
import type { Remembered } from '../shelf/rememberedLines.ts';
import type { Store } from '../store/store.ts';
import { mayOnly } from './asker.ts';
import type { BenchEnv } from './bench.ts';
import { atMost } from './bodySize.ts';
import type { ReadersShelf } from './publish/readersShelf.ts';
import { smallJson } from './smallJson.ts';

/** Largest body that is read, bytes: the marks of some 50,000 trials. */
const LARGEST_BODY = 8 * 1024 * 1024;

const Held = z.object({ have: z.record(z.string(), z.string()).optional() });

interface CablesParts {
  store: Store;
  sealedShelf: ReadersShelf;
  remembered: Remembered | undefined;
}

/**
 * Every cable that was ever assayed, in a line each: `POST /` with the marks of the trials that are held already answers what has
 * changed since, and how many trials are left to be asked for. Computing is loaded when first asked for.
 */
export function cablesApi({ store, sealedShelf, remembered }: CablesParts): Hono<BenchEnv> {
  const app = new Hono<BenchEnv>();
  let book: Promise<LineBook> | null = null;
  const opened = () => {
    book ??= import('../shelf/lineBook.ts').then(({ lineBook }) => lineBook(store, remembered, sealedShelf));
    return book;
  };

  app.post('/', mayOnly('read'), atMost(LARGEST_BODY, 'Leave "have" out to be told everything.'), async (c) => {
    const asked = await smallJson(c, Held, '{ "have": { trial: mark } } with the marks of an earlier answer');
    if (asked instanceof Response) return asked;
    const whom = c.get('asker').role === 'reader' ? 'reader' : 'bench';
    return c.json(await (await opened())(whom, asked.have ?? {}));
  });

  return app;
}
