import { zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { crc32 } from '../../../src/report/package/crc32.ts';
import { readPackage } from '../../../src/report/package/readPackage.ts';
import { PackageRefused } from '../../../src/report/package/refusal.ts';
import { writePackage } from '../../../src/report/package/writePackage.ts';
import { USUAL_ZIP_LIMITS, unzipPackage, type ZipLimits, zipPackage } from '../../../src/report/package/zip.ts';
import { contentHash } from '../../../src/trial/content.ts';
import { fold } from '../../../src/trial/fold.ts';
import { GOOD, NOW, read } from './files.ts';

const encoder = new TextEncoder();
const zipOf = (files: Record<string, string>) =>
  zipSync(Object.fromEntries(Object.entries(files).map(([path, text]) => [path, encoder.encode(text)])));

function sentenceOf(bytes: Uint8Array, limits: Partial<ZipLimits> = {}): string {
  try {
    unzipPackage(bytes, { ...USUAL_ZIP_LIMITS, ...limits });
  } catch (problem) {
    if (problem instanceof PackageRefused) return problem.message;
    throw problem;
  }
  throw new Error('nothing was refused');
}

/** Where the archive's list begins: the end record says so. */
const directoryAt = (bytes: Uint8Array): number =>
  new DataView(bytes.buffer, bytes.byteOffset).getUint32(bytes.length - 22 + 16, true);

function altered(bytes: Uint8Array, change: (view: DataView, directory: number) => void): Uint8Array {
  const copy = bytes.slice();
  change(new DataView(copy.buffer), directoryAt(copy));
  return copy;
}

/** A table of zeros that packs a thousandfold. */
const bomb = (megabytes: number) => zipOf({ 'readings.csv': '0'.repeat(megabytes * 1_000_000) });

describe('an archive', () => {
  it('gives back what was packed, through to the same content', () => {
    const trial = fold(read(GOOD).entries);
    const packed = zipPackage(writePackage(trial));
    const { entries, refusals } = readPackage(unzipPackage(packed), { now: NOW });
    expect(refusals).toEqual([]);
    expect(contentHash(fold(entries))).toBe(contentHash(trial));
  });

  it('is the same bytes for the same files, in whatever order they come', () => {
    const files = Object.entries(GOOD);
    expect(zipPackage(new Map(files.toReversed()))).toEqual(zipPackage(new Map(files)));
  });

  it('may hold one top folder, photos and what systems leave behind', () => {
    const nested = Object.fromEntries(Object.entries(GOOD).map(([path, text]) => [`Club/${path}`, text]));
    const packed = zipOf({ ...nested, 'Club/photos/a.jpg': 'x'.repeat(50), '__MACOSX/Club/._a': 'y' });
    const files = unzipPackage(packed);
    expect(files.get('cables.csv')).toEqual(encoder.encode(GOOD['cables.csv']));
    expect(files.get('photos/a.jpg')).toHaveLength(0);
    const reading = readPackage(files, { now: NOW });
    expect(reading.refusals).toEqual([]);
    expect(reading.notes).toEqual(['photos/a.jpg is no table of the package and was left aside.']);
  });

  it('may hold files that are stored unpacked', () => {
    const packed = zipSync({ 'cables.csv': [encoder.encode(GOOD['cables.csv']), { level: 0 }] });
    expect(unzipPackage(packed).get('cables.csv')).toEqual(encoder.encode(GOOD['cables.csv']));
  });
});

describe('an archive that cannot be trusted', () => {
  const good = zipOf(GOOD);
  const only = zipOf({ 'cables.csv': GOOD['cables.csv'].repeat(20) });

  it.each([['../cables.csv'], ['club/../../cables.csv'], ['/etc/cables.csv'], ['C:/cables.csv'], ['..\\cables.csv']])(
    'is refused for the path %s',
    (path) => {
      const name = path.replaceAll('\\', '/');
      expect(sentenceOf(zipOf({ [path]: 'x', 'cables.csv': 'y' }))).toBe(
        `${name}: found a path that leaves its folder; expected files inside one folder.`,
      );
    },
  );

  it('is refused for packing too much into too little', () => {
    expect(sentenceOf(bomb(3))).toMatch(
      /^readings\.csv: found 3 MB packed into \d+ bytes; expected a table that was honestly packed\.$/,
    );
  });

  it('is refused for its size as claimed, before anything is unpacked', () => {
    expect(sentenceOf(bomb(3), { ratio: 1e6, unpackedBytes: 2_000_000 })).toBe(
      'the .zip: found 3 MB unpacked; expected at most 2 MB.',
    );
  });

  it('is stopped on the way when it claims less than it holds', () => {
    const liar = altered(bomb(30), (view, directory) => view.setUint32(directory + 24, 1000, true));
    expect(sentenceOf(liar)).toBe(
      'readings.csv: found more bytes than the archive claims; expected an honest archive.',
    );
  });

  it('is refused for more files than any package has', () => {
    const many = Object.fromEntries(Array.from({ length: 6 }, (_, i) => [`photos/${i}.jpg`, 'x']));
    expect(sentenceOf(zipOf(many), { files: 5 })).toBe(
      'the .zip: found 6 files; expected at most 5 files. Leave photos and other files out.',
    );
  });

  it('is refused under a password', () => {
    const locked = altered(only, (view, directory) => view.setUint16(directory + 8, 1, true));
    expect(sentenceOf(locked)).toBe('cables.csv: found a file under a password; expected an archive without one.');
  });

  it('is refused for a way of packing that is not understood', () => {
    const other = altered(only, (view, directory) => view.setUint16(directory + 10, 14, true));
    expect(sentenceOf(other)).toBe(
      'cables.csv: found a way of packing that is not understood; expected an ordinary .zip archive.',
    );
  });

  it('is refused when a byte was changed on the way', () => {
    for (let at = 45; at < directoryAt(only); at += 7) {
      const damaged = altered(only, (view) => view.setUint8(at, view.getUint8(at) ^ 0x10));
      expect(sentenceOf(damaged)).toMatch(/^cables\.csv: found (damaged bytes|more bytes than the archive claims);/);
    }
  });

  it.each([
    ['an empty file', new Uint8Array(0), 'the .zip: found an empty file; expected a .zip archive.'],
    [
      'no archive',
      encoder.encode('this is a letter, not an archive, however it is named'),
      'the .zip: found no list of its files; expected a whole .zip archive. Make it again, or bring the folder itself.',
    ],
    [
      'one cut short',
      good.subarray(0, good.length - 30),
      'the .zip: found no list of its files; expected a whole .zip archive. Make it again, or bring the folder itself.',
    ],
    [
      'one whose list lies',
      altered(good, (view, directory) => view.setUint32(directory + 42, 7, true)),
      'the .zip: found a file that is not where the list says; expected a whole .zip archive. Make it again, or bring the folder itself.',
    ],
    [
      'one whose list is damaged',
      altered(good, (view, directory) => view.setUint32(directory, 0, true)),
      'the .zip: found a damaged list of its files; expected a whole .zip archive. Make it again, or bring the folder itself.',
    ],
    [
      'one with a list beyond its end',
      altered(good, (view) => view.setUint32(good.length - 22 + 16, 0x7fffffff, true)),
      'the .zip: found a damaged list of its files; expected a whole .zip archive. Make it again, or bring the folder itself.',
    ],
  ])('is refused: %s', (_, bytes, sentence) => {
    expect(sentenceOf(bytes)).toBe(sentence);
  });
});

describe('crc32', () => {
  it('gives the check value of the nine digits, in one piece and in two', () => {
    // ITU-T V.42 CRC-32; check value as listed in catalogues of CRC algorithms (from memory).
    expect(crc32(encoder.encode('123456789'))).toBe(0xcbf43926);
    expect(crc32(encoder.encode('6789'), crc32(encoder.encode('12345')))).toBe(0xcbf43926);
  });
});
