import type { Entry } from '../../src/journal/entry.ts';
import { entryOf } from '../contract/entries.ts';

/** Sends entries one after the other until the bench is gone. */
export interface Client {
  /** Ids that the bench said are kept. */
  acknowledged: string[];
  /** Entries that were sent, acknowledged or not. */
  sent: number;
  /** Resolves when a request fails, which is how a client notices that the bench was killed. */
  ended: Promise<void>;
}

/** Most entries in one request: a reading alone mostly, sometimes what waited in a phone. */
const MOST_AT_ONCE = 5;

/** A client with numbers of its own from `first` on, so that no two clients make the same id. */
export function startClient(address: string, trial: string, first: number): Client {
  const client: Client = { acknowledged: [], sent: 0, ended: Promise.resolve() };
  client.ended = (async () => {
    for (;;) {
      const count = client.sent % 7 === 0 ? MOST_AT_ONCE : 1;
      const entries = Array.from({ length: count }, (_, n) => entryOf(first + client.sent + n, { trial }));
      client.sent += count;
      const kept = await keptOf(address, trial, entries);
      if (kept === null) return;
      client.acknowledged.push(...kept);
    }
  })();
  return client;
}

/** Ids that the bench says are kept; null once it is gone. Nothing of what is sent here is to be refused. */
async function keptOf(address: string, trial: string, entries: readonly Entry[]): Promise<string[] | null> {
  let answer: Response;
  let text: string;
  try {
    answer = await fetch(`${address}/api/entries`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ trial, entries }),
    });
    text = await answer.text();
  } catch {
    return null;
  }
  const { accepted, refused } = JSON.parse(text) as { accepted?: string[]; refused?: unknown[] };
  if (answer.status >= 500) return null;
  if (accepted?.length !== entries.length || refused?.length !== 0) throw new Error(`the bench answered ${text}`);
  return accepted;
}
