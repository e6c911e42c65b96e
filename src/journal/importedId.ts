import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';

/** Rows that share one millisecond: the 12 bits below it in a UUIDv7 count them. */
const ROWS_PER_MILLISECOND = 4096;
/** Largest time that the 48 bits hold, ms. */
const LAST_MILLISECOND = 2 ** 48 - 1;

/** The columns that say something, sorted, without blanks around: the same row gives the same text however it was laid out. */
export function canonicalRow(row: Readonly<Record<string, string>>): [string, string][] {
  return Object.entries(row)
    .map(([name, cell]): [string, string] => [name, cell.replace(/\r\n?/g, '\n').trim()])
    .filter(([, cell]) => cell !== '')
    .sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
}

/**
 * Id of an entry made from a row of a file: a UUIDv7 (RFC 9562 §5.7, method 1: sub-millisecond counter) that depends on the
 * row alone, so that importing the same file again makes no second entry.
 *
 * Its time is the row's own time, its 12 sub-millisecond bits are the row's place in the file (so rows of one time keep
 * their order; every 4096th row moves on by a millisecond), and the other 62 bits come from SHA-256 of what it says.
 *
 * @param time milliseconds since 1970; negative ones count as 0
 * @param place row number within the file, from 0
 */
export function importedId(
  trial: string,
  kind: string,
  row: Readonly<Record<string, string>>,
  time: number,
  place: number,
): string {
  const moment = Math.min(LAST_MILLISECOND, Math.max(0, Math.floor(time)) + Math.floor(place / ROWS_PER_MILLISECOND));
  const digest = sha256(utf8ToBytes(JSON.stringify([trial, kind, canonicalRow(row)])));
  const clock = moment.toString(16).padStart(12, '0');
  const counter = (place % ROWS_PER_MILLISECOND).toString(16).padStart(3, '0');
  const rest = Array.from(digest.subarray(0, 8), (byte, i) => (i === 0 ? (byte & 0x3f) | 0x80 : byte))
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('');
  return `${clock.slice(0, 8)}-${clock.slice(8)}-7${counter}-${rest.slice(0, 4)}-${rest.slice(4)}`;
}
