import type { Entry } from './entry.ts';

/** One text for one entry, whatever the order in which its parts were written. */
function canonicalText(entry: Entry): string {
  const body = Object.entries(entry.body).sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  return JSON.stringify([entry.kind, entry.at, entry.by, entry.device, entry.trial, body]);
}

/** Whether two entries say the same. */
export const sameEntry = (a: Entry, b: Entry): boolean =>
  a === b || (a.id === b.id && canonicalText(a) === canonicalText(b));

/** Whether the ids already ascend, each once: the usual case, in which nothing is to be done. */
export function inOrder(entries: readonly Entry[]): boolean {
  for (let i = 1; i < entries.length; i++) if (entries[i - 1]!.id >= entries[i]!.id) return false;
  return true;
}

/**
 * Brings journals of one trial together: the union of their entries by id, in id order. Commutative, associative and
 * idempotent, so devices may send each other what they have in any order and any number of times.
 *
 * Two different entries under one id cannot come from honest writers; the one whose text sorts first is kept, so that all
 * devices still agree.
 */
export function mergeEntries(...journals: readonly (readonly Entry[])[]): Entry[] {
  const byId = new Map<string, Entry>();
  for (const journal of journals) {
    for (const entry of journal) {
      const known = byId.get(entry.id);
      if (known === undefined || (known !== entry && canonicalText(entry) < canonicalText(known)))
        byId.set(entry.id, entry);
    }
  }
  return [...byId.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}
