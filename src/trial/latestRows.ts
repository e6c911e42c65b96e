import type { Entry, EntryKind } from '../journal/entry.ts';
import { rowKey, type TableShape } from '../journal/tableShape.ts';
import { tableOfKind } from '../journal/tables.ts';
import { trimmed } from './cells.ts';

/** The entries of one kind that stand: for each key the last one, in the order in which the keys first came up. */
export type LatestRows = Readonly<Record<EntryKind, readonly Entry[]>>;

interface Collected {
  shape: TableShape;
  /** Rows that stand for themselves, of a table without keys. */
  rows: Entry[];
  byKey: Map<string, Entry>;
}

/** The key of a row; nearly all tables have one column for it. */
const keyOf = (shape: TableShape, key: readonly string[], row: Entry['body']): string =>
  key.length === 1 ? trimmed(row[key[0]!]) : rowKey(shape, row)!;

/**
 * Sorts entries into their tables, the last entry of a key taking the place of earlier ones. Kinds that this version does
 * not know are skipped; a row without its key stands under the empty key and is reported later.
 *
 * @param entries in id order
 */
export function latestRows(entries: readonly Entry[]): LatestRows {
  const tables = new Map<string, Collected | null>();
  for (const entry of entries) {
    let table = tables.get(entry.kind);
    if (table === undefined) {
      const shape = tableOfKind(entry.kind);
      table = shape && { shape, rows: [], byKey: new Map() };
      tables.set(entry.kind, table);
    }
    if (table === null) continue;
    const { key } = table.shape;
    if (key === null) table.rows.push(entry);
    else table.byKey.set(keyOf(table.shape, key, entry.body), entry);
  }
  const rowsOf = (kind: EntryKind): readonly Entry[] => {
    const table = tables.get(kind);
    if (!table) return [];
    return table.shape.key === null ? table.rows : [...table.byKey.values()];
  };
  return {
    trial: rowsOf('trial').slice(-1),
    cable: rowsOf('cable'),
    fitting: rowsOf('fitting'),
    instrument: rowsOf('instrument'),
    check: rowsOf('check'),
    specimen: rowsOf('specimen'),
    evidence: rowsOf('evidence'),
    reading: rowsOf('reading'),
    strike: rowsOf('strike'),
    retag: rowsOf('retag'),
    judgement: rowsOf('judgement'),
    endurance: rowsOf('endurance'),
    current: rowsOf('current'),
    withdrawal: rowsOf('withdrawal'),
    note: rowsOf('note'),
    setting: rowsOf('setting'),
    blinding: rowsOf('blinding'),
    seal: rowsOf('seal'),
    reply: rowsOf('reply'),
  };
}
