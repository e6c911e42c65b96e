/**
 * The list at the end of a .zip, read before anything is unpacked (PKWARE APPNOTE 6.3.10, §4.3.12 central directory header
 * and §4.3.16 end of central directory record).
 */
export interface ZipItem {
  name: string;
  encrypted: boolean;
  /** 0 stored, 8 deflated; others are not understood. */
  method: number;
  crc32: number;
  packedSize: number;
  /** As claimed; checked while unpacking. */
  size: number;
  folder: boolean;
  /** Packed bytes. */
  packed: Uint8Array;
}

const END = 0x06054b50;
const ITEM = 0x02014b50;
const LOCAL = 0x04034b50;
const END_LENGTH = 22;
const ITEM_LENGTH = 46;
const LOCAL_LENGTH = 30;
const LONGEST_COMMENT = 0xffff;
const ENCRYPTED = 0x1;
const UTF8_NAME = 0x800;
/** Says that the true figure stands in a ZIP64 record, which only archives beyond 4 GB need. */
const BEYOND_32_BITS = 0xffffffff;

function endOfDirectory(view: DataView): number {
  const first = Math.max(0, view.byteLength - END_LENGTH - LONGEST_COMMENT);
  for (let at = view.byteLength - END_LENGTH; at >= first; at--) if (view.getUint32(at, true) === END) return at;
  throw new RangeError('no list of its files');
}

function packedBytes(bytes: Uint8Array, view: DataView, local: number, packedSize: number): Uint8Array {
  if (local + LOCAL_LENGTH > bytes.length || view.getUint32(local, true) !== LOCAL)
    throw new RangeError('a file that is not where the list says');
  const start = local + LOCAL_LENGTH + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
  if (start + packedSize > bytes.length) throw new RangeError('a file that is cut off');
  return bytes.subarray(start, start + packedSize);
}

function readItem(bytes: Uint8Array, view: DataView, at: number): { item: ZipItem; next: number } {
  if (at + ITEM_LENGTH > bytes.length || view.getUint32(at, true) !== ITEM)
    throw new RangeError('a damaged list of its files');
  const flags = view.getUint16(at + 8, true);
  const packedSize = view.getUint32(at + 20, true);
  const size = view.getUint32(at + 24, true);
  const nameLength = view.getUint16(at + 28, true);
  const local = view.getUint32(at + 42, true);
  const extraLength = view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  if ([packedSize, size, local].includes(BEYOND_32_BITS)) throw new RangeError('sizes beyond 4 GB');
  const nameBytes = bytes.subarray(at + ITEM_LENGTH, at + ITEM_LENGTH + nameLength);
  const name = new TextDecoder(flags & UTF8_NAME ? 'utf-8' : 'windows-1252').decode(nameBytes).replaceAll('\\', '/');
  const item: ZipItem = {
    name,
    encrypted: (flags & ENCRYPTED) !== 0,
    method: view.getUint16(at + 10, true),
    crc32: view.getUint32(at + 16, true),
    packedSize,
    size,
    folder: name.endsWith('/'),
    packed: packedBytes(bytes, view, local, packedSize),
  };
  return { item, next: at + ITEM_LENGTH + nameLength + extraLength };
}

/**
 * The files that a .zip lists, none of them unpacked.
 *
 * @param most stop with a RangeError when it lists more
 * @throws RangeError in words that continue "found …" when the list is damaged
 */
export function zipDirectory(bytes: Uint8Array, most: number): ZipItem[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < END_LENGTH) throw new RangeError('no list of its files');
  const end = endOfDirectory(view);
  const count = view.getUint16(end + 10, true);
  if (count > most) throw new RangeError(`${count} files`);
  const items: ZipItem[] = [];
  let at = view.getUint32(end + 16, true);
  for (let i = 0; i < count; i++) {
    const { item, next } = readItem(bytes, view, at);
    items.push(item);
    at = next;
  }
  return items;
}
