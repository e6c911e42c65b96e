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
      if (!(await isKept(address, trial, entries))) return;
      client.acknowledged.push(...entries.map((entry) => entry.id));
    }
  })();
  return client;
}

async function isKept(address: string, trial: string, entries: readonly Entry[]): Promise<boolean> {
  try {
    const answer = await fetch(`${address}/api/entries`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ trial, entries }),
    });
    await answer.arrayBuffer();
    return answer.ok;
  } catch {
    return false;
  }
}
