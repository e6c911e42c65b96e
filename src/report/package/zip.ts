import { Inflate, zipSync } from 'fflate';
import { crc32 } from './crc32.ts';
import { belongsToPackage, withoutTopFolder } from './packageFiles.ts';
import { photoAt } from './photos.ts';
import { PackageRefused, refusal } from './refusal.ts';
import { type ZipItem, zipDirectory } from './zipDirectory.ts';

export interface ZipLimits {
  /** Bytes of all tables together once unpacked. */
  unpackedBytes: number;
  /** Bytes of all photos together once unpacked. */
  photoBytes: number;
  files: number;
  /** Largest unpacked size over packed size of one file, once it is large enough to matter. */
  ratio: number;
}

const MEGABYTE = 1_000_000;
export const USUAL_ZIP_LIMITS: ZipLimits = {
  unpackedBytes: 200 * MEGABYTE,
  photoBytes: 1000 * MEGABYTE,
  files: 10_000,
  ratio: 200,
};
/** Below this size any ratio is harmless. */
const RATIO_COUNTS_FROM = MEGABYTE;
/** Packed bytes fed to the unpacker at a time: it cannot give back more than about a thousand times as many before it is stopped. */
const MOUTHFUL = 16_384;
const STORED = 0;
const DEFLATED = 8;
const NO_BYTES = new Uint8Array(0);

function refuse(name: string, found: string, expected: string, advice = ''): never {
  throw new PackageRefused(refusal(name, null, null, { found, expected, advice }));
}

const size = (bytes: number): string => (bytes >= MEGABYTE ? `${Math.round(bytes / MEGABYTE)} MB` : `${bytes} bytes`);

/** Names that would be written outside the folder that the archive is unpacked to. */
function leavesTheFolder(name: string): boolean {
  return name.startsWith('/') || /^[a-z]:/i.test(name) || name.split('/').includes('..') || name.includes('\0');
}

function directoryOf(bytes: Uint8Array, limits: ZipLimits): ZipItem[] {
  try {
    return zipDirectory(bytes, limits.files);
  } catch (problem) {
    const found = problem instanceof RangeError ? problem.message : 'a damaged archive';
    if (/^\d+ files$/.test(found))
      return refuse('the .zip', found, `at most ${limits.files} files`, 'Leave photos and other files out.');
    return refuse('the .zip', found, 'a whole .zip archive', 'Make it again, or bring the folder itself.');
  }
}

function checkItem(item: ZipItem, limits: ZipLimits): void {
  if (item.encrypted) refuse(item.name, 'a file under a password', 'an archive without one');
  if (item.method !== STORED && item.method !== DEFLATED)
    refuse(item.name, 'a way of packing that is not understood', 'an ordinary .zip archive');
  if (item.size > RATIO_COUNTS_FROM && item.size > item.packedSize * limits.ratio)
    refuse(item.name, `${size(item.size)} packed into ${size(item.packedSize)}`, 'a table that was honestly packed');
}

/** Unpacks one file, stopping as soon as it yields more than its share or than it claimed. `all`: most bytes of its kind. */
function unpack(item: ZipItem, room: number, all: number): Uint8Array {
  const most = Math.min(item.size, room);
  const pieces: Uint8Array[] = [];
  let length = 0;
  let sum = 0;
  const take = (piece: Uint8Array): void => {
    length += piece.length;
    if (length > room) refuse('the .zip', `more than ${size(all)} unpacked`, 'a smaller package');
    if (length > most) refuse(item.name, 'more bytes than the archive claims', 'an honest archive');
    pieces.push(piece);
    sum = crc32(piece, sum);
  };
  if (item.method === STORED) take(item.packed);
  else inflate(item, take);
  if (length !== item.size || sum !== item.crc32) refuse(item.name, 'damaged bytes', 'a whole .zip archive');
  return joined(pieces, length);
}

function inflate(item: ZipItem, take: (piece: Uint8Array) => void): void {
  const unpacker = new Inflate(take);
  try {
    for (let at = 0; at < item.packed.length; at += MOUTHFUL)
      unpacker.push(item.packed.subarray(at, at + MOUTHFUL), at + MOUTHFUL >= item.packed.length);
  } catch (problem) {
    if (problem instanceof PackageRefused) throw problem;
    refuse(item.name, 'damaged bytes', 'a whole .zip archive');
  }
}

function joined(pieces: readonly Uint8Array[], length: number): Uint8Array {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

/**
 * The files of a .zip by path, a top folder that holds them all taken off. Tables and the package's own photos are
 * unpacked; other files keep their name but no bytes, so that reading the package can say that they were left aside.
 *
 * Nothing is unpacked before the whole list was judged, and unpacking stops at the limit whatever the archive claims.
 *
 * @throws PackageRefused with one sentence: a damaged or locked archive, a path that leaves the folder, too much in it
 */
export function unzipPackage(bytes: Uint8Array, limits: ZipLimits = USUAL_ZIP_LIMITS): Map<string, Uint8Array> {
  if (bytes.length === 0) refuse('the .zip', 'an empty file', 'a .zip archive');
  const items = directoryOf(bytes, limits).filter((item) => !item.folder);
  const outside = items.find((item) => leavesTheFolder(item.name));
  if (outside) refuse(outside.name, 'a path that leaves its folder', 'files inside one folder');
  const shortName = withoutTopFolder(items.map((item) => item.name));
  const kindOf = ({ name }: ZipItem) => fileKind(shortName(name));
  for (const item of items) if (kindOf(item) !== 'other') checkItem(item, limits);
  const room = { table: limits.unpackedBytes, photo: limits.photoBytes };
  for (const kind of ['table', 'photo'] as const) {
    const claimed = items.reduce((sum, item) => sum + (kindOf(item) === kind ? item.size : 0), 0);
    if (claimed > room[kind]) refuse('the .zip', `${size(claimed)} unpacked`, `at most ${size(room[kind])}`);
  }
  const left = { ...room };
  return new Map(
    items.map((item) => {
      const kind = kindOf(item);
      if (kind === 'other') return [shortName(item.name), NO_BYTES];
      const unpacked = unpack(item, left[kind], room[kind]);
      left[kind] -= unpacked.length;
      return [shortName(item.name), unpacked];
    }),
  );
}

function fileKind(path: string): 'table' | 'photo' | 'other' {
  if (belongsToPackage(path)) return 'table';
  return photoAt(path) === null ? 'other' : 'photo';
}

/** The same moment in every archive, so that the same files give the same bytes. Local time: .zip knows no zones. */
const FIXED_TIME = new Date(1980, 0, 1, 12);

/** Packs files into a .zip, always the same bytes for the same files. */
export function zipPackage(files: ReadonlyMap<string, string | Uint8Array>): Uint8Array {
  const written = [...files].sort(([a], [b]) => (a < b ? -1 : 1));
  const encoder = new TextEncoder();
  const bytes = written.map(([path, content]): [string, [Uint8Array, { level: 0 | 9 }]] => [
    path,
    // A photo is packed already: trying again would take long and gain nothing.
    typeof content === 'string' ? [encoder.encode(content), { level: 9 }] : [content, { level: photoAt(path) ? 0 : 9 }],
  ]);
  return zipSync(Object.fromEntries(bytes), { mtime: FIXED_TIME });
}
