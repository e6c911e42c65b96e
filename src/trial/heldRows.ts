/** Which rows a sealed part holds, told by a few characters of each row's hash, whatever arrives later under an earlier time. */
import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import type { Entry } from '../journal/entry.ts';
import { canonicalRow } from '../journal/importedId.ts';

/** 30 bits: one late row in a hundred thousand would pass for one of ten thousand held ones, and the part's hash would tell. */
const CHARACTERS = 5;
const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
/** What a cell may hold (see `journal/entryCheck.ts`), in whole marks. */
const LONGEST_CELL = 10_000;
const COLUMN = /^holds(?:_(\d+))?$/;

/** Five characters for what a row says: its kind and its cells, not its id, so that export and import keep them. */
export function rowMark({ kind, body }: Pick<Entry, 'kind' | 'body'>): string {
  // A package names the trial in its own row even where nobody typed it there.
  const said = kind === 'trial' ? { ...body, trial: '' } : body;
  const digest = sha256(utf8ToBytes(JSON.stringify([kind, canonicalRow(said)])));
  let bits = digest[0]! * 2 ** 24 + digest[1]! * 2 ** 16 + digest[2]! * 2 ** 8 + digest[3]!;
  let mark = '';
  for (let i = 0; i < CHARACTERS; i++) {
    mark += ALPHABET[bits % ALPHABET.length];
    bits = Math.floor(bits / ALPHABET.length);
  }
  return mark;
}

/** The marks of rows as cells of parts.csv: `holds`, and `holds_2` … where one cell does not take them. */
export function holdsCells(entries: readonly Entry[]): Record<string, string> {
  const marks = entries.map(rowMark).sort().join('');
  const cells = Math.ceil(marks.length / LONGEST_CELL);
  return Object.fromEntries(
    Array.from({ length: cells }, (_, i) => [
      i === 0 ? 'holds' : `holds_${i + 1}`,
      marks.slice(i * LONGEST_CELL, (i + 1) * LONGEST_CELL),
    ]),
  );
}

/** How many rows of each mark a part holds; null for a row of parts.csv without marks. */
export function holdsIn(row: Readonly<Record<string, string>>): ReadonlyMap<string, number> | null {
  const columns = Object.keys(row)
    .filter((name) => COLUMN.test(name))
    .sort((a, b) => Number(COLUMN.exec(a)![1] ?? 1) - Number(COLUMN.exec(b)![1] ?? 1));
  const text = columns.map((name) => row[name]!.trim()).join('');
  if (text === '') return null;
  const holds = new Map<string, number>();
  for (let at = 0; at < text.length; at += CHARACTERS) {
    const mark = text.slice(at, at + CHARACTERS);
    holds.set(mark, (holds.get(mark) ?? 0) + 1);
  }
  return holds;
}

/** The entries that are held: of rows that say the same, the earliest ones, as many as were held. */
export function heldAmong(entries: readonly Entry[], holds: ReadonlyMap<string, number>): Entry[] {
  const left = new Map(holds);
  return entries.filter((entry) => {
    const mark = rowMark(entry);
    const more = left.get(mark) ?? 0;
    if (more === 0) return false;
    left.set(mark, more - 1);
    return true;
  });
}
