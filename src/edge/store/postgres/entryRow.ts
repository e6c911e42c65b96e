import type { Entry } from '../../../journal/entry.ts';

/** One row of the table `entries`. A bigint comes as text, because it may be larger than a JavaScript number holds. */
export interface EntryRow {
  trial: string;
  seq: string;
  id: string;
  kind: string;
  at: string;
  said_by: string;
  device: string;
  body: string;
}

/** How many values a row has. */
export const ROW_WIDTH = 8;

/** The columns of a row in the order in which they are inserted. */
export function rowOf(entry: Entry, seq: number): [string, number, string, string, string, string, string, string] {
  return [entry.trial, seq, entry.id, entry.kind, entry.at, entry.by, entry.device, JSON.stringify(entry.body)];
}

export function entryOf(row: EntryRow): Entry {
  return {
    id: row.id,
    trial: row.trial,
    kind: row.kind,
    at: row.at,
    by: row.said_by,
    device: row.device,
    body: JSON.parse(row.body) as Record<string, string>,
  };
}
