import { DamagedData } from '../store.ts';

/**
 * Text is read as bytes everywhere (`CAST(… AS BLOB)`), because the driver ends the whole process at a text that is no
 * UTF-8, which is what a damaged file may hold.
 */
export type Bytes = ArrayBuffer | Uint8Array;

const utf8 = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

/** The text, or null when the bytes are none. */
export function decoded(bytes: Bytes): string | null {
  try {
    return utf8.decode(bytes);
  } catch {
    return null;
  }
}

/** The text of a cell. Throws when the disk changed it into none. */
export function textOf(cell: Bytes | null): string {
  const text = cell === null ? null : decoded(cell);
  if (text === null) throw new DamagedData('The disk damaged the shelf: a text in it can no longer be read.');
  return text;
}
