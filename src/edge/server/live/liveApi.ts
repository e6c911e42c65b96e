import { Hono } from 'hono';
import type { Store } from '../../store/store.ts';
import { mayOnly } from '../asker.ts';
import { askerAddress } from '../askerAddress.ts';
import type { BenchEnv } from '../bench.ts';
import type { JournalBook } from '../journalBook.ts';
import { refuse } from '../refusal.ts';
import { trialNamed } from '../trialNamed.ts';
import type { LiveHub } from './liveHub.ts';

/** Streams that may be open at once: a club's phones and browser tabs many times over. Ours. */
const MOST_LISTENERS = 1000;

interface LiveParts {
  store: Store;
  live: LiveHub;
  journals: JournalBook;
}

/**
 * News of a trial as server-sent events: `event: entries`, data {"last": n}, at once and after each append. Read it with
 * fetch and a stream reader, which can send the device's token along; what is new is then read from /api/entries. To a reader n is
 * the number of entries that readers see.
 */
export function liveApi({ store, live, journals }: LiveParts): Hono<BenchEnv> {
  const app = new Hono<BenchEnv>();
  app.get('/', mayOnly('read'), async (c) => {
    const trial = await trialNamed(c, store, journals);
    if (trial instanceof Response) return trial;
    if (live.listeners() >= MOST_LISTENERS) {
      c.header('retry-after', '30');
      return refuse(c, 429, {
        found: `a listener at ${askerAddress(c)}, and ${MOST_LISTENERS} are there already`,
        expected: `at most ${MOST_LISTENERS} open pages`,
        advice: 'Close pages that nobody looks at.',
      });
    }
    const asker = c.get('asker');
    // How often something is said that is not sealed is nothing for readers either.
    const seen = async () => (await journals.seenBy(asker, trial)).entries.length;
    const stream = await live.listen(trial, asker.device?.id ?? null, asker.role === 'reader' ? seen : null);
    return c.body(stream, 200, {
      'content-type': 'text/event-stream; charset=utf-8',
      'cache-control': 'no-store',
      // A proxy in front must pass each event on at once.
      'x-accel-buffering': 'no',
    });
  });
  return app;
}
