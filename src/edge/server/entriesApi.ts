import { Hono } from 'hono';
import type { Store } from '../store/store.ts';
import { mayOnly } from './asker.ts';
import type { BenchEnv } from './bench.ts';
import { atMost } from './bodySize.ts';
import { damageBook } from './damageBook.ts';
import type { JournalBook } from './journalBook.ts';
import type { LiveHub } from './live/liveHub.ts';
import { readSentEntries, type SortedEntries } from './readEntries.ts';
import { refuse } from './refusal.ts';
import { trialNamed } from './trialNamed.ts';

/** Largest body that is read, bytes: some 100,000 entries. */
const LARGEST_BODY = 32 * 1024 * 1024;
/** Most entries in one answer; a device asks on from the last one. */
const ENTRIES_IN_ONE_ANSWER = 10_000;

interface EntriesParts {
  store: Store;
  live: LiveHub;
  journals: JournalBook;
  now: () => number;
}

/** Reading a journal in the order in which its entries arrived, and appending to it. */
export function entriesApi({ store, live, journals, now }: EntriesParts): Hono<BenchEnv> {
  const app = new Hono<BenchEnv>();
  const damage = damageBook(store);

  app.get('/', mayOnly('read'), async (c) => {
    const trial = await trialNamed(c, store, journals);
    if (trial instanceof Response) return trial;
    const after = wholeNumber(c.req.query('after') ?? '0');
    const limit = wholeNumber(c.req.query('limit') ?? String(ENTRIES_IN_ONE_ANSWER));
    if (after === null || limit === null || limit === 0)
      return refuse(c, 400, {
        found: `after=${c.req.query('after') ?? ''} and limit=${c.req.query('limit') ?? ''}`.slice(0, 200),
        expected: 'the arrival number that the last answer gave as "next", and a limit from 1',
        advice: 'Leave both out to read from the start.',
      });
    // The name first: a store that is put back in between then shows at the next reading.
    const name = await store.name();
    if (c.get('asker').role === 'reader') {
      // What a reader may see grows in the middle when a part is sealed, so all of it is told each time and the cursor stays.
      const { entries } = await journals.seenBy(c.get('asker'), trial);
      return c.json({ entries, next: after, store: name });
    }
    const { entries, next, told } = await damage.read(trial, after, Math.min(limit, ENTRIES_IN_ONE_ANSWER));
    return c.json({ entries, next, store: name, ...(told === null ? {} : { damaged: told }) });
  });

  const limit = atMost(LARGEST_BODY, 'Send the entries in several parts; sending one twice changes nothing.');
  app.post('/', mayOnly('record'), limit, async (c) => {
    const type = c.req.header('content-type') || 'no content type';
    // A form on a foreign page can send text, but not JSON, without asking first.
    if (!/^application\/json\b/i.test(type))
      return refuse(c, 415, { found: type.slice(0, 100), expected: 'application/json', advice: 'Nothing was kept.' });
    const read = readSentEntries(await c.req.text(), now());
    if (!read.ok) return refuse(c, 400, read.refusal);
    const name = await store.name();
    const answer = { ...(await keep(store, live, read.sent)), store: name };
    const first = answer.refused[0];
    if (first === undefined || answer.accepted.length > 0) return c.json(answer);
    const { found, expected, advice } = first;
    return c.json({ error: { found, expected, advice }, ...answer }, 400);
  });

  return app;
}

/** Keeps what may be kept, and tells what was not. An entry that was kept once is acknowledged again, whatever is sent. */
async function keep(store: Store, live: LiveHub, { trial, good, impossible, refused }: SortedEntries) {
  const there = await store.heldIds(
    trial,
    impossible.map(({ entry }) => entry.id),
  );
  const { added, known, last } = await store.append(trial, good);
  if (added > 0) live.tell(trial, last);
  const not = impossible.filter(({ entry }) => !there.has(entry.id)).map(({ refused: why }) => why);
  const again = impossible.filter(({ entry }) => there.has(entry.id)).map(({ entry }) => entry);
  return {
    accepted: [...good, ...again].map(({ id }) => id),
    refused: [...refused, ...not].sort((a, b) => a.entry - b.entry),
    last,
    added,
    known: known + again.length,
  };
}

function wholeNumber(text: string): number | null {
  return /^\d{1,15}$/.test(text) ? Number(text) : null;
}
