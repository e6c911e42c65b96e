import { crc32 } from 'node:zlib';
import type { Entry } from '../../../journal/entry.ts';
import { checkEntry } from '../../../journal/entryCheck.ts';
import { blobName } from '../blobName.ts';
import { BETWEEN } from './entryRow.ts';
import type { Cell, LooseRow } from './loosePages.ts';

/** An entry as a page by itself tells it. */
export interface LooseEntry {
  seq: number;
  entry: Entry;
}

/** Columns of the table `entries`: trial, seq, id, kind, at, said_by, device, body, sum. */
const ENTRY_WIDTH = 9;

/**
 * The entry in a row that no tree led to. Only one that agrees with the sum that was written with it: without that, nothing
 * tells a row from what was once overwritten.
 */
export function looseEntryOf({ of, cells }: LooseRow): LooseEntry | null {
  if (of !== 'index' || cells.length !== ENTRY_WIDTH) return null;
  const [trial, seq, id, kind, at, by, device, body, sum] = cells;
  if (typeof seq !== 'number' || typeof sum !== 'number' || !isText(trial)) return null;
  const said = [id, kind, at, by, device, body];
  if (!said.every(isText) || crc32(said.join(BETWEEN)) !== sum) return null;
  try {
    const checked = checkEntry({ id, trial, kind, at, by, device, body: JSON.parse(body as string) });
    return checked.ok ? { seq, entry: checked.value } : null;
  } catch {
    return null;
  }
}

export interface LooseBlob {
  trial: string;
  bytes: Uint8Array;
}

/** The photo or log in a row that no tree led to, when its bytes are those that its name was made of. */
export function looseBlobOf({ of, cells }: LooseRow): LooseBlob | null {
  const [trial, name, bytes] = cells;
  if (of !== 'table' || cells.length !== 3 || !isText(trial) || !(bytes instanceof Uint8Array)) return null;
  return blobName(bytes) === name ? { trial, bytes } : null;
}

const isText = (cell: Cell | undefined): cell is string => typeof cell === 'string';
