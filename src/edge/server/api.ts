import { Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { type Store, StoreRefusal } from '../store/store.ts';
import { readSentEntries } from './readEntries.ts';
import { refuse } from './refusal.ts';

/** Largest body that is read, bytes: some 100,000 entries. */
const LARGEST_BODY = 32 * 1024 * 1024;
/** Most entries in one answer; a device asks on from the last one. */
const ENTRIES_IN_ONE_ANSWER = 10_000;

/** The addresses under /api: list the trials, read a journal, append to it. */
export function api(store: Store): Hono {
  const app = new Hono();

  app.get('/trials', async (c) => c.json(await store.trials()));

  app.get('/entries', async (c) => {
    const trial = c.req.query('trial') ?? '';
    if (trial === '')
      return refuse(c, 400, { found: 'no trial', expected: '/api/entries?trial=…', advice: 'Name the trial.' });
    if (!(await store.has(trial)))
      return refuse(c, 404, {
        found: `the trial "${trial.slice(0, 200)}"`,
        expected: 'a trial on the shelf',
        advice: '/api/trials lists them.',
      });
    return c.json(await store.entries(trial, c.req.query('after'), ENTRIES_IN_ONE_ANSWER));
  });

  const limit = bodyLimit({
    maxSize: LARGEST_BODY,
    onError: (c) =>
      refuse(c, 413, {
        found: 'a body that is too large',
        expected: `at most ${LARGEST_BODY / 1024 / 1024} MB at a time`,
        advice: 'Send the entries in several parts; sending one twice changes nothing.',
      }),
  });
  app.post('/entries', limit, async (c) => {
    const type = c.req.header('content-type') ?? 'no content type';
    // A form on a foreign page can send text, but not JSON, without asking first.
    if (!/^application\/json\b/i.test(type))
      return refuse(c, 415, { found: type.slice(0, 100), expected: 'application/json', advice: 'Nothing was kept.' });
    const sent = readSentEntries(await c.req.text());
    if (!sent.ok) return refuse(c, 400, sent.refusal);
    return c.json(await store.append(sent.trial, sent.entries));
  });

  app.all('*', (c) =>
    refuse(c, 404, {
      found: `${c.req.method} ${c.req.path.slice(0, 200)}`,
      expected: 'GET /api/trials, GET /api/entries?trial=…, POST /api/entries',
      advice: 'Look at the address.',
    }),
  );
  return app;
}

/** What a store that cannot go on is said to the page as. */
export function storeTrouble(error: unknown): { found: string; expected: string; advice: string } {
  return {
    found: error instanceof StoreRefusal ? error.message : 'trouble with the file of the shelf',
    expected: 'a shelf that can be read and written',
    advice: 'Look whether the disk has room, and start Cupel again; what was said to be kept is kept.',
  };
}
