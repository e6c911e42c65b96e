/**
 * The pages of a SQLite file one by one, without the trees that lead to them: what is left where a tree can no longer be
 * walked. Source of the layout: https://www.sqlite.org/fileformat.html, sections 1.6 (b-tree pages) and 2.1 (records).
 */
import { closeSync, fstatSync, openSync, readSync } from 'node:fs';

export type Cell = string | number | Uint8Array | null;

/** Every shelf has pages of this length, bytes: what SQLite takes when nobody says otherwise. */
export const PAGE_SIZE = 4096;
/** The first page begins with the header of the file. */
const FILE_HEADER = 100;
const INDEX_INTERIOR = 0x02;
const INDEX_LEAF = 0x0a;
const TABLE_LEAF = 0x0d;

/** A row as a page holds it: its columns in the order of the table's key and rest. */
export interface LooseRow {
  /** `index`: of a table without row numbers, or an index. `table`: of a table with them. */
  of: 'index' | 'table';
  cells: Cell[];
}

/** Every row that any page of the file still holds. Rows may be old, damaged, or come twice. */
export function* looseRows(path: string): Generator<LooseRow> {
  const file = openSync(path, 'r');
  try {
    const pages = Math.floor(fstatSync(file).size / PAGE_SIZE);
    const page = (number: number) => bytesAt(file, (number - 1) * PAGE_SIZE, PAGE_SIZE);
    for (let number = 1; number <= pages; number += 1)
      yield* rowsOf(page(number), number === 1 ? FILE_HEADER : 0, (next) => (next <= pages ? page(next) : null));
  } finally {
    closeSync(file);
  }
}

/** A stretch of an open file; zeros where it ends before. */
export function bytesAt(file: number, position: number, length: number): Buffer {
  const bytes = Buffer.alloc(length);
  readSync(file, bytes, 0, length, position);
  return bytes;
}

/** A page by its number; null where there is none. */
export type PageOf = (number: number) => Buffer | null;

/** The rows of one page that begins at `start` with what a page of a tree begins with. */
export function* rowsOf(page: Buffer, start: number, pageOf: PageOf): Generator<LooseRow> {
  const type = page[start]!;
  if (type !== INDEX_LEAF && type !== INDEX_INTERIOR && type !== TABLE_LEAF) return;
  const count = page.readUInt16BE(start + 3);
  const pointers = start + (type === INDEX_INTERIOR ? 12 : 8);
  for (let n = 0; n < count && pointers + 2 * n + 2 <= page.length; n += 1) {
    const cells = rowAt(page, page.readUInt16BE(pointers + 2 * n), type, pageOf);
    if (cells !== null) yield { of: type === TABLE_LEAF ? 'table' : 'index', cells };
  }
}

/** The row of the cell at an offset of a page; null where what is there is none. */
function rowAt(page: Buffer, offset: number, type: number, pageOf: PageOf): Cell[] | null {
  try {
    const length = varint(page, type === INDEX_INTERIOR ? offset + 4 : offset);
    // A table with row numbers has the number before the row.
    const start = type === TABLE_LEAF ? varint(page, length.end).end : length.end;
    const payload = payloadAt(page, start, length.value, type, pageOf);
    return payload === null ? null : cellsOf(payload);
  } catch {
    // Reading beyond the page: an offset or a length that the damage made up.
    return null;
  }
}

/** Longest row that is put together, bytes: the largest photo and what stands with it. */
const LONGEST_ROW = 33 * 1024 * 1024;

/** A row's bytes, put together from the page and the pages that it goes on in. */
function payloadAt(page: Buffer, start: number, length: number, type: number, pageOf: PageOf): Buffer | null {
  if (length <= 0 || length > LONGEST_ROW) return null;
  const most = type === TABLE_LEAF ? PAGE_SIZE - 35 : Math.floor(((PAGE_SIZE - 12) * 64) / 255) - 23;
  if (length <= most) return start + length <= page.length ? page.subarray(start, start + length) : null;
  const least = Math.floor(((PAGE_SIZE - 12) * 32) / 255) - 23;
  const fitted = least + ((length - least) % (PAGE_SIZE - 4));
  const here = fitted <= most ? fitted : least;
  const parts = [page.subarray(start, start + here)];
  let next = page.readUInt32BE(start + here);
  for (let missing = length - here; missing > 0; missing -= PAGE_SIZE - 4) {
    const further = next === 0 ? null : pageOf(next);
    if (further === null) return null;
    parts.push(further.subarray(4, 4 + Math.min(missing, PAGE_SIZE - 4)));
    next = further.readUInt32BE(0);
  }
  return Buffer.concat(parts);
}

/** The columns of a record; null where a kind of value is none. */
function cellsOf(record: Buffer): Cell[] | null {
  const header = varint(record, 0);
  const cells: Cell[] = [];
  let place = header.value;
  for (let at = header.end; at < header.value; ) {
    const kind = varint(record, at);
    at = kind.end;
    const size = sizeOf(kind.value);
    if (size === null || place + size > record.length) return null;
    cells.push(cellOf(record.subarray(place, place + size), kind.value));
    place += size;
  }
  return cells;
}

/** Bytes of a value by its serial type; null for types that no row of ours has. */
function sizeOf(type: number): number | null {
  if (type >= 12) return Math.floor((type - 12) / 2);
  return ([0, 1, 2, 3, 4, 6, 8, null, 0, 0] as const)[type] ?? null;
}

const utf8 = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

/** @throws TypeError for a text that is none */
function cellOf(bytes: Buffer, type: number): Cell {
  if (type === 0) return null;
  if (type >= 12) return type % 2 === 0 ? new Uint8Array(bytes) : utf8.decode(bytes);
  if (type >= 8) return type - 8;
  return bytes.length <= 6 ? bytes.readIntBE(0, bytes.length) : Number(bytes.readBigInt64BE(0));
}

/** A number of one to nine bytes, seven bits in each; those of more than eight are none of ours. */
function varint(bytes: Buffer, at: number): { value: number; end: number } {
  let value = 0;
  for (let n = 0; n < 8; n += 1) {
    const byte = bytes.readUInt8(at + n);
    value = value * 128 + (byte & 0x7f);
    if (byte < 0x80) return { value, end: at + n + 1 };
  }
  throw new RangeError('a number that is too large');
}
