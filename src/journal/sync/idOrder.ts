/** Journals as arrays in the order of their ids. */
import type { Entry } from '../entry.ts';
import { sameEntry } from '../merge.ts';

/** Where an id stands, or would stand. */
function placeOf(journal: readonly Entry[], id: string): number {
  let low = 0;
  let high = journal.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (journal[middle]!.id < id) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The entry of that id, or null. */
export function find(journal: readonly Entry[], id: string): Entry | null {
  const entry = journal[placeOf(journal, id)];
  return entry?.id === id ? entry : null;
}

/** The union of two journals of which the first is in order; where both hold an id, `news` counts. The first itself when nothing changes. */
export function joined(journal: readonly Entry[], news: readonly Entry[]): readonly Entry[] {
  const byId = new Map<string, Entry>();
  for (const entry of news) {
    const held = find(journal, entry.id);
    if (held === null || !sameEntry(held, entry)) byId.set(entry.id, entry);
  }
  if (byId.size === 0) return journal;
  const added = [...byId.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
  const union: Entry[] = [];
  let next = 0;
  for (const entry of added) {
    const place = placeOf(journal, entry.id);
    for (; next < place; next++) union.push(journal[next]!);
    union.push(entry);
    if (journal[place]?.id === entry.id) next = place + 1;
  }
  for (; next < journal.length; next++) union.push(journal[next]!);
  return union;
}
