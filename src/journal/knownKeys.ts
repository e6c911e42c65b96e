import type { Entry, EntryKind } from './entry.ts';
import { rowKey } from './tableShape.ts';
import { tableOfKind } from './tables.ts';

/** Keys by kind: what may be referred to. */
export type KnownKeys = Map<EntryKind, Set<string>>;

/** The keys that a journal has already described. */
export function knownKeys(entries: readonly Entry[]): KnownKeys {
  const known: KnownKeys = new Map();
  for (const entry of entries) {
    const table = tableOfKind(entry.kind);
    if (table?.key) addKey(known, table.kind, rowKey(table, entry.body)!);
  }
  return known;
}

export function addKey(known: KnownKeys, kind: EntryKind, key: string): void {
  const keys = known.get(kind);
  if (keys) keys.add(key);
  else known.set(kind, new Set([key]));
}
